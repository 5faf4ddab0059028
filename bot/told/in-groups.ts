import { readBench } from '../readers/bench-reading.ts';
import { asksOrPlans } from '../readers/bench-text.ts';
import type { Item } from '../readers/item.ts';
import { letters } from '../readers/lexicon.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { poursListed } from './pour-list.ts';
import type { Part } from './several.ts';

const mostTokens = 40;
const mostGroups = 6;

const asPart = (plain: string, reading: Reading): Part => ({
  ways: [{ plain, reading: readAgain(plain, reading), besides: [], verb: '', slots: [] }],
});

const isTold = ({ text, tokens }: Reading): boolean =>
  tokens.length <= mostTokens && !text.includes('?') && !/\bnotes?\s*:/i.test(text);

const pours = (reading: Reading): readonly Part[] =>
  poursListed(reading).map((plain) => asPart(plain, reading));

const lowCue =
  /\b(?:warn|alert|tell|ping|let me know|low marks?|minimum|nudge)\b.*\b(?:below|under|less than|low|marks?|down to|minimum)\b|\blow marks?\b/i;

/** "Warn me below 200 g beeswax and 150 g shea": a mark for each. */
const marks = (reading: Reading): readonly Part[] => {
  if (!isTold(reading) || !lowCue.test(reading.text) || asksOrPlans(reading.text)) return [];
  const { rest, lots } = readBench(reading);
  const told = rest.items.filter(({ letter }) => /^[gvi]$/.test(letter));
  const others = rest.items.some(({ letter }) => /^[nRc%p]$/.test(letter));
  const names = told.filter(({ letter }) => letter === letters.ingredient);
  if (
    others ||
    lots.length > 0 ||
    names.length < 2 ||
    names.length > mostGroups ||
    told.length !== 2 * names.length
  )
    return [];
  const pairs = names.map((name, at) => [
    name,
    ...told.slice(2 * at, 2 * at + 2).filter((item) => item !== name),
  ]);
  if (!pairs.every(([name, amount]) => name && amount && amount.letter !== letters.ingredient)) return [];
  return pairs.map(([name, amount]) => {
    const said = (item: Item | undefined): string => (item ? rest.text.slice(item.from, item.to) : '');
    return asPart(`warn me below ${said(amount)} ${said(name)}`, reading);
  });
};

/** Several pours of one recipe, or several marks, told in one breath. */
export const toldInGroups: (reading: Reading) => readonly Part[] = oncePerReading((reading) => {
  const found = pours(reading);
  return found.length > 0 ? found : marks(reading);
});
