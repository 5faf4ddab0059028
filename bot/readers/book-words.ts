import type { BookEvent } from '../../core/book.ts';
import type { TableName } from '../../core/exchange/tables.ts';
import type { Trouble } from '../answer.ts';

/** A change's kind as makers call it. */
export const changeKinds = {
  pour: ['batch-poured'],
  infusion: ['oil-infused'],
  purchase: ['lot-bought'],
  price: ['price-noted', 'price-removed', 'lot-priced'],
  recipe: ['recipe-saved', 'recipe-renamed', 'recipe-deleted'],
  setting: ['settings-changed'],
  gift: ['tins-gone', 'tins-back'],
  note: ['batch-noted', 'batch-looked', 'lot-noted'],
  opening: ['lot-opened'],
  correction: ['batch-corrected', 'lot-counted', 'lot-dated'],
  use: ['stock-taken'],
  mark: ['low-mark-set'],
  reaction: ['reaction-noted', 'reaction-followed'],
  reminder: ['reminder-set', 'reminder-stopped', 'due-answered'],
  labour: ['labour-set'],
  yield: ['yield-noted', 'yield-removed'],
  import: ['parts-put'],
} as const satisfies Readonly<Record<string, readonly BookEvent['kind'][]>>;
export type ChangeKind = keyof typeof changeKinds;
export const changeKindNames = Object.keys(changeKinds) as [ChangeKind, ...ChangeKind[]];

const kindWords: Readonly<Record<ChangeKind, string>> = {
  pour: 'pours? pour poured pouring batch',
  infusion: 'infusion infused infusing',
  purchase: 'purchases? bought buying lot delivery',
  price: 'prices?',
  recipe: 'recipes? save saving rename renaming deletion',
  setting: 'settings? region units currency',
  gift: 'gifts? gift gave giving given sale sold',
  note: 'notes?',
  opening: 'openings? opened opening',
  correction: 'corrections? counts? counting weighing weighed stocktake dating date',
  use: 'use using used waste wasting',
  mark: 'marks? minimum warnings? threshold alerts? alarm limit',
  reaction: 'reactions? report rash',
  reminder: 'reminders?',
  labour: 'labour labor',
  yield: 'yields?',
  import: 'import merge',
};

/** What kind of change a word stands for. */
export const kindOf = (word: string): ChangeKind | undefined =>
  changeKindNames.find((kind) => new RegExp(`^(?:${kindWords[kind].split(' ').join('|')})$`, 'i').test(word));

/** Words for the tables of an export. */
export const tablesOf = (word: string): readonly TableName[] | undefined => {
  const found = Object.entries(tableWords).find(([words]) => words.split(' ').includes(word.toLowerCase()));
  return found?.[1];
};

const tableWords: Readonly<Record<string, readonly TableName[]>> = {
  'recipe recipes': ['recipes'],
  'lot lots stock': ['lots'],
  'batch batches pours': ['batches', 'batch-lines', 'draws', 'tins', 'batch-notes'],
  'draws draw-down': ['draws'],
  'tins gifts sales': ['tins'],
  'price prices': ['prices'],
  'yield yields': ['yields'],
  'reaction reactions': ['reactions', 'reaction-notes'],
  'setting settings': ['settings'],
};

const trouble = (code: Trouble['code'], text: string): Trouble => ({ code, text });

export const oneAtATime = trouble(
  'not-understood',
  'I undo one change at a time, your own last one first. Say "undo"; for an older one ask "history" and say "undo" with its number.',
);
export const undoWhat = trouble(
  'not-understood',
  'I can undo your last change: "undo". Or one of a kind: "undo the last price", "undo the pour". Or by its number in "history": "undo 12".',
);
export const exportHow = trouble(
  'not-understood',
  'I export all of the book as one JSON file ("export"), or as tables for a spreadsheet ("export as csv", "export recipes as csv").',
);
export const importWhat = trouble(
  'missing',
  'Import what? Attach the JSON file that "export" gave you to the message that says "import". In the terminal name it: import data/book/files/book-2026-11-25.json',
);
export const confirmHow = trouble(
  'missing',
  'That needs the word I gave you in capitals. Say "import" or "forget everything" first, then what I answer.',
);
export const forgetWhat = trouble(
  'not-understood',
  'I can forget the contact of a reaction ("forget the contact of R3") or, asked by whoever manages the group, all of this book ("forget everything"). To take back a slip, say "undo".',
);
