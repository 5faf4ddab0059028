import type { Additive, Fat, FattyAcidName, Ingredient } from '../data/ingredient.ts';
import { type MakeUp, type MakeUpId, makeUps } from '../data/melt/make-ups.ts';
import type { AcidShares } from '../iodine.ts';
import { type Composition, compositionOf } from './composition.ts';
import { fractionsFromAcids } from './fatty-acids.ts';

/** Why something is not part of the melt: it does not dissolve in it. */
export type LeftOutReason = 'powder' | 'water-based' | 'herb' | 'not-dissolved';

/**
 * How the model takes an ingredient: by its `own` make-up, by that of its `class` (every liquid vegetable oil, every
 * essential oil), by the `fatty-acid-rule`, as a stand-in for something close (`like`), left out because it does not
 * melt in, or not at all: nobody has figures for it.
 */
export type TakenBy = 'own' | 'class' | 'fatty-acid-rule' | 'stand-in';

export type Treatment =
  | {
      readonly kind: 'melts';
      readonly by: TakenBy;
      readonly like: string;
      readonly composition: Composition;
    }
  | { readonly kind: 'left-out'; readonly why: LeftOutReason }
  | { readonly kind: 'no-data' };

/** Library ingredients with a make-up of their own, where the model calls it by another name. */
const ownNames: Readonly<Record<string, MakeUpId>> = {
  'virgin-coconut-oil': 'coconut-oil',
  'fractionated-coconut-oil': 'coconut-oil-fractionated',
  'beeswax-white': 'beeswax',
};

const isMakeUpId = (id: string): id is MakeUpId => Object.hasOwn(makeUps, id);

const melts = (by: TakenBy, id: MakeUpId): Treatment => ({
  kind: 'melts',
  by,
  like: id,
  composition: compositionOf(makeUps[id]),
});

const ownMakeUp = (id: string): MakeUpId | undefined => ownNames[id] ?? (isMakeUpId(id) ? id : undefined);

const typicalAcids = (fat: Fat): AcidShares => {
  const shares: Partial<Record<FattyAcidName, number>> = {};
  for (const [acid, share] of Object.entries(fat.fattyAcids?.acids ?? {}))
    shares[acid as FattyAcidName] = share?.typical ?? 0;
  return shares;
};

/** The rule only knows plant butters: animal fats place their acids elsewhere. */
const byRule = (fat: Fat): Treatment => {
  if (fat.kind !== 'butter' || !fat.triglyceride) return { kind: 'no-data' };
  const fractions = fractionsFromAcids(typicalAcids(fat));
  if (!fractions) return { kind: 'no-data' };
  const makeUp: MakeUp = {
    fractions,
    strength: 'fat',
    source: ['FA-RULE'],
    how: 'derived',
    confidence: 'low',
  };
  return { kind: 'melts', by: 'fatty-acid-rule', like: 'fatty-acids', composition: compositionOf(makeUp) };
};

/** Oil-soluble additives come in fractions of a percent and stay liquid in the oil; powders and water do not melt in. */
const additiveTreatment = ({ additive }: Additive): Treatment => {
  if (additive.group === 'flavour' || additive.group === 'cooling') return melts('stand-in', 'essential-oil');
  if (additive.group === 'structurant') return { kind: 'no-data' };
  if (additive.group === 'humectant') return { kind: 'left-out', why: 'water-based' };
  if (additive.oilSoluble === 'yes') return melts('stand-in', 'vitamin-e');
  if (additive.oilSoluble === 'no' || additive.oilSoluble === 'disperses')
    return { kind: 'left-out', why: 'powder' };
  return { kind: 'left-out', why: 'not-dissolved' };
};

/** How the melting model takes one ingredient of the library. Nothing is ever taken as something else in silence. */
export const treatmentOf = (ingredient: Ingredient): Treatment => {
  const own = ownMakeUp(ingredient.id);
  if (own) return melts('own', own);
  switch (ingredient.kind) {
    case 'liquid-oil':
      return melts('class', 'liquid-oil');
    case 'butter':
    case 'animal-fat':
      return byRule(ingredient);
    case 'essential-oil':
    case 'resinoid':
    case 'flavour':
      return melts('class', 'essential-oil');
    case 'herb':
      return { kind: 'left-out', why: 'herb' };
    case 'additive':
      return additiveTreatment(ingredient);
    case 'wax':
      return { kind: 'no-data' };
  }
};
