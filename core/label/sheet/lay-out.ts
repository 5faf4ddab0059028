import type { Weight } from '../../chart/chart-text.ts';
import { fontEms, mmPerPt, takeWords } from '../../paper/paper-text.ts';
import { type Block, jarEms, sizeOf } from './block.ts';
import type { Shape } from './shape.ts';

/** A line of text on a label, in mm from the label's middle; a rule to write on may follow it. */
export interface Line {
  readonly text: string;
  /** Left end and width as measured; what is printed is never wider. */
  readonly left: number;
  readonly width: number;
  readonly baseline: number;
  readonly sizePt: number;
  readonly weight: Weight;
  readonly rule?: readonly [from: number, to: number];
  /** Left end of an open jar before the text. */
  readonly jar?: number;
}

/** Height of a line of text, and the air between paragraphs, in font sizes. */
const leading = 1.17;
const paragraphGap = 0.3;
/** A rule to write on: shortest and longest, and the height a pen needs, in mm. */
const rule = { shortest: 12, longest: 30, height: 3.2, gap: 1 } as const;
/** Steps in which a line looks for a wider chord, in mm. */
const searchMm = 0.4;

export type Side = 'left' | 'middle';

interface Setting {
  readonly shape: Shape;
  readonly basePt: number;
  readonly side: Side;
}

interface Cursor {
  y: number;
  readonly lines: Line[];
}

const startOf = ({ shape, side }: Setting, room: number, width: number): number =>
  shape.x - (side === 'left' ? room : width) / 2;

/** Moves down to where a line of this height has some room for `wanted`; false when there is no such place. */
const seek = ({ shape }: Setting, cursor: Cursor, height: number, wanted: number): boolean => {
  while (cursor.y + height <= shape.bottom + 1e-9) {
    if (shape.room(cursor.y, cursor.y + height) >= wanted) return true;
    // Below the middle of a circle it only gets narrower.
    if (cursor.y >= 0) return false;
    cursor.y += searchMm;
  }
  return false;
};

interface Placed {
  readonly text: string;
  readonly textMm: number;
  readonly ruleMm: number;
}

const push = (setting: Setting, cursor: Cursor, block: Block, height: number, placed: Placed): void => {
  const { text, textMm, ruleMm } = placed;
  const sizePt = sizeOf(block, setting.basePt);
  const room = setting.shape.room(cursor.y, cursor.y + height);
  const gap = text !== '' && ruleMm > 0 ? rule.gap : 0;
  const left = startOf(setting, room, textMm + gap + ruleMm);
  const ruled = ruleMm > 0 ? { rule: [left + textMm + gap, left + textMm + gap + ruleMm] as const } : {};
  // In a line made taller for the pen the text stands on the rule.
  const baseline = cursor.y + height - (leading - fontEms.ascent) * sizePt * mmPerPt;
  const jarMm = block.jar ? jarEms * sizePt * mmPerPt : 0;
  const line = { text: text.trim(), left: left + jarMm, width: textMm - jarMm, baseline, sizePt };
  cursor.lines.push({ ...line, weight: block.weight, ...ruled, ...(block.jar ? { jar: left } : {}) });
  cursor.y += height;
};

/** The rule that fits behind a text of this width; 0 when it needs a line of its own. */
const ruleBehind = (room: number, textMm: number): number => {
  const left = Math.min(rule.longest, room - textMm - rule.gap);
  return left >= rule.shortest ? left : 0;
};

const layBlank = (setting: Setting, cursor: Cursor, block: Block, taken: Placed): boolean => {
  const height = Math.max(rule.height, sizeOf(block, setting.basePt) * mmPerPt * leading);
  if (!seek(setting, cursor, height, Math.max(taken.textMm, rule.shortest))) return false;
  const behind = ruleBehind(setting.shape.room(cursor.y, cursor.y + height), taken.textMm);
  push(setting, cursor, block, height, { ...taken, ruleMm: behind });
  if (behind > 0) return true;
  if (!seek(setting, cursor, height, rule.shortest)) return false;
  const room = setting.shape.room(cursor.y, cursor.y + height);
  push(setting, cursor, block, height, { text: '', textMm: 0, ruleMm: Math.min(rule.longest, room) });
  return true;
};

const layLine = (setting: Setting, cursor: Cursor, block: Block, from: number): number | undefined => {
  const { words, weight, blank } = block;
  const sizeMm = sizeOf(block, setting.basePt) * mmPerPt;
  const height = sizeMm * leading;
  const first = words[from];
  if (!first || !seek(setting, cursor, height, first.ems * sizeMm)) return undefined;
  const room = setting.shape.room(cursor.y, cursor.y + height);
  const { text, ems, next } = takeWords(words, from, room / sizeMm, weight);
  const placed = { text, textMm: ems * sizeMm, ruleMm: 0 };
  if (blank && next === words.length) return layBlank(setting, cursor, block, placed) ? next : undefined;
  push(setting, cursor, block, height, placed);
  return next;
};

