import { type BenchReading, readBench } from '../readers/bench-reading.ts';
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

interface Looked {
  readonly text: string;
  readonly bench: BenchReading;
}

const lettersIn = ({ bench }: Looked, clause: Place): readonly string[] =>
  bench.rest.items.filter((item) => isIn(item, clause)).map(({ letter }) => letter);

const saidIn = ({ text }: Looked, { from, to }: Place): string =>
  text.slice(from, to).replace(/[\s,.:;!-]+$/, '');

const isOfPour = (letterList: readonly string[]): boolean =>
  letterList.includes(letters.container) &&
  letterList.includes(letters.number) &&
  letterList.some((letter) => letter === letters.recipe || letter === letters.ingredient);

const holdsPour = (looked: Looked, clause: Place): boolean =>
  pours.test(saidIn(looked, clause)) && isOfPour(lettersIn(looked, clause));

/** A lot, or a day that is not today: "new from today" says no other. */
const namesLotOrDay = ({ bench }: Looked, clause: Place): boolean =>
  bench.lots.some((said) => isIn(said, clause)) ||
  bench.days.some((day) => isIn(day, clause) && day.past !== bench.today);

/** Nothing is told in it that a pour is made of, nor of anything else. */
const isTalk = (looked: Looked, clause: Place): boolean =>
  !doesMore.test(saidIn(looked, clause)) &&
  !namesLotOrDay(looked, clause) &&
  !lettersIn(looked, clause).some((letter) => /^[Rgvt%dpr]$/.test(letter));

/** "I'd say 15 g in each". */
const opinion = /^\W*(?:i(?:'d| would) say|i make it|that is|that's|so|all of them|all)\s+/i;

const holdsThing = (looked: Looked, clause: Place): boolean =>
  pours.test(saidIn(looked, clause)) ||
  lettersIn(looked, clause).some((letter) => /^[Rcgv%i]$/.test(letter)) ||
  namesLotOrDay(looked, clause);

/** "The children filled 21 pots of it, I'd say 15 g in each": what a pour is made of, in several clauses. */
const joined = (looked: Looked, clauses: readonly Place[]): readonly Place[] => {
  const kept = clauses.filter((clause) => holdsThing(looked, clause));
  const all = kept.flatMap((clause) => lettersIn(looked, clause));
  const has = (letter: string): number => all.filter((each) => each === letter).length;
  const isOne = has(letters.container) === 1 && has(letters.recipe) + (has('%') > 1 ? 1 : 0) === 1;
  const isWhole = isOne && isOfPour(all) && kept.some((clause) => pours.test(saidIn(looked, clause)));
  return isWhole && !kept.some((clause) => doesMore.test(saidIn(looked, clause))) ? kept : [];
};

/** The pour alone, and what was passed over; undefined where what stands around it may belong to it. */
export const pourAlone: (
  reading: Reading,
) => { readonly reading: Reading; readonly besides: readonly string[] } | undefined = oncePerReading(
  (reading) => {
    const { text, tokens } = reading;
    if (tokens.length > mostTokens || text.includes('?') || !pours.test(text)) return undefined;
    const looked: Looked = { text, bench: readBench(reading) };
    const clauses = clausesIn(text);
    const talk = new Set(clauses.filter((clause) => isTalk(looked, clause)));
    const whole = clauses.filter((clause) => holdsPour(looked, clause));
    const single = whole.length === 1 && clauses.every((each) => each === whole[0] || talk.has(each));
    const main = single ? whole : joined(looked, clauses);
    if (main.length === 0 || clauses.length < 2) return undefined;
    const others = clauses.filter((clause) => !main.includes(clause));
    const said = main.map((clause) => saidIn(looked, clause).trim().replace(opinion, '')).join(', ');
    // "12 people …, 2 tins each" counts something else than "2 tins".
    if (
      forEach.test(said) &&
      looked.bench.rest.items.some((item) => isPerPerson(item, looked.bench.rest.text))
    )
      return undefined;
    if (!others.every((clause) => talk.has(clause)) || !tellsPlainly(said.replace(tonight, '')))
      return undefined;
    return {
      reading: readAgain(said, reading),
      besides: others.map((clause) => saidIn(looked, clause).trim()),
    };
  },
);
