import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';
import type { Item } from './item.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';

const cue =
  /^\W*(?:low|min(?:imum)?)\b\s*:?(?=.*\d)|\bmin\b|\b(?:give (?:an? )?alarm|inform(?:ed)?|warn(?:ed)?|alert(?:ed)?|tell|remind(?:ed)?|notified|notify|say|hear|ping|shout|notify|message|nudge|poke|prod|flag|shout out|speak up|speak out|holler|know|told|warning|alarm)\b.{0,100}\b(?:below|under|less than|fewer than|lower than|low|down to|(?:falls?|drops?|gets?|goes|is|are) (?:to|at)|reach(?:es)?|at \d[\d.,/]* ?(?:g|kg|grams?|oz|lb|ml)\b|when there(?:'s| is| are) only)\b|\blow (?:stock )?(?:mark|warning|level|limit)\b|\blow[- ]stock\b|\bminimum\b|\b(?:re-?order|alarm|alert|warning) (?:level|point|mark|threshold|limit)\b|\bthreshold\b|\b(?:par|target) (?:level|stock)\b|\bmark\b.{0,40}\bas low\b|\b(?:warn|alert|alarm)\b[^<]{0,40}<|\b(?:below|under|less than|(?:gets?|falls?|drops?|goes|comes|is|are) (?:down )?to|down to) .{0,36}\b(?:warn|alert|say|tell|ping|shout|hear|let (?:me|us) know|want to know)\b|\b(?:keep|(?:always|must|to|should) (?:have|want|need|keep)) (?:at least|a minimum of|no less than)\b|\b(?:warn|alert|ping|shout|watch)\b.{0,24}\bat \d|\bmark\b.{0,40}\b(?:should be|to|at|is|be)\b|\bshould (?:never|not) (?:drop|fall|go|get|be) (?:below|under|less than)\b/i;
/** "100 g is enough of a warning for the lanolin", "make the warning for carnauba wax 50 g". */
const neverBelow = /\b(?:don't|do not|never|must not) (?:let|allow)\b.{0,60}\b(?:below|under|less than)\b/i;
const marked =
  /\b(?:re-?)?(?:order|buy)(?: (?:it|more|some|again|new))* at \d|\bwatch\b.{0,60}\b(?:at|below|under) \d|\b(?:make|put down|leave) (?:me |us )?(?:a |an )?(?:note|sign|message|word) (?:when|if|once|as soon as|whenever)\b.{0,60}\b(?:below|under|less than|fewer than|down to)\b|\b(?:warned|alerted|told|informed) at \d|\b(?:warning|alarm|alert|reminder)\b.{0,40}\d[\d.,]* ?(?:k?g|grams?|oz|lb)\b|\d[\d.,]* ?(?:k?g|grams?|oz|lb)\b.{0,40}\b(?:warning|alarm|alert)\b|\b(?:hear|know|learn|be told|word) (?:about (?:it )?|of it )?(?:when|if|once|as soon as)\b.{0,60}\b(?:below|under|less than|fewer than|down to)\b/i;
const offCue =
  /\b(?:take|get rid of) (?:the |our |my )?(?:low )?(?:mark|warnings?|alerts?|limit|alarm)\b.{0,40}\b(?:away|off|out|again)\b|\bno (?:longer any )?need (?:for|of) (?:the|a|any) (?:mark|warning|alert|alarm)|\bno need to (?:warn|tell|alert)\b|\b(?:take away|no longer (?:need|want)|(?:don't|do not) (?:need|want))\b.{0,40}\b(?:mark|warnings?|alerts?|minimum|reminder (?:about|for|of))\b|\b(?:no|without|remove|delete|forget|drop|clear|stop|cancel|end)\b.*\b(?:mark|warning|warnings|warn|alert|alerts|limit|level|minimum)\b|\b(?:don't|dont|do not|stop) (?:warn|alert|tell|ping)(?:ing)?\b/i;

const asksPolitely = /\b(?:can|could|would|will) you\b/i;

const further = /^\W*(?:(?:and|also|plus|same|then|ok)\b\W*)+/i;
const mostAgain = 16;

/** "And shea below 150 g", right after a mark was set. */
const isFurtherMark = ({ last, text, tokens }: Reading): boolean =>
  last?.topic === 'stock' &&
  last.request.action === 'low' &&
  tokens.length <= mostAgain &&
  further.test(text) &&
  !/\b(?:bought|used|threw|got|have|left|weighs?)\b/i.test(text);

const markWord = /\b(?:mark|warn\w*|alert|alarm|limit|level|minimum|tell|know|below|under)\b/i;

/** "Forget the mark for sunflower oil, I have plenty of rapeseed": of several names those that the mark is of. */
const namesIn = ({ items, text }: Reading): readonly Item[] => {
  const names = items.filter(({ letter }) => letter === 'i');
  if (names.length < 2) return names;
  const stops = [
    0,
    ...[...text.matchAll(/[,;.:!](?=\s)|\b(?:because|since|so)\b/gi)].map(({ index }) => index),
    text.length,
  ];
  return names.filter(({ from }) => {
    const at = stops.findLastIndex((stop) => stop <= from);
    return markWord.test(text.slice(stops[at], stops[at + 1]));
  });
};

/** "Under 40": grams, where nothing else is said. */
const amountsIn = ({ items, text }: Reading): readonly Item[] => {
  const all = items.filter(isAmount);
  const bare = items.filter(
    ({ letter, from }) =>
      letter === 'n' &&
      /\b(?:below|under|less than|fewer than|down to)\s*$/i.test(text.slice(Math.max(0, from - 14), from)),
  );
  return all.length > 0 ? all : bare.map((item) => ({ ...item, letter: 'g', unit: 'g' as const }));
};

const isOff = ({ text }: Reading): boolean => offCue.test(text) && !neverBelow.test(text);
/** A mark is set, taken off or set further, and not asked about. */
const isOfMark = (reading: Reading, off: boolean): boolean =>
  (off || [cue, marked, neverBelow].some((said) => said.test(reading.text)) || isFurtherMark(reading)) &&
  (!/\?/.test(reading.text) || asksPolitely.test(reading.text));

/** "warn me below 200 g beeswax", "low mark for shea 100 g", "no low mark for shea". */
export const claimLow = (reading: Reading, { rest, lots }: BenchReading): Claim | undefined => {
  const off = isOff(reading);
  if (!isOfMark(reading, off) || lots.length > 0) return undefined;
  const [name, second] = namesIn(rest);
  if (!name || second || rest.items.some(({ letter }) => /[Rct]/.test(letter))) return undefined;
  const named = nameRead(name);
  if (named.trouble) return refuse(named.trouble, 3.2);
  if (off) return claim({ action: 'low', ingredient: named.id, grams: null }, 3.3);
  const [amount, more] = amountsIn(rest);
  if (!amount || more)
    return refuse(
      { code: 'missing', text: 'Below how much? For example "warn me below 200 g beeswax".' },
      3.1,
    );
  const read = gramsRead(amount, named.id ?? '', reading.settings.region);
  if (read.trouble) return refuse(read.trouble, 3.2);
  const assumed = [named.assumed, read.assumed].flatMap((each) => each ?? []);
  return claim({ action: 'low', ingredient: named.id, grams: read.grams }, 3.3, assumed);
};
