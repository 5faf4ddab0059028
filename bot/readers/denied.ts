import { ingredientById } from '../../core/ingredients.ts';
import { type Last, oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { lotsIn } from './lots.ts';
import { smallNumbers } from './number.ts';

/** Longest message that puts right what was just told, in tokens. */
const mostTokens = 24;
/** "6 tins, not 5", where no more than that is said. */
const mostDenying = 8;

type Request = Readonly<Record<string, unknown>>;

const listOf = (value: unknown): readonly Request[] =>
  Array.isArray(value) ? value.filter((each): each is Request => typeof each === 'object') : [];

const words: Readonly<Record<string, string>> = {
  sold: 'sold|a sale|sales',
  given: 'given|gave|gifts?|a gift|given away',
  used: 'used',
  wasted: 'wasted|binned|thrown away|broken',
  kept: 'kept',
};

const named = (ingredient: unknown): readonly string[] => {
  const name = typeof ingredient === 'string' ? ingredientById(ingredient)?.name : undefined;
  const plain = name?.replace(/ \([^)]*\)$/, '').toLowerCase();
  return plain === undefined ? [] : [plain, plain.replace(/ (?:oil|butter|wax)$/, '')];
};

const numbered = (value: unknown): readonly string[] => {
  if (typeof value !== 'number') return [];
  const word = Object.keys(smallNumbers).find((each) => smallNumbers[each] === value);
  return word === undefined ? [String(value)] : [String(value), word];
};

const escaped = (text: string): string => text.replace(/[.*+?^${}()|[\]\\]/g, '\\$&');

const plainName = (value: unknown): readonly string[] =>
  typeof value === 'string' && value !== '' ? [escaped(value.replace(/^(?:the|my|our|a|an) /i, ''))] : [];

/** Everything that was told just before, in the words in which it may be denied now. */
const oldsOf = ({ request, lot }: Last): readonly string[] => {
  const all = [request, ...listOf(request.parts), ...listOf(request.purchases)];
  const sizes = listOf([request.size]).flatMap(({ amount }) => numbered(amount));
  return [
    ...sizes,
    ...plainName(lot),
    ...all.flatMap((each) => [
      ...numbered(each.count),
      ...numbered(each.grams),
      ...plainName(each.to),
      ...plainName(each.lot),
      ...plainName(each.container).map((name) => `${name}s?`),
      ...named(each.ingredient).map(escaped),
      ...(typeof each.how === 'string' ? [words[each.how] ?? ''] : []),
    ]),
  ].filter((each) => each !== '');
};

const unit = '(?: ?(?:tins?|jars?|pots?|tubes?|sticks?|k?g|grams?|ml|oz|of them))?';

/** "Not", "it wasn't", "I didn't sell". */
const no =
  "(?:(?:it |that |they )?(?:was|were|is)(?:n'?t| not)|not|instead of|rather than|(?:i|we|they|he|she) (?:didn'?t|did not|never) (?:\\w+ ){1,2}|(?:oh )?(?:(?:i|we) see )?(?:that )?(?:i|we) (?:wrote|said|typed|put|noted|told you))";
const date =
  '\\d{1,4}[-/.]\\d{1,2}(?:[-/.]\\d{1,4})?|(?:\\d{1,2}(?:st|nd|rd|th)? )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*(?: \\d{1,4})?|today|yesterday|(?:mon|tues|wednes|thurs|fri|satur|sun)day';

/** "…, not the market", "not 5 but 6". */
const denialOf = (last: Last): RegExp | undefined => {
  const olds = oldsOf(last).toSorted((a, b) => b.length - a.length);
  return olds.length === 0
    ? undefined
    : new RegExp(
        `[\\s,;-]*\\b(?:and |but )?${no} ?(?:(?:in|at|to|from|on|for|with|of|lot|batch|before) )?(?:the |my |our |an? )?(?:${[...olds, date].join('|')})${unit}(?![\\w-])(?:\\s*[,;.-]*\\s*but\\b)?`,
        'iu',
      );
};

