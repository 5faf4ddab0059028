import type { Mark, Page } from './paper.ts';
import { fontEms, mmPerPt, wrapText } from './paper-text.ts';

/** A part of a plain document; a table's columns are shares of the width. */
export type DocumentPart =
  | { readonly kind: 'heading' | 'text' | 'item'; readonly text: string }
  | {
      readonly kind: 'table';
      readonly shares: readonly number[];
      readonly head: readonly string[];
      readonly rows: readonly (readonly string[])[];
    };

export interface PlainDocument {
  readonly title: string;
  readonly parts: readonly DocumentPart[];
  /** Stands at the foot of every page, before its number. */
  readonly footer: string;
}

const edge = 16;
const leading = 1.35;
const textPt = 10;
const headingPt = 12;
const titlePt = 17;
const footPt = 8;
const gapMm = 3;
const itemMm = 4;
const cellMm = 2;
const grey = '#8a8378';

const lineMm = (sizePt: number): number => sizePt * mmPerPt * leading;

/** Something as high as it is, drawn from a given height on the page; it is never parted. */
interface Slab {
  readonly heightMm: number;
  /** Kept on one page with what follows it: a heading, the head of a table. */
  readonly keeps?: boolean;
  marksAt(y: number): readonly Mark[];
}

const textMarks = (
  lines: readonly string[],
  x: number,
  y: number,
  sizePt: number,
  weight: 'regular' | 'bold' = 'regular',
): readonly Mark[] =>
  lines.map((text, at) => ({
    kind: 'text',
    text,
    at: [x, y + at * lineMm(sizePt) + fontEms.ascent * sizePt * mmPerPt],
    sizePt,
    weight,
  }));

const slab = (
  text: string,
  width: number,
  sizePt: number,
  look: {
    readonly weight?: 'regular' | 'bold';
    readonly indent?: number;
    readonly above?: number;
    readonly keeps?: boolean;
  },
): Slab => {
  const { weight = 'regular', indent = 0, above = 0, keeps = false } = look;
  const lines = wrapText(text, width - indent, sizePt, weight);
  return {
    heightMm: above + lines.length * lineMm(sizePt),
    keeps,
    marksAt: (y) => [
      ...(indent > 0 ? textMarks(['–'], edge, y + above, sizePt) : []),
      ...textMarks(lines, edge + indent, y + above, sizePt, weight),
    ],
  };
};

const rowSlab = (
  cells: readonly string[],
  shares: readonly number[],
  width: number,
  weight: 'regular' | 'bold',
): Slab => {
  const whole = shares.reduce((sum, share) => sum + share, 0);
  const widths = shares.map((share) => (width * share) / whole);
  const wrapped = cells.map((cell, at) => wrapText(cell, (widths[at] ?? 0) - cellMm, textPt, weight));
  const lines = Math.max(1, ...wrapped.map(({ length }) => length));
  const heightMm = lines * lineMm(textPt) + 1;
  const rule = { colour: grey, widthMm: 0.15 };
  return {
    heightMm,
    keeps: weight === 'bold',
    marksAt: (y) => [
      ...wrapped.flatMap((texts, at) => {
        const x = edge + widths.slice(0, at).reduce((sum, each) => sum + each, 0);
        return textMarks(texts, x, y, textPt, weight);
      }),
      {
        kind: 'line',
        from: [edge, y + heightMm - 0.5],
        to: [edge + width, y + heightMm - 0.5],
        stroke: rule,
      },
    ],
  };
};

const slabsOf = (part: DocumentPart, width: number): readonly Slab[] => {
  switch (part.kind) {
    case 'heading':
      return [slab(part.text, width, headingPt, { weight: 'bold', above: gapMm + 1, keeps: true })];
    case 'text':
      return [slab(part.text, width, textPt, { above: 1 })];
    case 'item':
      return [slab(part.text, width, textPt, { indent: itemMm, above: 0.6 })];
    case 'table':
      return [
        rowSlab(part.head, part.shares, width, 'bold'),
        ...part.rows.map((row) => rowSlab(row, part.shares, width, 'regular')),
      ];
  }
};

/** Slabs from one that keeps with its next up to the first that does not: they go on one page together. */
const grouped = (slabs: readonly Slab[]): readonly (readonly Slab[])[] => {
  const groups: Slab[][] = [];
  let open = false;
  for (const each of slabs) {
    if (open) groups.at(-1)?.push(each);
    else groups.push([each]);
    open = each.keeps === true;
  }
  return groups;
};

const heightOf = (slabs: readonly Slab[]): number => slabs.reduce((sum, { heightMm }) => sum + heightMm, 0);

/** Sets a plain document in one column on as many pages as it needs, in one size of type. */
export const documentPages = (
  { title, parts, footer }: PlainDocument,
  [widthMm, heightMm]: readonly [number, number],
): readonly Page[] => {
  const width = widthMm - 2 * edge;
  const foot = heightMm - edge - lineMm(footPt);
  const head = slab(title, width, titlePt, { weight: 'bold' });
  const pages: Mark[][] = [];
  let y = Number.POSITIVE_INFINITY;
  for (const group of grouped([head, ...parts.flatMap((part) => slabsOf(part, width))])) {
    if (y + heightOf(group) > foot - gapMm) {
      pages.push([]);
      y = edge;
    }
    for (const each of group) {
      pages.at(-1)?.push(...each.marksAt(y));
      y += each.heightMm;
    }
  }
  return pages.map((marks, at) => ({
    widthMm,
    heightMm,
    marks: [...marks, ...textMarks([`${footer} · ${at + 1}/${pages.length}`], edge, foot, footPt)],
  }));
};
