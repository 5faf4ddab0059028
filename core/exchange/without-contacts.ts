import type { BookEntry } from '../book.ts';

/** The entry without a reaction's contact, for those who may not see it; the very same one where it holds none. */
export const withoutContacts = (entry: BookEntry, only?: string): BookEntry => {
  const { event } = entry;
  const meant = (id: string): boolean => only === undefined || id === only;
  if (event.kind === 'reaction-noted' || event.kind === 'reaction-followed') {
    if (event.contact === undefined || !meant(event.id)) return entry;
    const { contact: _contact, ...rest } = event;
    return { ...entry, event: rest };
  }
  if (event.kind !== 'parts-put') return entry;
  const holds = event.puts.some(
    ({ part, value }) => part === 'reaction' && value?.contact !== undefined && meant(value.id),
  );
  if (!holds) return entry;
  const puts = event.puts.map((put) => {
    if (put.part !== 'reaction' || put.value === null || !meant(put.value.id)) return put;
    const { contact: _contact, ...value } = put.value;
    return { ...put, value };
  });
  return { ...entry, event: { ...event, puts } };
};
