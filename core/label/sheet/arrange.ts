import type { Mark, Page, PaperSize, Point, Stroke } from '../../paper/paper.ts';
import { paperMm } from '../../paper/paper.ts';
import { mmPerPt } from '../../paper/paper-text.ts';
import type { Face, StripSize } from './face.ts';

/** A round label by its diameter, or a strip, in mm. */
export type Cut =
  | { readonly shape: 'round'; readonly diameterMm: number }
  | ({ readonly shape: 'strip' } & StripSize);

/** Printers leave a rim free; 9 mm is more than the usual ones do. Between labels there is room for scissors. */
const edgeMm = 9;
const gapMm = 4;
/** Where the line to measure the print with stands, from the foot of the page. */
const footMm = 6;
const rulerMm = 50;
const tickMm = 1.4;

const cutLine: Stroke = { colour: '#8a8a8a', widthMm: 0.1 };
const foldLine: Stroke = { colour: '#8a8a8a', widthMm: 0.1, dashMm: [1, 1] };
const ink: Stroke = { colour: '#1a1a1a', widthMm: 0.15 };

export const widthOf = (cut: Cut): number => (cut.shape === 'round' ? cut.diameterMm : cut.lengthMm);
export const heightOf = (cut: Cut): number => (cut.shape === 'round' ? cut.diameterMm : cut.heightMm);

export interface Grid {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly columns: number;
  readonly rows: number;
}

const fitting = (room: number, size: number): number =>
  Math.max(0, Math.floor((room + gapMm) / (size + gapMm) + 1e-9));

const gridOn = (widthMm: number, heightMm: number, cut: Cut): Grid => ({
  widthMm,
  heightMm,
  columns: fitting(widthMm - 2 * edgeMm, widthOf(cut)),
  rows: fitting(heightMm - 2 * edgeMm - footMm, heightOf(cut)),
});

const holds = ({ columns, rows }: Grid): number => columns * rows;

/** The page upright or on its side, whichever holds more; a page that holds none has no columns or rows. */
export const gridFor = (cut: Cut, paper: PaperSize): Grid => {
  const [width, height] = paperMm[paper];
  const upright = gridOn(width, height, cut);
  const sideways = gridOn(height, width, cut);
  return holds(sideways) > holds(upright) ? sideways : upright;
};

export const perPage = (grid: Grid): number => holds(grid);

/** The middle of each label on a page, row by row, the whole grid centred. */
const places = (grid: Grid, cut: Cut): readonly Point[] => {
  const stepX = widthOf(cut) + gapMm;
  const stepY = heightOf(cut) + gapMm;
  const left = (grid.widthMm - (grid.columns * stepX - gapMm)) / 2 + widthOf(cut) / 2;
  const top =
    edgeMm + (grid.heightMm - 2 * edgeMm - footMm - (grid.rows * stepY - gapMm)) / 2 + heightOf(cut) / 2;
  return Array.from(
    { length: grid.columns * grid.rows },
    (_, index): Point => [
      left + (index % grid.columns) * stepX,
      top + Math.floor(index / grid.columns) * stepY,
    ],
  );
};

const line = (from: Point, to: Point, stroke: Stroke): Mark => ({ kind: 'line', from, to, stroke });

/** Short marks outside a round label, in line with its middle: to lay a punch or compasses on. */
const roundMarks = ([x, y]: Point, diameter: number): readonly Mark[] => {
  const r = diameter / 2;
  return [
    { kind: 'circle', at: [x, y], radiusMm: r, stroke: cutLine },
    line([x - r - tickMm, y], [x - r, y], cutLine),
    line([x + r, y], [x + r + tickMm, y], cutLine),
    line([x, y - r - tickMm], [x, y - r], cutLine),
    line([x, y + r], [x, y + r + tickMm], cutLine),
  ];
};

