import type { Due } from '../../core/bench/due.ts';
import type { Reminder } from '../../core/bench/state.ts';
import type { DueMessage } from '../../core/remind/plan.ts';
import type { Block } from '../answer.ts';
import type { DailyMessage, Sent } from '../remind/sender.ts';
import { clockText, weekdayText, zoneText } from './day-text.ts';
import { allLater, dueFigures, dueLine, dueSteps } from './due-line.ts';

/** Lines and rows of buttons in one message: what a phone shows without scrolling for long, and the platform's rows. */
const mostListed = 12;
const mostRows = 5;
/** Characters of all lines together: escaping may double them, and they have to fit into one message of 2,000. */
const mostCharacters = 800;

const listOf = (title: string, due: readonly Due[]): Block[] =>
  due.length === 0
    ? []
    : [
        { kind: 'text', text: title },
        { kind: 'list', items: due.map(dueLine) },
      ];

const showAll = { label: 'Show all', say: 'what is due' };

/** Buttons: a row for each thing; for more than there are rows, the soonest ones and a row for all of them. */
const rowsFor = (due: readonly Due[]): DailyMessage['rows'] =>
  due.length <= mostRows
    ? due.map(dueSteps)
    : [...due.slice(0, mostRows - 1).map(dueSteps), [allLater, showAll]];

/** As many as one message shows, the first in any case. */
const fitting = (due: readonly Due[]): readonly Due[] => {
  let room = mostCharacters;
  return due.slice(0, mostListed).filter((each, index) => {
    room -= dueLine(each).length;
    return index === 0 || room >= 0;
  });
};

/** The day's message: what is new, what is still open, and a row of buttons for each. */
export const dailyMessage = ({ day, fresh, open }: DueMessage): DailyMessage => {
  const all = [...fresh, ...open];
  const shown = fitting(all);
  const newOnes = shown.slice(0, fresh.length);
  const more = all.length - shown.length;
  return {
    answer: {
      title: `Best before: ${weekdayText(day)}`,
      blocks: [
        ...listOf('New:', newOnes),
        ...listOf('Still open:', shown.slice(newOnes.length)),
        ...(more > 0 ? [{ kind: 'text', text: `And ${more} more: ask "what is due".` } as const] : []),
        { kind: 'assumed', text: 'I ask every day until each of them is answered.' },
      ],
      figures: { day, due: dueFigures(all) },
      warnings: [],
    },
    rows: rowsFor(all),
  };
};

const reasons: Readonly<Record<Exclude<Sent, 'sent' | 'later'>, string>> = {
  'no-channel': 'the channel it goes to is gone',
  'no-permission': 'I may not write in the channel it goes to',
  other: 'the chat would not take it',
};

/** What the group's owner is told, once, when the message cannot be posted. */
export const cannotPost = (why: keyof typeof reasons, reminder: Reminder): string =>
  `I could not post your group's daily best-before message: ${reasons[why]}. The reminder (daily at ` +
  `${clockText(reminder)} in ${zoneText(reminder.zone)}) is kept, and I try again each day. To move it, say in the ` +
  `channel where you want it: "remind us here daily at ${clockText(reminder)}".`;
