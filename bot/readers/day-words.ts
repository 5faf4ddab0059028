import { createRequire } from 'node:module';
import { two } from './day-calendar.ts';

/** A message's words only come here when they are a date: chrono alone takes "at 5 ml" for five o'clock. */
const load = createRequire(import.meta.url);
type Chrono = typeof import('chrono-node/en');
let chrono: Chrono | undefined;

/** The day chrono-node makes of words such as "last Saturday", as a plain calendar day, seen from noon of today. */
export const inWords = (said: string, today: string): string | undefined => {
  // Loaded when the first date in words is read: it costs a one-shot command a tenth of its time.
  chrono ??= load('chrono-node/en') as Chrono;
  const noon = new Date(`${today}T12:00:00Z`);
  const start = chrono.parse(said, { instant: noon, timezone: 0 })[0]?.start;
  const [year, month, day] = [start?.get('year'), start?.get('month'), start?.get('day')];
  if (year == null || month == null || day == null) return undefined;
  return `${year}-${two(month)}-${two(day)}`;
};
