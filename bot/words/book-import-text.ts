import { type Batch, type Lot, tinsLeft } from '../../core/bench/state.ts';
import type { BookState } from '../../core/book.ts';
import type { Merge } from '../../core/exchange/merge.ts';
import type { Conflict } from '../../core/exchange/merge-parts.ts';
import { partValue } from '../../core/parts/changes.ts';
import type { PartName } from '../../core/parts/part.ts';
import type { Answer, Block, NextStep } from '../answer.ts';
import type { BookRead } from '../files/read-book.ts';
import { bookCounts, countsTable } from './book-counts.ts';
import { containerText } from './book-names.ts';
import { thingName } from './cost-money.ts';
import { readable } from './numbers.ts';

/** How the member goes on from a preview. */
export interface Confirming {
  readonly word: string;
  /** Named again where it has to be: a file of this machine is not kept in between. */
  readonly path?: string | undefined;
  /** A word was given, and it was not the right one any more. */
  readonly again: boolean;
}

const sayConfirm = ({ word, path }: Confirming): string =>
  path === undefined ? `confirm import ${word}` : `confirm import "${path}" ${word}`;

const nothingYet = ({ again }: Confirming): string =>
  again
    ? 'That word was for another file, or the book has changed since. Nothing was taken in; this is how it stands now.'
    : 'Nothing is taken in yet.';

const days = ({ entries }: BookRead): string =>
  `${entries[0]?.at.slice(0, 10)} to ${entries.at(-1)?.at.slice(0, 10)}`;

/** Before a file goes into an empty book. */
export const takePreview = (read: BookRead, confirming: Confirming): Answer => {
  const say = sayConfirm(confirming);
  const counts = bookCounts(read.state);
  return {
    title: `${read.name}: ${read.entries.length} entries, ${days(read)}`,
    blocks: [
      countsTable(counts),
      {
        kind: 'text',
        text: 'This book has nothing of its own, so all of it would come in as it stands, with its history and settings.',
      },
      { kind: 'text', text: `${nothingYet(confirming)} To take it in, say:` },
      { kind: 'list', items: [say] },
    ],
    figures: {
      imported: false,
      into: 'empty',
      confirm: confirming.word,
      entries: read.entries.length,
      counts: { ...counts },
    },
    warnings: [],
    quiet: true,
    next: [{ label: 'Take it in', say }],
  };
};

export const takenAnswer = (read: BookRead, stopped: number): Answer => {
  const counts = bookCounts(read.state);
  const left =
    stopped > 0
      ? [
          {
            kind: 'text',
            text: 'A daily reminder or a forgetting that was in it is stopped: set it again where you want it.',
          } as const,
        ]
      : [];
  return {
    title: `Taken in: ${read.name}, ${read.entries.length} entries`,
    blocks: [countsTable(counts), ...left],
    figures: { imported: true, into: 'empty', entries: read.entries.length, counts: { ...counts } },
    warnings: [],
  };
};

const partWords: Readonly<Record<PartName, string>> = {
  recipe: 'recipes',
  settings: 'settings',
  price: 'prices',
  labour: 'labour',
  yield: 'yields',
  lot: 'lots',
  batch: 'batches',
  reaction: 'reactions',
  low: 'low marks',
  answer: 'answers to what is due',
  reminder: 'reminder',
};

const countOf = (all: readonly Conflict[], part: PartName): number =>
  all.filter((each) => each.part === part).length;

const mergeTable = ({ added, conflicts }: Merge): Block => {
  const parts = (Object.keys(partWords) as PartName[]).filter(
    (part) => countOf(added, part) + countOf(conflicts, part) > 0,
  );
  return {
    kind: 'table',
    columns: [
      { title: '', align: 'left' },
      { title: 'new', align: 'right' },
      { title: 'differ', align: 'right' },
    ],
    rows: parts.map((part) => [
      partWords[part],
      String(countOf(added, part)),
      String(countOf(conflicts, part)),
    ]),
  };
};

const lotText = (lot: Lot): string => `${readable(lot.leftG)} g ${thingName(lot.ingredient)}`;
const batchText = (batch: Batch): string =>
  `${containerText(batch.container, tinsLeft(batch))} left of ${batch.name}`;

const valueText = (part: PartName, value: unknown): string => {
  if (value === undefined) return 'something else';
  if (part === 'lot') return lotText(value as Lot);
  if (part === 'batch') return batchText(value as Batch);
  if (part === 'price') {
    const { price, currency } = value as { price: string; currency: string };
    return `${price} ${currency}`;
  }
  return part === 'low' ? `${readable(Number(value))} g` : 'other words';
};

