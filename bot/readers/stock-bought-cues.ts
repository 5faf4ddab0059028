import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans } from './bench-text.ts';
import { isAmount } from './stock-amount.ts';

/** That something came in. */
export const boughtCue =
  /\b(?:bought|purchased|received|brought(?= (?:in )?(?:us |me )?(?:\d|a |half|another ))|got in|(?:took|taken|take|taking) (?:in\b|delivery)|stored away|delivery|delivered|arrived|came(?= (?:another |in )?(?:an? |half |\d)|\s*[:,])|restocked|stocked up|picked up|fetched|collected|(?<=^\W{0,3})(?:stock|goods) in|topped up|got given|was given|were given|got (?:some|a bit of|more|new|us|in)(?! (?:trouble|mess))|add(?:ed)? to (?:the |our )?stock|new (?:stock|lot|in)|(?:could only|managed to|was able to|were able to) (?:buy|get|find))\b|\bto (?:the |our )?stock\b/i;

/** "beeswax, 1 kg, K44, best before June": a code that nothing announces. */
export const bareCode =
  /(?<![\p{L}\d_.,/-])(?:\p{Lu}{1,6}[-/]?\d{1,6}\p{Lu}?|\d{1,4}-?\p{Lu}{1,3})(?![\p{L}\d_-]|[.,]\d)/u;

/** What was done with something that is there already, or will be: no purchase. */
const doneElse =
  /\b(?:(?<!\bbe )used|poured|made|threw|thrown|binned|wasted|lost|spill\w*|spilt|strained|infused|weigh\w*|count\w*|really|left(?! (?:us|me|here)\b)|below|under|warn|alert|opened|scale|recipe|to make|need|want|infuse|melt|swap|costs?)\b/i;
/** A code that nobody knows yet, with its date, came in however it is worded; these alone tell otherwise. */
export const goneElse =
  /\b(?:(?<!\bbe )used|poured|made(?! it (?:lot|the)\b)|threw(?! in\b)|thrown(?! in\b)|binned|wasted|lost|spill\w*|spilt|strained|infused(?! (?:[a-z]+ )?oil)|sold(?! (?:me|us|it to (?:me|us))\b)|gave(?! (?:us|me)\b)|sent (?:[a-z]+ )?back|returned|reserved|(?<!\bbeen )(?:a)?waiting|expecting|lent|expired|missing|stolen|below|under|warn|alert|opened|(?<!\b(?:the|our|my|kitchen|new|big) )scale|recipe|to make|need|want|infuse|swap)\b/i;
export const cameIn =
  /\b(?:got|had|have|came|come|comes|turned up|here|gift|present|in stock|in the (?:post|house|cupboard)|on the shelf|given|gave|left us|left me|brought|sent|put|taken|took|paid|purchase|delivered)\b/i;

const isNew = (lots: BenchReading['lots']): boolean =>
  lots.length > 0 && lots.every(({ kind }) => kind === 'new');

/**
 * "500 g beeswax lot K12 best before 2027-03": an amount, a name, and a lot with a date beside them; or a lot and
 * that it came, in any words.
 */
export const looksBought = ({ rest, lots, days, today }: BenchReading): boolean =>
  (lots.some(({ cued, kind }) => cued && kind !== 'batch') ||
    ((bareCode.test(rest.text) || isNew(lots)) && days.some(({ role }) => role === 'best-before'))) &&
  rest.items.some(({ letter }) => letter === 'i') &&
  rest.items.some(isAmount) &&
  !(isNew(lots) && days.some(({ role }) => role === 'best-before') ? goneElse : doneElse).test(rest.text) &&
  (days.some(({ role, past }) => role === 'best-before' || past > today) || cameIn.test(rest.text));

/** What a shop has, or what was ordered and did not come yet, is not on the shelf. */
const notOurs =
  /\b(?:the|a|this|that|their|any|local) (?:[a-z-]+ )?(?:shop|store|supplier|website|site|wholesaler|market|chemist|pharmacy|farm|catalogue) (?:has|have|had|sells?|offers?|stocks?)\b|\bthey (?:sell|have|offer|stock)\b|\b(?:for sale|on offer|in the catalogue|(?:re-?)?ordered(?![^.;]{0,40}\b(?:here|arrived|came|come|received|delivered|got)\b)|on order|to order|on the list|shopping list)\b/i;

/** "The group next door has 500 g beeswax", "my aunt keeps 2 kg": somebody else's; what the cupboard has is ours. */
const theyHave =
  /\b(?:he|she|they|(?:the|my|our|his|her|a) (?!(?:old |big |little )?(?:stock|shelf|cupboard|cellar|store|box|drawer|first|second|third|fourth|other|next|last|one|package|packet|crate|carton|fridge|larder|pantry|shed|kitchen|delivery|parcel|post|bag|bottle|jar|tub|tin|can|sack|label|lot)\b)\w+(?: \w+){0,2}) (?:still |also )?(?:has|have|had|owns?|keeps?) (?=\d|_|an?\b|half\b)/i;

/** What is asked, planned, ordered, or somebody else's. */
export const isElsewhere = (text: string, told: boolean): boolean =>
  asksOrPlans(text) || ofOthers.test(text) || (!told && (notOurs.test(text) || theyHave.test(text)));

/** What others bought, or was bought once, or was only seen. */
const ofOthers =
  /\b(?:another|the other|some other|that other) (?:group|circle|club|maker)\b|\blast time\b|\bfor (?:her|him|them)sel(?:f|ves)\b|\b(?:there(?:'s| is| are)|saw|seen|spotted)\b.*\bat (?:the|a|that) (?:shop|store|market|fair|wholesaler|supermarket)\b/i;
