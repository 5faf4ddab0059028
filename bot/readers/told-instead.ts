import { lotKey } from '../../core/bench/codes.ts';
import { tinsLeft } from '../../core/bench/state.ts';
import { defined } from '../../core/defined.ts';
import { nameKey } from '../../core/names.ts';
import type { Trouble } from '../answer.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { isAnew } from './batch-anew.ts';
import { type How, howIn } from './batch-gone-verbs.ts';
import type { BenchReading } from './bench-reading.ts';
import { nameAfter } from './bench-text.ts';
import { withoutDenied } from './denied.ts';
import { codeAnew, dayIn, insteadWeight, numbersIn, putRight, type Request, tookInstead } from './instead.ts';

const partsOf = ({ parts }: Request): readonly Request[] =>
  Array.isArray(parts) ? (parts as readonly Request[]) : [];

/** "No, to the library": a place by itself, and nothing else after it. */
const toPlace = /\b(?:(?:to|at|from)\s+(?=\p{L})|for\s+(?=(?:the|our|my)\s+\p{L}))/iu;
/** "It was the library, not the school". */
const wasPlace = /\b(?:it|that|they) (?:was|were|went) (?:to |at )?(?=(?:the|our|my) \p{L})/iu;
const opening =
  '^\\W*(?:(?:no|nope|nah|sorry|apologies|erratum|correction|oops|whoops|wait|pardon|actually|oh|hang on|hold on|i mean|i meant|it was|that was|rather)\\b\\W*)+';
/** "No, the honey shop got 5", "wait no, Mia gets 5". */
const gotPlace = new RegExp(
  `${opening}((?:the|our|my) (?:[\\p{L}'’-]+ ){0,3}?[\\p{L}'’-]+|(?!(?:it|that|this|they|we|i|he|she|you|there|who|what|the|our|my|a|an|of|only|just)\\b)[\\p{L}'’-]+) (?:gets|got|took|had|has|bought|received|who got)(?= \\S+\\W*$)`,
  'iu',
);
/** "No, the fair", "I mean Beth", "sorry, it was Beth": a name, and nothing else. */
const barePlace = new RegExp(
  `${opening}((?:(?:the|our|my) (?:[\\p{L}'’-]+ ){0,3}?|(?=\\p{Lu}))[\\p{L}'’-]+(?: \\p{Lu}[\\p{L}'’-]+)?)\\W*$`,
  'iu',
);
const anyName = new RegExp(
  `${opening}(?!(?:it|that|this|they|them|we|i|he|she|you|there)\\b)((?:[\\p{L}'’-]+ ){0,3}?[\\p{L}'’-]+)\\W*$`,
  'iu',
);
const isCapital = (name: string): boolean =>
  /^(?:(?:the|our|my) |\p{Lu})/iu.test(name) && !/^\p{Ll}/u.test(name.replace(/^(?:the|our|my) .*/iu, 'X'));
const noName =
  /_|\b(?:tins?|jars?|pots?|sticks?|tubes?|batch|lot|day|other|rest|same|wrong|right|lovely|nice|fun|great|good|fine|yesterday|today|sold|given|gave|kept|binned|wasted|used|undo|thanks?|mistake|no|nothing|none|all|ok|okay)\b/i;
const notThat = /,?\s*(?:and )?not (?:to |at |from |of )?[^,.;!?\d]{2,40}$/i;

/** Where it went in truth, and whether the rest of the message is only about that. */
const placeIn = (bench: BenchReading, denied: boolean): { readonly to?: string; readonly rest: string } => {
  const text = bench.rest.text.replace(notThat, '');
  const subject = gotPlace.exec(text);
  if (subject?.[1]) return { to: subject[1], rest: text.slice(subject[0].length) };
  const found = nameAfter(text, toPlace) ?? nameAfter(text, wasPlace);
  if (found && !noName.test(found.name)) {
    const { from, to } = found.place;
    return { to: found.name, rest: text.slice(0, from) + text.slice(to) };
  }
  const name = (denied ? anyName : barePlace).exec(text)?.[1];
  return name !== undefined &&
    !noName.test(name) &&
    (denied || isCapital(name)) &&
    bench.rest.items.every((item) => !/[Ri]/.test(item.letter))
    ? { to: name, rest: '' }
    : { rest: text };
};

const onlyAnew = ({ rest }: BenchReading, left: string): boolean =>
  rest.items.every((item) => isAnew(item) || !left.includes(rest.text.slice(item.from, item.to)));

/** What is told anew of tins that went: so many, another way, to a place, on a day, of another batch. */
interface GoneAnew {
  readonly count?: number | undefined;
  readonly how?: How | undefined;
  readonly to?: string | undefined;
  readonly on?: string | undefined;
  readonly lot?: string | undefined;
}

/** The other batch it was of; null where the code said is none. */
const otherLot = ({ bench }: Reading, { lots }: BenchReading, was: string): string | undefined | null => {
  const [code, second] = lots;
  if (code === undefined) return undefined;
  if (second || !bench.batches.has(lotKey(code.code))) return null;
  return lotKey(code.code) === lotKey(was) ? undefined : code.code;
};