/** The outline of a strip, marks that go on beyond its corners, and where its overlap begins. */
const stripMarks = ([x, y]: Point, { lengthMm, heightMm, overlapMm }: StripSize): readonly Mark[] => {
  const [left, right] = [x - lengthMm / 2, x + lengthMm / 2];
  const [top, bottom] = [y - heightMm / 2, y + heightMm / 2];
  const corners = [left, right].flatMap((cx) => [top, bottom].map((cy): Point => [cx, cy]));
  const ticks = corners.flatMap(([cx, cy]): Mark[] => [
    line([cx, cy], [cx + (cx === left ? -tickMm : tickMm), cy], cutLine),
    line([cx, cy], [cx, cy + (cy === top ? -tickMm : tickMm)], cutLine),
  ]);
  const fold = right - overlapMm;
  return [
    { kind: 'box', at: [left, top], widthMm: lengthMm, heightMm, stroke: cutLine },
    ...ticks,
    ...(overlapMm > 0 ? [line([fold, top], [fold, bottom], foldLine)] : []),
  ];
};

/**
 * A jar with its lid off, for the months after opening (Regulation (EC) 1223/2009, Annex VII point 2; drawn here, from
 * memory of the sign): 10 units wide, 12 high, upward from its foot.
 */
const jarPath = 'M1 -1V-7H9V-1Q9 0 8 0H2Q1 0 1 -1ZM2 -7V-8H8V-7M0.5 -9.5L8.8 -12L9.1 -11L0.8 -8.5Z';
const jarUnits = 12;

const jarMark = ([x, y]: Point, sizePt: number): Mark => ({
  kind: 'path',
  at: [x, y],
  unitMm: (sizePt * mmPerPt * 0.95) / jarUnits,
  path: jarPath,
  stroke: ink,
});

const faceMarks = ([x, y]: Point, face: Face): readonly Mark[] =>
  face.lines.flatMap(({ text, left, width, baseline, sizePt, weight, rule, jar }): Mark[] => {
    // Set by the middle of its measured place: kerning draws a text together, and it stays centred.
    const at: Point = [x + left + (rule ? 0 : width / 2), y + baseline];
    const words: Mark[] =
      text === '' ? [] : [{ kind: 'text', text, at, sizePt, weight, align: rule ? 'left' : 'middle' }];
    const blank = rule ? [line([x + rule[0], y + baseline], [x + rule[1], y + baseline], ink)] : [];
    const sign = jar === undefined ? [] : [jarMark([x + jar, y + baseline], sizePt)];
    return [...words, ...blank, ...sign];
  });

/** A line of exactly 50 mm at the foot of the page: measured after printing it shows whether the print was shrunk. */
const rulerMarks = ({ widthMm, heightMm }: Grid): readonly Mark[] => {
  const y = heightMm - footMm;
  const left = (widthMm - rulerMm) / 2;
  return [
    line([left, y], [left + rulerMm, y], ink),
    line([left, y - tickMm], [left, y + tickMm], ink),
    line([left + rulerMm, y - tickMm], [left + rulerMm, y + tickMm], ink),
  ];
};

/** Labels of one kind on their places of a page, the same marks stamped on each. */
const stampsOf = (faces: readonly Face[], spots: readonly Point[], cut: Cut): readonly Mark[] =>
  [...new Set(faces)].map((face) => ({
    kind: 'stamp',
    marks: [
      ...(cut.shape === 'round' ? roundMarks([0, 0], cut.diameterMm) : stripMarks([0, 0], cut)),
      ...faceMarks([0, 0], face),
    ],
    at: spots.filter((_, index) => faces[index] === face),
  }));

/** Faces one after another on as many pages as they need, each with its cut marks. */
export const pagesOf = (faces: readonly Face[], cut: Cut, grid: Grid): readonly Page[] => {
  const spots = places(grid, cut);
  const pages: Page[] = [];
  for (let from = 0; from < faces.length; from += spots.length) {
    const marks = stampsOf(faces.slice(from, from + spots.length), spots, cut);
    pages.push({ widthMm: grid.widthMm, heightMm: grid.heightMm, marks: [...marks, ...rulerMarks(grid)] });
  }
  return pages;
};
