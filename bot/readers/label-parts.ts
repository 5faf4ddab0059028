import { defined } from '../../core/defined.ts';
import type { Trouble } from '../answer.ts';
import { cover } from './check-parts.ts';
import { datePattern, dayWritten } from './date-said.ts';
import { takeBareNames } from './label-told.ts';
import { isPlaceOnly, regionBesides, regionSaid } from './region-said.ts';
import type { Board } from './target.ts';

/** What a message says about a label besides recipe, amounts and sizes. */
export type PartsSaid = Readonly<Record<string, unknown>>;

const take = (board: Board, text: string, pattern: RegExp): RegExpExecArray | undefined => {
  const match = pattern.exec(text);
  if (match) cover(board, match.index, match.index + match[0].length);
  return match ?? undefined;
};

/** Countries where EU law applies: the Union and the rest of the European Economic Area. */
const memberStates =
  'austria|belgium|bulgaria|croatia|cyprus|czechia|the czech republic|denmark|estonia|finland|france|germany|greece|hungary|ireland|italy|latvia|lithuania|luxembourg|malta|the netherlands|poland|portugal|romania|slovakia|slovenia|spain|sweden|norway|iceland|liechtenstein|northern ireland';
const elsewhere =
  'japan|china|india|brazil|mexico|argentina|chile|new zealand|south africa|switzerland|turkey|israel|south korea|korea|singapore|thailand|the philippines|indonesia|vietnam|nigeria|kenya|egypt|ukraine|serbia|russia|taiwan|the uae|dubai|saudi arabia|peru|colombia';
const inCountry = (names: string): RegExp =>
  new RegExp(
    `(?:,?\\s*\\b(?:(?:for\\s+sale|sold)\\s+)?(?:in|for|region|under)\\s+|,\\s*)(${names})\\b(?:\\s+(?:rules?|law|market))?`,
    'i',
  );
const memberPattern = inCountry(memberStates);
const elsewherePattern = inCountry(elsewhere);

const takeRegion = (board: Board, text: string): PartsSaid => {
  if (isPlaceOnly.test(text.toLowerCase())) return {};
  const member = take(board, text, memberPattern)?.[1];
  if (member) return { region: 'eu', country: member.toLowerCase().replace(/^the /, '') };
  const said = regionSaid(text);
  if (said) cover(board, said.from, said.to);
  const besides = said ? undefined : regionBesides(text);
  if (besides) cover(board, besides.from, besides.to);
  const region = said?.region ?? besides?.region;
  return region ? { region } : {};
};

/** "Region mars": a place that is named as a region, and is none of ours. */
const strangeRegion =
  /\bregion\s*[:=]?\s*(?!(?:is|the|of|for|and|or|rules?|law|eu|uk|us|usa|gb|ca|au|u\.s|eur\w*|brit\w*|great|united|america\w*|canad\w*|austral\w*|engl\w*|scot\w*|wales)\b)([a-z]{2,20})\b/i;

/** A country whose rules are not here: no verdict. */
const unknownCountry = (board: Board, text: string): Trouble | undefined => {
  const country = take(board, text, elsewherePattern)?.[1] ?? take(board, text, strangeRegion)?.[1];
  return country
    ? {
        code: 'not-found',
        text: `I do not know the label rules of ${country}: please ask locally. I know those of the EU, Great Britain, the US, Canada and Australia, for example "label for Fernlea mint lip balm, region eu" (the strictest).`,
      }
    : undefined;
};

const dated = (before: string): RegExp =>
  new RegExp(`,?\\s*\\b(?:${before})\\s*[:=]?\\s*(${datePattern})`, 'i');
const bestBefore = dated(
  'best before(?:\\s+(?:the\\s+)?end(?:\\s+of)?)?|best-before|best used before(?:\\s+the\\s+end\\s+of)?|best by|bbe|bbd|bb|use by|expir(?:es|y)(?:\\s+(?:on|date))?|good until|keeps until',
);
const madeOn = dated('(?:(?:was|were)\\s+)?(?:made|poured|mixed|filled)(?:\\s+on)?');
const soldOn = dated(
  '(?:still\\s+)?(?:on the shelf|for sale|sold again|sold later|still sold|on sale)(?:\\s+(?:on|in|at|until))?',
);
const firstSold = dated(
  '(?:first\\s+)?(?:sold|supplied|placed(?:\\s+on\\s+the\\s+market)?|given\\s+out|handed\\s+out)(?:\\s+(?:on|from))?|on|from|as of|dated',
);
/** "If I sell from 2028 on": the first day of that year. */
const soldFromYear =
  /,?\s*\b(?:(?:if|when)\s+(?:i|we)\s+)?(?:sell|sold|supply|hand out)?\s*(?:it\s+)?(?:from|in|after|since)\s+(20\d\d)\b(?![-./])(?:\s+on(?:wards)?)?/i;
const keeps =
  /,?\s*\b(?:(?:it\s+)?keeps?(?:\s+for)?|lasts?(?:\s+for)?|shelf life(?:\s+of)?\s*:?)\s*(\d{1,3})\s*months?\b|\b(\d{1,3})\s*months?\s+shelf life\b/i;

