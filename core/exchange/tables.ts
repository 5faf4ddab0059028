import type { Draw } from '../bench/event-fields.ts';
import { tinsLeft } from '../bench/state.ts';
import { type BookState, benchOf } from '../book.ts';
import { watchedThing } from '../check/composition.ts';
import { ingredientById } from '../ingredients.ts';
import { type Cell, csvText } from './csv.ts';

export const tableNames = [
  'recipes',
  'lots',
  'batches',
  'batch-lines',
  'draws',
  'tins',
  'batch-notes',
  'prices',
  'yields',
  'reactions',
  'reaction-notes',
  'low-marks',
  'settings',
] as const;
export type TableName = (typeof tableNames)[number];

interface Table {
  readonly header: readonly string[];
  rows(state: BookState, contacts: boolean): (readonly Cell[])[];
}

const nameOf = (id: string): string => ingredientById(id)?.name ?? watchedThing(id)?.name ?? id;
const yes = (value: boolean | undefined): string => (value === undefined ? '' : value ? 'yes' : 'no');
const batchesOf = (state: BookState) => [...benchOf(state).batches.values()];
const lotsOf = (state: BookState) => [...benchOf(state).lots.values()];
const reactionsOf = (state: BookState) => [...benchOf(state).reactions.values()];

const recipes: Table = {
  header: ['recipe', 'version', 'line', 'ingredient', 'id', 'amount', 'unit', 'strained', 'infused_with'],
  rows: ({ recipes: all }) =>
    Object.values(all).flatMap(({ name, versions, lines }) =>
      lines.map((line, at) => [
        name,
        versions.length,
        at + 1,
        nameOf(line.ingredient),
        line.ingredient,
        line.amount,
        line.unit,
        yes(line.strained),
        line.infusedWith,
      ]),
    ),
};

const lots: Table = {
  header: [
    'lot',
    'ingredient',
    'id',
    'herbs',
    'got_g',
    'left_g',
    'on',
    'best_before',
    'opened',
    'supplier',
    'price',
    'currency',
    'by',
    'notes',
  ],
  rows: (state) =>
    lotsOf(state).map((lot) => [
      lot.lot,
      nameOf(lot.ingredient),
      lot.ingredient,
      lot.herbs?.join('; '),
      lot.gotG,
      lot.leftG,
      lot.on,
      lot.bestBefore,
      lot.opened,
      lot.supplier,
      lot.price?.amount,
      lot.price?.currency,
      lot.by,
      lot.notes.join('; '),
    ]),
};

const batches: Table = {
  header: [
    'lot',
    'recipe',
    'count',
    'container',
    'size',
    'unit',
    'left',
    'made_on',
    'best_before',
    'by',
    'weighed_g',
    'filled_g',
    'bath_c',
    'pour_c',
    'corrections',
  ],
  rows: (state) =>
    batchesOf(state).map((batch) => [
      batch.lot,
      batch.name,
      batch.count,
      batch.container,
      batch.size?.amount,
      batch.size?.unit,
      tinsLeft(batch),
      batch.madeOn,
      batch.bestBefore,
      batch.by,
      batch.weighedG,
      batch.filledG,
      batch.bathC,
      batch.pourC,
      batch.corrected.join('; '),
    ]),
};

const batchLines: Table = {
  header: ['batch', 'line', 'ingredient', 'id', 'percent', 'grams', 'short_g', 'infused_with'],
  rows: (state) =>
    batchesOf(state).flatMap(({ lot, lines }) =>
      lines.map((line, at) => [
        lot,
        at + 1,
        nameOf(line.ingredient),
        line.ingredient,
        line.percent,
        line.grams,
        line.shortG,
        line.infusedWith,
      ]),
    ),
};

const drawRows = (made: string, ingredient: string, draws: readonly Draw[]) =>
  draws.map(({ lot, grams }) => [made, nameOf(ingredient), ingredient, lot, grams]);

