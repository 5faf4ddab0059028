import { fail, ok, type Result } from '../../result.ts';
import type { Region } from '../../settings.ts';
import type { Cut } from './arrange.ts';
import {
  backRound,
  backStrip,
  type Face,
  frontRound,
  type LabelText,
  wholeRound,
  wholeStrip,
} from './face.ts';
import type { LeastType } from './least-type.ts';
import { type SheetProblem, type SheetSizes, sizeOfStrip } from './sheet-sizes.ts';

/** Which part of the words a label carries. */
export type FaceKind = 'whole' | 'front' | 'back';

export interface DesignInput {
  readonly text: LabelText;
  readonly sizes: SheetSizes;
  readonly region: Region;
}

export interface Part {
  readonly cut: Cut;
  readonly kind: FaceKind;
  readonly face: Face;
}

/** Small print at least this large on a single label; smaller print moves to a label of its own (house choice). */
const comfortablePt = 5;

export interface Designed {
  readonly parts: readonly Part[];
  readonly leftOut: boolean;
}

const frontFailure = (smallest: number | undefined): Result<Designed, SheetProblem> =>
  fail({ code: 'front-does-not-fit', ...(smallest === undefined ? {} : { leastMm: smallest }) });

/** The smallest whole millimetre over `from` that holds it all, if `to` does. */
const smallestFrom = (from: number, to: number, holds: (mm: number) => boolean): number | undefined => {
  let low = Math.floor(from);
  let high = to;
  if (low >= high || !holds(high)) return undefined;
  while (high - low > 1) {
    const mm = Math.floor((low + high) / 2);
    if (holds(mm)) high = mm;
    else low = mm;
  }
  return high;
};

const mostSearchMm = 120;

const designRound = (
  input: DesignInput,
  roundMm: number,
  least: LeastType,
): Result<Designed, SheetProblem> => {
  const { text, region } = input;
  const cut: Cut = { shape: 'round', diameterMm: roundMm };
  const whole = region === 'us' ? undefined : wholeRound(text, roundMm, least);
  if (whole && whole.smallPt >= comfortablePt)
    return ok({ parts: [{ cut, kind: 'whole', face: whole }], leftOut: false });
  const front = frontRound(text, roundMm, least);
  if (!front)
    return frontFailure(
      smallestFrom(roundMm, mostSearchMm, (mm) => frontRound(text, mm, least) !== undefined),
    );
  const back = backRound(text, roundMm, least);
  const parts: readonly Part[] = [
    { cut, kind: 'front', face: front },
    ...(back ? [{ cut, kind: 'back', face: back } as const] : []),
  ];
  return ok({ parts, leftOut: back === undefined });
};

/** The labels one tin gets. */
export const design = (input: DesignInput, least: LeastType): Result<Designed, SheetProblem> => {
  const { text, sizes } = input;
  const { roundMm, strip } = sizes;
  if (!strip) return designRound(input, roundMm ?? 0, least);
  const size = sizeOfStrip(strip);
  const cut: Cut = { shape: 'strip', ...size };
  if (roundMm === undefined) {
    const whole = wholeStrip(text, size, least);
    return whole
      ? ok({ parts: [{ cut, kind: 'whole', face: whole }], leftOut: false })
      : frontFailure(undefined);
  }
  const front = frontRound(text, roundMm, least);
  if (!front) return frontFailure(undefined);
  const back = backStrip(text, size, least);
  const lid: Part = { cut: { shape: 'round', diameterMm: roundMm }, kind: 'front', face: front };
  return ok({
    parts: back ? [lid, { cut, kind: 'back', face: back }] : [lid],
    leftOut: back === undefined,
  });
};

/** The size that would hold the small print, where it found no room. */
export const roomier = (input: DesignInput, least: LeastType): number | undefined => {
  const { text, sizes } = input;
  const { strip, roundMm } = sizes;
  if (!strip)
    return smallestFrom(roundMm ?? 0, mostSearchMm, (mm) => backRound(text, mm, least) !== undefined);
  const lay = roundMm === undefined ? wholeStrip : backStrip;
  return smallestFrom(
    strip.heightMm,
    mostSearchMm,
    (mm) => lay(text, { ...sizeOfStrip(strip), heightMm: mm }, least) !== undefined,
  );
};
