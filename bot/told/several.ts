import { nextCode } from '../../core/bench/fold.ts';
import type { Slot } from '../likeness/features.ts';
import { type Clause, clausesAt } from '../readers/clauses.ts';
import { todayOf } from '../readers/days.ts';
import { letters } from '../readers/lexicon.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { tellsPlainly } from './guards.ts';
import { type Things, thingsIn } from './things.ts';
import { type Told, toldIn } from './told.ts';

/** One of several things told in one message, as it may be read; `code` is the one a pour before it is going to have. */
export interface Part {
  readonly ways: readonly Told[];
  readonly code?: string;
}

/** More than this in one message is a list, and belongs on lines of its own. */
const mostParts = 5;

const besideCount = /^\W*(?:(?:of|à|at|with|x|each)\W*)*$/i;

/** "12 tins of 20 g", "20 g each": what one of them holds begins nothing new. */
const isSize = (slot: Slot, slots: readonly Slot[], text: string): boolean =>
  slots.some(
    ({ kind, from, to }) =>
      kind === 'count' &&
      ((to <= slot.from && besideCount.test(text.slice(to, slot.from))) ||
        (slot.to <= from && besideCount.test(text.slice(slot.to, from)))),
  ) || /^ ?(?:each|apiece|per)\b/i.test(text.slice(slot.to, slot.to + 8));

/** Where something new is told: at a number of containers, at an amount, at a code that has neither. */
const marksIn = ({ slots, loose }: Things, text: string): readonly number[] => {
  const counted = slots.filter(
    (slot) => slot.kind === 'count' || (slot.kind === 'g' && !isSize(slot, slots, text)),
  );
  const opened = slots.filter(
    (slot) =>
      slot.kind === 'lot' &&
      /\b(?:opened|open|unsealed|started)\b[^,;.]{0,12}$/i.test(
        text.slice(Math.max(0, slot.from - 24), slot.from),
      ),
  );
  const bare = loose.filter(({ letter }) => letter === letters.number);
  return [...counted, ...opened, ...bare].map(({ from }) => from).toSorted((a, b) => a - b);
};

const opening = /^(?:[\s,;.&+-]|\b(?:and|then|also|plus|but)\b)+/i;

interface Before {
  readonly told: Told;
  readonly code: string;
}

const number =
  /\b(?:\d{1,4}|an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|a dozen)\b(?: (?:more |other )?(?:tins?|jars?|pots?|tubes?|sticks?)\b)?(?! ?(?:of\b|k?g\b|grams?\b|ml\b|l\b|oz\b|%))/i;

/** "Kept 2 as samples" with the batch they are of. */
const withCode = (said: string, code: string): readonly string[] =>
  number.test(said) ? [said.replace(number, (count) => `${count} of ${code}`)] : [];

/** A clause as it stands; then with the verb, the batch, or both, of what was told before it. */
const saidAs = (said: string, before: Before | undefined): readonly string[] => {
  if (!before) return [said];
  const { told, code } = before;
  const all = [said, `${told.verb} ${said}`];
  return code === '' ? all : [...all, ...all.flatMap((each) => withCode(each, code))];
};

const codeOf = ({ slots, plain }: Told, reading: Reading): string => {
  const batch = slots.find(({ kind }) => kind === 'batch')?.text;
  if (batch !== undefined) return batch;
  if (!plain.startsWith('poured')) return '';
  const on = slots.find(({ kind }) => kind === 'date')?.text ?? todayOf(reading);
  return nextCode(reading.bench, on).code;
};

interface Gone {
  readonly parts: readonly Part[];
  readonly before?: Before;
}

/** With one clause more; undefined where it tells nothing plainly. */
const withClause = ({ parts, before }: Gone, said: string, reading: Reading): Gone | undefined => {
  const ways = saidAs(said, before)
    .map((each) => toldIn(readAgain(each, reading)))
    .find((each) => each.length > 0);
  const [told] = ways ?? [];
  if (!ways || !told) return undefined;
  const isPour = told.plain.startsWith('poured');
  // Of two pours only the first one's code is known beforehand.
  const isSecond = isPour && parts.length > 0;
  const code = isSecond ? '' : codeOf(told, reading) || (before?.code ?? '');
  const part = { ways, ...(isPour && !isSecond ? { code } : {}) };
  return { parts: [...parts, part], before: { told, code } };
};

const partsIn = (clauses: readonly Clause[], text: string, reading: Reading): readonly Part[] => {
  let gone: Gone | undefined = { parts: [] };
  for (const { from, to } of clauses) {
    const said = text
      .slice(from, to)
      .replace(opening, '')
      .replace(/[\s,;.!]+$/, '');
    gone = gone && withClause(gone, said, reading);
  }
  return gone?.parts ?? [];
};

/**
 * What a message tells that tells of several things, each of them plainly; nothing where one of them is not. A verb and a
 * batch hold for what follows them.
 */
export const severalIn = (reading: Reading): readonly Part[] => {
  const things = thingsIn(reading);
  if (!things || things.text.note !== undefined) return [];
  const { text } = things.text.bench.rest;
  const marks = marksIn(things, text);
  if (marks.length < 2 || marks.length > mostParts || !tellsPlainly(blanked(text, things.slots))) return [];
  const clauses = clausesAt(things.whole, marks);
  return clauses.length < 2 ? [] : partsIn(clauses, things.whole, reading);
};
