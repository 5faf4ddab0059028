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
};

const noun = 'one|recipe|proposal|option|idea|version|suggestion|balm';
const shapes: readonly RegExp[] = [
  new RegExp(`\\bthe (first|1st|second|2nd|third|3rd|last)(?: (?:${noun}))?\\b`, 'i'),
  new RegExp(`\\b(first|1st|second|2nd|third|3rd|last) (?:${noun})\\b`, 'i'),
  /(?:\b(?:number|no\.?|nr\.?|option|proposal|recipe|idea)|#) ?([123])\b(?! ?[%.,]?\d)/i,
  /^\W*([123])\W*$/,
];

interface PickedText {
  /** The message with "it" in the place of what picks. */
  readonly text: string;
  readonly last: Last | undefined;
}

/**
 * "The second one", "number 3": where the last answer came to several recipes, such words pick one and mean "it". Every
 * topic then reads the message as if only that one had been made.
 */
export const picked = (text: string, last: Last | undefined): PickedText => {
  const made = last?.made;
  if (!last || !made || made.length < 2) return { text, last };
  for (const shape of shapes) {
    const match = shape.exec(text);
    if (!match) continue;
    const said = (match[1] ?? '').toLowerCase();
    const place = said === 'last' ? made.length - 1 : (places[said] ?? 0);
    const one = made.find((each) => each.number === place + 1) ?? made[place];
    if (!one) continue;
    const plain = `${text.slice(0, match.index)}it${text.slice(match.index + match[0].length)}`;
    return { text: plain, last: { ...last, made: [one], picked: place } };
  }
  return { text, last };
};
