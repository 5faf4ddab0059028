import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

// "I open S3 now", "my sister give me 250 g": what is told by somebody who has one tense for everything.

const past: Readonly<Record<string, string>> = {
  buy: 'bought',
  get: 'got',
  receive: 'received',
  bring: 'brought',
  give: 'gave',
  take: 'took',
  open: 'opened',
  lose: 'lost',
  throw: 'threw',
  spill: 'spilled',
  drop: 'dropped',
  break: 'broke',
  use: 'used',
  find: 'found',
  weigh: 'weighed',
  strain: 'strained',
  pour: 'poured',
  make: 'made',
  fill: 'filled',
  sell: 'sold',
  send: 'sent',
  keep: 'kept',
  come: 'came',
  fall: 'fell',
  leak: 'leaked',
  melt: 'melted',
  crack: 'cracked',
};

const who =
  '(?:i|we|he|she|they|(?:my|our) (?:\\p{L}+ )?\\p{L}+(?: and i)?|(?<=^\\W*(?:today|yesterday|now|this morning) )(?=come))';
const telling = new RegExp(
  `(?<=(?:^|[.,;:!\\n]\\s*|\\b(?:and|but|so|then|today|yesterday|now)\\s+))${who}((?: (?:also|just|now|today|already|then|only|have))*) ?\\b(${Object.keys(past).join('|')})s?\\b(?! to\\b)`,
  'giu',
);
/** "One jar of it break": what happened by itself, at the end. */
const ends = /\b(break|fall|leak|melt|crack)s?(?=(?: (?:today|now|yesterday))?\W*$)/gi;
/** What is done again and again, will be, or is only thought of. */
const habit =
  /\?|\b(?:every|each (?:day|week|month|time|batch)|always|usually|normally|often|sometimes|never|not|don't|do not|tomorrow|next|later|soon|when|if|would|will|can|could|should|may|might|want|need|plan|hope|please)\b/i;

const mostTokens = 60;

/** The message as it would be told of what is over; undefined where it tells nothing in the present. */
export const inPast: (reading: Reading) => Reading | undefined = oncePerReading((reading) => {
  if (reading.tokens.length > mostTokens || habit.test(reading.text)) return undefined;
  const text = reading.text
    .replace(ends, (_, verb: string) => past[verb.toLowerCase()] ?? verb)
    .replace(telling, (all, _between: string, verb: string) =>
      all.replace(new RegExp(`${verb}s?$`, 'i'), past[verb.toLowerCase()] ?? verb),
    );
  return text === reading.text ? undefined : readAgain(text, reading);
});