/** "Typo, 6 tins", "wrong place, it was the fair", "that was wrong, I sold 6". */
const wrong =
  /^\W*(?:(?:sorry|oops|no|ah|oh|hm+|wait|damn|argh)\W+)*(?:(?:a )?typo|erratum|wrong (?:place|batch|lot|date|day|number|count|person|amount|name|code|way round|one|shop|figure)|that(?:'s| is| was) (?:wrong|not right|a typo|my mistake)|(?:i|we) (?:got|had|wrote|typed|put) (?:that|it) (?:wrong|down wrong)|my (?:mistake|bad)|correction|(?:i|we) (?:mis(?:counted|read|typed|spoke|remembered)|counted wrong|mixed (?:them|that|it) up))\b[\s,:;.!-]*(?:(?:it|that|they|there) (?:was|were|is|'s|should be|should have been)\b\s*|it's\s+|should (?:be|have been)\b\s*)?/i;
/** "On Saturday, I should have said". */
const afterwards =
  /[\s,;.-]*\b(?:(?:i|we) (?:should have (?:said|written)|(?:meant|forgot|wanted) to (?:say|write|type|add|mention|tell you)|forgot)|by the way|btw|fyi|sorry|is what (?:i|we) meant|(?:i|we) (?:meant|mean)|that is|by mistake)\W*$/i;

/** "On Saturday", "last Friday": a day by itself, right after what was told without one. */
const onlyDay =
  /^\W*(?:(?:and|on|last|this|it was|that was|the)\s+)*(?:yesterday|(?:mon|tues|wednes|thurs|fri|satur|sun)day|\d{1,2}(?:st|nd|rd|th)? (?:of )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)[a-z]*)\W*$/i;

const lead =
  /^\W*(?:but\W+)?(?:(?:no|nah|sorry|apologies|oops|wait|oh|it(?:'s| was| is| must be| has to be)|that(?:'s| was| is| must be))\W+)*/i;

/** "Can you change that to 12?", "please make it 5". */
const changed =
  /^\W*(?:(?:please|pls|ok|oh|sorry|and)\W+)*(?:(?:can|could|would|will) you (?:please )?)?(?:change|correct|alter|set|turn|make) (?:it|that|this|the (?:number|amount|count|lot|date|place|price|day|last one)|(?:lot|date)(?= (?:to|into)\b))(?: (?:to|into))? (?=\S)/i;

/** "X11, not X1": a lot that was just bought. */
const bareCode = /^\p{Lu}{1,4}[-/]?\d{1,6}\W*$/u;

/** "Please change it to 12" is "no, 12". */
const asChange = (text: string): string => {
  const lead = changed.exec(text)?.[0];
  if (lead === undefined) return text;
  const rest = text.slice(lead.length).replace(/\s*\?\s*$/, '');
  return `no, ${/\blot\b/i.test(lead) ? 'lot ' : ''}${rest}`;
};

/** What a message says once what it denies is taken out; `denied` where it denied something that was told before. */
export interface Denied {
  readonly reading: Reading;
  readonly denied: boolean;
}

/**
 * "6 not 5", "not the market, the fair", "typo, 6 tins": the same as "no, 6", where the message just before told of that.
 * Anything else stays as it is.
 */
export const withoutDenied = oncePerReading((reading): Denied => {
  const { last, tokens } = reading;
  const as = { reading, denied: false };
  const text = asChange(reading.text);
  const isChange = text !== reading.text;
  if (!last || tokens.length > mostTokens || text.includes('?')) return as;
  const gone = denialOf(last);
  const bare = gone ? text.replace(gone, ' ') : text;
  const denied = bare !== text;
  const short = onlyDay.test(text) ? `no, ${text}` : bare.replace(wrong, 'no, ').replace(afterwards, '');
  const isDenial = reading.denies === true && tokens.length <= mostDenying && lotsIn(reading).length === 0;
  if ((short === text && !isDenial && !isChange) || !/[\p{L}\d]/u.test(short.replace(/^no, /, ''))) return as;
  const meant = short.replace(lead, '').trim();
  const isCode = denied && last.request.action === 'bought' && bareCode.test(meant);
  return { reading: readAgain(`no, ${isCode ? 'lot ' : ''}${meant}`, reading), denied };
});
