import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import type { BenchReading } from './bench-reading.ts';
import { gramsRead, isAmount, nameRead } from './stock-amount.ts';

const cue =
  /^\W*(?:low|min(?:imum)?)\b\s*:?(?=.*\d)|\bmin\b|\b(?:give (?:an? )?alarm|inform(?:ed)?|warn(?:ed)?|alert(?:ed)?|tell|remind(?:ed)?|say|ping|shout|notify|notified|hear|message|nudge|poke|prod|flag|shout out|holler|know|told|warning|alarm)\b.{0,100}\b(?:below|under|less than|fewer than|lower than|low|down to|(?:falls?|drops?|gets?|goes|is|are) (?:to|at)|reach(?:es)?|at \d[\d.,/]* ?(?:g|kg|grams?|oz|lb|ml)\b|when there(?:'s| is| are) only)\b|\blow (?:stock )?(?:mark|warning|level|limit)\b|\blow[- ]stock\b|\bminimum\b|\b(?:re-?order|alarm|alert|warning) (?:level|point|mark|threshold|limit)\b|\bthreshold\b|\bmark\b.{0,40}\bas low\b|\b(?:warn|alert|alarm)\b[^<]{0,40}<|\b(?:below|under|less than|(?:gets?|falls?|drops?|goes|comes|is|are) (?:down )?to|down to) .{0,36}\b(?:warn|alert|say|tell|ping|shout|let (?:me|us) know)\b|\b(?:keep|(?:always|must|to|should) (?:have|want|need|keep)) (?:at least|a minimum of|no less than)\b|\b(?:warn|alert|ping|shout|watch)\b.{0,24}\bat \d|\bmark\b.{0,40}\b(?:should be|to|at|is|be)\b|\bshould (?:never|not) (?:drop|fall|go|get|be) (?:below|under|less than)\b/i;
const offCue =
  /\b(?:take away|no longer (?:need|want)|(?:don't|do not) (?:need|want))\b.{0,40}\b(?:mark|warnings?|alerts?|minimum)\b|\b(?:no|without|remove|delete|forget|drop|clear|stop|cancel|end)\b.*\b(?:mark|warning|warnings|warn|alert|alerts|limit|level|minimum)\b|\b(?:don't|dont|do not|stop) (?:warn|alert|tell|ping)(?:ing)?\b/i;

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

/** "warn me below 200 g beeswax", "low mark for shea 100 g", "no low mark for shea". */
export const claimLow = (reading: Reading, { rest, lots }: BenchReading): Claim | undefined => {
  const off = offCue.test(reading.text);
  if (
    (!cue.test(reading.text) && !off && !isFurtherMark(reading)) ||
    lots.length > 0 ||
    (/\?/.test(reading.text) && !asksPolitely.test(reading.text))
  )
    return undefined;
  const [name, second] = rest.items.filter(({ letter }) => letter === 'i');
  if (!name || second || rest.items.some(({ letter }) => /[Rct]/.test(letter))) return undefined;
  const named = nameRead(name);
  if (named.trouble) return refuse(named.trouble, 3.2);
  if (off) return claim({ action: 'low', ingredient: named.id, grams: null }, 3.3);
  const [amount, more] = rest.items.filter(isAmount);
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
