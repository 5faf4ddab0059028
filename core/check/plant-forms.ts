import {
  absoluteWords,
  brewWords,
  dryAfter,
  dryWords,
  essentialWords,
  extractWords,
  freshAside,
  freshWords,
  infusedWords,
  kitchenWords,
  oilWords,
  partWords,
  peelWords,
  plainWords,
  wetHeads,
} from '../data/rules/plant-forms.ts';
import { purityWords } from '../data/spellings.ts';
import { type Plant, plantAt } from './plant-index.ts';

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

export interface PlantRead {
  readonly meaning: PlantMeaning;
  /** Keys taken: the whole of it, and from where to where its name stands without what was said before it. */
  readonly words: number;
  readonly nameAt: number;
}

type Form =
  | 'fresh'
  | 'dry'
  | 'brewed'
  | 'kitchen'
  | 'part'
  | 'seed'
  | 'peel'
  | 'oil'
  | 'essential'
  | 'absolute'
  | 'extract'
  | 'infused'
  | 'plain';

const formSets: readonly (readonly [Form, ReadonlySet<string>])[] = [
  ['fresh', freshWords],
  ['dry', dryWords],
  ['brewed', brewWords],
  ['kitchen', kitchenWords],
  ['seed', new Set(['seed', 'berry', 'fruit'])],
  ['part', partWords],
  ['peel', peelWords],
  ['oil', oilWords],
  ['essential', essentialWords],
  ['absolute', absoluteWords],
  ['extract', extractWords],
  ['infused', infusedWords],
  ['plain', new Set([...plainWords, ...freshAside, ...purityWords])],
];

const formOf = (key: string): Form | undefined => formSets.find(([, words]) => words.has(key))?.[0];

interface Said {
  readonly forms: Set<Form>;
  wet?: string;
}

/** Most words a form takes: "freshly picked", "leaf essential oil". */
const mostAround = 5;

/** "Water bath", "tea tree": the next word makes another thing of it. */
const isWet = (keys: readonly string[], at: number): boolean =>
  Object.hasOwn(wetHeads, keys[at] ?? '') && !dryAfter.has(keys[at + 1] ?? '');

/** "CO2" is a word and a number. */
const isCo2 = (keys: readonly string[], at: number): boolean =>
  (keys[at] === 'co' && keys[at + 1] === '2') || (keys[at] === '2' && keys[at - 1] === 'co');

const noteForm = (said: Said, keys: readonly string[], at: number): boolean => {
  const key = keys[at] ?? '';
  if (isWet(keys, at)) {
    said.wet = wetHeads[key] ?? '';
    return true;
  }
  const form = isCo2(keys, at) ? 'extract' : formOf(key);
  if (form !== undefined) said.forms.add(form);
  return form !== undefined;
};

/** "Calendula infused olive oil" is olive oil: "infused" is the plant's own form only right before "oil", or as the last word. */
const infusesAnother = (keys: readonly string[], at: number): boolean =>
  keys[at] !== undefined &&
  infusedWords.has(keys[at]) &&
  /^[a-z]/.test(keys[at + 1] ?? '') &&
  keys[at + 1] !== 'oil';

const after = (keys: readonly string[], from: number, said: Said): number => {
  let at = from;
  while (at < keys.length && at - from < mostAround && !infusesAnother(keys, at) && noteForm(said, keys, at))
    at += 1;
  return at;
};

/** Of several words before the plant only those count that stand right at it. */
const before = (keys: readonly string[], from: number, said: Said): number | undefined => {
  for (let at = from; at < Math.min(keys.length, from + mostAround); at += 1) {
    if (plantAt(keys, at)) return at;
    if (!noteForm(said, keys, at)) return undefined;
    // "Oil of thyme", "juice of a lemon".
    if (keys[at + 1] === 'of' && (isWet(keys, at) || said.forms.has('oil') || said.forms.has('peel')))
      at += 1;
  }
  return undefined;
};

const isOil = ({ forms }: Said): boolean => forms.has('oil') || forms.has('essential');

/** What a thing made of the plant has in it: the herb, or what stands for the whole plant. */
const plantIn = ({ herb, row, oils }: Plant): string | undefined =>
  herb ?? row?.any ?? (oils.length === 1 ? oils[0] : undefined);

const wetMeaning = (plant: Plant, id: string): PlantMeaning => {
  if (plant.row?.any === 'aloe-vera') return { ingredients: ['aloe-vera'] };
  const held = plantIn(plant);
  return { ingredients: [id], ...(held ? { infusedWith: held } : {}) };
};

const withHerb = (ingredient: string, { herb }: Plant): PlantMeaning | undefined =>
  herb ? { ingredients: [ingredient], infusedWith: herb } : undefined;

const infusedOil = (plant: Plant): PlantMeaning => {
  const held = plantIn(plant);
  return { ingredients: ['infused-oil'], ...(held ? { infusedWith: held } : {}) };
};

