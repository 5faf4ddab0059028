import { z } from 'zod';
import { sourceIds } from './sources.ts';

/**
 * The shape of one row of the library. Everything is by weight, at 20 °C unless said otherwise. Texts without their
 * own source (comments, notes, feel, substitutes) are common knowledge of the trade and never check values.
 */

/** How a figure came here. Only `read` and `read-secondary` figures may be called a limit or range without "about". */
export const how = z.enum(['read', 'read-secondary', 'memory', 'derived', 'common-practice']);
export type How = z.output<typeof how>;

const provenance = { source: z.array(z.enum(sourceIds)).min(1), how };

/** Where a statement or a group of figures comes from. */
export const sourced = z.strictObject(provenance);
export type Sourced = z.output<typeof sourced>;

/** A figure with its range, in the unit its field name says. `value` is the one to calculate with. */
export const figure = z.strictObject({
  value: z.number(),
  low: z.number().optional(),
  high: z.number().optional(),
  basis: z.string().optional(),
  ...provenance,
});
export type Figure = z.output<typeof figure>;

/** A range; `typical` where one value is the usual choice. */
export const range = z.strictObject({
  low: z.number(),
  typical: z.number().optional(),
  high: z.number(),
  basis: z.string().optional(),
  ...provenance,
});
export type Range = z.output<typeof range>;

/** Months an unopened bottle keeps; without `high` it is "at least". */
export const shelfLife = z.strictObject({
  low: z.number(),
  high: z.number().optional(),
  ...provenance,
});

/** What a statement in words (look-alikes, cautions, effect) rests on. */
const remarks = z.array(z.strictObject({ about: z.string(), ...provenance }));

/** Fatty acids by carbons and double bonds; `18:3` is alpha-linolenic, `18:3n6` gamma-linolenic. */
export const fattyAcidNames = [
  '6:0',
  '8:0',
  '10:0',
  '12:0',
  '14:0',
  '16:0',
  '16:1',
  '18:0',
  '18:1',
  '18:2',
  '18:3',
  '18:3n6',
  '20:0',
  '20:1',
  '22:0',
  '22:1',
  'ricinoleic',
] as const;
export type FattyAcidName = (typeof fattyAcidNames)[number];

/** Percent of all fatty acids. Missing means not reported, 0 as `low` means not detected. */
const acidShare = z.strictObject({
  low: z.number().optional(),
  high: z.number().optional(),
  typical: z.number().optional(),
});

/**
 * A fat's fatty acids. Range and typical profile come from different places, so a typical share may lie outside its
 * range. `others` are acids without a column of their own, with what they add to the iodine value.
 */
const fattyAcids = z.strictObject({
  acids: z.partialRecord(z.enum(fattyAcidNames), acidShare),
  ranges: sourced,
  typical: sourced,
  others: z
    .strictObject({
      name: z.string(),
      typical: z.number(),
      iodineValue: z.number().optional(),
    })
    .optional(),
});

/** What only additives have; also carried by a fat or a herb that is sold as an additive too. */
export const additiveFacts = z.strictObject({
  group: z.enum([
    'antioxidant',
    'skin-feel',
    'humectant',
    'active',
    'colour',
    'sweetener',
    'flavour',
    'cooling',
    'emollient',
    'texture',
    'structurant',
  ]),
  oilSoluble: z.enum(['yes', 'no', 'partly', 'disperses', 'infuses', 'varies']),
  temperature: z.strictObject({
    maxC: z.number(),
    addBelowC: z.number().optional(),
    ...provenance,
  }),
  effect: z.string(),
  cautions: z.string(),
  remarks: remarks.optional(),
});

/**
 * Why a person may have to avoid an ingredient: food allergens, bee and wool products, the daisy family, `fragrance`
 * (allergens named on labels), `contact` (some people's skin reacts), `unknown` (depends on what is in it).
 */
export const allergenFlags = [
  'none',
  'tree-nut',
  'peanut',
  'sesame',
  'soy',
  'wheat',
  'bee',
  'wool',
  'daisy-family',
  'fragrance',
  'contact',
  'unknown',
] as const;
export type AllergenFlag = (typeof allergenFlags)[number];

const kebab = z.string().regex(/^[a-z0-9]+(-[a-z0-9]+)*$/);

