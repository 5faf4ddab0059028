import { lotKey } from '../core/bench/codes.ts';
import { type Chosen, withAssumed } from './chosen.ts';
import { echo } from './readers/ask-back.ts';
import { lotsIn } from './readers/lots.ts';
import type { Reading } from './reading.ts';
import { isPuzzle, isRequest, surest, writes } from './surest.ts';
import { inPast } from './told/present.ts';
import { writtenAsBought, writtenAsTold, writtenInTurn } from './told/written.ts';
import type { Topic } from './topic.ts';

/** What would be written of a lot or a batch that this book does not have comes to nothing. */
export const isOfNothing = ({ topic, claim: said }: Chosen, { bench }: Reading): boolean => {
  if (said.kind !== 'request' || !/^(?:batch|stock|reaction)$/.test(topic.name)) return false;
  const { action, lot } = said.request;
  if (topic.name === 'reaction')
    return (
      action === 'note' &&
      typeof lot === 'string' &&
      bench.lots.has(lotKey(lot)) &&
      !bench.batches.has(lotKey(lot))
    );
  if (typeof lot !== 'string' || !/^(?:counted|dated|opened|taken|gone|back|note)$/.test(String(action)))
    return false;
  return !bench.lots.has(lotKey(lot)) && !bench.batches.has(lotKey(lot));
};

/** What a topic would write down of a plain form. */
export const writer = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const chosen = surest(reading, topics);
  return isRequest(chosen) && writes(chosen) ? chosen : undefined;
};

const boughtOf = (reading: Reading, topics: readonly Topic[]): Chosen | undefined =>
  writtenAsBought(reading, (plain) => writer(plain, topics));

/** What is told plainly: one thing, or several of one kind. */
const toldOf = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const read = (plain: Reading): Chosen | undefined => writer(plain, topics);
  return writtenAsTold(reading, read) ?? writtenInTurn(reading, read, 1);
};

/** "I open S3 now": told by somebody who has one tense for everything. */
const toldInPresent = (reading: Reading, topics: readonly Topic[]): Chosen | undefined => {
  const past = inPast(reading);
  const told = past && (writer(past, topics) ?? boughtOf(past, topics) ?? toldOf(past, topics));
  return past && withAssumed(told, [`I read that as "${echo(past.text)}".`]);
};

/** "Opened K12 and threw away 20 g of G7": what is read without one of the codes in it was not read as a whole. */
const isPartOnly = ({ claim: said }: Chosen, reading: Reading): boolean => {
  const codes = lotsIn(reading);
  if (codes.length < 2 || said.kind !== 'request') return false;
  const request = JSON.stringify(said.request).toLowerCase();
  return codes.some(({ code }) => !request.includes(code.toLowerCase()));
};

/** What is told, where no topic reads it as something to be written down as a whole. */
export const toldInstead = (
  whole: Chosen | undefined,
  reading: Reading,
  topics: readonly Topic[],
): Chosen | undefined => {
  const action = whole?.claim.kind === 'request' ? String(whole.claim.request.action) : '';
  const isKnown =
    (isRequest(whole) && /^(?:recipe|batch)$/.test(whole.topic.name)) || /^(?:bought|infused)$/.test(action);
  const bought = isKnown ? undefined : boughtOf(reading, topics);
  if (bought) return bought;
  const isWritten =
    isRequest(whole) && writes(whole) && !isOfNothing(whole, reading) && !isPartOnly(whole, reading);
  if (isWritten) return undefined;
  return toldOf(reading, topics) ?? (isPuzzle(whole) ? toldInPresent(reading, topics) : undefined);
};
