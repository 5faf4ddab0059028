import { defined } from '../../core/defined.ts';
import type { Region } from '../../core/settings.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { readBench } from './bench-reading.ts';
import type { Item } from './item.ts';
import { regionSaid } from './region-said.ts';
import { sizeOf } from './target.ts';

/** What is declared on a tin, and what was weighed; grams. */
export interface FillRead {
  readonly declaredG: number;
  readonly weighed?: readonly number[];
  readonly region?: Region;
}

const tolerance =
  /\b(?:tolerances?|tne|tolerable negative error|shortfall|under-?filled|under-?weight|short|how full)\b/i;
const judged =
  /\b(?:ok|okay|fine|enough|legal|allowed|alright|short|full enough|too little|pass|acceptable|sellable|sell)\b/i;
const weighing =
  /\b(?:weighed|weigh|weighs|holds?|held|contains?|has|have|got|measured|came to|only|lightest|heaviest)\b|\bin it\b/i;
const declaring =
  /\b(?:declared?|labell?ed|marked|says?|stated|label(?: says)?|nominal|supposed to (?:be|hold))\b[^\d]{0,12}$/i;
/** Filling tells nothing of a running-out stock or a recipe. */
const elsewhere = /\b(?:scale|recipe|stock|running short|short of|bought|infus\w*|melt\w*|how many)\b/i;

const gramsOf = (item: Item, reading: Reading): number | undefined =>
  item.letter === 'n' ? item.value : sizeOf(item, reading.settings.region)?.amount;

/** The amount that stands on the tin: beside the container, or after "labelled". */
const declaredIn = (amounts: readonly Item[], reading: Reading): Item | undefined => {
  const { items, text } = reading;
  const said = amounts.find((item) => declaring.test(text.slice(Math.max(0, item.from - 40), item.from)));
  if (said) return said;
  const beside = (item: Item): boolean => {
    const at = items.indexOf(item);
    const near = items.slice(at + 1, at + 3).some((each) => each.letter === 'c');
    const before = items[at - 1]?.letter === 'o' && items[at - 2]?.letter === 'c';
    return near || before;
  };
  return amounts.find((item) => item.letter !== 'n' && beside(item));
};

const noDeclared: Trouble = {
  code: 'missing',
  text: 'What stands on the tin? For example "is a 15 g tin that holds 13.5 g ok", or "tins labelled 15 g, weighed 15.2, 15.1, 14.9".',
};

const isAbout = ({ text, items }: Reading): boolean => {
  const weighed = weighing.test(text) && (judged.test(text) || /\bweighed\b/i.test(text));
  const other = elsewhere.test(text) || items.some((item) => /[iR%]/.test(item.letter));
  const figures = items.filter((item) => /[gn]/.test(item.letter)).length;
  const declared = figures > 1 && judged.test(text) && /\b(?:labell?ed|declared)\b/i.test(text);
  return !other && (tolerance.test(text) || weighed || declared);
};

const isNamed = ({ text, items }: Reading): boolean =>
  /\b(?:labell?ed|declared|tolerance|tne)\b/i.test(text) && items.some((item) => item.letter === 'c');

/** The other amounts; a number of tins is none. */
const weighedIn = (amounts: readonly Item[], declared: Item, reading: Reading): readonly number[] =>
  amounts
    .filter((item) => item !== declared && !/^(?:an?|one)$/.test(item.word))
    .filter((item) => reading.items[reading.items.indexOf(item) + 1]?.letter !== 'c')
    .flatMap((item) => gramsOf(item, reading) ?? []);

/** Reads how full tins are, or how full they have to be; undefined when a message asks nothing of it. */
export const readFill = (reading: Reading): FillRead | { readonly trouble: Trouble } | undefined => {
  if (!isAbout(reading)) return undefined;
  const amounts = readBench(reading).rest.items.filter(
    (item) => /[gvn]/.test(item.letter) && item.value !== undefined,
  );
  const declared = declaredIn(amounts, reading);
  if (!declared) return isNamed(reading) ? { trouble: noDeclared } : undefined;
  const weighed = weighedIn(amounts, declared, reading);
  if (weighed.length === 0 && !tolerance.test(reading.text)) return undefined;
  const region = regionSaid(reading.text)?.region;
  const declaredG = gramsOf(declared, reading) ?? 0;
  return { declaredG, ...defined({ weighed: weighed.length > 0 ? weighed : undefined, region }) };
};
