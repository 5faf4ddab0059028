import { plusDays } from '../../core/bench/days.ts';
import { type Due, dueBy } from '../../core/bench/due.ts';
import type { BenchEventOf } from '../../core/bench/events.ts';
import type { Bench, Reminder } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { firstDay } from '../../core/remind/clock.ts';
import { leadOf, nextDay } from '../../core/remind/next.ts';
import { ok } from '../../core/result.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import { localGroup } from '../console/local.ts';
import type { Tools } from '../topic.ts';
import type { ExpiryWish } from '../topics/expiry.ts';
import { clockText, weekdayText, zoneText } from './day-text.ts';
import { dueFigures, dueLine } from './due-line.ts';
import { groupDay } from './group-day.ts';
import { by } from './recipe-table.ts';

/** Told from a month before, again a week before and on the day (common practice, no source). */
const usualLeadDays = [30, 7, 0];
const usualTime = { hour: 9, minute: 0 };

const reminderFigure = (reminder: Reminder | undefined) =>
  reminder
    ? {
        hour: reminder.hour,
        minute: reminder.minute,
        zone: reminder.zone,
        lead_days: reminder.leadDays,
        channel: reminder.channel,
      }
    : null;

const listed = (days: readonly number[]): string => {
  const words = days.map(String);
  return words.length < 2 ? words.join('') : `${words.slice(0, -1).join(', ')} and ${words.at(-1)}`;
};

const leadText = ({ leadDays }: Reminder): string => {
  const days = leadDays.filter((each) => each > 0);
  const before =
    days.length > 0 ? `${listed(days)} ${listed(days) === '1' ? 'day' : 'days'} before a date` : '';
  const onIt = leadDays.includes(0) ? 'on the day itself' : '';
  return [before, onIt].filter((each) => each !== '').join(' and ');
};

const whereText = (reminder: Reminder, tools: Tools): string => {
  if (tools.book.group === localGroup)
    return 'It shows in the chat in this terminal while that is open, or when it is next opened that day; the one-shot command never shows it.';
  return reminder.channel === tools.channel
    ? 'It comes here, in this channel.'
    : 'It comes in the channel where it was set.';
};

const nextText = (bench: Bench): string => {
  const next = nextDay(bench);
  return next === undefined
    ? 'Nothing on your shelf has a date yet, so there is nothing to tell.'
    : `The next message is due on ${weekdayText(next)} ${next.slice(0, 4)}.`;
};

const about = (reminder: Reminder, bench: Bench, tools: Tools): Block[] => [
  {
    kind: 'text',
    text: `New on the list: ${leadText(reminder)}. From ${leadOf(reminder)} ${leadOf(reminder) === 1 ? 'day' : 'days'} before, I ask each day until it is answered: done, used up, or again in a week. Nothing due, no message.`,
  },
  { kind: 'text', text: `${whereText(reminder, tools)} ${nextText(bench)}` },
];

const dueNow = (reminder: Reminder, bench: Bench, tools: Tools) => {
  const today = groupDay(tools);
  return dueBy(bench, today, plusDays(today, leadOf(reminder)));
};

const mostShown = 5;
const mostFigures = 40;

const dueBlocks = (due: readonly Due[]): Block[] => {
  if (due.length === 0) return [];
  const more = due.length - mostShown;
  return [
    { kind: 'text', text: `Due already: ${due.length}.` },
    { kind: 'list', items: due.slice(0, mostShown).map(dueLine) },
    ...(more > 0 ? [{ kind: 'text', text: `And ${more} more: ask "what is due".` } as const] : []),
  ];
};

const timeText = (reminder: Reminder): string =>
  `daily at ${clockText(reminder)} in ${zoneText(reminder.zone)}`;

const answerOf = (title: string, reminder: Reminder, bench: Bench, tools: Tools): Answer => {
  const due = dueNow(reminder, bench, tools);
  return {
    title,
    blocks: [...about(reminder, bench, tools), ...dueBlocks(due)],
    figures: {
      reminder: reminderFigure(reminder),
      next_day: nextDay(bench) ?? null,
      due: dueFigures(due.slice(0, mostFigures)),
      count: due.length,
    },
    warnings: [],
  };
};

const noZone = (time: { readonly hour: number; readonly minute: number }): Trouble => ({
  code: 'missing',
  text: `At ${clockText(time)} in which city? For example "remind us daily at ${clockText(time)} in Lisbon". Any large city in your time zone will do.`,
});

