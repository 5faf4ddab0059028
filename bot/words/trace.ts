import { tinsLeft, tinsOut } from '../../core/bench/state.ts';
import { allOut, placeKey, type Trace, traceOf } from '../../core/bench/trace.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { TraceWish } from '../topics/trace.ts';
import { batchFigures } from './batch-figures.ts';
import { countText, gramsText } from './batch-text.ts';
import { findEither } from './find-lot.ts';
import { type Holder, holdersIn, noticeText, recallFile, recallSteps, shelfTexts } from './recall.ts';
import { containerOf, goneText, hereText, lotName } from './trace-texts.ts';
import { localRules } from './warnings.ts';

/** Rows shown of a long table; the sheet has all of them. */
const mostRows = 20;

const rowsShown = <T>(all: readonly T[]): { readonly shown: readonly T[]; readonly more: number } => ({
  shown: all.slice(-mostRows),
  more: Math.max(0, all.length - mostRows),
});

const moreText = (more: number, what: string): Block[] =>
  more > 0 ? [{ kind: 'text', text: `And ${more} earlier ${what}.` }] : [];

const batchTable = (trace: Trace): Block[] => {
  const { shown, more } = rowsShown(trace.batches);
  return [
    {
      kind: 'table',
      columns: [
        { title: 'batch', align: 'left' },
        { title: 'made', align: 'left' },
        { title: 'here', align: 'right' },
        { title: 'out', align: 'right' },
      ],
      rows: shown.map(({ batch, left, out }) => [
        batch.lot,
        batch.madeOn,
        String(Math.max(0, left)),
        String(out),
      ]),
      ...(trace.batches.length > 1
        ? { total: ['together', '', String(Math.max(0, trace.left)), String(trace.out)] }
        : {}),
    },
    ...moreText(more, 'batches'),
  ];
};

/** Codes named for one place; a recall sheet has all of them. */
const mostCodes = 12;

const codesText = (codes: readonly string[]): string => {
  const more = codes.length - mostCodes;
  return `${codes.slice(0, mostCodes).join(', ')}${more > 0 ? ` and ${more} more` : ''}`;
};

const holderBlocks = (holders: readonly Holder[]): Block[] => {
  if (holders.length === 0)
    return [{ kind: 'text', text: 'None outside the house, as far as the book knows.' }];
  const more = holders.length - mostRows;
  const items = holders
    .slice(0, mostRows)
    .map(({ to, count, lots }) => `${to}: ${count} (${codesText(lots)})`);
  return [
    { kind: 'text', text: 'Outside the house:' },
    { kind: 'list', items },
    ...(more > 0 ? [{ kind: 'text', text: `And ${more} more places.` } as const] : []),
  ];
};

const lotTable = (trace: Trace): Block[] => {
  if (trace.lots.length === 0) return [{ kind: 'text', text: 'No lots were written down for it.' }];
  return [
    {
      kind: 'table',
      columns: [
        { title: 'lot', align: 'left' },
        { title: 'of', align: 'left' },
        { title: 'g', align: 'right' },
      ],
      rows: trace.lots.map(({ lot, grams }) => [lot.lot, lotName(lot), gramsText(grams).replace(' g', '')]),
    },
    ...trace.lots
      .filter(({ from }) => from.length > 0)
      .map(
        ({ lot, from }) =>
          ({ kind: 'text', text: `${lot.lot} was made here from ${from.join(' and ')}.` }) as const,
      ),
  ];
};

/** What an oil of one's own was made from. */
const sourceText = ({ sources = [] }: Trace): Block[] =>
  sources.length === 0
    ? []
    : [
        {
          kind: 'text',
          text: `Made here from ${sources.map(({ lot, grams }) => `${lot.lot} (${lotName(lot)}, ${gramsText(grams)})`).join(' and ')}.`,
        },
      ];

const ofLot = (trace: Trace, holders: readonly Holder[]): Block[] => [
  ...sourceText(trace),
  ...ofUses(trace, holders),
];

