import type { Draw } from './event-fields.ts';
import type { BenchEvent, BenchEventOf } from './events.ts';

const ofDraws = (draws: readonly Draw[]): string[] => draws.map(({ lot }) => lot);

type Lines = readonly { readonly draws: readonly Draw[] }[] | undefined;

const ofLines = (lines: Lines): string[] => ofDraws(lines?.flatMap(({ draws }) => draws) ?? []);

type Touches<K extends BenchEvent['kind']> = (
  event: BenchEventOf<K>,
  linesBefore: (lot: string) => Lines,
) => readonly string[];

const itself = ({ lot }: { readonly lot: string }): readonly string[] => [lot];
const nothing = (): readonly string[] => [];

/** A new kind of event does not compile until it says here what it touches. */
const touches: { readonly [K in BenchEvent['kind']]: Touches<K> } = {
  'lot-bought': itself,
  'oil-infused': ({ lot, draws }) => [lot, ...ofDraws(draws)],
  'lot-opened': nothing,
  'lot-dated': itself,
  'lot-priced': nothing,
  'lot-noted': nothing,
  'lot-counted': itself,
  'stock-taken': ({ draws }) => ofDraws(draws),
  'low-mark-set': nothing,
  'batch-poured': ({ lot, lines }) => [lot, ...ofLines(lines)],
  // What the lines as they stood before had drawn is given back.
  'batch-corrected': ({ lot, changes }, before) => [lot, ...ofLines(before(lot)), ...ofLines(changes.lines)],
  'batch-noted': nothing,
  'tins-gone': itself,
  'tins-back': itself,
  'batch-looked': nothing,
  'reaction-noted': nothing,
  'reaction-followed': nothing,
  'reminder-set': nothing,
  'reminder-stopped': nothing,
  'reminder-begun': nothing,
  'reminder-sent': nothing,
  'reminder-failed': nothing,
  'due-answered': ({ item }) => [item.slice(item.indexOf(':') + 1)],
};

export const isBenchEvent = (event: { readonly kind: string }): event is BenchEvent =>
  Object.hasOwn(touches, event.kind);

/**
 * Codes of the lots and batches whose dates, amounts or draws an event may change. `linesBefore` gives the lines of a
 * batch as it stood before the event.
 */
export const touchedBy = (event: BenchEvent, linesBefore: (lot: string) => Lines): readonly string[] =>
  (touches[event.kind] as Touches<BenchEvent['kind']>)(event as never, linesBefore);
