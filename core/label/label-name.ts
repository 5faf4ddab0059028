import { watchedThing } from '../check/composition.ts';
import { isScent } from '../check/other-findings.ts';
import type { Ingredient } from '../data/ingredient.ts';
import { askSupplier, type LabelName, labelNames } from '../data/rules/label-names.ts';
import { ingredientById, isHerb } from '../ingredients.ts';
import type { Region } from '../settings.ts';

const byId = new Map(labelNames.map((row) => [row.id, row]));

export interface Named {
  /** Several for a colour that has several numbers. */
  readonly names: readonly string[];
  readonly colour: boolean;
  /** True where the supplier's papers have to name it: several things, or none that has a label name. */
  readonly ask: boolean;
}

/** "(check the registry)" is a remark of ours, no part of the name. */
const remark = /\s*\(check [^)]*\)/i;
const english = /\s*\([^)]*\)/g;

const libraryName = (found: Ingredient, region: Region): string => {
  const name = (region === 'us' ? found.inciUs : found.inciEu) ?? found.inci;
  const bare = name.replace(remark, '');
  return region === 'us' ? bare : bare.replace(english, '').replace(/ {2,}/g, ' ').trim();
};

const titled = (text: string): string => text.replace(/(^|[ (])([a-z])/g, (letter) => letter.toUpperCase());

const listed = (row: LabelName, region: Region): Named | undefined => {
  const ask = askSupplier.has(row.id);
  if (row.colours) {
    const names = (region === 'us' ? row.usColours : undefined) ?? row.colours;
    return { names, colour: true, ask };
  }
  const own = region === 'us' ? (row.us ?? row.name) : row.name;
  return own === undefined ? undefined : { names: [own], colour: false, ask };
};

/**
 * The name of an ingredient on a label: EU form (Latin, no English common name) for EU, UK, Canada and Australia; the US
 * form with the English name. Names are from memory for the most part (EU list of common ingredient names).
 */
export const labelName = (id: string, region: Region): Named => {
  const found = ingredientById(id);
  const key = found?.id ?? id;
  const row = byId.get(key);
  const own = row && listed(row, region);
  if (own) return own;
  if (found)
    return {
      names: [libraryName(found, region)],
      colour: false,
      ask: askSupplier.has(key) || remark.test(found.inci),
    };
  const watched = watchedThing(id);
  return {
    names: [watched?.labelName ?? titled(watched?.name ?? id)],
    colour: watched?.kind === 'colour',
    ask: true,
  };
};

/** The extract that a steeped herb leaves in the oil. */
export const extractName = (herb: string, region: Region): Named => labelName(herb, region);

/** A herb that stays in the balm as a powder is no extract. */
export const powderName = (herb: string, region: Region): Named => {
  const { names } = labelName(herb, region);
  return { names: names.map((name) => name.replace(/ Extract$/, ' Powder')), colour: false, ask: true };
};

export const isHerbId = (id: string): boolean => {
  const found = ingredientById(id);
  return found !== undefined && isHerb(found);
};

/** Scent or taste that one word may stand for, with that word. */
export const aromaWord = (region: Region): string => (region === 'us' ? 'Flavor' : 'Aroma');

export const isAromaId = (id: string): boolean => isScent(id);
