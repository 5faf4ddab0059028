import type { Due } from '../../core/bench/due.ts';
import type { NextStep } from '../answer.ts';
import { awayText, dayText } from './day-text.ts';
import { plain } from './numbers.ts';
import { shortName } from './warnings.ts';

/** What it is, for reading: "beeswax, lot K12", "Winter balm, 26-KIVO". */
export const dueName = ({ kind, lot, what }: Due): string =>
  kind === 'lot' ? `${shortName(what)}, lot ${lot}` : `${what}, ${lot}`;

const leftText = ({ kind, left, container = 'container' }: Due): string =>
  kind === 'lot' ? `${plain(left, 1)} g` : `${left} ${left === 1 ? container : `${container}s`}`;

/** One line about something due: "beeswax, lot K12: 27 Dec 2026 (in 30 days), 480 g left". */
export const dueLine = (due: Due): string => {
  const away = awayText(due.daysLeft);
  const when = due.daysLeft === 0 ? 'today' : `${dayText(due.bestBefore)} (${away})`;
  return `${dueName(due)}: ${when}, ${leftText(due)} left`;
};

// Letters and digits are found again as they are; anything else is safest between quotation marks.
const quoted = (lot: string): string => (/^[\p{L}\p{N}-]+$/u.test(lot) ? lot : `"${lot}"`);

const called = ({ kind, lot }: Pick<Due, 'kind' | 'lot'>): string => `${kind} ${quoted(lot)}`;

/** The answers to one thing that is due, as buttons. */
export const dueSteps = (due: Due): readonly NextStep[] => [
  { label: `${due.lot} done`, say: `done with ${called(due)}` },
  { label: `${due.lot} used up`, say: `${called(due)} is used up` },
  { label: `${due.lot} in a week`, say: `ask about ${called(due)} again in a week` },
];

export const allLater: NextStep = {
  label: 'All again in a week',
  say: 'ask about all of them again in a week',
};

/** The contract's figures of what is due. */
export const dueFigures = (due: readonly Due[]) =>
  due.map(({ kind, lot, what, bestBefore, daysLeft, left }) => ({
    kind,
    lot,
    what,
    best_before: bestBefore,
    days_left: daysLeft,
    ...(kind === 'lot' ? { grams_left: left } : { containers_left: left }),
  }));
