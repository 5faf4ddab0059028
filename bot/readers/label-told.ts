import type { Reading } from '../reading.ts';
import { cover } from './check-parts.ts';
import { type DaySaid, daysIn } from './days.ts';
import { lotsIn } from './lots.ts';
import type { Board } from './target.ts';

type Told = Readonly<Record<string, unknown>>;

const making = /\b(made|poured|mixed|filled|cooked)\b[^.;:!?\n]{0,50}$/i;
/** "B4 is the lot". */
const lotLast =
  /\b([A-Z0-9][A-Z0-9/-]{0,20}\d[A-Z0-9/-]{0,8})\s+(?:is|was) (?:the |our |its )?(?:lot|batch)\b/i;
const covered = (board: Board, from: number, to: number): void => cover(board, from, to);

/** What a day beside a label is: best before, or the day it was made. */
const dayField = (reading: Reading, day: DaySaid): Told => {
  if (day.role === 'best-before') return { bestBefore: day.future };
  return making.test(reading.text.slice(Math.max(0, day.from - 60), day.from)) ? { madeOn: day.past } : {};
};

/** "Lot is H3", "made yesterday", "best before 17.5.2027": lots and days in all the forms that the bench knows. */
export const takeLotAndDays = (board: Board, reading: Reading, known: Told): Told => {
  let told: Told = {};
  for (const day of daysIn(reading).days) {
    const field = dayField(reading, day);
    if (Object.keys(field).length > 0) covered(board, day.from, day.to);
    told = { ...field, ...told };
  }
  const last = lotLast.exec(reading.text);
  if (last?.[1]) {
    covered(board, last.index, last.index + last[0].length);
    return { ...told, ...known, lot: last[1] };
  }
  const lot = lotsIn(reading).find(({ kind, cued }) => kind === 'new' && cued);
  if (lot && /\d/.test(lot.code)) {
    covered(board, lot.from, lot.to);
    told = { lot: lot.code, ...told };
  }
  // A day that was read as the day it was made is not the day of first sale too.
  const { on, ...rest } = known;
  return { ...told, ...(told.madeOn === undefined || told.madeOn !== on ? known : rest) };
};

const asWhat =
  /"([^"\n]{1,140})"\s+(?:on it\s+)?as\s+(?:the\s+|our\s+|my\s+)?(maker|contact|name|title|address)\b/i;
const mail = /(?<![\w.+-])[\w.+-]{1,40}@[\w-]{1,40}(?:\.[\w-]{1,20}){1,4}/;
const site =
  /\b(?:web ?site|web ?page|web|site|online at|contact|url)\b(?:\s+(?:is|at|address)|:)*\s+((?:https?:\/\/)?[\w-]{1,40}(?:\.[\w-]{2,20}){1,4}(?:\/[\w/-]{0,40})?)/i;
const phone =
  /\b(?:contact|phone|tel(?:ephone)?|call|mobile)\b\.?(?:\s+(?:is|number|no\.?|us|on|at)|:)*\s*(\+?\d[\d ()-]{5,18}\d)/i;
const madeBy =
  /\b(?:[Mm]ade by|[Mm]aker(?: is|:)?|[Pp]roduced by|[Mm]anufacturer(?: is|:)?|[Rr]esponsible person(?: is|:)?)\s+((?:the\s+)?[A-Z][^,;.\n"?!]{1,100}?)(?=\s*(?:[,;.\n?!]|$|\b(?:please|thanks|and)\b))/;
const called =
  /\b(?:[Cc]alled|[Nn]amed|name it|call it|title)\s+((?:[A-Z][\w'&-]*\s?){1,6})(?=\s*(?:[,;.\n?!]|$))/;

const fieldOf = (word: string): string => {
  const plain = word.toLowerCase();
  if (plain === 'title') return 'name';
  return plain === 'address' ? 'maker' : plain;
};

/** Maker, contact and name that stand there without quotes, or before what they are. */
export const takeBareNames = (board: Board, text: string): Told => {
  const told: Record<string, unknown> = {};
  const use = (field: string, match: RegExpExecArray | null, said: string | undefined): void => {
    if (!match || !said || told[field] !== undefined) return;
    told[field] = said.trim();
    covered(board, match.index, match.index + match[0].length);
  };
  const quoted = asWhat.exec(text);
  if (quoted) use(fieldOf(quoted[2] ?? ''), quoted, quoted[1]);
  const written = mail.exec(text);
  use('contact', written, written?.[0]);
  for (const [field, pattern] of [
    ['contact', site],
    ['contact', phone],
    ['maker', madeBy],
    ['name', called],
  ] as const) {
    const match = pattern.exec(text);
    use(field, match, match?.[1]);
  }
  return told;
};
