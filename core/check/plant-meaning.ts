import type { Plant } from './plant-index.ts';

/** What a name with its form stands for. Several ids: it may be each of them. */
export interface PlantMeaning {
  readonly ingredients: readonly string[];
  readonly infusedWith?: string;
  readonly fresh?: true;
  /** The name may be a restricted plant too: the Latin name has to be asked for. */
  readonly doubtful?: true;
  /** Nothing but the name was said: it counts where no table knows it better. */
  readonly bare?: true;
}

/** What is said of a plant beside its name. */
export type Form =
  | 'fresh'
  | 'dry'
  | 'brewed'
  | 'kitchen'
  | 'part'
  | 'piece'
  | 'seed'
  | 'peel'
  | 'oil'
  | 'essential'
  | 'absolute'
  | 'extract'
  | 'infused'
  | 'served'
  | 'plain';

export interface Said {
  readonly forms: Set<Form>;
  wet?: string;
}

const isOil = ({ forms }: Said): boolean => forms.has('oil') || forms.has('essential');

/** What a thing made of the plant has in it: the herb, or what stands for the whole plant. */
const plantIn = ({ herb, row, oils }: Plant): string | undefined =>
  herb ?? row?.any ?? (oils.length === 1 ? oils[0] : undefined);

/** A thing that is made of the plant. */
const madeOf = (plant: Plant, id: string): PlantMeaning => {
  const held = plantIn(plant);
  return { ingredients: [id], ...(held ? { infusedWith: held } : {}) };
};

const wetMeaning = (plant: Plant, id: string): PlantMeaning =>
  plant.row?.any === 'aloe-vera' ? { ingredients: ['aloe-vera'] } : madeOf(plant, id);

const withHerb = (ingredient: string, { herb }: Plant): PlantMeaning | undefined =>
  herb ? { ingredients: [ingredient], infusedWith: herb } : undefined;

const oilMeaning = (plant: Plant, { forms }: Said): PlantMeaning | undefined => {
  const { oils, row } = plant;
  if (forms.has('infused')) return madeOf(plant, 'infused-oil');
  if (forms.has('seed') && row?.seedOil) return { ingredients: [row.seedOil] };
  if (oils.length > 0) return { ingredients: oils, ...(row?.doubtful ? { doubtful: true } : {}) };
  return withHerb(forms.has('essential') ? 'other-essential-oil' : 'infused-oil', plant);
};

const extractMeaning = (plant: Plant, { forms }: Said): PlantMeaning | undefined => {
  const { row, oils } = plant;
  if (forms.has('absolute')) return row?.absolute ? { ingredients: [row.absolute] } : concentrated(plant);
  if (row?.extract) return { ingredients: [row.extract] };
  return plant.herb ? withHerb('plant-extract', plant) : oils.length > 0 ? { ingredients: oils } : undefined;
};

/** An absolute of a plant whose oil is known counts as that oil. */
const concentrated = (plant: Plant): PlantMeaning | undefined =>
  plant.oils.length > 0 ? { ingredients: plant.oils } : withHerb('other-essential-oil', plant);

const isPart = ({ forms }: Said): boolean =>
  forms.has('part') || forms.has('piece') || forms.has('seed') || forms.has('dry');

const plantMeaning = (plant: Plant, said: Said): PlantMeaning | undefined => {
  const { herb } = plant;
  if (said.forms.has('fresh') && !said.forms.has('dry'))
    return herb && isHerbId(herb) ? { ingredients: [herb], fresh: true } : freshOther(plant);
  if (herb && said.forms.has('infused')) return withHerb('infused-oil', plant);
  if (!isPart(said)) return undefined;
  if (said.forms.has('seed') && plant.row?.seedOil) return { ingredients: [plant.row.seedOil] };
  // Leaves or roots of what is known by its oil are no scent that could be counted.
  return herb ? { ingredients: [herb] } : madeOf(plant, 'dried-plant');
};

const isHerbId = (id: string): boolean =>
  !/-leaf$|^(?:verbena|bay|coltsfoot)$/.test(id) || id === 'violet-leaf';

/** The plant itself, picked, of one that is known by its oil. */
const freshOther = (plant: Plant): PlantMeaning => ({
  ...madeOf(plant, 'fresh-plant'),
  fresh: true,
});

const citrus = /lemon|lime|orange|grapefruit|mandarin|bergamot/;

/** The form a plant is sold in, where it is sold as a scent or an extract. */
const soldMeaning = (plant: Plant, said: Said): PlantMeaning | undefined => {
  const { forms } = said;
  if (forms.has('extract') && (forms.has('kitchen') || (plant.row?.kitchen && forms.size === 1)))
    return { ingredients: ['kitchen-extract'] };
  if (forms.has('absolute') || (forms.has('extract') && !isOil(said))) return extractMeaning(plant, said);
  if (isOil(said)) return oilMeaning(plant, said);
  const isCitrus = plant.oils.some((id) => citrus.test(id));
  if (isCitrus && forms.has('peel')) return { ingredients: ['zest'] };
  // "Lemon slices": the fruit, where nobody says that it was dried.
  return isCitrus && forms.has('piece') && !forms.has('dry') ? freshOther(plant) : plantMeaning(plant, said);
};

/** "Brewed chamomile"; and "strong green tea", which nobody says of leaves. */
const isBrewed = ({ herb }: Plant, said: Said): boolean =>
  !isOil(said) &&
  !said.forms.has('infused') &&
  (said.forms.has('brewed') || (herb === 'green-tea' && said.forms.has('served') && !isPart(said)));

const meaningOf = (plant: Plant, said: Said): PlantMeaning | undefined => {
  if (said.wet !== undefined) return wetMeaning(plant, said.wet);
  if (isBrewed(plant, said)) return wetMeaning(plant, 'tea-infusion');
  const any = plant.row?.any;
  return any === undefined ? soldMeaning(plant, said) : anyMeaning(plant, any, said);
};

/** Whatever form of it is no better; what is made of Peru balsam is another thing than the crude one, aloe oil is no gel. */
const anyMeaning = (plant: Plant, any: string, said: Said): PlantMeaning | undefined => {
  const { forms } = said;
  const made = isOil(said) || forms.has('extract') || forms.has('absolute');
  if (any === 'aloe-vera') return made ? undefined : { ingredients: [any] };
  if (any.startsWith('tagetes') && !made && forms.has('fresh')) return { ingredients: [any], fresh: true };
  const asPlant = /^(?:tagetes|peru)/.test(any) ? undefined : anyPlant(plant, said, made);
  return asPlant ?? { ingredients: made && plant.oils.length > 0 ? plant.oils : [any] };
};

const anyPlant = (plant: Plant, said: Said, made: boolean): PlantMeaning | undefined => {
  if (said.forms.has('infused')) return madeOf(plant, 'infused-oil');
  if (made) return undefined;
  if (said.forms.has('fresh')) return freshOther(plant);
  return isPart(said) ? madeOf(plant, 'dried-plant') : undefined;
};

const isPlain = ({ forms }: Said): boolean =>
  [...forms].every((form) => form === 'plain' || form === 'served');

const bareMeaning = ({ herb, oils }: Plant): PlantMeaning | undefined => {
  const ingredients = [...oils, ...(herb ? [herb] : [])];
  return ingredients.length > 0 ? { ingredients, bare: true } : undefined;
};

/** What a plant is in the form that was said; undefined where nobody could tell. */
export const meantBy = (plant: Plant, said: Said): PlantMeaning | undefined =>
  meaningOf(plant, said) ?? (isPlain(said) ? bareMeaning(plant) : undefined);
