import { readBench } from '../readers/bench-reading.ts';
import { isPerPerson } from '../readers/group-number.ts';
import { letters } from '../readers/lexicon.ts';
import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readAgain } from '../understand.ts';
import { tellsPlainly } from './guards.ts';

// "Forgot one: poured 10 tins of 15 g of Tarn balm last Friday": a pour that is whole in itself, and talk around it.

const mostTokens = 80;
const bounds = /[:;!\n]\s|\.\s+(?=\p{L})|,\s(?!\d)|\s-\s/gu;
const pours = /\b(?:pour(?:ed|s)?|made|filled|cast)\b/i;
/** "Poured … tonight" is over. */
const tonight = /\btonight\W*$/i;
/** What was done besides is told by itself. */
const doesMore =
  /\b(?:sold|gave|given|kept|keep|binned|threw|thrown|broke|broken|lost|returned|back|opened|bought|used|went|took|spilled|spilt|weighed|bath|degrees|lots?)\b/i;

const forEach = /\b(?:each|apiece|per)\b/i;

const clausesIn = (text: string): readonly Place[] => {
  const stops = [...text.matchAll(bounds)].map(({ index, 0: sign }) => index + sign.length);
  const starts = [0, ...stops];
  return starts.map((from, at) => ({ from, to: starts[at + 1] ?? text.length }));
};

const isIn = (item: Place, { from, to }: Place): boolean => item.from >= from && item.from < to;

/** The pour alone, and what was passed over; undefined where what stands around it may belong to it. */
export const pourAlone: (
  reading: Reading,
) => { readonly reading: Reading; readonly besides: readonly string[] } | undefined = oncePerReading(
  (reading) => {
    const { text, tokens } = reading;
    if (tokens.length > mostTokens || text.includes('?') || !pours.test(text)) return undefined;
    const bench = readBench(reading);
    const clauses = clausesIn(text);
    const holdsPour = (clause: Place): boolean => {
      const own = bench.rest.items.filter((item) => isIn(item, clause)).map(({ letter }) => letter);
      return (
        pours.test(text.slice(clause.from, clause.to)) &&
        own.includes(letters.container) &&
        own.includes(letters.number) &&
        own.some((letter) => letter === letters.recipe || letter === letters.ingredient)
      );
    };
    const [main, second] = clauses.filter(holdsPour);
    if (!main || second || clauses.length < 2) return undefined;
    const others = clauses.filter((clause) => clause !== main);
    const isTalk = (clause: Place): boolean =>
      !doesMore.test(text.slice(clause.from, clause.to)) &&
      ![...bench.lots, ...bench.days].some((said) => isIn(said, clause)) &&
      !bench.rest.items.some((item) => isIn(item, clause) && /^[Rgvt%dpr]$/.test(item.letter));
    const said = text.slice(main.from, main.to).replace(/[\s,.:;!-]+$/, '');
    // "12 people …, 2 tins each" counts something else than "2 tins".
    if (forEach.test(said) && bench.rest.items.some((item) => isPerPerson(item, bench.rest.text)))
      return undefined;
    if (!others.every(isTalk) || !tellsPlainly(said.replace(tonight, ''))) return undefined;
    return {
      reading: readAgain(said, reading),
      besides: others.map(({ from, to }) => text.slice(from, to).replace(/[\s,.:;!-]+$/, '')),
    };
  },
);
