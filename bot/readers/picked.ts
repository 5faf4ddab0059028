import type { Made } from '../answer.ts';
import type { Last } from '../reading.ts';

const places: Readonly<Record<string, number>> = {
  first: 0,
  '1st': 0,
  '1': 0,
  second: 1,
  '2nd': 1,
  '2': 1,
  third: 2,
  '3rd': 2,
  '3': 2,
  one: 0,
  two: 1,
  three: 2,
};

/** "Why is it the first?" picks nothing. */
const asksWhy = /\b(?:why|how come|scores?)\b/i;
const noun = 'one|recipe|proposal|option|idea|version|suggestion|balm';
const shapes: readonly RegExp[] = [
  new RegExp(`\\bthe (first|1st|second|2nd|third|3rd|last)(?: (?:${noun}))?\\b`, 'i'),
  new RegExp(`\\b(first|1st|second|2nd|third|3rd|last) (?:${noun})\\b`, 'i'),
  /(?:\b(?:number|no\.?|nr\.?|option|proposal|recipe|idea)|#) ?([123]|one|two|three)\b(?! ?[%.,]?\d)/i,
  /^\W*([123])\W*$/,
];

interface PickedText {
  /** The message with "it" in the place of what picks. */
  readonly text: string;
  readonly last: Last | undefined;
}

/** "Try the first one" after candidates: its name in the place of what picks it. */
const withOffer = (text: string, offers: readonly string[]): string => {
  for (const shape of shapes) {
    const match = shape.exec(text);
    if (!match) continue;
    const said = (match[1] ?? '').toLowerCase();
    const name = said === 'last' ? offers.at(-1) : offers[places[said] ?? 0];
    if (name !== undefined && !asksWhy.test(text))
      return `${text.slice(0, match.index)}${name}${text.slice(match.index + match[0].length)}`;
  }
  return text;
};

/** "I take the second: 40 tins": taken by naming it. */
const taking =
  /\b(?:(?:i|we)(?:'ll|'d| will| would| shall)?(?: like to)? |let'?s )(?:take|have|go (?:for|with)|choose|pick|prefer|do) $/i;

/** What of several recipes a message picks: "it" stands in its place. */
const withMade = (text: string, last: Last, made: readonly Made[]): PickedText => {
  for (const shape of shapes) {
    const match = shape.exec(text);
    if (!match) continue;
    const said = (match[1] ?? '').toLowerCase();
    const place = said === 'last' ? made.length - 1 : (places[said] ?? 0);
    const one = made.find((each) => each.number === place + 1) ?? made[place];
    if (!one) continue;
    const plain = `${text.slice(0, match.index).replace(taking, '')}it${text.slice(match.index + match[0].length)}`;
    return { text: plain, last: { ...last, made: [one], picked: place } };
  }
  return { text, last };
};

/**
 * "The second one", "number 3": where the last answer came to several recipes, such words pick one and mean "it". Every
 * topic then reads the message as if only that one had been made. Of candidates they pick the ingredient.
 */
export const picked = (text: string, last: Last | undefined): PickedText => {
  if (last?.offers) return { text: withOffer(text, last.offers), last };
  const { made = [] } = last ?? {};
  return last && made.length > 1 ? withMade(text, last, made) : { text, last };
};