type SetEvent = BenchEventOf<'reminder-set'>;

/** What is to be set: what was said, else what stands, else the usual. */
const wanted = (wish: ExpiryWish, tools: Tools): SetEvent | Trouble => {
  const bench = benchOf(tools.book.state);
  const reminder = bench.reminder ?? bench.stopped;
  const said = wish.hour === undefined ? undefined : { hour: wish.hour, minute: wish.minute ?? 0 };
  const { hour, minute } = said ?? reminder ?? usualTime;
  const zone = wish.zone ?? reminder?.zone ?? tools.settings.zone;
  if (zone === undefined) return noZone({ hour, minute });
  const leadDays = [...(wish.leadDays ?? reminder?.leadDays ?? usualLeadDays)].sort((a, b) => b - a);
  const time = { hour, minute, zone };
  return { kind: 'reminder-set', ...time, leadDays, channel: tools.channel, from: firstDay(tools.at, time) };
};

const assumed = (text: string): Block => ({ kind: 'assumed', text });

/** What was taken for granted where less was said than a reminder needs, and none stands. */
const assumedIn = ({ hour, zone, leadDays }: ExpiryWish, { reminder, stopped }: Bench, event: SetEvent) => {
  const isWhole = hour !== undefined && zone !== undefined && leadDays !== undefined;
  if (reminder || isWhole) return [];
  if (stopped)
    return [
      assumed(
        `What you did not say is as it was before: ${timeText(event)}, ${listed(event.leadDays)} days ahead.`,
      ),
    ];
  return [
    ...(hour === undefined
      ? [assumed(`At ${clockText(event)}; say another hour if you like, for example "remind us at 18:30".`)]
      : []),
    ...(zone === undefined ? [assumed(`In ${zoneText(event.zone)}, the zone this group has set.`)] : []),
    ...(leadDays === undefined
      ? [assumed('30, 7 and 0 days ahead, as is common; for others say "remind us 60, 14 and 0 days ahead".')]
      : []),
  ];
};

/** Sets or changes the daily reminder; it then comes where this was asked. The group's days begin by its zone, if none was set. */
export const setReminder = async (wish: ExpiryWish, tools: Tools): Promise<Answer | Trouble> => {
  const event = wanted(wish, tools);
  if ('code' in event) return event;
  const before = benchOf(tools.book.state);
  const { zone } = event;
  const changed = await tools.book.change<undefined, never>(
    ({ settings }) =>
      ok({
        events: [
          event,
          ...(settings.zone === undefined ? [{ kind: 'settings-changed', settings: { zone } } as const] : []),
        ],
        value: undefined,
      }),
    by(tools),
  );
  const bench = benchOf(changed.ok ? changed.value.state : tools.book.state);
  const reminder = bench.reminder ?? { ...event };
  const answer = answerOf(
    `${before.reminder ? 'Reminder changed' : 'Reminder set'}: ${timeText(reminder)}`,
    reminder,
    bench,
    tools,
  );
  return { ...answer, blocks: [...answer.blocks, ...assumedIn(wish, before, event)] };
};

const noReminder: Block = {
  kind: 'text',
  text: 'To have one, say where and when: "remind us daily at 9 in Lisbon, 30 days ahead".',
};

export const showReminder = (tools: Tools): Answer => {
  const bench = benchOf(tools.book.state);
  const { reminder } = bench;
  if (reminder)
    return { ...answerOf(`Reminder: ${timeText(reminder)}`, reminder, bench, tools), quiet: true };
  return {
    title: 'No reminder is set',
    blocks: [noReminder],
    figures: { reminder: null },
    warnings: [],
    quiet: true,
  };
};

export const stopReminder = async (tools: Tools): Promise<Answer> => {
  const { reminder } = benchOf(tools.book.state);
  if (!reminder)
    return { title: 'No reminder was set', blocks: [noReminder], figures: { reminder: null }, warnings: [] };
  await tools.book.record({ kind: 'reminder-stopped' }, by(tools));
  return {
    title: 'Reminders stopped',
    blocks: [
      {
        kind: 'text',
        text: `It was ${timeText(reminder)}. What goes out of date you can still ask: "what expires this month".`,
      },
    ],
    figures: { reminder: null },
    warnings: [],
  };
};