const isCount = (count: number | undefined): boolean =>
  count === undefined || (Number.isInteger(count) && count > 0);

/** "No, I sold 6": the verb that was told before says nothing new, another one does. */
const verbSaid =
  /\b(?:(?:i|we|he|she|they)(?:'ve| have)? )?(?:only |really |actually |just )?(?:gave|given|(?:they were |a |as )?(?:gifts?|presents?)|sold|kept|used|binned|threw|thrown|broke|lost|(?:(?:was|were|got|are|is|had) )?(?:broken|squashed|cracked|dented|damaged|ruined|melted|leaking|leaked|spoiled|spoilt|crushed|smashed|bad))(?: (?:it|them|away|out))*\b/i;

const goneAnew = (
  bench: BenchReading,
  request: Request,
  reading: Reading,
  denied: boolean,
): GoneAnew | undefined => {
  const said = verbSaid.exec(bench.rest.text)?.[0];
  const way = said === undefined ? undefined : howIn(said, false);
  const how = way === undefined || way === request.how || way === 'back' ? undefined : way;
  const [number, second] = numbersIn(bench);
  const { to, rest } = placeIn(bench, denied);
  const lot = otherLot(reading, bench, String(request.lot));
  const isOther = bench.rest.items.some(
    ({ letter, from, to: end }) =>
      /[gvi%tR]/.test(letter) && (to === undefined || !to.includes(bench.rest.text.slice(from, end))),
  );
  const plain = said === undefined ? rest : rest.replace(said, '');
  if (second || lot === null || isOther || !onlyAnew(bench, plain) || !isCount(number?.value))
    return undefined;
  const anew = defined({ count: number?.value, how, to, on: dayIn(bench), lot });
  return Object.keys(anew).length > 0 ? anew : undefined;
};

const whichPart: Trouble = {
  code: 'missing',
  text: 'Which of them was otherwise? Say it with the name: "no, Ben got 3".',
};

const sameName = (one: unknown, other: string): boolean =>
  typeof one === 'string' && nameKey(one.replace(article, '')) === nameKey(other.replace(article, ''));
const article = /^(?:the|my|our|a|an) /i;

/** "No, Ben got 3", after "gave 3 to Anna and 2 to Ben": the one part of that name. */
const afterSeveral = (said: Reading, denied: boolean, last: Request): Claim | undefined => {
  const bench = putRight(said);
  const anew = bench && goneAnew(bench, last, said, denied);
  if (!anew) return undefined;
  const parts = partsOf(last);
  const { count, to } = anew;
  const found = parts.filter((part) => to !== undefined && sameName(part.to, to));
  if (found.length !== 1 || count === undefined)
    return anew.on === undefined ? refuse(whichPart, insteadWeight) : undefined;
  const now = parts.map((part) => (part === found[0] ? { ...part, count } : part));
  return claim({ ...last, parts: now, instead: true }, insteadWeight, [tookInstead]);
};

/** "It was 39 jars, not 40", "correct 26-KIVO: it was 25 tins": more than can have gone, so it is the pour that is put right. */
const isOfPour = (
  { bench }: Reading,
  { action, lot, parts }: Request,
  count: number | undefined,
): boolean => {
  const batch = typeof lot === 'string' ? bench.batches.get(lotKey(lot)) : undefined;
  if (!batch || action !== 'gone' || count === undefined) return false;
  const went = partsOf({ parts }).reduce((sum, part) => sum + Number(part.count ?? 0), 0);
  return count > tinsLeft(batch) + went;
};

/** "No, it was 4", "sorry, to the library", "that was yesterday": after tins went, or came back. */
const afterGone = (said: Reading, denied: boolean, last: Request): Claim | undefined => {
  const [part, second] = partsOf(last);
  if (second) return afterSeveral(said, denied, last);
  const bench = part ? putRight(said) : undefined;
  const was = String(last.lot);
  const anew = bench && goneAnew(bench, last, said, denied);
  if (!part || !anew || isOfPour(said, last, anew.count)) return undefined;
  const { count, how, to, on, lot } = anew;
  const { all: _all, ...same } = part;
  const now = { ...(count === undefined ? part : { ...same, count }), ...defined({ to }) };
  const changed = lot === undefined ? { instead: true } : { lot, instead: was };
  return claim({ ...last, parts: [now], ...changed, ...defined({ how, on }) }, insteadWeight, [tookInstead]);
};

/** What is put right of tins that went or came back, right after it was told. */
export const claimGoneInstead = (reading: Reading): Claim | undefined => {
  const { last } = reading;
  if (last?.topic !== 'batch') return undefined;
  const meant = codeAnew(reading, last);
  if (meant) return meant;
  if (!last.done || !/^(?:gone|back)$/.test(String(last.request.action))) return undefined;
  const { reading: said, denied } = withoutDenied(reading);
  return typeof last.request.lot === 'string' ? afterGone(said, denied, last.request) : undefined;
};
