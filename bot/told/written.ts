import { defined } from '../../core/defined.ts';
import { type Chosen, withAssumed } from '../chosen.ts';
import { echo } from '../readers/ask-back.ts';
import { pointedNames } from '../readers/pointed-name.ts';
import type { Reading } from '../reading.ts';
import { toldInGroups } from './in-groups.ts';
import { toldInTurn } from './in-turn.ts';
import { pourAlone } from './pour-alone.ts';
import { purchasesIn } from './purchases.ts';
import { type Part, severalIn } from './several.ts';
import { shelfAlone } from './shelf-alone.ts';
import { type Told, toldIn } from './told.ts';

/** What a topic would write down of a plain form; undefined where none would. */
type Read = (plain: Reading) => Chosen | undefined;

/** As much of what is written is shown again. */
const longestPlain = 300;

/** What was read of one thing told, and as what. */
interface Written {
  readonly chosen: Chosen;
  readonly told: Told;
}

const written = (ways: readonly Told[], read: Read): Written | undefined => {
  for (const told of ways) {
    const chosen = read(told.reading);
    if (chosen) return { chosen, told };
  }
  return undefined;
};

/** What it was read as is said again, and how to take it back. */
const echoed = (chosen: Chosen, all: readonly Told[]): Chosen | undefined => {
  const said = all.map(({ plain }) => `"${plain.slice(0, longestPlain)}"`).join(', then ');
  const over = all.flatMap(({ besides }) => besides.map((words) => `I passed over "${echo(words)}".`));
  const made = withAssumed(chosen, [`I read that as ${said}. If it is not so, say "undo".`, ...over]);
  return made && { ...made, told: true };
};

/** All of them, where each is read as something that some topic writes down. */
const allWritten = (parts: readonly Part[], read: Read): Chosen | undefined => {
  const all = parts.flatMap(({ ways, code }) => {
    const one = written(ways, read);
    return one ? { ...one, chosen: { ...one.chosen, ...defined({ code }) } } : [];
  });
  const [first, ...more] = all;
  if (!first || more.length === 0 || all.length < parts.length) return undefined;
  const assumed = more.flatMap(({ chosen: { claim: said } }) =>
    said.kind === 'request' ? said.assumed : [],
  );
  const made = withAssumed(
    echoed(
      first.chosen,
      all.map(({ told }) => told),
    ),
    assumed,
  );
  return made && { ...made, also: more.map(({ chosen }) => chosen) };
};

/** Several things of different kinds told in one message, each as some topic reads it by itself. */
export const writtenInTurn = (message: Reading, read: Read, leastKinds = 2): Chosen | undefined => {
  const { reading } = pointedNames(message);
  const groups = toldInGroups(reading);
  const parts = groups.length > 0 ? groups : toldInTurn(reading, leastKinds);
  return parts.length === 0 ? undefined : allWritten(parts, read);
};

/** Purchases, by what stands in them alone. */
export const writtenAsBought = (message: Reading, read: Read): Chosen | undefined => {
  const one = written(purchasesIn(message), read);
  return one ? echoed(one.chosen, [one.told]) : undefined;
};

/** What a message plainly tells, as the plain form of it that some topic writes down. */
export const writtenAsTold = (message: Reading, read: Read): Chosen | undefined => {
  const { reading } = pointedNames(message);
  const one = written(toldIn(reading), read);
  if (one) return echoed(one.chosen, [one.told]);
  return allWritten(severalIn(reading), read) ?? pouredAlone(reading, read) ?? goneAlone(reading, read);
};

/** What went of one thing on the shelf, by that thing and its amount. */
const goneAlone = (reading: Reading, read: Read): Chosen | undefined => {
  const alone = shelfAlone(reading);
  const chosen = alone && read(alone.reading);
  return alone && chosen?.topic.name === 'stock' ? echoed(chosen, [alone]) : undefined;
};

/** A pour that is whole in itself, without the talk around it. */
const pouredAlone = (reading: Reading, read: Read): Chosen | undefined => {
  const alone = pourAlone(reading);
  const chosen = alone && (read(alone.reading) ?? written(toldIn(alone.reading), read)?.chosen);
  if (!alone || chosen?.topic.name !== 'batch') return undefined;
  const over = alone.besides.map((words) => `I passed over "${echo(words)}".`);
  const made = withAssumed(chosen, over);
  return made && { ...made, told: true };
};
