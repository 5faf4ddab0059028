import { type Block, blockOf } from './block.ts';
import { type Line, layBalanced, layColumns } from './lay-out.ts';
import type { LeastType } from './least-type.ts';
import { boxShape, roundShape, type Shape } from './shape.ts';

/** What is to stand on a tin, as sentences. `blank` sentences are followed by a rule to write on. */
export interface LabelText {
  readonly title: string;
  readonly subtitle?: string;
  readonly net?: string;
  /** `jar` sentences have the open jar before them. */
  readonly small: readonly { readonly text: string; readonly blank?: boolean; readonly jar?: boolean }[];
}

/** One label as it is printed, in mm around its middle. */
export interface Face {
  readonly lines: readonly Line[];
  /** Size of the small print, or of the name where there is none. */
  readonly smallPt: number;
}

/** Space kept free inside the cut, in mm: cutting by hand is not exact. */
const marginMm = { round: 1.5, strip: 1.2 } as const;
const largest = { titlePt: 16, smallPt: 7.5 } as const;
/** On a large lid the name grows with it: points to the millimetre of room. */
const titlePtPerMm = 0.4;
const stepPt = 0.25;

/** The largest size in steps of a quarter point at which something fits, looked for by halves; undefined below the least. */
const largestFit = (
  mostPt: number,
  leastPt: number,
  lay: (pt: number) => readonly Line[] | undefined,
): Face | undefined => {
  const sizeAt = (step: number): number => leastPt + step * stepPt;
  let best = lay(leastPt);
  if (!best) return undefined;
  let low = 0;
  let high = Math.max(0, Math.floor((mostPt - leastPt) / stepPt)) + 1;
  while (high - low > 1) {
    const step = Math.floor((low + high) / 2);
    const lines = lay(sizeAt(step));
    if (lines) {
      best = lines;
      low = step;
    } else high = step;
  }
  return { lines: best, smallPt: Number(sizeAt(low).toFixed(2)) };
};

type Small = LabelText['small'][number];

/** Short sentences run on behind one another, where each in lines of its own would take too much room. */
const joined = (small: readonly Small[]): readonly Small[] => {
  const list: Small[] = [];
  for (const part of small) {
    const last = list.at(-1);
    const runs = last && !last.blank && !last.jar && !part.blank && !part.jar;
    if (runs) list[list.length - 1] = { text: `${last.text} · ${part.text}` };
    else list.push(part);
  }
  return list;
};

const blocksOf = (small: readonly Small[], least: LeastType): readonly Block[] =>
  small.map(({ text, blank = false, jar = false }) => blockOf(text, { leastPt: least.smallPt, blank, jar }));

/** Type has to grow by this much for sentences to be run together. */
const worthJoiningPt = 0.5;

/** The small print with a line of its own for each sentence, or run together where that lets it be larger. */
const roomier = (
  { small }: LabelText,
  least: LeastType,
  lay: (blocks: readonly Block[]) => Face | undefined,
): Face | undefined => {
  const apart = lay(blocksOf(small, least));
  if (apart && apart.smallPt > largest.smallPt - stepPt) return apart;
  const together = lay(blocksOf(joined(small), least));
  if (!apart || !together) return apart ?? together;
  return together.smallPt >= apart.smallPt + worthJoiningPt ? together : apart;
};

const nameBlocks = ({ title, subtitle }: LabelText, least: LeastType): readonly Block[] => [
  blockOf(title, { weight: 'bold', leastPt: least.smallPt }),
  ...(subtitle ? [blockOf(subtitle, { ratio: 0.7, leastPt: least.smallPt })] : []),
];

const netBlocks = ({ net }: LabelText, least: LeastType): readonly Block[] =>
  net ? [blockOf(net, { weight: 'bold', ratio: 0.1, leastPt: least.netPt })] : [];

/** Everything on one round label, the name first. */
export const wholeRound = (text: LabelText, diameterMm: number, least: LeastType): Face | undefined => {
  const shape = roundShape(diameterMm / 2 - marginMm.round);
  const head = [
    blockOf(text.title, { weight: 'bold', ratio: 1.7, leastPt: least.smallPt }),
    ...(text.subtitle ? [blockOf(text.subtitle, { ratio: 1.1, leastPt: least.smallPt })] : []),
  ];
  const top = [...head, ...netBlocks(text, least)];
  return roomier(text, least, (small) =>
    largestFit(largest.smallPt, least.smallPt, (pt) => layBalanced([...top, ...small], shape, pt)),
  );
};

/** From where the bottom 30 % of a panel begins: there the US wants the net contents. */
const netFrom = 0.4;