const ofUses = (trace: Trace, holders: readonly Holder[]): Block[] => {
  const { batches } = trace;
  if (batches.length === 0 && trace.lots.length === 0)
    return [{ kind: 'text', text: 'No batch has drawn from it yet.' }];
  const through = trace.lots.map(
    ({ lot, grams }) =>
      ({
        kind: 'text',
        text: `${gramsText(grams)} of it went into ${lot.lot}, ${lotName(lot)}, made here.`,
      }) as const,
  );
  if (batches.length === 0) return [...through, { kind: 'text', text: 'No batch has drawn from that yet.' }];
  return [...through, ...batchTable(trace), ...holderBlocks(holders)];
};

const ofBatch = (trace: Trace): Block[] => {
  const [only] = trace.batches;
  if (!only) return [];
  const { batch } = only;
  const gone = rowsShown(trace.gone);
  return [
    {
      kind: 'text',
      text: `${batch.name}, made ${batch.madeOn}, best before ${batch.bestBefore}. Poured ${countText(batch.count, batch.container)}; ${hereText(batch)} here, ${only.out} out.`,
    },
    ...(gone.shown.length > 0
      ? [{ kind: 'list', items: gone.shown.map(goneText) } as const]
      : [{ kind: 'text', text: 'None has left the house, as far as the book knows.' } as const]),
    ...moreText(gone.more, 'entries'),
    { kind: 'text', text: 'Made from:' },
    ...lotTable(trace),
  ];
};

const figuresOf = (trace: Trace, holders: readonly Holder[]) => ({
  kind: trace.kind,
  lot: trace.code,
  batches: trace.batches.map(({ batch, grams, from, left, out }) => ({
    lot: batch.lot,
    name: batch.name,
    made_on: batch.madeOn,
    best_before: batch.bestBefore,
    grams,
    from,
    left: Math.max(0, left),
    out,
  })),
  lots: [...trace.lots, ...(trace.sources ?? [])].map(({ lot, grams, from }) => ({
    lot: lot.lot,
    ingredient: lot.ingredient,
    grams,
    from,
  })),
  given_to: holders.map(({ to, count, lots }) => ({ to, count, lots: [...lots] })),
  containers_out: trace.out,
  containers_left: Math.max(0, trace.left),
});

/** Of the way back from a batch: what its own page says of it today. */
const batchToday = ({ kind, batches: [only] }: Trace, state: BookState): Answer['figures'] =>
  kind === 'batch' && only ? batchFigures(only.batch, state) : {};

const stepsFor = (wish: TraceWish, trace: Trace): readonly NextStep[] => [
  ...(wish.sheet || trace.batches.length === 0
    ? []
    : [{ label: 'Recall sheet', say: `recall sheet for ${trace.code}` }]),
  ...(trace.kind === 'batch' ? [{ label: 'The batch', say: `batch ${trace.code}` }] : []),
];

const recallBlocks = (trace: Trace, region: Tools['settings']['region']): Block[] => [
  { kind: 'text', text: `Say: ${noticeText(trace)}` },
  { kind: 'list', items: [...shelfTexts(trace), ...recallSteps(region)] },
];

const nothingOut: Warning = {
  code: 'nothing-out',
  text: 'What was given out without a word to the book is not on this list.',
};

const headOf = (trace: Trace, lotText: string): string =>
  trace.kind === 'lot'
    ? `Lot ${trace.code}, ${lotText}: ${trace.batches.length} ${trace.batches.length === 1 ? 'batch' : 'batches'}, ${countText(trace.out, containerOf(trace.batches.map(({ batch }) => batch)))} out`
    : `Batch ${trace.code}, ${lotText}`;

