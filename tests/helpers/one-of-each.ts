import type { BookEvent } from '../../core/book.ts';

const day = '2026-11-25';

/** What has to be there for the events below to have an effect. */
export const groundwork: readonly BookEvent[] = [
  {
    kind: 'lot-bought',
    lot: 'K12',
    ingredient: 'beeswax',
    grams: 500,
    on: '2026-11-01',
    bestBefore: '2027-05-14',
  },
  { kind: 'lot-bought', lot: 'S7', ingredient: 'shea-butter', grams: 300, on: '2026-11-01' },
  { kind: 'lot-bought', lot: 'O3', ingredient: 'olive-oil', grams: 1000, on: '2026-11-01' },
  {
    kind: 'batch-poured',
    lot: '26-BABA',
    name: 'Fernlea hand balm',
    lines: [{ ingredient: 'beeswax', grams: 40, draws: [{ lot: 'K12', grams: 40 }] }],
    count: 12,
    container: 'tin',
    madeOn: '2026-11-10',
    bestBefore: '2027-05-14',
    because: { kind: 'lot', lot: 'K12', ingredient: 'beeswax' },
    weighedG: 200,
  },
  { kind: 'tins-gone', lot: '26-BABA', count: 3, how: 'given', to: 'the fair', on: '2026-11-11' },
  {
    kind: 'reaction-noted',
    id: 'R1',
    on: '2026-11-12',
    heardOn: '2026-11-12',
    signs: 'itching',
    contact: 'Oriel, 555',
  },
  { kind: 'price-noted', thing: 'beeswax', price: '14.5', currency: 'EUR', pack: { amount: 500, unit: 'g' } },
  { kind: 'yield-noted', herb: 'chamomile', herbG: 20, oilInG: 160, oilOutG: 130 },
  {
    kind: 'reminder-set',
    hour: 9,
    minute: 0,
    zone: 'Europe/Lisbon',
    leadDays: [30, 7, 0],
    channel: 'hall',
  },
];

type Undoable = Exclude<
  BookEvent['kind'],
  | 'reminder-begun'
  | 'reminder-sent'
  | 'reminder-failed'
  | 'parts-put'
  | 'contact-forgotten'
  | 'forgetting-asked'
  | 'forgetting-stopped'
>;

/** One event of every kind that a member can undo; a new kind does not compile without one. */
export const oneOfEach: { readonly [K in Undoable]: Extract<BookEvent, { readonly kind: K }> } = {
  'recipe-saved': {
    kind: 'recipe-saved',
    recipe: 'fernlea-hand-balm',
    name: 'Fernlea hand balm',
    lines: [{ ingredient: 'beeswax', amount: 1, unit: 'part' }],
  },
  'recipe-renamed': { kind: 'recipe-renamed', recipe: 'fernlea-hand-balm', name: 'Hall balm' },
  'recipe-deleted': { kind: 'recipe-deleted', recipe: 'fernlea-hand-balm' },
  'settings-changed': { kind: 'settings-changed', settings: { region: 'uk', zone: 'Europe/London' } },
  'price-noted': {
    kind: 'price-noted',
    thing: 'beeswax',
    price: '16',
    currency: 'EUR',
    pack: { amount: 500, unit: 'g' },
  },
  'price-removed': { kind: 'price-removed', thing: 'beeswax' },
  'labour-set': { kind: 'labour-set', ratePerHour: '15', currency: 'EUR' },
  'yield-noted': { kind: 'yield-noted', herb: 'calendula', herbG: 40, oilInG: 320, oilOutG: 270 },
  'yield-removed': { kind: 'yield-removed', herb: 'chamomile' },
  'lot-bought': {
    kind: 'lot-bought',
    lot: 'K12',
    ingredient: 'beeswax',
    grams: 250,
    on: day,
    supplier: 'Fernlea Farm',
  },
  'oil-infused': {
    kind: 'oil-infused',
    lot: '26-DODO',
    ingredient: 'olive-oil',
    herbs: ['calendula'],
    grams: 270,
    on: day,
    bestBefore: '2027-05-25',
    because: { kind: 'house', months: 6, why: 'home-dried' },
    draws: [{ lot: 'O3', grams: 320 }],
    short: [],
  },
  'lot-opened': { kind: 'lot-opened', lot: 'S7', on: day },
  'lot-noted': { kind: 'lot-noted', lot: 'K12', on: day, text: 'a little dusty' },
  'lot-dated': { kind: 'lot-dated', lot: 'K12', bestBefore: null },
  'lot-priced': { kind: 'lot-priced', lot: 'K12', price: { amount: '14.5', currency: 'EUR' } },
  'lot-counted': { kind: 'lot-counted', lot: 'K12', leftG: 420.5, on: day },
  'stock-taken': { kind: 'stock-taken', draws: [{ lot: 'K12', grams: 12.3 }], how: 'wasted', on: day },
  'low-mark-set': { kind: 'low-mark-set', ingredient: 'beeswax', grams: 200 },
  'batch-poured': {
    kind: 'batch-poured',
    lot: '26-KIVO',
    name: 'Fernlea hand balm',
    lines: [
      { ingredient: 'beeswax', grams: 71.2, draws: [{ lot: 'K12', grams: 71.2 }] },
      { ingredient: 'shea-butter', grams: 100, draws: [{ lot: 'S7', grams: 100 }] },
      { ingredient: 'olive-oil', grams: 200, draws: [{ lot: 'O3', grams: 200 }] },
    ],
    count: 24,
    container: 'tin',
    madeOn: day,
    bestBefore: '2027-05-14',
    because: { kind: 'lot', lot: 'K12', ingredient: 'beeswax' },
    weighedG: 371.2,
  },
  'batch-corrected': {
    kind: 'batch-corrected',
    lot: '26-BABA',
    changes: {
      count: 11,
      lines: [{ ingredient: 'beeswax', grams: 45, draws: [{ lot: 'K12', grams: 45 }] }],
    },
    why: 'one tin was cracked',
  },
  'batch-noted': { kind: 'batch-noted', lot: '26-BABA', on: day, text: 'a little grainy' },
  'tins-gone': { kind: 'tins-gone', lot: '26-BABA', count: 6, how: 'given', to: 'the spring fair', on: day },
  'tins-back': { kind: 'tins-back', lot: '26-BABA', count: 1, from: 'the fair', on: day },
  'batch-looked': { kind: 'batch-looked', lot: '26-BABA', on: day, fine: true },
  'reaction-noted': { kind: 'reaction-noted', id: 'R2', on: day, heardOn: day, signs: 'a rash' },
  'reaction-followed': {
    kind: 'reaction-followed',
    id: 'R1',
    on: day,
    text: 'gone after two days',
    closed: true,
  },
  'reminder-set': {
    kind: 'reminder-set',
    hour: 7,
    minute: 30,
    zone: 'Europe/London',
    leadDays: [14],
    channel: 'hall',
  },
  'reminder-stopped': { kind: 'reminder-stopped' },
  'due-answered': { kind: 'due-answered', item: 'lot:K12', answer: 'used-up' },
};
