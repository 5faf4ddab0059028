import type { PaperSize } from '../../paper/paper.ts';
import type { Region } from '../../settings.ts';
import { type Cut, gridFor, heightOf, perPage, widthOf } from './arrange.ts';
import type { StripSize } from './face.ts';
import { type LeastType, leastType } from './least-type.ts';

/** Sizes of labels that are asked for, in mm; both together when lid and side get one each. */
export interface SheetSizes {
  readonly roundMm?: number;
  readonly strip?: {
    /** Diameter of the tin. */
    readonly tinMm: number;
    readonly heightMm: number;
    readonly overlapMm: number;
  };
}

export type SheetProblem =
  | { readonly code: 'label-too-small'; readonly mm: number }
  | { readonly code: 'label-too-large'; readonly mm: number; readonly mostMm: number }
  | { readonly code: 'front-does-not-fit'; readonly leastMm?: number };

/** Labels cannot sensibly be cut smaller than this, in mm (house choice). */
export const leastRoundMm = 15;
export const leastStripMm = 6;
/** A tin of unknown height is taken as half as high as it is wide (common practice, no source). */
const usualHeight = 0.5;

/** Length of a strip round a tin: its girth and the overlap. */
export const stripLength = (tinMm: number, overlapMm: number): number => Math.PI * tinMm + overlapMm;

export const sizeOfStrip = ({ tinMm, heightMm, overlapMm }: NonNullable<SheetSizes['strip']>): StripSize => ({
  lengthMm: stripLength(tinMm, overlapMm),
  heightMm,
  overlapMm,
});

/** The least type for labels of these sizes. */
export const leastFor = (region: Region, { roundMm, strip }: SheetSizes): LeastType => {
  const diameter = strip?.tinMm ?? roundMm ?? 0;
  const height = strip?.heightMm ?? diameter * usualHeight;
  const lid = Math.PI * (diameter / 2) ** 2;
  const side = Math.PI * diameter * height;
  // Of a side wrapped round, two fifths can be seen at once (21 CFR 701.10, from memory).
  const panelMm2 = roundMm === undefined ? 0.4 * side : Math.PI * (roundMm / 2) ** 2;
  return leastType(region, { surfaceMm2: 2 * lid + side, panelMm2 });
};

export const cutsOf = ({ roundMm, strip }: SheetSizes): readonly Cut[] => [
  ...(roundMm === undefined ? [] : [{ shape: 'round', diameterMm: roundMm } as const]),
  ...(strip ? [{ shape: 'strip', ...sizeOfStrip(strip) } as const] : []),
];

/** The largest label that a page takes, in the same direction of asking: diameter of a label or of the tin. */
const mostOn = (cut: Cut, paper: PaperSize): number => {
  const sized = (mm: number): Cut =>
    cut.shape === 'round'
      ? { shape: 'round', diameterMm: mm }
      : { ...cut, lengthMm: stripLength(mm, cut.overlapMm) };
  let mm = 1;
  while (perPage(gridFor(sized(mm + 1), paper)) > 0) mm += 1;
  return mm;
};

/** What makes a size impossible on this paper. */
export const sizeProblem = (cut: Cut, paper: PaperSize): SheetProblem | undefined => {
  const smallest = cut.shape === 'round' ? leastRoundMm : leastStripMm;
  const mm = Math.min(widthOf(cut), heightOf(cut));
  if (mm < smallest) return { code: 'label-too-small', mm };
  if (perPage(gridFor(cut, paper)) > 0) return undefined;
  const asked = cut.shape === 'round' ? cut.diameterMm : (cut.lengthMm - cut.overlapMm) / Math.PI;
  return { code: 'label-too-large', mm: Number(asked.toFixed(1)), mostMm: mostOn(cut, paper) };
};
