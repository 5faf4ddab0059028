import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { isBackground } from './background-words.ts';
import { batchMeant } from './batch-meant.ts';
import { showWords } from './batch-words.ts';
import type { BenchReading } from './bench-reading.ts';
import { wordsOf } from './word-list.ts';

/** Sure of itself: a question of what is in a batch is no question of where its tins are. */
export const madeOfWeight = 3.3;

const asksForIt =
  /\b(?:which|what|what's|whats|whose|name|list|state|show|give|tell|find|see|read|know|need|want|grams|per lot|how (?:much|many)|did|does|is|are|was|were)\b|\?\s*$/i;
const things =
  /\b(?:lots?|wax|waxes|oils?|butters?|ingredients?|herbs?|materials?|supplies|bottles?|bags?|tubs?|blocks?|grams|stuff|composition|contents?|recipe|version|made|composed|consists?|contains?|drawn?|drew|inside|in (?:it|_+)|into (?:it|_+)|what (?:went|goes|did (?:we|i) (?:put|use)))\b/i;
const inward =
  /\b(?:in|into|inside|of|for|from|with|used|use|made|contains?|composed|consists?|composition|contents?|drawn?|drew|took|take|went|goes|put)\b|^\W*lots?\b|\blots\b/i;
/** Where it went, when it ends and what it costs are asked elsewhere. */
const elsewhere =
  /\bwhere\b(?!.{0,40}\b(?:come|came|comes|taken|drawn)\b)|\b(?:who|whom|which (?:people|shops?|places?|customers?)|recall\w*|trac\w*|track\w*|out|gone|left|still|sold|sell|given|gave|give (?:away|out)|expires?|best[- ]before|use[- ]by|dates?|labels?|cost|costs|price|melts?|reactions?|react\w*|rash|itch\w*|history|poured|count|correct|when|why|note|report|remind|undo|scale|other batches|which (?:other )?batches|tins|jars|pots|sticks|tubes|keep|kept|first|should|could|would|can)\b/i;
/** ", mine or the neighbour's?": which of them is answered by the lots. */
const either = /,\s*[^,.?!\d]{1,40}\bor\b[^,.?!\d]{1,40}\??\s*$/i;
/** ", so I can tell the parents": why it is asked. */
const purpose =
  /,?\s*\b(?:so (?:that )?(?:i|we)|because|in case|for the (?:parents|file|record|label))\b[^?]*$/i;

const ownWords = new Set(
  wordsOf(`which what whats what's whose name list state lots wax waxes oil oils butter butters ingredient ingredients herb herbs material materials
    supplies bottle bottles bag bags tub tubs block blocks stuff composition contents content made composed consist consists contain contains drawn drew draw
    inside into used use put went goes come came comes from with where exactly grams gram per much how did origin back code codes number numbers numbers' each every per
    it's did was were that's or another other either mine yours ours neighbour's supplier supplier's old new one own`),
);

/** "An inspector asks which lots …", "for the file: …": who asks, and what for. */
const leadIn =
  /^[^.?!_\d]{0,60}?(?:\b(?:asks?|asked|asking|wants? to know|needs? to know|wonders?|wondering|tell (?:me|us|her|him|them))\b(?: (?:me|us|you))?\W+(?=(?:which|what|whose|from|how)\b)|:\s+)/i;

/** Names and kinds of ingredients may stand in it, and lots of the shelf: "how much K12 went into 26-KIVO". */
const isOwn = ({ letter, word }: Reading['items'][number]): boolean =>
  /[iRhH?,;.:()@!y<>="*\-bFITWeoAxuBQLXcZ/]/.test(letter) ||
  ownWords.has(word) ||
  showWords.has(word) ||
  isBackground(word.replace(/'s$/, ''));

const lastOne = /\b(?:last|latest|newest) (?:batch|pour)\b/i;

/** The one batch a message names, or the last one. */
const codeAsked = (reading: Reading, bench: BenchReading): string | undefined => {
  const { rest, lots } = bench;
  const [batch, second] = lots.filter(({ kind }) => kind === 'batch');
  if (second || batch?.others) return undefined;
  if (batch) return batch.code;
  return lots.length === 0 && lastOne.test(rest.text) ? batchMeant(reading, bench).lot : undefined;
};

/** "Which recipe was 26-KIVO made by", "show batch 26-KIVO with the grams" ask for the batch's own page, not for its lots. */
export const asksPage = (text: string): boolean =>
  /\b(?:recipe|version)\b|^\W*(?:please )?show (?:me )?(?:batch\b|_)/i.test(text);

/** "Which wax went into 26-KIVO, mine or the neighbour's?", "state the lots used in 26-KIVO": the batch that is asked what is in it. */
export const madeOfAsked = (reading: Reading, bench: BenchReading): string | undefined => {
  const { rest, lots, days } = bench;
  const code = codeAsked(reading, bench);
  if (code === undefined || lots.length > 2 || days.length > 0) return undefined;
  const led = leadIn.exec(rest.text)?.[0].length ?? 0;
  const text = rest.text.slice(led).replace(either, ' ').replace(purpose, ' ');
  if (!asksForIt.test(text) || !inward.test(text) || elsewhere.test(text)) return undefined;
  const isNamed = things.test(text) || rest.items.some(({ letter }) => letter === 'i');
  const isDirected = lots.length < 2 || /\bhow (?:much|many)\b|\bor\b/i.test(text);
  if (!isNamed || !isDirected || rest.items.some(({ letter }) => /[gvn%t]/.test(letter))) return undefined;
  const within = rest.items.filter(({ from, to }) => from >= led && to <= led + text.trimEnd().length);
  return within.every(isOwn) ? code : undefined;
};

/** Which recipe and version a batch was made by: its own page says so. What lots are in it is a trace. */
export const claimMadeBy = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const code = asksPage(bench.rest.text) ? madeOfAsked(reading, bench) : undefined;
  if (code === undefined) return undefined;
  const seen = reading.bench.batches.get(lotKey(code))?.seq;
  return claim({ action: 'show', lot: code, ...defined({ seen }) }, madeOfWeight);
};

const whyWords =
  /\b(?:why|why's|how come|explain|worked out|work out|reckon(?:ed)?|calculated?|decides?|decided|determines?|shortens?|limits?|reason|how did you get|what makes)\b|\bhow (?:is|was)\b.{0,40}\b(?:found|set|made up)\b|\b(?:where|which lot)\b.{0,40}\b(?:from|sets?)\b/i;
const dateWords =
  /\b(?:best[- ]before|use[- ]by|dates?|expir\w+|go(?:es)? off|ends?|soon|early|short|until|good|shortens?)\b/i;
const whyList = new Set(
  wordsOf(`why why's come explain worked work reckon reckoned calculate calculated decide decides decided determine determines shorten shortens limit limits
    reason get got makes best before use by date dates expire expires expiry goes go off end ends soon early short until till good only has have does did do you so
    how what which where where's from set sets found lot lots ingredient ingredients january february march april may june july august september october november december`),
);

/** "Why is 26-KIVO only good until May", "what decides the date of 26-KIVO": its page says which lot does. */
export const claimWhyDate = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const { rest, lots } = bench;
  const code = lots.length === 1 ? codeAsked(reading, bench) : undefined;
  if (code === undefined || !whyWords.test(rest.text) || !dateWords.test(rest.text)) return undefined;
  if (rest.items.some(({ letter }) => /[gvn%tRc]/.test(letter))) return undefined;
  const isTalk = rest.items.every((item) => whyList.has(item.word) || isOwn(item));
  return isTalk ? claim({ action: 'show', lot: code }, madeOfWeight) : undefined;
};
