import type { FattyAcidName } from '../data/ingredient.ts';
import type { Fractions } from '../data/melt/make-ups.ts';
import { makeUps } from '../data/melt/make-ups.ts';
import type { AcidShares } from '../iodine.ts';

/** Palmitic counts myristic in, stearic everything saturated from C20 up, as seed butters build them in alike. */
const palmitic: readonly FattyAcidName[] = ['14:0', '16:0'];
const stearic: readonly FattyAcidName[] = ['18:0', '20:0', '22:0'];
const unsaturated: readonly FattyAcidName[] = [
  '16:1',
  '18:1',
  '18:2',
  '18:3',
  '18:3n6',
  '20:1',
  '22:1',
  'ricinoleic',
];
const shortChains: readonly FattyAcidName[] = ['8:0', '10:0'];
const lauricChains: readonly FattyAcidName[] = ['8:0', '10:0', '12:0', '14:0'];

const sumOf = (acids: AcidShares, names: readonly FattyAcidName[]): number =>
  names.reduce((sum, name) => sum + (acids[name] ?? 0), 0);

/** Least percent of C8-C14 for a lauric fat, and of C8 and C10 for one that is built like coconut oil. */
const lauricPercent = 35;
const coconutLikePercent = 10;
/** Saturated share below which a fat is taken as liquid oil. */
const liquidBelow = 0.25;
/** Outer places of a triglyceride are this much richer in saturated acids than the fat, at most 97 % of them. */
const outerRichness = 1.5;
const mostOuter = 0.97;
/** Share of POP, POS and SOS that freezes (the rest are faults of the crystals), and of mixed trisaturates. */
const freezingShare = 0.9;
const trisaturatedShare = 0.01;

const seedButter = (p: number, stearicShare: number, outer: number, linoleic: number): Fractions => {
  const sus = outer ** 2;
  const suu = 2 * outer * (1 - outer);
  const uuu = (1 - outer) ** 2;
  const oleicCentred = sus * (1 - linoleic);
  const rest = 1 - trisaturatedShare;
  return {
    pop: rest * freezingShare * oleicCentred * p ** 2,
    pos: rest * freezingShare * 2 * oleicCentred * p * stearicShare,
    sos: rest * freezingShare * oleicCentred * stearicShare ** 2,
    sls: rest * sus * linoleic,
    poo: rest * suu * p,
    soo: rest * suu * stearicShare,
    oil: rest * (uuu + (1 - freezingShare) * oleicCentred),
    trimix: trisaturatedShare,
  };
};

/**
 * Make-up of a plant butter from its fatty acids in percent, for butters without a make-up of their own. Seed butters
 * keep unsaturated acids in the middle of the triglyceride; a lauric fat copies coconut or palm kernel oil; a fat with
 * few saturated acids is a liquid oil. Not valid for animal fats, palm fruit or hydrogenated fats. Nothing is returned
 * when the profile names no acids. Against explicit rows it is good to 6 points of solids at 20 °C and 1 °C.
 */
export const fractionsFromAcids = (acids: AcidShares): Fractions | undefined => {
  const saturatedP = sumOf(acids, palmitic);
  const saturatedSt = sumOf(acids, stearic);
  const unsaturatedSum = sumOf(acids, unsaturated);
  if (sumOf(acids, lauricChains) >= lauricPercent) {
    const coconutLike = sumOf(acids, shortChains) >= coconutLikePercent;
    return makeUps[coconutLike ? 'coconut-oil' : 'palm-kernel-oil'].fractions;
  }
  const saturated = saturatedP + saturatedSt;
  if (!(saturated + unsaturatedSum > 0)) return undefined;
  const saturatedShare = saturated / (saturated + unsaturatedSum);
  if (saturatedShare < liquidBelow) return makeUps['liquid-oil'].fractions;
  const p = saturatedP / saturated;
  const linoleic = unsaturatedSum > 0 ? (acids['18:2'] ?? 0) / unsaturatedSum : 0;
  return seedButter(p, 1 - p, Math.min(mostOuter, outerRichness * saturatedShare), linoleic);
};
