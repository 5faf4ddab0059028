import { fontEms, mmPerPt, sizeOfXHeight } from '../../paper/paper-text.ts';
import type { Region } from '../../settings.ts';

const inchMm = 25.4;
const squareInch = inchMm * inchMm;

/**
 * Least type in points. Nobody gives an x-height for cosmetics in Europe ("easily legible"); the house takes 0.9 mm, what
 * EU food law asks of small packs (from memory). The US measures the small "o": 1/32 inch for ingredients on packs with
 * less than 12 square inches to print on, 1/16 inch on others; net contents 1/16 inch on panels up to 5 square inches,
 * 1/8 inch up to 25 (21 CFR 701.3 and 701.13, from memory). Elsewhere figures of the net contents are 2 mm high (EU
 * Directive 76/211/EEC with the e-mark, Australian regulations; from memory).
 */
export interface LeastType {
  readonly smallPt: number;
  readonly netPt: number;
  /** The same as heights in mm: of the small x, and of figures (the US: of the small o). */
  readonly smallMm: number;
  readonly netMm: number;
}

const houseXHeightMm = 0.9;
const netFiguresMm = 2;

export interface Printable {
  /** All there is to print on, in mm²; for a tin lid, bottom and side. */
  readonly surfaceMm2: number;
  /** The panel that shows the name, in mm². */
  readonly panelMm2: number;
}

const up = (pt: number): number => Math.ceil(pt * 100 - 1e-6) / 100;

export const leastType = (region: Region, { surfaceMm2, panelMm2 }: Printable): LeastType => {
  if (region !== 'us') {
    const netPt = up(netFiguresMm / mmPerPt / fontEms.capHeight);
    return {
      smallPt: up(sizeOfXHeight(houseXHeightMm)),
      netPt,
      smallMm: houseXHeightMm,
      netMm: netFiguresMm,
    };
  }
  const own = surfaceMm2 < 12 * squareInch ? inchMm / 32 : inchMm / 16;
  const smallMm = Math.max(own, houseXHeightMm);
  const netMm = panelMm2 <= 5 * squareInch ? inchMm / 16 : inchMm / 8;
  return { smallPt: up(sizeOfXHeight(smallMm)), netPt: up(sizeOfXHeight(netMm)), smallMm, netMm };
};