const dates: readonly (readonly [string, RegExp])[] = [
  ['bestBefore', bestBefore],
  ['madeOn', madeOn],
  ['soldOn', soldOn],
  ['on', firstSold],
];

const badDay = (said: string): Trouble => ({
  code: 'bad-quantity',
  text: `"${said}" is no day in the calendar. Write it as 2027-05-17, or a month as 2027-05.`,
});

const takeDates = (board: Board, text: string): { said: PartsSaid; trouble?: Trouble } => {
  const said: Record<string, unknown> = {};
  let left = text;
  for (const [field, pattern] of dates) {
    const match = take(board, left, pattern);
    if (!match) continue;
    const day = dayWritten(match[1] ?? '');
    if (day === undefined) return { said, trouble: badDay(match[1] ?? '') };
    said[field] = day;
    left = left.replace(match[0], ' '.repeat(match[0].length));
  }
  const year = said.on === undefined ? take(board, left, soldFromYear)?.[1] : undefined;
  if (year !== undefined) said.on = `${year}-01-01`;
  const months = take(board, left, keeps);
  if (months) said.keepsMonths = Number(months[1] ?? months[2]);
  return { said };
};

const quotedAfter = (before: string): RegExp =>
  new RegExp(
    `,?\\s*\\b(?:${before})(?:\\s+(?:is|write|put|print|say|use))?\\s*[:=]?\\s*"([^"\\n]{1,140})"`,
    'i',
  );
const quotes: readonly (readonly [string, RegExp])[] = [
  ['name', quotedAfter('call(?:ed)?(?:\\s+it)?|named|name(?:\\s+is)?|titled|title')],
  ['maker', quotedAfter('maker|made by|by|responsible person|manufacturer|address|from')],
  [
    'contact',
    quotedAfter(
      'contact|reactions?(?:\\s+to)?|report(?:\\s+reactions)?\\s+to|web(?:\\s?site)?|phone|e-?mail',
    ),
  ],
];

const lotPattern =
  /,?\s*\b(?:lot|batch)\s*(?:no\.?|number|nr\.?|code|:|#)?\s*(\d{2} (?:[bdfgklmrsvzj][aeiou]){2,3}|[A-Z0-9][A-Z0-9/-]{0,24})\b/i;

/** A lot has a digit in it, and the house's own may be said with a space ("26 kivo"): "lot of people" and "batch label" have none. */
const takeLot = (board: Board, text: string): PartsSaid => {
  const match = lotPattern.exec(text);
  const lot = match?.[1];
  if (!match || !lot || !/\d/.test(lot)) return {};
  cover(board, match.index, match.index + match[0].length);
  return /batch/i.test(match[0]) ||
    /\bfor\s+(?:the\s+)?lot\s*$/i.test(text.slice(0, match.index + match[0].length - lot.length))
    ? { batch: lot }
    : { lot };
};

const flags: readonly (readonly [PartsSaid, RegExp])[] = [
  [{ person: 'eu' }, /,?\s*\b(?:with\s+)?(?:an?\s+|the\s+|only\s+)*eu responsible person(?:\s+only)?\b/i],
  [
    { person: 'uk' },
    /,?\s*\b(?:with\s+)?(?:an?\s+|the\s+|only\s+)*(?:uk|gb|british) responsible person(?:\s+only)?\b/i,
  ],
  [{ englishOnly: true }, /,?\s*\b(?:in\s+)?(?:english only|only (?:in )?english)\b/i],
  [{ englishOnly: false }, /,?\s*\b(?:in\s+)?(?:english and french|french and english|both languages)\b/i],
  [
    { scentAsAroma: true },
    /,?\s*\b(?:with\s+)?(?:the\s+)?(?:scents?|essential oils|oils|flavou?rs?)\s+(?:listed\s+)?as\s+"?(?:aroma|flavou?r|parfum)"?(?!\w)/i,
  ],
  [{ use: 'rinse-off' }, /\brinse[- ]off\b|\blip scrub\b/i],
];

/** Takes region, dates, lot, names and the like off the board. */
export const takeParts = (board: Board, text: string): { said: PartsSaid; trouble?: Trouble } => {
  const quoted = quotes.flatMap(([field, pattern]) => {
    const match = take(board, text, pattern);
    return match ? [[field, match[1]?.trim()] as const] : [];
  });
  const bare =
    quoted.length > 0 ? text.replace(/"[^"\n]{1,140}"/g, (words) => ' '.repeat(words.length)) : text;
  const named = takeBareNames(board, text);
  const days = takeDates(board, bare);
  const flagged = flags.flatMap(([said, pattern]) => (take(board, bare, pattern) ? [said] : []));
  // "EU responsible person" says who answers for it, not whose rules count.
  const people = bare.replace(/\b\w{2,7} responsible person\b/gi, (words) => ' '.repeat(words.length));
  const region = takeRegion(board, people);
  return {
    said: Object.assign(
      {},
      named,
      Object.fromEntries(quoted),
      days.said,
      takeLot(board, bare),
      region,
      ...flagged,
    ),
    ...defined({ trouble: unknownCountry(board, people) ?? days.trouble }),
  };
};
