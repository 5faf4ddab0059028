import { lotKey } from '../../core/bench/codes.ts';
import { plusDays } from '../../core/bench/days.ts';
import { batchesWithTins } from '../../core/bench/due.ts';
import { type Latest, latestBatches, latestOf } from '../../core/bench/latest.ts';
import { type Batch, type Bench, tinsLeft } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import { nameKey } from '../../core/names.ts';
import { type Answer, type Block, mostChoices, type Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BatchWish } from '../topics/batch.ts';
import { batchFigures, versionOf } from './batch-figures.ts';
import { batchSteps } from './batch-poured.ts';
import {
  batchWarnings,
  bestBeforeText,
  countText,
  gramsText,
  linesTable,
  lookAfterDays,
  lookDueText,
  text,
  tinsText,
  yieldText,
} from './batch-text.ts';
import { dayText, longDayText, todayFor } from './bench-dates.ts';
import { findBatch } from './find-lot.ts';
import { localRules } from './warnings.ts';

const howWords = {
  given: 'given',
  sold: 'sold',
  used: 'used',
  wasted: 'thrown away',
  kept: 'kept as a sample',
} as const;

const movements = (batch: Batch): string[] => [
  ...batch.gone.map(
    ({ count, how, to, on }) =>
      `${dayText(on)}: ${countText(count, batch.container)} ${howWords[how]}${to ? ` to ${to}` : ''}`,
  ),
  ...batch.back.map(
    ({ count, from, on }) =>
      `${dayText(on)}: ${countText(count, batch.container)} came back${from ? ` from ${from}` : ''}`,
  ),
];

const remarks = (batch: Batch): string[] => [
  ...batch.notes.map(
    ({ on, text: note, picture }) => `${dayText(on)}: ${[note, picture].filter(Boolean).join(' ')}`,
  ),
  ...batch.looks.map(
    ({ on, fine, text: said }) => `${dayText(on)}: looked at, ${fine ? 'fine' : (said ?? 'not fine')}`,
  ),
  ...batch.corrected.map((why) => `Corrected: ${why}`),
];

const list = (title: string, items: readonly string[]): Block[] =>
  items.length === 0 ? [] : [text(title), { kind: 'list', items }];

const short = (batch: Batch): string[] => {
  const lines = batch.lines.filter(({ shortG = 0 }) => shortG > 0);
  return lines.length === 0 ? [] : ['Some of it was not covered by the stock.'];
};

const heat = ({ bathC, pourC }: Batch): string => {
  const parts = [
    ...(bathC === undefined ? [] : [`bath ${bathC} °C`]),
    ...(pourC === undefined ? [] : [`poured at ${pourC} °C`]),
  ];
  return parts.length === 0 ? '' : ` ${parts.join(', ')}.`;
};

/** Everything the book has of one batch. */
export const showBatch = (wish: BatchWish, tools: Tools): Answer | Trouble => {
  const { state } = tools.book;
  const batch = findBatch(wish.lot ?? '', benchOf(state));
  if ('code' in batch) return batch;
  const today = todayFor(tools);
  const version = versionOf(batch, state);
  const over = batch.bestBefore < today ? ' That day is over: do not give it out.' : '';
  const unknown = (batch.unknownLots ?? []).map((lot) => `lot ${lot}`);
  const due = lookDueText(batch, today);
  return {
    title: `${batch.lot}: ${batch.name}${version === undefined ? '' : `, version ${version}`}`,
    blocks: [
      text(
        `${tinsText(batch)}, ${tinsLeft(batch)} left. Poured on ${longDayText(batch.madeOn)}${batch.by ? ` by ${batch.by}` : ''}.${heat(batch)}`,
      ),
      text(`${bestBeforeText(batch)}${over}`),
      linesTable(batch),
      text(`Weighed out: ${gramsText(batch.weighedG)}.`),
      ...yieldText(batch),
      ...short(batch).map(text),
      ...(unknown.length > 0 ? [text(`Named, but not in the stock: ${unknown.join(', ')}.`)] : []),
      ...list('Where it went', movements(batch)),
      ...list('Notes', remarks(batch)),
      ...(due ? [text(due)] : []),
    ],
    figures: batchFigures(batch, state),
    warnings: batchWarnings(batch),
    next: batchSteps(batch, tools),
  };
};

/** Most batches told in one answer, the latest first. */
const mostListed = 40;

/** Batches made up to this day have waited long enough for a look. */
const lookableOn = (today: string): string => plusDays(today, -lookAfterDays);

const isDue = (batch: Batch, madeBy: string): boolean =>
  batch.looks.length === 0 && batch.madeOn <= madeBy && tinsLeft(batch) > 0;

const isWanted = (wish: BatchWish, today: string): ((batch: Batch) => boolean) => {
  const key = wish.recipe === undefined ? undefined : nameKey(wish.recipe);
  const madeBy = lookableOn(today);
  // The same few names come again and again.
  const same = new Map<string, boolean>();
  const isNamed = (name: string): boolean => {
    const known = same.get(name) ?? nameKey(name) === key;
    same.set(name, known);
    return known;
  };
  return (batch) =>
    (key === undefined || isNamed(batch.name)) &&
    (wish.which !== 'open' || tinsLeft(batch) > 0) &&
    (wish.which !== 'looks' || isDue(batch, madeBy));
};