const conflictText = ({ part, id }: Conflict, file: BookState, now: BookState): string => {
  const theirs = partValue(file, part, id);
  if (part === 'recipe') return `recipe ${(theirs as { name: string }).name}: other lines`;
  const ours = partValue(now, part, id);
  const name = part === 'lot' || part === 'batch' ? (theirs as { lot: string }).lot : thingName(id);
  return `${partWords[part].replace(/s$/, '')} ${name}: ${valueText(part, ours)} here, ${valueText(part, theirs)} in the file`;
};

/** Most conflicts told one by one. */
const mostTold = 20;

const conflictLines = (merge: Merge, read: BookRead, now: BookState): readonly string[] => {
  const lines = merge.conflicts.slice(0, mostTold).map((each) => conflictText(each, read.state, now));
  const more = merge.conflicts.length - lines.length;
  const settings = merge.settings.map(
    (name) =>
      `setting ${name}: ${String(now.settings[name])} here, ${String(read.state.settings[name])} in the file`,
  );
  return [...lines, ...(more > 0 ? [`and ${more} more`] : []), ...settings];
};

const reminderNote = ({ reminderLeft }: Merge): Block[] =>
  reminderLeft
    ? [
        {
          kind: 'text',
          text: 'The daily reminder in the file is left out: it names a channel of where it came from.',
        },
      ]
    : [];

const mergeFigures = (merge: Merge): Answer['figures'] => ({
  into: 'existing',
  added: merge.added.length,
  alike: merge.alike,
  conflicts: [
    ...merge.conflicts.map(({ part, id }) => ({ part, id })),
    ...merge.settings.map((id) => ({ part: 'settings', id })),
  ],
});

/** Before a file goes into a book that has something in it. */
export const mergePreview = (
  read: BookRead,
  merge: Merge,
  confirming: Confirming,
  now: BookState,
): Answer => {
  const say = sayConfirm(confirming);
  const lines = conflictLines(merge, read, now);
  const next: NextStep[] = [{ label: lines.length > 0 ? 'Add, keep ours' : 'Take it in', say }];
  if (lines.length > 0) next.push({ label: "Add, take the file's", say: `${say}, take the file's` });
  if (merge.added.length === 0 && lines.length === 0) return nothingNew(read, merge);
  return {
    title: `${read.name}: ${merge.added.length} new, ${merge.alike} alike, ${lines.length === 0 ? 'none' : merge.conflicts.length + merge.settings.length} that differ`,
    blocks: [
      mergeTable(merge),
      ...(lines.length > 0
        ? [{ kind: 'text', text: 'These differ:' } as const, { kind: 'list', items: lines } as const]
        : []),
      ...reminderNote(merge),
      {
        kind: 'text',
        text: `${nothingYet(confirming)} ${lines.length > 0 ? 'Say the first to add what is new and leave what differs as it is here, the second to have that as it is in the file:' : 'To add what is new, say:'}`,
      },
      { kind: 'list', items: next.map((step) => step.say) },
    ],
    figures: { imported: false, confirm: confirming.word, ...mergeFigures(merge) },
    warnings: [],
    quiet: true,
    next,
  };
};

const nothingNew = (read: BookRead, merge: Merge): Answer => ({
  title: `${read.name}: nothing new`,
  blocks: [
    { kind: 'text', text: 'All of it stands in this book already. Nothing was taken in.' },
    ...reminderNote(merge),
  ],
  figures: { imported: false, ...mergeFigures(merge) },
  warnings: [],
});

export const mergedAnswer = (read: BookRead, merge: Merge, mode: 'keep' | 'take'): Answer => {
  const differ = merge.conflicts.length + merge.settings.length;
  const how = mode === 'take' ? 'now as in the file' : 'left as they were here';
  return {
    title: `Taken in: ${read.name}, ${merge.added.length} new`,
    blocks: [
      mergeTable(merge),
      ...(differ > 0 ? [{ kind: 'text', text: `${differ} that differed are ${how}.` } as const] : []),
      { kind: 'text', text: '"undo" takes all of it back.' },
    ],
    figures: { imported: true, ...mergeFigures(merge) },
    warnings: [],
    next: [{ label: 'Undo', say: 'undo' }],
  };
};
