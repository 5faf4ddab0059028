import {
  absoluteWords,
  brewWords,
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
  pieceWords,
  plainWords,
  servedWords,
  solvents,
} from '../data/rules/plant-forms.ts';
import { dryAfter, wetHeads } from '../data/rules/wet-words.ts';
import { purityWords } from '../data/spellings.ts';
import { type Plant, plantAt } from './plant-index.ts';
import { type Form, meantBy, type PlantMeaning, type Said } from './plant-meaning.ts';

export interface PlantRead {
  readonly meaning: PlantMeaning;
  /** Keys taken: the whole of it, and from where to where its name stands without what was said before it. */
  readonly words: number;
  readonly nameAt: number;
}

const formSets: readonly (readonly [Form, ReadonlySet<string>])[] = [
  ['fresh', freshWords],
  ['dry', dryWords],
  ['brewed', brewWords],
  ['kitchen', kitchenWords],
  ['seed', new Set(['seed', 'berry', 'fruit'])],
  ['part', partWords],
  ['piece', pieceWords],
  ['peel', peelWords],
  ['oil', oilWords],
  ['essential', essentialWords],
  ['absolute', absoluteWords],
  ['extract', extractWords],
  ['infused', infusedWords],
  ['served', servedWords],
  ['plain', new Set([...plainWords, ...freshAside, ...purityWords])],
];

const formOf = (key: string): Form | undefined => formSets.find(([, words]) => words.has(key))?.[0];

/** Most words a form takes: "freshly picked", "leaf essential oil". */
const mostAround = 7;

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

/** "Calendula in vodka", "lavender steeped in vegetable glycerine": where the solvent ends. */
const solventEnd = (keys: readonly string[], at: number, said: Said): number | undefined => {
  const from = infusedWords.has(keys[at] ?? '') ? at + 1 : at;
  if (keys[from] !== 'in') return undefined;
  const last = [from + 1, from + 2].find((place) => Object.hasOwn(solvents, keys[place] ?? ''));
  if (last === undefined) return undefined;
  said.wet = solvents[keys[last] ?? ''] ?? '';
  return last + 1;
};

/** "Mint straight from the garden". */
const gardenEnd = (keys: readonly string[], at: number, said: Said): number | undefined => {
  if (!/^(?:straight|right|fresh|direct|just)$/.test(keys[at] ?? '') || keys[at + 1] !== 'from')
    return undefined;
  const last = /^(?:the|my|our)$/.test(keys[at + 2] ?? '') ? at + 3 : at + 2;
  if (!/^(?:garden|hedge|hedgerow|field|meadow|plant|bush|allotment)$/.test(keys[last] ?? ''))
    return undefined;
  said.forms.add('fresh');
  return last + 1;
};

const after = (keys: readonly string[], from: number, said: Said): number => {
  let at = from;
  while (at < keys.length && at - from < mostAround) {
    const steeped = solventEnd(keys, at, said) ?? gardenEnd(keys, at, said);
    if (steeped !== undefined) return steeped;
    if (infusesAnother(keys, at) || !noteForm(said, keys, at)) break;
    at += 1;
  }
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

/** "Lemon balm (Melissa officinalis) essential oil": the name said twice. */
const againEnd = (keys: readonly string[], end: number, { herb }: Plant): number | undefined => {
  const again = plantAt(keys, end);
  return again && herb !== undefined && again.plant.herb === herb ? end + again.words : undefined;
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
  const end = after(keys, nameAt + found.words, said);
  const again = againEnd(keys, end, found.plant);
  const last = again === undefined ? end : after(keys, again, said);
  const meaning = meantBy(found.plant, said);
  return meaning && { meaning, words: last - at, nameAt };
};