/** The latest of some batches, of which the number is known: nobody looks further than they are shown. */
const latestWhere = (bench: Bench, count: number, fits: (batch: Batch) => boolean): Latest => {
  const latest: Batch[] = [];
  const most = Math.min(mostChoices, count);
  for (const batch of latestBatches(bench)) {
    if (latest.length >= most) break;
    if (fits(batch)) latest.push(batch);
  }
  return { latest, count };
};

/** Of a stretch of days: what was made in it is all that is looked at. */
const madeThen = (wish: BatchWish, bench: Bench, today: string): Latest => {
  const fits = isWanted(wish, today);
  const then = [...latestBatches(bench, { from: wish.from, until: wish.to })].filter(fits);
  return { latest: then.slice(0, mostChoices), count: then.length };
};

const chosen = (wish: BatchWish, bench: Bench, today: string): Latest => {
  if (wish.lots !== undefined) {
    const latest = wish.lots.flatMap((code) => bench.batches.get(lotKey(code)) ?? []);
    return { latest, count: latest.length };
  }
  if (wish.from !== undefined || wish.to !== undefined) return madeThen(wish, bench, today);
  if (wish.recipe !== undefined || wish.which === 'looks')
    return latestOf(bench, isWanted(wish, today), mostChoices);
  return wish.which === 'open'
    ? latestWhere(bench, batchesWithTins(bench), (batch) => tinsLeft(batch) > 0)
    : latestWhere(bench, bench.batches.size, () => true);
};

const spanOf = ({ from, to }: BatchWish): string => {
  if (from === undefined) return '';
  return to === undefined || to === from ? ` on ${from}` : ` from ${from} to ${to}`;
};

const nothing = (wish: BatchWish): string => {
  if (wish.which === 'looks') return 'No batch waits for a look.';
  const of = wish.recipe === undefined ? '' : ` of ${wish.recipe}`;
  if (wish.from !== undefined) return `No batch${of} was poured${spanOf(wish)}.`;
  return `No ${wish.which === 'open' ? 'batch with something left' : 'batch'}${of} yet. Write one down: "poured 24 tins of Fernlea hand balm today".`;
};

const batchTable = (batches: readonly Batch[], today: string): Block => ({
  kind: 'table',
  columns: [
    { title: 'lot', align: 'left' },
    { title: 'what', align: 'left' },
    { title: 'made', align: 'left' },
    { title: 'best before', align: 'left' },
    { title: 'left', align: 'right' },
  ],
  rows: batches.map((batch) => [
    batch.lot,
    batch.name,
    batch.madeOn,
    `${batch.bestBefore}${batch.bestBefore < today ? ' (over)' : ''}`,
    `${tinsLeft(batch)}/${batch.count}`,
  ]),
});

/** The figures of a list's only batch, as its own page has them. */
const onlyOne = ([only, second]: readonly Batch[]): Answer['figures'] =>
  only && !second
    ? {
        lot: only.lot,
        made_on: only.madeOn,
        best_before: only.bestBefore,
        containers: only.count,
        left: tinsLeft(only),
      }
    : {};

const listFigures = (batches: readonly Batch[], count: number): Answer['figures'] => ({
  count,
  ...onlyOne(batches),
  batches: batches.map((batch) => ({
    lot: batch.lot,
    recipe: batch.name,
    made_on: batch.madeOn,
    best_before: batch.bestBefore,
    containers: batch.count,
    left: tinsLeft(batch),
  })),
});

/** The book of batches, the latest first. */
export const listBatches = (wish: BatchWish, tools: Tools): Answer => {
  const today = todayFor(tools);
  const { latest, count } = chosen(wish, benchOf(tools.book.state), today);
  const shown = latest.slice(0, mostListed);
  const more = count > shown.length ? [text(`And ${count - shown.length} older ones.`)] : [];
  const due =
    wish.which === 'looks'
      ? []
      : shown.filter((batch) => isDue(batch, lookableOn(today))).map(({ lot }) => lot);
  const look =
    due.length > 0
      ? [text(`A look is due: ${due.slice(0, 8).join(', ')}. Say "${due[0]} looks fine", or what is wrong.`)]
      : [];
  return {
    title: `${wish.recipe === undefined ? 'Batches' : `Batches of ${wish.recipe}`}${spanOf(wish)}`,
    blocks: shown.length === 0 ? [text(nothing(wish))] : [batchTable(shown, today), ...more, ...look],
    figures: listFigures(shown, count),
    warnings: shown.length === 0 ? [] : [localRules],
    choices: {
      label: 'Show a batch',
      steps: latest.map(({ lot, name }) => ({ label: `${lot} ${name}`, say: `batch ${lot}` })),
    },
  };
};
