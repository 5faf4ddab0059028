import { isScent } from '../../core/check/other-findings.ts';
import type { Item } from './item.ts';

/** What makers mean by measures that are none, in grams (common practice, no source): good enough for a look, never to weigh by. */
const grams: Readonly<Record<string, number>> = {
  pinch: 0.5,
  dash: 1,
  sprinkle: 1,
  sprinkling: 1,
  touch: 1,
  drizzle: 5,
  splash: 5,
  squeeze: 5,
  squirt: 5,
  spoonful: 10,
  spoon: 10,
  dollop: 10,
  blob: 10,
  knob: 10,
  handful: 10,
  glug: 15,
  shot: 25,
};
/** "Some milk", "a little honey". */
const someGrams = 3;
/** "A few drops". */
const fewDrops = 5;

const measure =
  /\b(?:(?:an?|one|some|another|your)\s+)?(?:(?:small|big|large|good|tiny|generous|wee|little|decent|quick)\s+)?(pinch|dash|sprinkle|sprinkling|touch|drizzle|splash|squeeze|squirt|spoonful|spoon|dollop|blob|knob|handful|glug|shot)(?:e?s)?\s+of\s+|\b(?:an?|some|the odd)\s+(?:few\s+)?(drop)s?\s+(?:of\s+)?|\b(?:a\s+)?(?:few|couple of)\s+(drop)s?\s+(?:of\s+)?|\b(?:an?|one|two|three|half an?|half a)\s+(?=(?:(?:fresh|whole|ripe|large|small|mashed|raw)\s+)*(?:eggs?|lemons?|limes?|oranges?|bananas?|avocados?|strawberr|raspberr|carrots?|cucumbers?|apples?|tomato)\b)|\b(?:some|a little|a (?:little |tiny )?bit of|a wee bit of)\s+(?=[a-z])/gi;

const unitItem = ([text, vague, drop, drops]: RegExpMatchArray, from: number): Item => {
  const word = text.trim().toLowerCase();
  const place = { word, from, to: from + text.trimEnd().length };
  return drop !== undefined || drops !== undefined
    ? {
        letter: 'd',
        value: drop !== undefined && /^an?\s+drop\b/i.test(text) ? 1 : fewDrops,
        unit: 'drop',
        ...place,
      }
    : {
        letter: 'g',
        value: vague === undefined ? someGrams : (grams[vague.toLowerCase()] ?? someGrams),
        unit: 'g',
        ...place,
      };
};

const isMeasured = (item: Item | undefined): boolean => item !== undefined && /[gvdp%n]/.test(item.letter);
const stops = /[,;\nA.?!:]/;

/** The rest of the line that begins at a place holds a name, or a word that may be one, and no amount. */
const startsLine = (items: readonly Item[], at: number): boolean => {
  const end = items.findIndex(({ letter }, place) => place >= at && stops.test(letter));
  const line = items.slice(at, end < 0 ? items.length : end);
  return /[iw]/.test(line[0]?.letter ?? '') && !line.some(isMeasured);
};

/** Shares beside a measure in grams count as grams of a hundred. */
const asGrams = (item: Item): Item => (item.letter === '%' ? { ...item, letter: 'g', unit: 'g' } : item);

export interface Vague {
  readonly items: readonly Item[];
  readonly assumed: readonly string[];
}

/** "A pinch of cinnamon", "some rose water" in a list of weighed things: lines as well, at a share that is guessed and said. */
export const withVague = (items: readonly Item[], text: string): Vague => {
  const first = items.findIndex(isMeasured);
  if (first < 0 || items.filter(({ letter }) => letter === 'i').length === 0) return { items, assumed: [] };
  const begins = items[first]?.from ?? 0;
  let list = items;
  const assumed: string[] = [];
  for (const match of text.matchAll(measure)) {
    const named = unitItem(match, match.index);
    const after = list.findIndex(({ from }) => from >= match.index + match[0].length);
    // "… 1 % annatto for a bit of orange" is what it is for.
    const purpose = /\bfor\s*$/i.test(text.slice(Math.max(0, match.index - 6), match.index));
    // How much scent "some" is nobody can guess.
    const scent = match[1] === undefined && named.letter === 'g' && list[after]?.ingredients?.some(isScent);
    if (after < 0 || purpose || scent || match.index < begins || !startsLine(list, after)) continue;
    list = [...list.filter(({ to }) => to <= named.from), named, ...list.slice(after)];
    assumed.push(
      `I took "${named.word.replace(/ of$/, '')}" as about ${named.value} ${named.letter === 'd' ? 'drops' : 'g'}: weigh it.`,
    );
  }
  return assumed.length > 0 ? { items: list.map(asGrams), assumed } : { items, assumed };
};
