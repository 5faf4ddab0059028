import { lotKey } from '../../core/bench/codes.ts';
import type { Claim, Last, Reading } from '../reading.ts';
import { claim } from '../reading.ts';
import { putsRight } from './batch-anew.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import type { Item } from './item.ts';

/** Longest message that puts right what was just told, in tokens. */
const mostTokens = 24;
/** It says so itself, and no topic can be surer of it. */
export const insteadWeight = 3.6;

export const tookInstead = 'I took that in place of what you told me before.';

export type Request = Readonly<Record<string, unknown>>;

/** Who is not sure puts nothing right. */
const unsure = /\b(?:maybe|perhaps|might|possibly|probably)\b|\bsorry (?:for|about) the\b/i;

/** "WX-3 is really 880 g", "K13: 400 g, counted again": told of a lot as it stands, and no other amount of what was told before. */
const statesOwn = ({ lots: [code] }: BenchReading, { text }: Reading): boolean =>
  code !== undefined &&
  /^\W*(?:(?:and|the|lot|batch)\W+)*$/i.test(text.slice(0, code.from)) &&
  /^\W*[:=]\s*\d|^\W*(?:is|are|was|were|weighs?|weighed|has|have|had|holds?|held|contains?|reads?|shows?) (?:really|actually|only|now|in fact|still)\b[^\d]{0,20}\d/i.test(
    text.slice(code.to),
  );

/** "Please correct lot Q2 to 1.4 kg" names what it puts right. */
const correctsNamed = /^\W*(?:(?:please|pls|kindly|and|now|also|then|can you|could you)\W+)*correct\b/i;

/** The message, where it puts right what was told before and tells of nothing else. */
export const putRight = (reading: Reading): BenchReading | undefined => {
  if (
    reading.tokens.length > mostTokens ||
    reading.text.includes('?') ||
    correctsNamed.test(reading.text) ||
    unsure.test(reading.text) ||
    !putsRight.test(reading.text)
  )
    return undefined;
  if (asksOrPlans(reading.text)) return undefined;
  const bench = readBench(reading);
  return statesOwn(bench, reading) ? undefined : bench;
};

export const dayIn = ({ days }: BenchReading): string | undefined =>
  days.find(({ role }) => role === 'on')?.past;

/** "Only one was squashed": a number, where nothing else is counted. */
const oneAlone = /\b(?:only|just|was|were|really|actually) (one)\b/i;
const oneIn = ({ text }: BenchReading['rest']): readonly Pick<Item, 'value'>[] =>
  oneAlone.test(text) ? [{ value: 1 }] : [];

export const numbersIn = ({ rest }: BenchReading): readonly Pick<Item, 'value'>[] => {
  const numbers = rest.items.filter(({ letter }) => letter === 'n');
  return numbers.length > 0 ? numbers : oneIn(rest);
};

const onlyCode =
  /^\W*(?:(?:no|sorry|oops|wait|nope|ah|oh|i (?:meant?)|meant?|it (?:was|is|should be)|of|lot|batch|make (?:it|that)|actually|rather|the)\b\W*)*_+(?:\W*(?:please|i (?:meant?)|of course|sorry|not _+))*\W*$/i;

/** "Sorry, 26-KIVO": after a code that the book does not have, the same with the code that was meant. */
export const codeAnew = (reading: Reading, { request, done }: Last): Claim | undefined => {
  const { lot } = request;
  if (done || typeof lot !== 'string' || reading.tokens.length > mostTokens || /\?/.test(reading.text))
    return undefined;
  const has = (code: string): boolean =>
    reading.bench.batches.has(lotKey(code)) || reading.bench.lots.has(lotKey(code));
  const { lots, rest } = readBench(reading);
  const [code, second] = lots;
  if (has(lot) || !code || !has(code.code) || (second && lotKey(second.code) !== lotKey(lot)))
    return undefined;
  return onlyCode.test(rest.text)
    ? claim({ ...request, lot: code.code }, insteadWeight, [tookInstead])
    : undefined;
};
