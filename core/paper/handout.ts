import type { Region } from '../settings.ts';
import { type Mark, type Page, type Point, usualPaper } from './paper.ts';
import { fontEms, mmPerPt, widthMm, wrapText } from './paper-text.ts';

/** A part of a handout: a heading over sentences, or over rows of a table whose last row may be a total. */
export type HandoutPart =
  | { readonly kind: 'list'; readonly heading: string; readonly items: readonly string[] }
  | {
      readonly kind: 'table';
      readonly heading: string;
      readonly rows: readonly (readonly [name: string, amount: string])[];
      readonly total?: readonly [name: string, amount: string];
    };

export interface Handout {
  readonly title: string;
  readonly subtitle: string;
  readonly left: readonly HandoutPart[];
  readonly right: readonly HandoutPart[];
  readonly footer: string;
}

export interface PageSize {
  readonly widthMm: number;
  readonly heightMm: number;
}

/** A4 (ISO 216), and Letter (ANSI A, 8.5 × 11 inches) where it is the usual paper. */
export const paperSizes = {
  a4: { widthMm: 210, heightMm: 297 },
  letter: { widthMm: 215.9, heightMm: 279.4 },
} as const satisfies Readonly<Record<string, PageSize>>;

export const paperFor = (region: Region): PageSize => paperSizes[usualPaper(region)];

const edge = 14;
const gutter = 8;
/** Between the lines of a text, in ems. */
const leading = 1.32;
/** Sizes that are tried, in points, biggest first; smaller than the last nobody reads. */
const typeSizes = [10.5, 10, 9.5, 9, 8.5, 8, 7.5, 7, 6.5] as const;
const titlePt = 18;
const rule = '#8a8378';

interface Column {
  readonly x: number;
  readonly width: number;
}

/** What has been set in a column so far, and where the next line goes. */
interface Setting {
  readonly marks: readonly Mark[];
  readonly y: number;
}

const lineMm = (sizePt: number): number => sizePt * mmPerPt * leading;

const baseline = (y: number, sizePt: number): number => y + fontEms.ascent * sizePt * mmPerPt;

const textAt = (text: string, at: Point, sizePt: number, weight: 'regular' | 'bold' = 'regular'): Mark => ({
  kind: 'text',
  text,
  at: [at[0], baseline(at[1], sizePt)],
  sizePt,
  ...(weight === 'bold' ? { weight } : {}),
});

const lines = (texts: readonly string[], x: number, y: number, sizePt: number): Setting => ({
  marks: texts.map((text, at) => textAt(text, [x, y + at * lineMm(sizePt)], sizePt)),
  y: y + texts.length * lineMm(sizePt),
});

/** Heading, with a thin rule under it. */
const headingAt = (text: string, { x, width }: Column, y: number, sizePt: number): Setting => {
  const under = y + lineMm(sizePt);
  const stroke = { colour: rule, widthMm: 0.2 };
  const [first = ''] = wrapText(text, width, sizePt, 'bold');
  return {
    marks: [
      textAt(first, [x, y], sizePt, 'bold'),
      { kind: 'line', from: [x, under], to: [x + width, under], stroke },
    ],
    y: under + lineMm(sizePt) * 0.25,
  };
};

const bulletMm = 3.2;

const itemAt = (text: string, { x, width }: Column, y: number, sizePt: number): Setting => {
  const set = lines(wrapText(text, width - bulletMm, sizePt), x + bulletMm, y, sizePt);
  return { marks: [textAt('–', [x, y], sizePt), ...set.marks], y: set.y };
};

const rowAt = (
  [name, amount]: readonly [string, string],
  { x, width }: Column,
  y: number,
  sizePt: number,
  weight: 'regular' | 'bold',
): Setting => {
  const room = width - widthMm(amount, sizePt, weight) - 3;
  const names = wrapText(name, room, sizePt, weight);
  const marks = names.map((text, at) => textAt(text, [x, y + at * lineMm(sizePt)], sizePt, weight));
  const end: Mark = {
    kind: 'text',
    text: amount,
    at: [x + width, baseline(y, sizePt)],
    sizePt,
    align: 'right',
    ...(weight === 'bold' ? { weight } : {}),
  };
  return { marks: [...marks, end], y: y + Math.max(1, names.length) * lineMm(sizePt) };
};

type Placer = (y: number) => Setting;

const placersOf = (part: HandoutPart, column: Column, sizePt: number): Placer[] => {
  if (part.kind === 'list') return part.items.map((item) => (y) => itemAt(item, column, y, sizePt));
  const { total } = part;
  return [
    ...part.rows.map(
      (row): Placer =>
        (y) =>
          rowAt(row, column, y, sizePt, 'regular'),
    ),
    ...(total ? [(y: number) => rowAt(total, column, y, sizePt, 'bold')] : []),
  ];
};

const partAt = (part: HandoutPart, column: Column, y: number, sizePt: number): Setting => {
  let set = headingAt(part.heading, column, y, sizePt);
  for (const place of placersOf(part, column, sizePt)) {
    const next = place(set.y);
    set = { marks: [...set.marks, ...next.marks], y: next.y };
  }
  return { marks: set.marks, y: set.y + lineMm(sizePt) * 0.6 };
};

const columnAt = (parts: readonly HandoutPart[], column: Column, y: number, sizePt: number): Setting => {
  let set: Setting = { marks: [], y };
  for (const part of parts) {
    const next = partAt(part, column, set.y, sizePt);
    set = { marks: [...set.marks, ...next.marks], y: next.y };
  }
  return set;
};

const headAt = ({ title, subtitle }: Handout, width: number): Setting => {
  const [first = ''] = wrapText(title, width, titlePt, 'bold');
  const head = textAt(first, [edge, edge], titlePt, 'bold');
  const under = lines(wrapText(subtitle, width, 10), edge, edge + lineMm(titlePt), 10);
  return { marks: [head, ...under.marks], y: under.y + 4 };
};

/** The page at one size of type, or nothing when it does not fit. */
const pageAt = (handout: Handout, page: PageSize, sizePt: number): Page | undefined => {
  const width = page.widthMm - 2 * edge;
  const half = (width - gutter) / 2;
  const head = headAt(handout, width);
  const foot = wrapText(handout.footer, width, 8);
  const footY = page.heightMm - edge - foot.length * lineMm(8);
  const left = columnAt(handout.left, { x: edge, width: half }, head.y, sizePt);
  const right = columnAt(handout.right, { x: edge + half + gutter, width: half }, head.y, sizePt);
  if (Math.max(left.y, right.y) > footY) return undefined;
  return {
    ...page,
    marks: [...head.marks, ...left.marks, ...right.marks, ...lines(foot, edge, footY, 8).marks],
  };
};

/**
 * A handout on one page, in two columns, in the biggest type of 6.5 to 10.5 points that fits. Nothing when it does not
 * fit even in the smallest: a paper that nobody can read is no handout.
 */
export const handoutPage = (handout: Handout, page: PageSize): Page | undefined => {
  for (const sizePt of typeSizes) {
    const set = pageAt(handout, page, sizePt);
    if (set) return set;
  }
  return undefined;
};