const named = (text: LabelText, least: LeastType, nameShape: Shape, netShape: Shape): Face | undefined => {
  const net = layBalanced(netBlocks(text, least), netShape, least.netPt);
  if (!net) return undefined;
  const mostPt = Math.max(largest.titlePt, titlePtPerMm * (nameShape.bottom - nameShape.top));
  const face = largestFit(mostPt, least.smallPt, (pt) => layBalanced(nameBlocks(text, least), nameShape, pt));
  return face && { ...face, lines: [...face.lines, ...net] };
};

/** Name and function, and the net contents in the bottom 30 % of the lid. */
export const frontRound = (text: LabelText, diameterMm: number, least: LeastType): Face | undefined => {
  const full = diameterMm / 2;
  const radius = full - marginMm.round;
  if (!text.net) return named(text, least, roundShape(radius), roundShape(radius));
  const from = netFrom * full;
  return named(text, least, roundShape(radius, -radius, from - 0.5), roundShape(radius, from, radius));
};

/** The small print by itself, for the underside. */
export const backRound = (text: LabelText, diameterMm: number, least: LeastType): Face | undefined => {
  const shape = roundShape(diameterMm / 2 - marginMm.round);
  return roomier(text, least, (small) =>
    largestFit(largest.smallPt, least.smallPt, (pt) => layBalanced(small, shape, pt)),
  );
};

export interface StripSize {
  /** The whole strip, overlap and all. */
  readonly lengthMm: number;
  readonly heightMm: number;
  /** The end that lies under the beginning once it is round the tin. */
  readonly overlapMm: number;
}

const columnGapMm = 2.5;
const mostColumns = 4;
/** One column more has to let the print be so much larger, in points. */
const worthPt = 0.5;

const columnsIn = (from: number, to: number, count: number, height: number): readonly Shape[] => {
  const width = (to - from - columnGapMm * (count - 1)) / count;
  return Array.from({ length: count }, (_, index) =>
    boxShape(from + width / 2 + index * (width + columnGapMm), width, -height / 2, height / 2),
  );
};

/** Small print in as many columns as let it be largest. */
const inColumns = (
  blocks: readonly Block[],
  least: LeastType,
  { from, to, height }: { readonly from: number; readonly to: number; readonly height: number },
): Face | undefined => {
  let best: Face | undefined;
  for (let count = 1; count <= mostColumns; count += 1) {
    const shapes = columnsIn(from, to, count, height);
    const face = largestFit(largest.smallPt, least.smallPt, (pt) => layColumns(blocks, shapes, pt));
    if (face && (!best || face.smallPt >= best.smallPt + worthPt)) best = face;
  }
  return best;
};

/** Share of a strip that shows the name, and its bounds in mm. */
const front = { share: 0.3, least: 18, most: 60 } as const;

/** A strip round a tin: name and net contents at its beginning, the small print beside them, nothing on the overlap. */
export const wholeStrip = (text: LabelText, size: StripSize, least: LeastType): Face | undefined => {
  const { lengthMm, heightMm, overlapMm } = size;
  const start = -lengthMm / 2 + marginMm.strip;
  const end = lengthMm / 2 - overlapMm - marginMm.strip;
  const inner = heightMm - 2 * marginMm.strip;
  const width = Math.min(front.most, Math.max(front.least, front.share * (end - start)));
  const split = text.net ? heightMm / 2 - 0.3 * heightMm : inner / 2;
  // The net line is higher than the bottom 30 % of a low strip: there it stands as low as it can.
  const netTop = Math.min(split, inner / 2 - least.netPt * 0.42);
  const x = start + width / 2;
  const name = boxShape(x, width, -inner / 2, text.net ? netTop : inner / 2);
  const face = named(text, least, name, boxShape(x, width, netTop, inner / 2));
  const place = { from: start + width + columnGapMm, to: end, height: inner };
  const small = face && roomier(text, least, (blocks) => inColumns(blocks, least, place));
  return face && small && { smallPt: small.smallPt, lines: [...face.lines, ...small.lines] };
};

/** The small print alone on a strip, where the lid shows the name. */
export const backStrip = (text: LabelText, size: StripSize, least: LeastType): Face | undefined => {
  const { lengthMm, heightMm, overlapMm } = size;
  const place = {
    from: -lengthMm / 2 + marginMm.strip,
    to: lengthMm / 2 - overlapMm - marginMm.strip,
    height: heightMm - 2 * marginMm.strip,
  };
  return roomier(text, least, (blocks) => inColumns(blocks, least, place));
};
