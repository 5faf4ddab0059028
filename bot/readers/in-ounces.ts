import { type Claim, claim, type Reading } from '../reading.ts';

/** Words around "in ounces" that ask for nothing more. */
const around = new Set(
  `and also now please pls plz ok okay so can could may i we you have get see show give me us print put what is what's whats about how that it this them
  those the a all table whole grams gram g weights weight amounts same list kit kits but with would be like want need do convert display in into to as beside alongside
  ounces ounce oz too well thanks thank instead then next column columns version answer again just only again back`.split(
    /\s+/,
  ),
);
const mostWords = 14;

const unitsSaid = ({ tokens, words }: Reading): 'g' | 'oz' | undefined => {
  if (tokens.length > mostWords) return undefined;
  const plain = tokens.every(({ kind, word, text }) =>
    kind === 'word' ? around.has(word) : kind === 'break' || /^[,.?!:]$/.test(text),
  );
  if (!plain) return undefined;
  if (words.has('ounces') || words.has('ounce') || words.has('oz')) return 'oz';
  const back = words.has('only') || words.has('just') || words.has('again') || words.has('back');
  return back && (words.has('grams') || words.has('g')) ? 'g' : undefined;
};

/** "And in ounces?" right after a table: the same again with ounces beside the grams, for this answer alone. */
export const claimUnits = (reading: Reading, topic: string): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== topic) return undefined;
  const units = unitsSaid(reading);
  return units && claim({ ...last.request, units }, 3.3);
};

const inOunces =
  /\b(?:in|as|to|with|show|use|and)(?: the)? (?:ounces|oz)\b(?! tins?)|\bounces (?:please|instead|too|as well)\b/i;

/** "…, in ounces": beside the grams. */
export const ouncesBeside = ({ text }: Reading): 'oz' | undefined => (inOunces.test(text) ? 'oz' : undefined);

/** A request without the units its answer was to be shown in. */
export const withoutUnits = (
  request: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => {
  const { units: _units, ...rest } = request;
  return rest;
};
