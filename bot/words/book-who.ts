import { Temporal } from 'temporal-polyfill';
import type { BookEntry } from '../../core/book.ts';
import type { Tools } from '../topic.ts';

const months = 'Jan Feb Mar Apr May Jun Jul Aug Sep Oct Nov Dec'.split(' ');

type Zoned = Pick<Tools, 'settings'>;

/** The local day of an entry. */
export const dayOf = ({ at }: Pick<BookEntry, 'at'>, { settings }: Zoned): string =>
  Temporal.Instant.from(at)
    .toZonedDateTimeISO(settings.zone ?? 'UTC')
    .toPlainDate()
    .toString();

/** "25 Nov", with the year where it is not this one. */
export const shortDay = (day: string, today: string): string => {
  const [year = '', month = '1', date = '1'] = day.split('-');
  const text = `${Number(date)} ${months[Number(month) - 1]}`;
  return year === today.slice(0, 4) ? text : `${text} ${year}`;
};

/** What somebody was called when they wrote it; their id where no name was recorded. */
export const whoOf = ({ name, who }: Pick<BookEntry, 'name' | 'who'>): string => name ?? who;

/** "Hazel, 25 Nov". */
export const whoWhen = (entry: BookEntry, tools: Pick<Tools, 'settings' | 'at'>): string => {
  const today = dayOf({ at: new Date(tools.at).toISOString() }, tools);
  return `${whoOf(entry)}, ${shortDay(dayOf(entry, tools), today)}`;
};
