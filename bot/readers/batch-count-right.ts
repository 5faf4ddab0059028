import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { soManyIn } from './batch-anew.ts';
import { howIn } from './batch-gone-verbs.ts';
import { readBench } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { lotsIn } from './lots.ts';

// "Recounted with Skip: 26-KIVO is 31 tins, one had rolled away": so many were poured, with talk around it.

/** Says that something was counted or written wrongly before. */
const anew =
  /\b(?:wait|sorry|oops|whoops|no|actually|really|in fact|in truth|mis-?count\w*|recount\w*|counted|counts?|tally|tallied|correct\w*|amend\w*|erratum|wrong(?:ly)?|mistake|in the end|should (?:have|be|say|read)|rather than|not \d+|it was only)\b/i;
/** What became of some of them, and no count of all. */
const wentOrStays =
  /\b(?:sold|gave|given|gone|went|took|taken|sent|kept|keep|returned|came back|left|remain\w*|in stock|on the shelf|still|each|hold|holds|bought)\b/i;

const many = '(\\d{1,4}|[a-z]{3,9}(?:[- ][a-z]{3,5})?)';
const holder = '(?:tins?|jars?|pots?|tubes?|sticks?)';
const surely = '(?:(?:only|really|actually|just|in fact|now) )*';
const shapes: readonly RegExp[] = [
  // "26-KIVO is 31 tins", "26-KIVO 47 really", "26-KIVO: 47, not 48".
  new RegExp(
    `_+[\\s:,-]*(?:(?:is|are|was|were|comes to|came to|makes|made|should (?:be|say|read|have been|have said)|has to be|reads) )?${surely}${many}(?: ${holder}\\b| really\\b| actually\\b| in (?:fact|truth|all)\\b|(?=,? (?:not|rather than)\\b)|(?=\\W*$))`,
    'i',
  ),
  // "Only 7 tins of it poured".
  new RegExp(
    `\\b${many} ${holder} (?:of|in|from) (?:the |batch )*_+ (?:(?:were|was|got|have been) )?(?:poured|made|filled)\\b`,
    'i',
  ),
  // "The count was off: 20 tins came out of the pour".
  new RegExp(
    `\\b${many} ${holder} (?:really |actually )?(?:came out|were filled|were poured|were made)\\b`,
    'i',
  ),
  // "It was only 22 tins in 26-KIVO", "there were 78 of them".
  new RegExp(
    `\\b(?:it|there|they|that) (?:was|were) ${surely}${many}(?: ${holder} (?:in|of) (?:batch )?_| of them\\b)`,
    'i',
  ),
  // "There are really 19, since one was dropped".
  new RegExp(`\\bthere (?:are|were) (?:only|really|actually|in fact|just) ${many}(?=\\s*[,.;!]|$)`, 'i'),
  // "We should have written 29 pots".
  new RegExp(`\\bshould have (?:written|said|put|noted|counted|entered|read|been) ${surely}${many}\\b`, 'i'),
  // "In truth there were 19".
  new RegExp(
    `\\b(?:in truth|in fact|really|actually),? (?:it|there|they) (?:was|were|are) ${surely}${many}\\b`,
    'i',
  ),
  // "The count of it is to read 15".
  new RegExp(
    `\\b(?:count|number|total|tally)\\b[^.;_\\d]{0,20}_*[^.;_\\d]{0,6} ?\\b(?:is|was|should|has|ought|reads?|to)\\b(?: (?:to|be|read|say|have|been|now))* ${surely}${many}\\b`,
    'i',
  ),
];

const held = new RegExp(`^ ${holder}\\b`, 'i');

const small =
  /^(?:\d{1,4}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\w+teen|a dozen|(?:twenty|thirty|forty|fifty|sixty)(?:[- ](?:one|two|three|four|five|six|seven|eight|nine))?)$/i;

/** The message as "correct 26-KIVO: it was 31 tins"; undefined where it says no such thing plainly. */
export const countRight = (reading: Reading): Reading | undefined => {
  const [code, second] = lotsIn(reading);
  if (code?.kind !== 'batch' || second || reading.text.includes('?')) return undefined;
  const plain = blanked(reading.text, [code]);
  if (/^\W*(?:please )?correct\b/i.test(plain) || !anew.test(plain) || wentOrStays.test(plain))
    return undefined;
  if (reading.items.some(({ letter }) => /[gvRi%t]/.test(letter))) return undefined;
  for (const shape of shapes) {
    const match = shape.exec(plain);
    const count = match?.[1] ?? '';
    if (!match || !small.test(count)) continue;
    const behind = plain.slice(match.index + match[0].lastIndexOf(count) + count.length);
    return readAgain(`correct ${code.code}: it was ${count}${held.exec(behind)?.[0] ?? ''}`, reading);
  }
  return undefined;
};

const ofDay = /\b(?:pour|poured|pouring|made|date|dated|day|took place|happened)\b/i;
const otherDay =
  /\b(?:(?:day|date) (?:was|is)|wrong(?:ly)?|mistake|should|must (?:be|read|say)|actually|really|amend\w*|change\w*|correct\w*|in fact|in truth|sorry|not on|not the)\b/i;
/** "I wrote the wrong day for 26-KIVO, it was 31 July": as "correct 26-KIVO: made on 2027-07-31". */
export const dayRight = (reading: Reading): Reading | undefined => {
  const { lots, days, rest, trouble } = readBench(reading);
  const [code, second] = lots;
  const inFigures = days.filter(({ said }) => /\d/.test(said));
  const [day, other] = inFigures.length === 1 ? inFigures : days;
  if (code?.kind !== 'batch' || second || trouble || !day || other || day.role !== 'on') return undefined;
  if (!ofDay.test(rest.text) || !otherDay.test(rest.text) || asksOrPlans(rest.text)) return undefined;
  return rest.items.some(({ letter }) => /[ngvcRi%t]/.test(letter))
    ? undefined
    : readAgain(`correct ${code.code}: made on ${day.past}`, reading);
};

const notFilled = /\b(?:empty|short|not full|half full|underfilled|counted twice|missing)\b/i;
/** "Two tins of 26-KIVO spilled while pouring, so it was 22 tins"; "one was empty, so there are only 25". */
export const inTheEnd = (reading: Reading): Reading | undefined => {
  const { lots, rest } = readBench(reading);
  const [code, second] = lots;
  if (code?.kind !== 'batch' || second || !/\bso (?:it|that|there) (?:was|were|is|are)\b/i.test(rest.text))
    return undefined;
  const isLess = howIn(rest.text, false) === 'wasted' || notFilled.test(rest.text);
  const total = isLess ? soManyIn(rest.text) : undefined;
  return total === undefined ? undefined : readAgain(`correct ${code.code}: ${total}`, reading);
};

const putItRight =
  /[\s,;.!]*(?:so |and )?(?:(?:could|can|would|will) (?:you|we) )?(?:please )?(?:put|set|change|correct|fix|amend|alter|mend) (?:it|that|this|the (?:book|record|count|number))(?: right| straight| in the book)?(?:,? (?:please|for me|for us|then))*\s*\?*\s*$/i;
/** "…, could you put that right?": asked for, and done by saying it. */
export const askedToPutRight = (reading: Reading, cue: RegExp): Reading => {
  const match = putItRight.exec(reading.text);
  const [code, second] = lotsIn(reading);
  return match &&
    match.index > 0 &&
    code?.kind === 'batch' &&
    !second &&
    !cue.test(reading.text.slice(0, match.index))
    ? readAgain(`correction: ${reading.text.slice(0, match.index)}`, reading)
    : reading;
};
