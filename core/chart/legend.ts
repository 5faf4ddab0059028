import type { MeltChartSpec } from './chart-spec.ts';
import { drawable, shortened } from './chart-text.ts';
import { type PlacedText, placedText, sizes } from './placed-text.ts';

/** What a sample in the legend shows: a curve, its fresh line, or the bar on the axis. */
export type Sample = { readonly kind: 'aged' | 'fresh'; readonly curve: 0 | 1 } | { readonly kind: 'range' };

export interface LegendItem {
  readonly sample: Sample;
  /** Left end and height of the sample's line. */
  readonly x: number;
  readonly y: number;
  readonly text: PlacedText;
}

export interface Legend {
  readonly items: readonly LegendItem[];
  readonly height: number;
}

export const sampleWidth = 40;
const afterSample = 10;
const betweenItems = 24;

interface Wanted {
  readonly sample: Sample;
  readonly name: string;
}

const wanted = ({ curves, marks, words }: MeltChartSpec): readonly Wanted[] => {
  const aged = curves.map(({ name }, curve) => ({
    sample: { kind: 'aged' as const, curve: curve === 0 ? (0 as const) : (1 as const) },
    name,
  }));
  const fresh = curves.findIndex((curve) => curve.fresh !== undefined);
  const freshSample = { kind: 'fresh' as const, curve: fresh === 1 ? (1 as const) : (0 as const) };
  return [
    ...aged,
    ...(fresh < 0 ? [] : [{ sample: freshSample, name: words.fresh }]),
    ...(marks.some(({ rangeC }) => rangeC)
      ? [{ sample: { kind: 'range' as const }, name: words.range }]
      : []),
  ];
};

/** What the lines mean, in as many rows as it takes; names too wide for a row are shortened. */
export const legendOf = (spec: MeltChartSpec, top: number): Legend => {
  const right = sizes.width - sizes.edge;
  const items: LegendItem[] = [];
  let x: number = sizes.edge;
  let y = top;
  for (const { sample, name } of wanted(spec)) {
    const room = right - sizes.edge - sampleWidth - afterSample;
    const text = shortened(drawable(name), sizes.text, room);
    const wide = placedText('legend', text, { x: x + sampleWidth + afterSample, y });
    if (x > sizes.edge && wide.box.x + wide.box.width > right) {
      x = sizes.edge;
      y += sizes.line;
    }
    const placed = placedText('legend', text, { x: x + sampleWidth + afterSample, y });
    items.push({ sample, x, y: y + placed.box.height / 2, text: placed });
    x = placed.box.x + placed.box.width + betweenItems;
  }
  return { items, height: y - top + sizes.line };
};