const draws: Table = {
  header: ['made', 'ingredient', 'id', 'from_lot', 'grams'],
  rows: (state) => [
    ...batchesOf(state).flatMap(({ lot, lines }) =>
      lines.flatMap((line) => drawRows(lot, line.ingredient, line.draws)),
    ),
    ...lotsOf(state).flatMap((made) =>
      (made.draws ?? []).flatMap((draw) => {
        const from = benchOf(state).lots.find(({ lot }) => lot === draw.lot);
        return drawRows(made.lot, from?.ingredient ?? made.ingredient, [draw]);
      }),
    ),
  ],
};

const tins: Table = {
  header: ['batch', 'on', 'count', 'how', 'who'],
  rows: (state) =>
    batchesOf(state).flatMap(({ lot, gone, back }) => [
      ...gone.map(({ on, count, how, to }) => [lot, on, count, how, to]),
      ...back.map(({ on, count, from }) => [lot, on, count, 'back', from]),
    ]),
};

const batchNotes: Table = {
  header: ['batch', 'on', 'kind', 'text', 'picture'],
  rows: (state) =>
    batchesOf(state).flatMap(({ lot, notes, looks }) => [
      ...notes.map(({ on, text, picture }) => [lot, on, 'note', text, picture]),
      ...looks.map(({ on, fine, text }) => [
        lot,
        on,
        fine ? 'looked at: fine' : 'looked at: not fine',
        text,
        '',
      ]),
    ]),
};

const prices: Table = {
  header: ['thing', 'price', 'currency', 'pack', 'unit', 'vat', 'noted_on'],
  rows: ({ prices: all = {} }) =>
    Object.entries(all).map(([thing, { price, currency, pack, vat, at }]) => [
      thing,
      price,
      currency,
      pack.amount,
      pack.unit,
      vat,
      at,
    ]),
};

const yields: Table = {
  header: ['herb', 'id', 'herb_g', 'kept_g'],
  rows: ({ yields: all = {} }) =>
    Object.entries(all).flatMap(([herb, weighings]) =>
      weighings.map(({ herbG, keptG }) => [nameOf(herb), herb, herbG, keptG]),
    ),
};

const reactions: Table = {
  header: ['id', 'lot', 'on', 'heard_on', 'signs', 'use', 'serious', 'closed', 'contact'],
  rows: (state, contacts) =>
    reactionsOf(state).map((each) => [
      each.id,
      each.lot,
      each.on,
      each.heardOn,
      each.signs,
      each.use,
      yes(each.serious),
      yes(each.closed),
      contacts ? each.contact : undefined,
    ]),
};

const reactionNotes: Table = {
  header: ['id', 'on', 'text', 'serious', 'closed'],
  rows: (state) =>
    reactionsOf(state).flatMap(({ id, followed }) =>
      followed.map(({ on, text, serious, closed }) => [id, on, text, yes(serious), yes(closed)]),
    ),
};

const lowMarks: Table = {
  header: ['ingredient', 'id', 'below_g'],
  rows: (state) => [...benchOf(state).low].map(([id, grams]) => [nameOf(id), id, grams]),
};

const settings: Table = {
  header: ['setting', 'value'],
  rows: ({ settings: all, labour }) => [
    ...Object.entries(all).flatMap(([name, value]) => (value === true ? [] : [[name, value ?? '']])),
    ...(labour
      ? [
          ['labour per hour', labour.ratePerHour ?? ''],
          ['labour currency', labour.currency],
          ['labour hours', labour.hours ?? ''],
        ]
      : []),
  ],
};

const tables: Readonly<Record<TableName, Table>> = {
  recipes,
  lots,
  batches,
  'batch-lines': batchLines,
  draws,
  tins,
  'batch-notes': batchNotes,
  prices,
  yields,
  reactions,
  'reaction-notes': reactionNotes,
  'low-marks': lowMarks,
  settings,
};

/** What stands in the book as one table, as comma-separated text, and how many rows it has. */
export const tableText = (
  state: BookState,
  name: TableName,
  contacts: boolean,
): { readonly text: string; readonly rows: number } => {
  const { header, rows } = tables[name];
  const all = rows(state, contacts);
  return { text: csvText(header, all), rows: all.length };
};