const layBlock = (setting: Setting, cursor: Cursor, block: Block): boolean => {
  for (let at = 0; at < block.words.length; ) {
    const next = layLine(setting, cursor, block, at);
    if (next === undefined) return false;
    at = next;
  }
  return true;
};

const gapBefore = (block: Block, basePt: number): number =>
  paragraphGap * mmPerPt * Math.min(sizeOf(block, basePt), basePt * 1.2);

/** Lays blocks out from a height downward. Undefined when something finds no room. */
const layFrom = (blocks: readonly Block[], setting: Setting, top: number): Cursor | undefined => {
  const cursor: Cursor = { y: top, lines: [] };
  for (const [index, block] of blocks.entries()) {
    if (index > 0) cursor.y += gapBefore(block, setting.basePt);
    if (!layBlock(setting, cursor, block)) return undefined;
  }
  return cursor;
};

const stepMm = 0.5;

/** Less height than this the blocks cannot take: all words in lines of the widest room. */
const leastHeight = (blocks: readonly Block[], shape: Shape, basePt: number): number => {
  const widest = shape.room(shape.middle, shape.middle);
  const areas = blocks.map((block) => {
    const sizeMm = sizeOf(block, basePt) * mmPerPt;
    return block.words.reduce((sum, { ems }) => sum + ems, 0) * sizeMm * sizeMm * leading;
  });
  return widest > 0 ? areas.reduce((sum, area) => sum + area, 0) / widest : Number.POSITIVE_INFINITY;
};

/** Blocks set into one shape, balanced around its middle. Undefined when they do not fit at this size. */
export const layBalanced = (
  blocks: readonly Block[],
  shape: Shape,
  basePt: number,
  side: Side = 'middle',
): readonly Line[] | undefined => {
  const setting = { shape, basePt, side };
  const least = leastHeight(blocks, shape, basePt);
  if (least > shape.bottom - shape.top) return undefined;
  for (
    let up = Math.max(0, Math.floor(least) / 2 - stepMm);
    shape.middle - up >= shape.top - 1e-9;
    up += stepMm
  ) {
    const laid = layFrom(blocks, setting, shape.middle - up);
    if (laid && laid.y <= shape.middle + up + stepMm) return laid.lines;
  }
  const laid = layFrom(blocks, setting, shape.top);
  return laid?.lines;
};

interface Columns {
  readonly shapes: readonly Shape[];
  readonly basePt: number;
  readonly lines: Line[];
  column: number;
  cursor: Cursor;
}

const nextColumn = (columns: Columns): void => {
  columns.column += 1;
  columns.cursor = { y: columns.shapes[columns.column]?.top ?? 0, lines: columns.lines };
};

/** Paragraphs up to about this many lines are not torn apart. */
const togetherLines = 3;

const isShort = (block: Block, basePt: number, width: number): boolean =>
  block.words.reduce((sum, { ems }) => sum + ems, 0) * sizeOf(block, basePt) * mmPerPt <
  togetherLines * width;

/** A short paragraph that would be torn goes to the next column as a whole. */
const startWhole = (columns: Columns, block: Block): void => {
  const { basePt, cursor } = columns;
  const shape = columns.shapes[columns.column];
  if (!shape || cursor.y <= shape.top || !isShort(block, basePt, shape.room(shape.top, shape.top))) return;
  const tried: Cursor = { y: cursor.y, lines: [] };
  if (!layBlock({ shape, basePt, side: 'left' }, tried, block)) nextColumn(columns);
};

const layOver = (columns: Columns, block: Block): boolean => {
  startWhole(columns, block);
  for (let at = 0; at < block.words.length; ) {
    const shape = columns.shapes[columns.column];
    if (!shape) return false;
    const next = layLine({ shape, basePt: columns.basePt, side: 'left' }, columns.cursor, block, at);
    if (next !== undefined) at = next;
    else nextColumn(columns);
  }
  return true;
};

/** Blocks set into columns from the top of the first one on; a paragraph may run over into the next. */
export const layColumns = (
  blocks: readonly Block[],
  shapes: readonly Shape[],
  basePt: number,
): readonly Line[] | undefined => {
  const lines: Line[] = [];
  const columns: Columns = { shapes, basePt, lines, column: 0, cursor: { y: shapes[0]?.top ?? 0, lines } };
  for (const block of blocks) {
    const top = shapes[columns.column]?.top ?? 0;
    if (columns.cursor.y > top) columns.cursor.y += gapBefore(block, basePt);
    if (!layOver(columns, block)) return undefined;
  }
  return lines;
};
