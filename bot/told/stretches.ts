import type { Slot } from '../likeness/features.ts';
import type { SlotKind } from '../likeness/pieces.ts';
import type { Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';

/** A thing of a message, and where it stands. */
export const slotOf = (
  kind: SlotKind,
  text: string,
  { from, to }: Place,
  more: Partial<Slot> = {},
): Slot => ({
  kind,
  text,
  before: '',
  after: '',
  from,
  to,
  ...more,
});

const allSaid =
  /\b(?:all(?: (?:that was|that is|that's) left)?(?: of)?|the (?:whole )?(?:rest|remainder)(?: of)?|the remaining|everything(?: left)?(?: of)?|the last of|(?:all )?what(?:'s| is| was) left(?: of)?|every last (?:one|bit|drop|gram)(?: of)?)(?: the)?(?= (?:_|(?:tins|jars|pots|tubes|sticks)\b))/gi;
const oneOf =
  /\b(?:one|another(?: one)?|a single one) of (?:the |our |my |those )?(?=_|(?:tins|jars|pots|tubes|sticks)\b)/gi;

/** "All of", "one of": how many where no number is said. */
export const stretchesIn = (text: string, slots: readonly Slot[]): readonly Slot[] => {
  const isWeighed = slots.some(({ kind }) => kind === 'g');
  const found = [
    ...(isWeighed ? [] : [...text.matchAll(allSaid)]).map((match) =>
      slotOf('count', 'all', { from: match.index, to: match.index + match[0].length }),
    ),
    ...[...text.matchAll(oneOf)].map((match) =>
      slotOf('count', '1', { from: match.index, to: match.index + match[0].length }),
    ),
  ];
  return found.filter(({ from, to }) => !slots.some((slot) => slot.from < to && slot.to > from));
};

const coin =
  /(?:[€£$]\s?\d+(?:[.,]\d\d?)?|\d+(?:[.,]\d\d?)?\s?(?:€|£|\$|euros?\b|eur\b|pounds? sterling\b|quid\b|gbp\b|dollars?\b|usd\b)|(?<![\d.,])\d{1,4}[.,]\d\d(?![\d.,]| ?(?:k?g|ml|l|oz|lb|kg)\b))/gi;

export const moneyIn = (text: string): readonly Slot[] =>
  [...text.matchAll(coin)].map((match) =>
    slotOf('paid', match[0], { from: match.index, to: match.index + match[0].length }),
  );

/** "From 18:00 to 19:00", "at 3 pm": no amounts of anything. */
const clock =
  /\b(?:at )?\d{4} ?(?:hours|hrs)\b|\b(?:(?:at|by|around|about|since|till|until|from) )?(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve) o'?clock\b|\b(?:(?:at|from|since|by|around|about|till|until|to) )?\d{1,2}(?:[:h]\d\d(?: ?(?:am|pm|h|hrs))?| ?(?:am|pm|o'clock))(?![\d.,%]| ?(?:k?g|ml|l|oz|euros?|eur|c|f|°)\b)/gi;

export const withoutClock = (reading: Reading): Reading =>
  /\d(?:[:h]\d\d| ?(?:am|pm|hours|hrs)\b)|o'?clock\b/i.test(reading.text)
    ? readAgain(reading.text.replace(clock, ''), reading)
    : reading;