const common = {
  id: kebab,
  /** Older ids of the same thing; they stay valid. */
  alsoIds: z.array(kebab),
  name: z.string().min(1),
  /** Other names a maker may type; spelling, plural and "oil of …" variants are derived from them. */
  names: z.array(z.string().min(1)),
  inci: z.string().min(1),
  /** The EU and US label names where they differ from `inci`. */
  inciEu: z.string().optional(),
  inciUs: z.string().optional(),
  /** Plant or animal, and the part used. */
  origin: z.string().optional(),
  vegan: z.enum(['yes', 'no', 'varies']),
  allergen: z.strictObject({
    flag: z.enum(allergenFlags),
    note: z.string().optional(),
  }),
  lips: z.enum(['ok', 'caution', 'avoid']),
  lipNote: z.string().optional(),
  /** What it is for, in a few words. */
  purpose: z.string().min(1),
  /** Usual share of the finished balm, in percent. */
  usePercent: range.optional(),
  densityGMl: figure.optional(),
  meltC: figure.optional(),
  /** Iodine value in g iodine per 100 g. */
  iodineValue: figure.optional(),
  shelfLifeMonths: shelfLife.optional(),
  comment: z.string().optional(),
};

/** Saponification, acid and ester values are in mg KOH per g. */
export const fat = z.strictObject({
  kind: z.enum(['liquid-oil', 'butter', 'animal-fat']),
  ...common,
  /** How it behaves at 20 °C. A liquid wax (jojoba) and a wax-like fat (lanolin) are no triglycerides. */
  form: z.enum(['liquid-oil', 'liquid-wax', 'soft-butter', 'hard-butter', 'wax-like-fat']),
  /** Density of the melt at `atC`, for fats that are solid at 20 °C. */
  liquidDensityGMl: z
    .strictObject({
      low: z.number(),
      high: z.number(),
      atC: z.number(),
      ...provenance,
    })
    .optional(),
  saponification: range.optional(),
  fattyAcids: fattyAcids.optional(),
  /** False where the triglyceride formulas (calculated iodine value) must not be used. */
  triglyceride: z.boolean(),
  unsaponifiableMaxPercent: figure.optional(),
  tocopherolMgKg: range.optional(),
  oxidativeStability: z.strictObject({ text: z.string(), ...provenance }).optional(),
  feel: z.string(),
  substitutes: z.string(),
  additive: additiveFacts.optional(),
});
export type Fat = z.output<typeof fat>;

export const wax = z.strictObject({
  kind: z.literal('wax'),
  ...common,
  mineral: z.boolean(),
  acidValue: range.optional(),
  esterValue: range.optional(),
  saponification: range.optional(),
  iodineValueMax: figure.optional(),
  /** Parts of this wax that firm like 1 part of beeswax: a starting point for a trial. */
  partsForBeeswax: range,
});
export type Wax = z.output<typeof wax>;

export const herb = z.strictObject({
  kind: z.literal('herb'),
  ...common,
  family: z.string(),
  part: z.string(),
  lookAlikes: z.string().optional(),
  whyItMatters: z.string().optional(),
  lightSensitising: z.enum(['no', 'possible', 'yes']),
  /** Dried herb to oil by weight, and the warm and cold ways. Missing: do not infuse it at all. */
  infusion: z
    .strictObject({
      herbParts: z.number(),
      oilParts: range,
      /** Grams of oil that one gram of strained herb keeps. */
      uptakeGPerG: range,
      warmC: range,
      warmHours: range,
      coldWeeks: range,
    })
    .optional(),
  dryBeforeUse: z.string(),
  freshCaution: z.string(),
  remarks,
  additive: additiveFacts.optional(),
});
export type Herb = z.output<typeof herb>;

export const aroma = z.strictObject({
  kind: z.enum(['essential-oil', 'resinoid', 'flavour']),
  ...common,
  part: z.string().optional(),
  extraction: z.string(),
  /** Relative density 20/20; `densityGMl` is this range times the density of water, its value the middle. */
  relativeDensity: range.optional(),
  /** Shares of allergens in the oil, in percent, and the other main constituents in words. */
  constituents: z.strictObject({
    allergens: z.array(z.strictObject({ name: z.string(), low: z.number(), high: z.number() })),
    others: z.string().optional(),
    ...provenance,
  }),
  flashPointC: figure.optional(),
  /** Shares of the finished leave-on product, in percent. A missing figure means that none was found. */
  limits: z.strictObject({
    phototoxic: z.boolean(),
    leaveOnMaxPercent: z.number().optional(),
    dermalMaxPercent: z.number().optional(),
    basis: z.string().optional(),
    ...provenance,
  }),
  dropsPerMl: range.optional(),
  avoidFor: z.string().optional(),
});
export type Aroma = z.output<typeof aroma>;

export const additive = z.strictObject({
  kind: z.literal('additive'),
  ...common,
  additive: additiveFacts,
});
export type Additive = z.output<typeof additive>;

export const ingredientSchema = z.discriminatedUnion('kind', [fat, wax, herb, aroma, additive]);
export type Ingredient = z.output<typeof ingredientSchema>;
export type IngredientKind = Ingredient['kind'];
