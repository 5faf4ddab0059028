// A paper notebook has columns: what happened, of what, with whom. Read as the sentences they stand for.

/** What an entry is headed with, and the sentence it begins. */
const heads: readonly (readonly [RegExp, Sentence])[] = [
  [/^(?:in|rec'?d|received|delivery|purchase|purchased)$/i, (said) => `bought ${said.join(', ')}`],
  [/^(?:out|gone|away|issued?|given|gift|gifts|to)$/i, (said) => gone('gave', said)],
  [/^(?:sale|sales|sold)$/i, (said) => gone('sold', said)],
  [/^(?:back|returned|returns?|ret)$/i, (said) => cameBack(said)],
  [/^(?:made|pour|poured|production|prod|filled)$/i, (said) => `poured ${said.join(', ')}`],
  [
    /^(?:waste|wasted|bin|binned|withdrawn|loss|losses|lost|scrap|write-?off|written off|broken|spilt|spill)$/i,
    (said) => `threw away ${said.join(', ')}`,
  ],
  [/^(?:opened|open)$/i, (said) => `opened ${said.join(', ')}`],
  [
    /^(?:count|counted|weighed|weight|scale|stocktake)$/i,
    (said) => {
      const line = said.join(' ');
      const plain = line.replace(/^(\S+ ?\S*) of (\S+)/, '$2 is really $1');
      return plain === line ? `stocktake: ${said.join(', ')}` : plain;
    },
  ],
  [/^(?:quer(?:y|ies)|question|q|asked)$/i, (said) => said.join(' ')],
  [/^(?:complaint|reaction)$/i, (said) => `reaction: ${said.join(', ')}`],
  [/^(?:kept|keep|samples?|retained|retention|reserve|put by)$/i, (said) => `kept ${said.join(', ')}`],
];
type Sentence = (said: readonly string[]) => string;

const isPlace = (field: string | undefined): field is string =>
  field !== undefined &&
  /^\p{L}/u.test(field) &&
  !/\d|\b(?:each|lots?|bb|spilt|broken|melted|tins?|jars?|pots?|tubes?|sticks?)\b/iu.test(field);

/** The first column that is a name, after "to" or "from"; what stands behind it is a remark. */
const withPlace = (said: readonly string[], lead: string): string => {
  const at = said.findIndex((field, index) => index > 0 && isPlace(field));
  const name = said[at];
  if (name === undefined) return said.join(', ');
  const place = /^(?:to|from|at|for|by)\b/i.test(name) ? name : `${lead} ${name}`;
  return [`${said.slice(0, at).join(' ')} ${place}`, ...said.slice(at + 1)].join(', ');
};
const gone = (verb: string, said: readonly string[]): string => `${verb} ${withPlace(said, 'to')}`;
const cameBack = ([first = '', ...more]: readonly string[]): string =>
  withPlace(
    [[first, ...more.filter((field) => !isPlace(field)), 'came back'].join(' '), ...more.filter(isPlace)],
    'from',
  );

const day = '(?:[\\p{L}]{3,9}\\.?,? ?)?(?:\\d{1,2}(?:[./]\\d{1,2}\\.?|(?:st|nd|rd|th)? [\\p{L}]{3,9}\\.?))?';
const figures = '\\d{4}-\\d\\d-\\d\\d|\\d{1,2}[./]\\d{1,2}(?:[./]\\d{2,4}|\\.)?';
const headed = new RegExp(
  `^(?<day>${day}\\s*(?:[:,-]|\\/\\/|\\|)\\s*)?(?<head>[\\p{L}'-]{2,10}(?: (?:off|by))?)(?:,? (?<dated>${figures}))?\\s*(?<sign>\\/\\/|\\||:|-{1,2}>|=>|>|--|\\s-(?=\\s))\\s*(?<said>\\S.*)$`,
  'u',
);
const columns = /\s*(?:\/\/|\||;|\s\/\s|-{1,2}>|=>|\s>\s|\s--?\s)\s*/;

/** An amount, a number of containers or a code: "Loss: 5 %" is no entry. */
const hasThing =
  /\d ?(?:k?g|ml|l|oz|lb|x|of|tins?|jars?|pots?|tubes?|sticks?|pcs)\b|\b(?:one|two|three|four|five|six|an?) (?:tin|jar|pot|tube|stick)|\b\p{Lu}[\p{Lu}-]*\d|\d-\p{Lu}/u;

const onlyDate =
  /^\d{1,2}(?:[./]\d{1,2}\.?|(?:st|nd|rd|th)? (?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)\p{L}*)$/iu;
const onlyCode = /^(?:\d{2}-?[A-Z]{4,6}|\p{Lu}{1,6}-?\d{1,6})$/iu;
const onlyCount = /^\d{1,4}(?: ?(?:x|tins?|jars?|pots?|tubes?|sticks?|pcs|k?g|ml))?$/i;
/** A column with a code and one with how many of it, in either order, are one thing. */
const countedCode = (fields: readonly string[]): readonly string[] => {
  const code = fields.find((field) => onlyCode.test(field));
  const count = fields.find((field) => onlyCount.test(field));
  if (code === undefined || count === undefined) return fields;
  return [`${count} of ${code}`, ...fields.filter((field) => field !== code && field !== count)];
};

const asSentence = (line: string): string => {
  const { day: on = '', head = '', dated, said = '' } = headed.exec(line)?.groups ?? {};
  const make = heads.find(([pattern]) => pattern.test(head))?.[1];
  if (!make || !hasThing.test(said) || (/\?/.test(said) && !/^q/i.test(head))) return line;
  const all = said.split(columns).flatMap((field) => field.split(/,\s+(?=\D*$)|\s+\((?=[^()\d]+\)\s*$)/));
  const bare = all.map((field) => field.replace(/[\s,)]+$|\.$/g, '').trim()).filter((field) => field !== '');
  const dates = bare.filter((field) => onlyDate.test(field));
  const day = on.replace(/\s*(?:\/\/|\||[:,-])\s*$/, '') || (dated ?? dates[0] ?? '');
  const fields = countedCode(bare.filter((field) => !dates.includes(field)));
  return `${day}${day === '' ? '' : ': '}${make(fields)}`;
};

const house = '\\d{2}-?[A-Za-z]{4,6}';
const holder = '(?:tins?|jars?|pots?|tubes?|sticks?|pcs?\\.?|pieces)';
const counted = `(?:(\\d{1,3}) ?(?:x )?(?:(${holder}) )?(?:of )?(${house})|(${house})[:,]? ?(\\d{1,3})(?: ?x)?(?: (${holder}))?)`;
const ends: readonly (readonly [RegExp, (what: string, place: string) => string])[] = [
  [/^(?:the )?(?:bin|waste|rubbish|compost)\b/i, (what) => `threw away ${what}`],
  [/^(?:the )?(?:samples?|sample (?:drawer|box|shelf)|retention|reserve)\b/i, (what) => `kept ${what}`],
  [/^/, (what, place) => `gave ${what} to ${place}`],
];
const arrow = new RegExp(`${counted},?\\s*(-{0,2}>|=>|<-{0,2}|<=)\\s*(\\p{L}[^\\d\\n;]{1,60})$`, 'iu');

/** "5 pots 26-KUFE -> chemist", "26-KUFE: 3 <- gift shop". */
const withArrow = (line: string): string => {
  const match = arrow.exec(line);
  if (!match || /\?/.test(line)) return line;
  const [all, before, holderBefore, codeAfter, codeBefore, after, holderAfter, sign = '', to = ''] = match;
  const what = `${before ?? after} ${(holderBefore ?? holderAfter) ? `${holderBefore ?? holderAfter} ` : ''}of ${codeAfter ?? codeBefore}`;
  const place = to.replace(/[\s.]+$/, '');
  const said = sign.startsWith('<')
    ? `${what} came back from ${place}`
    : ends.find(([pattern]) => pattern.test(place))?.[1](what, place);
  return `${line.slice(0, match.index)}${said}${line.slice(match.index + all.length)}`;
};

const signed =
  /^([A-Z\d]{1,6}-?[A-Z\d]{1,8})\s?[:,]?\s*([+-])\s?(\d{1,4}(?:[.,]\d{1,2})?)( ?(?:kg|g|ml)\b)?(?: (?:tins?|jars?|pots?|tubes?|sticks?)\b)?,?(?:\s+\(?(\p{L}[^\d\n?()]{2,60})\)?)?$/u;

const backLead = /^(?:(?:came |were )?(?:back|returned|returns?)\b[ ,]*)?(?:from )?/i;
const ownVerb = /^(?:sold|gave|given|kept|keep|binned|broken?|lost|used|as|for|to|at)\b/i;

/** "26-KUFE +3 back, market". */
const plusSaid = (what: string, said: string): string | undefined => {
  const from = said.replace(backLead, '');
  if (from === said) return undefined;
  return `${what} came back${from === '' ? '' : ` from ${from}`}`;
};

const minusSaid = (what: string, said: string): string | undefined =>
  ownVerb.test(said) ? `${what} ${said}` : ends.find(([pattern]) => pattern.test(said))?.[1](what, said);

const wastedSo =
  /\b(?:spil\w+|lost|loss|leak\w*|waste\w*|bin\w*|bad|rancid|mould\w*|drop\w*|broke\w*|threw|thrown|floor|drain|compost|rubbish|off|mess|accident)\b/i;
const gramsGone = (what: string, said: string): string =>
  wastedSo.test(said) ? `threw away ${what}, ${said}` : `used ${what}${said === '' ? '' : ` ${said}`}`;

/** "26-KUFE: -10 Saturday market", "SB2 -20 g spilt". */
const withSign = (line: string): string => {
  const match = signed.exec(line);
  if (!match) return line;
  const [, code = '', sign, count, grams, said = ''] = match;
  const to = said.replace(/[\s.]+$/, '');
  if (!/\d/.test(code)) return line;
  if (grams !== undefined) return sign === '-' ? gramsGone(`${count}${grams} of ${code}`, to) : line;
  if (to === '') return line;
  const what = `${count} of ${code}`;
  return (sign === '+' ? plusSaid(what, to) : minusSaid(what, to)) ?? line;
};

const wholeDays: Readonly<Record<string, string>> = {
  mon: 'Monday',
  tue: 'Tuesday',
  wed: 'Wednesday',
  thu: 'Thursday',
  fri: 'Friday',
  sat: 'Saturday',
  sun: 'Sunday',
};
const verb =
  '(?:poured|made|filled|sold|gave|bought|got|kept|threw|binned|opened|used|lost|took|sent|returned|strained|weighed|came|one|two|three|four|five|six)\\b';
const shortDay = new RegExp(
  `\\b(tue|wed|thur)s\\b\\.?|(?<=^|[.;\\n]\\s{0,3})(mon|tue|wed|thu|thur|fri|sat|sun)\\b\\.?(?=\\s?[:,-]|\\s+(?:\\d|an? (?:tin|jar|pot|tube|stick)\\b|(?<!\\bsun )${verb}))`,
  'gi',
);
/** "Monday 3 Feb": the date says it. */
const besideDate =
  /(?<=^|\n)\s*(?:mon|tues|wednes|thurs|fri|satur|sun)day,? +(?=\d{1,2}(?:[./]\d{1,2}\b|(?:st|nd|rd|th)? (?:of )?(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec)))/gi;
const partOfDay =
  /\b(mon|tue|wed|thu|fri|sat|sun)(?:s|r|rs|day|sday|nesday|rsday|urday)?,?\.? (?:eve|evg|evening|morn|morning|aft|afternoon|noon|night|a\.?m\b|p\.?m\b)\.?(?=\s*[:,.-]|\s|$)/gi;
/** "Log 005.", "Camp book p. 4:", "Entry 12:": where it stands says nothing. */
const label =
  /^\s*(?:(?:the|my|our) )?(?:[\p{L}']{2,12} ){0,2}(?:log|diary|book|notebook|journal|ledger|page|entry|logbook|p\.)(?:,? (?:p\.?|page|no\.?|nr\.?|entry|#) ?)? ?(?:\d{0,4}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?:\s*[:.)]| -|,(?= recipe\b))\s+(?=\S)/iu;
/** "…, 07:30 h": when on the day. */
const clockAtEnd = /,?\s(?:at )?\d{1,2}[:.]\d\d ?(?:h|hrs|hours|am|pm|o'clock)?\.?\s*$/i;
const tellsOf =
  /\b(?:production|poured|filled|made|sold|gave|kept|threw|opened|returned|issued?)\b[^\n]{0,200}\d[:.]\d\d/i;
const isRemind = /\b(?:remind|daily|every|set)\b|\?/i;
const sameDay =
  /^\s*(?:dear (?:book|diary|notebook|journal)\s*[:,]|(?:on the )?(?:same|next) day\s*[:,])\s+(?=\S)/i;
/** "3) Composition of 26-KUFE": its place in a list. */
const listMarker =
  /^\s*(?:\(?(?:\d{1,2}|[a-h])\)|\d{1,2}\.|[-*\u2022\u2013])\s+(?=\p{L})(?!(?:jan|feb|mar|apr|may|jun|jul|aug|sep|oct|nov|dec))/iu;
const furtherMarker = /\s\(?\d{1,2}[.)]\s/;
const withoutMarker = (text: string): string =>
  text.includes('\n') || furtherMarker.test(text) ? text : text.replace(listMarker, '');

const withoutLabel = (line: string): string => {
  const bare = withoutMarker(line).replace(label, '').replace(sameDay, '');
  return tellsOf.test(bare) && !isRemind.test(bare) ? bare.replace(clockAtEnd, '') : bare;
};
const mayHaveDay = /\b(?:mon|tue|wed|thu|fri|sat|sun)/i;

/** "Tues 5 pots of …", "Sat: sold 4": days as a diary shortens them. */
const withWholeDays = (text: string): string =>
  mayHaveDay.test(text)
    ? text
        .replace(partOfDay, (_, short: string) => wholeDays[short.toLowerCase()] ?? short)
        .replace(shortDay, (_, anywhere?: string, first?: string) => {
          const short = (anywhere ?? first ?? '').slice(0, 3).toLowerCase();
          return wholeDays[short] ?? short;
        })
        .replace(besideDate, '')
    : text;

const mayBeEntry = /[|>:<+]|\/\/|\s-/;

/** Entries with columns and arrows, as the sentences they stand for: "OUT // 10 sticks 26-KUFE // yoga evening". */
export const entriesInSentences = (typed: string): string => {
  const text = withWholeDays(withoutLabel(typed));
  return mayBeEntry.test(text) && /\d/.test(text)
    ? text
        .split('\n')
        .map((line) => withSign(withArrow(asSentence(line))))
        .join('\n')
    : text;
};