/** What went to one place, and what of that is still there. */
const atPlace = (to: string, tools: Tools): Answer => {
  const key = placeKey(to);
  const isThere = (place: string | undefined): boolean => place !== undefined && placeKey(place) === key;
  const batches = [...benchOf(tools.book.state).batches.values()]
    .filter(({ gone }) => gone.some((each) => isThere(each.to)))
    .map((batch) => ({ batch, grams: 0, from: [], left: tinsLeft(batch), out: tinsOut(batch) }))
    .sort((a, b) => (a.batch.madeOn < b.batch.madeOn ? -1 : 1));
  const went = batches.flatMap(({ batch }) =>
    batch.gone.filter((each) => isThere(each.to)).map((each) => ({ ...each, lot: batch.lot })),
  );
  const left = batches.reduce((sum, each) => sum + Math.max(0, each.left), 0);
  const trace: Trace = { kind: 'lot', code: '', lots: [], batches, gone: went, out: 0, left };
  const holders = holdersIn(trace).filter((holder) => isThere(holder.to));
  const out = holders.reduce((sum, { count }) => sum + count, 0);
  const { shown, more } = rowsShown(went);
  return {
    title: `${to}: ${out} there now`,
    blocks: [
      went.length === 0
        ? { kind: 'text', text: `Nothing went to ${to}, as far as the book knows.` }
        : { kind: 'list', items: shown.map((each) => `${each.lot}, ${goneText(each)}`) },
      ...moreText(more, 'entries'),
    ],
    figures: { ...figuresOf({ ...trace, out }, holders), lot: null },
    warnings: [localRules],
    next: batches.slice(-1).map(({ batch }) => ({ label: batch.lot, say: `trace ${batch.lot}` })),
  };
};

const everythingOut = (tools: Tools): Answer => {
  const batches = allOut(benchOf(tools.book.state));
  const trace: Trace = {
    kind: 'lot',
    code: '',
    lots: [],
    batches,
    gone: [],
    out: batches.reduce((sum, each) => sum + each.out, 0),
    left: batches.reduce((sum, each) => sum + Math.max(0, each.left), 0),
  };
  const holders = holdersIn(trace);
  const none = 'Nothing has left the house yet, as far as the book knows.';
  return {
    title: 'Out of the house',
    blocks:
      batches.length === 0
        ? [{ kind: 'text', text: none }]
        : [...batchTable(trace), ...holderBlocks(holders)],
    figures: { ...figuresOf(trace, holders), lot: null },
    warnings: [localRules],
    next: batches.slice(-1).map(({ batch }) => ({ label: batch.lot, say: `trace ${batch.lot}` })),
  };
};

/** Follows a lot or a batch, and makes the recall sheet when it is wanted. */
export const answerTrace = async (wish: TraceWish, tools: Tools): Promise<Answer | Trouble> => {
  if (wish.lot === undefined) return wish.to === undefined ? everythingOut(tools) : atPlace(wish.to, tools);
  const bench = benchOf(tools.book.state);
  const found = findEither(wish.lot, bench);
  if ('code' in found) return found;
  const trace = traceOf(bench, found.lot);
  if (!trace) return { code: 'not-found', text: `There is no ${wish.lot} in this book. Ask "list batches".` };
  const lotText = 'ingredient' in found ? lotName(found) : found.name;
  const holders = holdersIn(trace);
  const { region } = tools.settings;
  const sheet = wish.sheet
    ? await recallFile(trace, { lotText: headOf(trace, lotText), region, at: tools.at })
    : { files: [], blocks: [] };
  return {
    title: headOf(trace, lotText),
    blocks: [
      ...(trace.kind === 'lot' ? ofLot(trace, holders) : ofBatch(trace)),
      ...(wish.sheet ? recallBlocks(trace, region) : []),
      ...sheet.blocks,
    ],
    figures: { ...batchToday(trace, tools.book.state), ...figuresOf(trace, holders) },
    warnings: [...(wish.sheet ? [nothingOut] : []), localRules],
    next: stepsFor(wish, trace),
    files: sheet.files,
  };
};
