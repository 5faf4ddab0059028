import { oncePerReading, type Reading } from '../reading.ts';
import { type Place, readingWithout } from '../understand.ts';
import { type BenchReading, readBench } from './bench-reading.ts';
import { lotsIn } from './lots.ts';

/** A message for the bench with its free text taken out first: nothing inside a note is an amount or a date. */
export interface BenchText {
  readonly bench: BenchReading;
  readonly note?: string;
  readonly pictures: readonly string[];
}

const link = /\bhttps?:\/\/[^\s<>"]{4,480}/gi;
const noteTail = /(?:^|(?<!\b(?:delivery|dispatch|goods|shipping))[\s,;.])(?:notes?|remarks?|nb)\s*[:=]\s*/i;
/** "24 pots of it, 30 g in each; ran out of lanolin towards the end": told of a pour, and no amount of anything. */
const ranOut =
  /[;.,]\s*(?:(?:and|but|then) )?(?:(?:we|i|it) )?(?=(?:just )?(?:ran|running|was|were) (?:out|short|low) of\b[^\d;]{3,60}$)/i;
const ofPour = /\b(?:tins|jars|pots|tubes|sticks)\b/i;
/** The word before a link that has been taken out. */
const pictureWord = /[\s,;]*\b(?:pictures?|photos?|pics?|images?)\W*$/i;
/** Longest note, in characters; the rest is cut off by the schema's own limit. */
export const longestNote = 500;

const trimmed = (text: string): string => text.replace(/^[\s,;:.-]+|[\s,;]+$/g, '').slice(0, longestNote);

const read = (reading: Reading): BenchText => {
  const places: Place[] = [];
  const pictures: string[] = [];
  for (const match of reading.text.matchAll(link)) {
    const url = match[0].replace(/[.,;:!?)\]]+$/, '');
    if (!URL.canParse(url)) continue;
    pictures.push(url);
    places.push({ from: match.index, to: match.index + url.length });
  }
  const found = noteTail.exec(reading.text) ?? (ofPour.test(reading.text) ? ranOut.exec(reading.text) : null);
  // "Note: 26-KIVO set a little soft": its code comes first, and is no part of the note.
  const first = found?.index === 0 ? lotsIn(reading)[0] : undefined;
  const tail = found && first && first.from - found[0].length < 4 ? null : found;
  const from = tail ? tail.index + tail[0].length : reading.text.length;
  const inside = places.filter((place) => place.from >= from);
  const said = inside.reduce(
    (text, place) => text.replace(reading.text.slice(place.from, place.to), ''),
    reading.text.slice(from),
  );
  const note = trimmed(pictures.length > 0 ? said.replace(pictureWord, '') : said);
  if (tail) places.push({ from: tail.index, to: reading.text.length });
  const bench = readBench(readingWithout(reading, places));
  return { bench, pictures, ...(note === '' ? {} : { note }) };
};

/** Notes ("note: …") and links to pictures apart from the rest of the message. */
export const readBenchText: (reading: Reading) => BenchText = oncePerReading(read);

/** "Can you write down that …": asked as a question, and told all the same. */
const politely =
  /^\W*(?:(?:hi|hello|hey|pipkin|please|ok|and|also)\b[\s,!]*)*(?:can|could|would|will|may|might) (?:you|we|i)\s+(?:(?:please|just|kindly|also)\s+)*(?:(?:ask|trouble|beg|request) you to\s+)?(?:(?:please|just|kindly|also)\s+)*(?:be (?:so|as) (?:kind|good) as to\s+|be kind enough to\s+|mind\s+)?(?:(?:take|knock|deduct|subtract|strike)(?=\b.{1,40}\b(?:off|was|were)\b)|note|noting|record|write(?: it)?(?: down)?|log|put(?: down| in)?|add|enter|mark|book|register|take down|make a note)\b(?: that| of)?/i;

