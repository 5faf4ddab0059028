import type { BookEvent } from '../book.ts';
import { mostPuts, type PartPut, type PartsPut } from './part.ts';

/** Puts as events, none of them longer than an event may be. */
export const putEvents = (because: PartsPut['because'], puts: readonly PartPut[]): BookEvent[] =>
  Array.from({ length: Math.ceil(puts.length / mostPuts) }, (_, at) => ({
    kind: 'parts-put',
    because,
    puts: puts.slice(at * mostPuts, (at + 1) * mostPuts),
  }));