const oilMeaning = (plant: Plant, { forms }: Said): PlantMeaning | undefined => {
  const { oils, row } = plant;
  if (forms.has('infused')) return infusedOil(plant);
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

const plantMeaning = (plant: Plant, { forms }: Said): PlantMeaning | undefined => {
  const fresh = forms.has('fresh') && !forms.has('dry');
  if (fresh)
    return plant.herb && isHerbId(plant.herb)
      ? { ingredients: [plant.herb], fresh: true }
      : freshOther(plant);
  if (plant.herb && (forms.has('part') || forms.has('seed') || forms.has('dry') || forms.has('infused')))
    return forms.has('infused') ? withHerb('infused-oil', plant) : { ingredients: [plant.herb] };
  return forms.has('part') || forms.has('seed') || forms.has('dry') ? driedOther(plant) : undefined;
};

/** Leaves or roots of what is known by its oil: no scent that could be counted. */
const driedOther = (plant: Plant): PlantMeaning => {
  const held = plantIn(plant);
  return { ingredients: ['dried-plant'], ...(held ? { infusedWith: held } : {}) };
};

const isHerbId = (id: string): boolean =>
  !/-leaf$|^(?:verbena|bay|coltsfoot)$/.test(id) || id === 'violet-leaf';

/** The plant itself, picked, of one that is known by its oil. */
const freshOther = (plant: Plant): PlantMeaning => ({
  ...driedOther(plant),
  ingredients: ['fresh-plant'],
  fresh: true,
});

const meaningOf = (plant: Plant, said: Said): PlantMeaning | undefined => {
  const { forms, wet } = said;
  if (wet !== undefined) return wetMeaning(plant, wet);
  if (forms.has('brewed') && !isOil(said)) return wetMeaning(plant, 'tea-infusion');
  if (plant.row?.any !== undefined) return anyMeaning(plant, plant.row.any, said);
  if (forms.has('kitchen') && forms.has('extract')) return { ingredients: ['kitchen-extract'] };
  if (forms.has('absolute') || (forms.has('extract') && !isOil(said))) return extractMeaning(plant, said);
  if (isOil(said)) return oilMeaning(plant, said);
  if (forms.has('peel') && plant.oils.some((id) => /lemon|lime|orange|grapefruit|mandarin|bergamot/.test(id)))
    return { ingredients: ['zest'] };
  return plantMeaning(plant, said);
};

/** Whatever form of it is no better; what is made of Peru balsam is another thing than the crude one, aloe oil is no gel. */
const anyMeaning = ({ oils }: Plant, any: string, said: Said): PlantMeaning | undefined => {
  const made = isOil(said) || said.forms.has('extract') || said.forms.has('absolute');
  if (any === 'aloe-vera') return made ? undefined : { ingredients: [any] };
  if (said.forms.has('infused') && !any.startsWith('tagetes'))
    return { ingredients: ['infused-oil'], infusedWith: any };
  if (!made && said.forms.has('fresh'))
    return { ingredients: ['fresh-plant'], infusedWith: any, fresh: true };
  if (!made && (said.forms.has('part') || said.forms.has('dry')) && !any.startsWith('tagetes'))
    return { ingredients: ['dried-plant'], infusedWith: any };
  return { ingredients: made && oils.length > 0 ? oils : [any] };
};

const isPlain = ({ forms }: Said): boolean => [...forms].every((form) => form === 'plain');

const bareMeaning = ({ herb, oils }: Plant): PlantMeaning | undefined => {
  const ingredients = [...oils, ...(herb ? [herb] : [])];
  return ingredients.length > 0 ? { ingredients, bare: true } : undefined;
};

/**
 * Reads a plant with its form at a key: "freshly picked calendula flowers", "coltsfoot leaf", "Lippia citriodora essential
 * oil", "tincture of arnica". Undefined where no plant stands there, or nothing is said that the plain name does not say.
 * @param keys word keys of the message; an empty one where no name may go on.
 */
export const readPlant = (keys: readonly string[], at: number): PlantRead | undefined => {
  const said: Said = { forms: new Set() };
  const nameAt = before(keys, at, said);
  const found = nameAt === undefined ? undefined : plantAt(keys, nameAt);
  if (nameAt === undefined || !found) return undefined;
  let end = after(keys, nameAt + found.words, said);
  // "Lemon balm (Melissa officinalis) essential oil": the name said twice.
  const again = plantAt(keys, end);
  if (again && again.plant.herb === found.plant.herb && again.plant.herb !== undefined)
    end = after(keys, end + again.words, said);
  const meaning = meaningOf(found.plant, said);
  const meant = meaning ?? (said.forms.size === 0 || isPlain(said) ? bareMeaning(found.plant) : undefined);
  return meant && { meaning: meant, words: end - at, nameAt };
};