/** "…, can you put that down?" */
const putDown =
  /,?\s*(?:so )?(?:can|could|would|will) you (?:please )?(?:put|write|note|log|jot|record|enter|mark) (?:that|it|this)(?: down| in)?(?: please)?\s*\?\s*$/i;

/** "For next week's fete", "for tomorrow's class": when that is, and no plan of what was done. */
const forEvent =
  /\bfor (?:the |our |my )?(?:(?:next|this|coming) )?(?:week|month|weekend|year|spring|summer|autumn|winter|christmas|easter|tomorrow|tonight|today|(?:mon|tues|wednes|thurs|fri|satur|sun)day)(?:'s? [\p{L}-]+|(?= (?:market|fair|f[eê]te|stall|class|sale|bazaar|show|group|workshop)\b))/giu;
export const withoutEvents = (text: string): string => text.replace(forEvent, ' ');

/** "Can M1 was opened", "when I weighed it again, the scale said 225 g": no question. */
const canOrWhen =
  /^\W*(?:can(?= _+ (?:was|is|has|had|weighs|holds|now|contains)\b)|when(?= (?:(?:i|we|he|she|they)|(?:the|my|our) \p{L}+) (?:\p{L}+ed|took|put|got|had|came|went|found|was|were)\b[^?]{3,90}(?:,| (?:it|the scales?|there|that) (?:showed|said|read|weighed|was|were|came)\b)[^?]*$))/iu;
/** "…. Please correct the stock." */
const correctStock =
  /[.,;!]\s*(?:so |and )?(?:(?:please|can you|could you|would you|kindly)\s+)*(?:correct|update|adjust|change|fix|amend|put right|set right) (?:the |our |your |that |this |it\b ?|my )?(?:stock|book|books|entry|list|record|records|figure|amount|number|shelf|date|price)?(?: (?:for|of|in|on) (?:it|the book|the list|the stock|that))?(?: (?:accordingly|please|for me|to match|now))*[.!?\s]*$/i;
/** "We want to call it lot MARI1": that is its name. */
const wantToCall =
  /\b(?:i|we)(?:'d| would)? (?:want|like|wish|prefer) to (?=(?:call|name|label|mark)\b)|\b(?:let's|let us|i'll|we'll|(?:i|we) (?:will|shall)|(?:shall|can|could) (?:we|i)) (?=(?:call|name|label|mark) (?:it|this|them|that)\b)/gi;
export const withoutCorrect = (text: string): string =>
  text.replace(correctStock, '.').replace(wantToCall, '');

const plainly = (whole: string): string => {
  const text = withoutCorrect(withoutEvents(whole.replace(putDown, ''))).replace(canOrWhen, '');
  const match = politely.exec(text);
  return match ? text.slice(match[0].length).replace(/\?\s*$/, '') : text;
};

const asks =
  /\?|\b(?:know|wonder|asks?|asked|see|find out|remember|forgot|unsure|idea)\b[^.;!?]{0,16}\b(?:where|who|whom|what|which|how (?:many|much)|when|whether)\b|^\W*(?:(?:is|was|were|has|had|are|have|did) (?:_+|the|any|some|all|that|this|it|he|she|they|we|you|i|there|anyone|anybody|anything|everything|something|someone|somebody)\b|(?:in|to|from|until|till|since|for|with) (?:which|whom|what|when)\b|any(?:one|body|thing)?\b)|\bwhen\W*$|,\s*(?:(?:so|and|but) )*(?:who|where|what|which|how) (?:has (?:it|them|some|tins)|have|was|were|went|goes|do|does|did|is|are|must|should|can|needs?|to)\b|^\W*(?:how|what|when|which|who|wheres|whos|whats|hows|whom|why|where|can|could|should|shall|is|are|does|did(?! (?:another|\d|an?\b|some|two|three|four|five|six|eight|ten|twelve|twenty|thirty))|do|will|would|if|list|show|give (?:me|us)|find|trace|track|recall|name (?:me|us|all|the|every)|(?:give|tell|get|find|fetch|hand|bring|send) (?:me|us) (?:all (?:about|of the|the|batch\w*|our)|every\w*(?= (?:on|about|of|in|that))|the (?:details|whole|lines|record|list)|a list|batch\w*|(?:more )?(?:info\w*|details)))\b|\b(?:batch(?:es)?|pours?|balms?|lots?)\b[^.;!?]{0,12} (?:in|from|with) which\b/i;
const plans =
  /\b(?:give (?:me|us) (?:\d+|an?|one|two|three|four|five|six|some)\b(?!.{0,20}\bback\b)|nothing (?:is|was|has been|gets) (?:kept|given|sold|thrown|used|lost)|how (?:much|many|long)|what if|will be|going to|wants? to|would like|plan(?:ning)? to|before we|tomorrow|not yet|(?:don't|dont|do not|did not|didn't|didnt|never|haven't|hasn't|have not|has not|cannot|can't|won't|will not)\s+(?:\w+\s+){0,2}(?:pour\w*|g[ia]ve\w*|giving|sell|sold|thr[eo]w\w*|open\w*|us(?:e|ed|ing)|ma[kd]e|bin\w*|buy|bought|get|got|t[ao]ke?\w*|took|send|sent|keep|kept|count\w*|record\w*|write|wrote|note|have|had|want|know|touch\w*|hand\w*|return\w*|post\w*|spill\w*|spilt|los[et]\w*|br[eo]ak\w*|broken?|drop\w*|fill\w*|been|arrived?|come|came|deliver\w*|forget|be|melt\w*|react\w*|look\w*|do)\b|(?:i|we|he|she|they) (?:need|wants?|needs)\b(?! to (?:report|write|note|log|record|tell|say|add|put|enter))|wonder(?:ing)?|whether|might|thinking (?:of|about)|considering|intend(?:ing)? to|hop(?:e|ing) to|(?:should|shall) (?:i|we)|(?:maybe|perhaps) (?:i|we|they|he|she|you)|about to|(?:nearly|almost) (?:poured|made|opened|used|bought|dropped|lost|spilled|spilt|broke|gave|sold|threw|binned))\b|^\W*to (?:throw|give|open|sell|use|bin|toss|pour|make|keep|send|report|count|return|take|hand)\b/i;

const doing =
  '(?:go(?:ne)?|come|be|been|bring|brought|take|taken|took|give|given|gave|sell|sold|buy|bought|keep|kept|throw|thrown|threw|pour(?:ed)?|fill(?:ed)?|make|made|open(?:ed)?|use[d]?|bin(?:ned)?|return(?:ed)?|send|sent|get|got|travel|arrive[d]?|receive[d]?|deliver(?:ed)?|drop(?:ped)?|break|broken?|melt(?:ed)?|weigh|contain|hold)';
/** What did not happen, will, should or may happen, or is only supposed or heard of. */
const unreal = new RegExp(
  [
    `(?<!\\bas (?:it|they) )\\b(?:will|shall|would|could(?! only\\b)|should(?! (?:be|have been)\\b)|must|might|may(?! (?:took|had|got|bought|gave|sold|sent|kept|brought|threw|made|poured|returned)\\b)|cannot|ought to|going to|about to|has to|have to|let me|let us|let's|lets|promised to|agreed to|forgot to|failed to|refused to|hoped? to|meant to|supposed to|asked to)(?: (?:also|then|soon|only|probably|all|both|not|never|first|have|be))* ${doing}\\b(?! (?:enough|fine|useful|helpful))`,
    `\\b(?:has|have|had|was|were|is|are|did|does)(?:n't| not| never)(?: (?:yet|been|any|even))* ${doing}\\b`,
    '\\b(?:not (?:one|a single|any|all|even one)|none|zero|no) (?:(?:more |single |other )?(?:tins?|jars?|pots?|tubes?|sticks?)\\b|of (?:the |our |my |those )*(?:tins|jars|pots|tubes|sticks|_))',
    '^\\W*(?:nobody|no one|none|nothing)\\b',
    '^\\W*(?:suppose|supposing|imagine|pretend|say we|assume|assuming|what if|perhaps|maybe|possibly|probably|undo|cancel|delete|remove(?! (?:\\d|one\\b|an?\\b|two\\b|three\\b|four\\b|five\\b)))\\b',
    '\\b(?:i|we) (?:think (?:maybe|perhaps|that maybe)|guess|suppose|suspect|doubt|dreamt|dreamed|imagine)\\b|\\b(?:maybe|perhaps|possibly|probably) (?:\\d|_|one|two|three|four|five|six|the|all|some)|\\brumou?r (?:has|is|says)\\b|\\bit (?:is|was) said\\b|\\b(?:somebody|someone|people|(?<!\\bscales?\\b.{0,12})they) (?:said|say|says|told me|claims?|heard)\\b(?! (?:it|its|it.s|that it) (?:is |was )?(?:good|best|keeps|lasts)\\b)|\\bin (?:the|a|my) (?:story|dream|novel|film|movie|joke)\\b',
    '\\beither \\d+ or \\d|\\bbetween (?:\\d+|\\w+) and (?:\\d+|\\w+) (?:tins|jars|pots|tubes|sticks)|\\bnot (?:\\d+|\\w+) but \\w+',
    '\\b(?:as if|if only|whenever|if (?:it|we|they|he|she|the))\\b|\\bevery (?:day|week|month|year)\\b|\\b(?:\\d+|two|three|four|five|six|seven|eight|nine|ten) or (?:\\d+|two|three|four|five|six|seven|eight|nine|ten|twelve)\\b',
    '\\b(?:rarely|seldom|usually|normally|often|always|generally) (?:sell|give|pour|use|take|keep|throw|buy|lose)\\b|\\bon a good day\\b|\\b(?:is|are) (?:enough|on (?:its|the|their) way|on order)\\b|\\bpours? of\\b.{0,60}\\btakes\\b',
    "\\bthere (?:is|are|was|were) no\\b(?! (?:best|date|more|expiry))|\\blet (?:us|me|'s) say\\b|\\blet's say\\b|^\\W*(?:except|apart from|instead of|without|forget that)\\b|\\bit (?:was|is) not\\b|\\bit (?:wasn't|isn't)\\b",
    "\\b(?:i|we|he|she|they|you|it)'ll\\b|\\b(?:i|we|he|she|they|you)'d (?:sell|give|like|love|rather|be|pour|throw|keep|buy|open|use|take)\\b",
    '\\b(?:probably|maybe|perhaps|possibly|presumably|apparently) (?:has|have|had|is|are|was|were|sold|gave|used|holds|weighs|left|poured|opened)\\b',
    "(?:\\b(?:are|am)|'re|'m) (?:pouring|making|filling|opening|selling|giving|taking|sending)\\b[^.;]*\\b(?:on|next|this|at the weekend|later|soon)\\b(?! (?:the|our|a|my)\\b)",
    '\\b(?:until|till) (?:\\d|_|the|all|we|i)|\\bbefore (?:we|i|they) pour\\b',
  ].join('|'),
  'i',
);

/** "So where have all the tins got to": what a question may begin with. */
const leadWords =
  /^\W*(?:(?:so|and|ok|okay|but|hey|hi|hello|now|then|well|pipkin|please|oh|um|er|right|also|you know what|guess what|you know|quick question|tell (?:me|us)(?! every)|show (?:me|us)(?! every)|remind me|(?:i|we)(?:'d| would)? (?:like|want|need) to (?:record|note|log|enter|report|write down|put down|add|tell you|say|mention)(?: that)?)\b\W*){1,6}/i;

/** "Tell me everything that was made from it." */
const asksToShow =
  /^\W*(?:(?:please|kindly|so|and|ok|now|hello|hi)\b\W*)*(?:tell|show|give|list|read)\b (?:me |us |for )*(?:everything|all|about|an overview|the (?:whole|full|list|lots|details|history)|which|what|who|where|how)\b/i;

/** A question, or a plan: nothing that was done. */
export const asksOrPlans = (said: string): boolean => {
  const text = plainly(said).replace(leadWords, '');
  return asksToShow.test(said) || asks.test(text) || plans.test(text) || unreal.test(text);
};

/** Words that are nobody's name. */
export const noPlace =
  /^(?:i|we|you|they|he|she|it|us|them|someone|somebody|people|away|out|back|another|just|all|only|up|that|which|this|today|yesterday|now|me|(?:her|his|their)(?! \p{L}{3})|him|my dear|(?:my|our|his|her|their) (?:surprise|relief|delight|horror|joy|shame|dismay)|long last|half past|(?:[\p{L}'’]+ )?help$|there|with|behind|over|home|here|each|every|one(?! of (?:the|my|our) \p{L})|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|some|dozen|a dozen|(?:my|our) own)\b/iu;

const nameEnd =
  /\s(?:for|at)\s+[€£$]?\d|\s(?:i|we|on|in|with|because|and|from|as|by (?:post|mail|courier|hand|bike|car)|but|so|who|came|come|comes|went|go|goes|which|this|last|now|today|yesterday|earlier|just|took|has|have|had|got|dropped|brought|delivered|via|together|while|after|before|until|like|too|instead|again)(?:\s|$)|\sfor the (?:first|second|third|last) time\b|\sas (?:an? |the )?(?:thank|gift|present|prize|treat|sample|tester|favou?r|swap|reward|donation|raffle|sorry|surprise|trial)|\sfor (?:an? (?=\w+(?: of \w+)?\s*[.!]*$)|(?:her|his|their|its) (?!\w+ (?:group|class|club|school|shop)\b)|(?:christmas|easter|nothing|free|now|sale)\b)|\sto (?:take|bring|try|keep|use|have|give|pass|put|share|thank|say|sell|hand)\b|[:"()]|[€£$]|\s(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)\s(?:more\s)?(?:tins?|jars?|pots?|tubes?|sticks?)\b|\s\d[\d.,]*\s?(?:[x×]|(?:k?g|ml|l|oz|lbs?|grams?|kilos?|litres?)\b)|\s\d+[.,]\d\d(?!\d)|(?<!\b(?:mrs?|ms|dr|st|rev|prof|fr|no|nr))\.(?=\s|$)|\s-\s/gi;
/** "The market in Hoorn", "the bakery on Mill Lane": a place behind a name is part of it. */
const placeBehind = /^\s(?:in|on)\s(?:St\.? )?(?!(?:Mon|Tues|Wednes|Thurs|Fri|Satur|Sun)day)\p{Lu}\p{Ll}/u;

/** "The chemist in the square", "a lady from Hull": where somebody is whom only an article leads in. */
const spotBehind =
  /^\s(?:(?:in|on|by|near|opposite|behind|above|from) the (?:\p{L}+ )?(?:square|mill|hall|village|street|road|lane|corner|hill|quay|harbour|town|park|church|green|farm|valley|yard|bridge|station|high street)(?=\s*(?:[.,;:!?_]|$))|from \p{Lu}\p{Ll}+(?=\s*(?:[.,;:!?_]|$)))/u;
const isLedIn = (before: string): boolean => /^(?:the|an?|our|my|some)\s/i.test(before);
/** "Ben and Mia", "the Rose and Crown": two names with nothing behind them that the second one did. */
const andName = /^\sand \p{Lu}[\p{L}'’]+(?=\s*(?:[.,;:!?_]|$))/u;
const endsInName = (before: string): boolean => /(?:^|\s)\p{Lu}[\p{L}'’.]*$/u.test(before);

const goesOnBehind = (before: string, after: string): boolean =>
  placeBehind.test(after) ||
  (isLedIn(before) && spotBehind.test(after)) ||
  (endsInName(before) && andName.test(after));

/** Where a name ends in what follows it. */
const endOf = (tail: string): number => {
  for (const { index } of tail.matchAll(nameEnd))
    if (index === 0 || !goesOnBehind(tail.slice(0, index), tail.slice(index))) return index;
  return tail.length;
};

/** A name in the message as it was typed: "to the spring fair", "from Hive Lane". Places masked as "_" end it. */
export const nameAfter = (
  text: string,
  cue: RegExp,
): { readonly name: string; readonly place: Place } | undefined => {
  const match = cue.exec(text);
  if (!match) return undefined;
  const start = match.index + match[0].length;
  const tail = /^[^,;\n_!?]{1,100}/.exec(text.slice(start))?.[0] ?? '';
  const end = endOf(tail);
  const name = tail
    .slice(0, end)
    .replace(/\s+(?:please|pls|thanks|thank you|out of|from|of|on|for|too|also|as well|already)\s*$/i, '')
    .trim();
  return name === '' || !/\p{L}/u.test(name)
    ? undefined
    : { name, place: { from: match.index, to: start + name.length } };
};

/** Why it was done, to the end of a sentence: ", because his skin is not dry at all", ", so that nothing goes to waste". */
const reasons =
  /,?\s(?:because|cos|so that(?!')|so as to|since (?:the|we|it|i|he|she|they|my|our)\b|as (?:it|he|she|they|we|the|my|our|you) |in case |and (?:he|she|they) (?:was|were|is|are|loved|liked)|bless (?:her|him|them)|(?:he|she|they|it) (?:says|said|say))\b[^.;:!?\n\d_]*(?=[.;:!?\n]|$)/gi;

/** "My neighbour, who helped with the stirring, got 5 tins" */
const inBrackets = /,\s(?:who|which|whose)\b[^,;.:!?\n\d_]{3,80},(?=\s)/gi;

/** "…, he paid 6.50", "for 5 euros each": what it brought in is noted nowhere here. */
const money =
  /,?\s(?:(?:for|at|and|he|she|they|who|we|i|it|which|got|took|paid|gave|asked|charged|charging|made|brought|brought in|costing|worth|price|me|us)\s+){0,4}(?:[€£$]\s?\d+(?:[.,]\d\d)?|\d+[.,]\d\d(?!\d)|\d+\s?(?:euros?|eur|quid|dollars|bucks|[€£]))(?:\s?(?:euros?|eur|pounds?|quid|dollars|[€£]))?(?:\s(?:each|apiece|a tin|a jar|a pot|a stick|a tube|in all|altogether|for (?:it|them|all)))?/gi;

/** The message without money in it. */
export const withoutMoney = (bench: BenchReading): BenchReading => {
  const places = [...bench.rest.text.matchAll(money)].map((match) => ({
    from: match.index + (match[0].startsWith(',') ? 1 : 0),
    to: match.index + match[0].length,
  }));
  return places.length === 0 ? bench : { ...bench, rest: readingWithout(bench.rest, places) };
};

/** "…, the rest stays here": nothing that went anywhere. */
const keepsRest =
  /,?\s(?:and |but )?(?:the |all )?(?:rest|others?|remaining(?: ones)?|remainder)(?: of (?:them|it))? (?:stays?|stayed|remains?|is|are|still|we keep|we kept|i keep|i kept)\b(?! (?:for|to|at|with (?!us|me)))[^,;.!?\n\d_]{0,40}/gi;

/** The message without the reasons in it that name no amount, no ingredient, no recipe and no container. */
export const withoutReasons = (bench: BenchReading): BenchReading => {
  const places = [
    ...bench.rest.text.matchAll(reasons),
    ...bench.rest.text.matchAll(inBrackets),
    ...bench.rest.text.matchAll(keepsRest),
  ]
    .map((match) => ({ from: match.index + 1, to: match.index + match[0].length }))
    .filter(
      ({ from, to }) =>
        !bench.rest.items.some((item) => /[gvndiRc]/.test(item.letter) && item.from >= from && item.to <= to),
    );
  return places.length === 0 ? bench : { ...bench, rest: readingWithout(bench.rest, places) };
};
