import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { batchMeant } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { asksOrPlans, longestNote } from './bench-text.ts';
import type { Item } from './item.ts';

const looksCue =
  /\b(?:still\s+)?(?:looks?|smells?|feels?|seems?|is|are|was|looked at|looked|checked|inspected|examined|tested|turned|became|(?:has|have) (?:gone|turned|become|got|set|kept|stayed|developed)|got(?= (?:a bit |a little |very |quite |all |too )*[a-z]+y\b| soft| hard)|set(?= (?:very |really |quite |a bit )*(?:nicely|well|fine|smooth|soft|hard|firm|perfect))|still(?= (?:smooth|firm|fresh|lovely|nice|good|perfect|fine))|has|have|went|shows?|look at|smell|colou?r|texture|surface|odour|scent|finish)\b\W*/i;
const fineWords =
  /^\W*(?:(?:still|all|very|quite|really|perfectly|absolutely|set|kept|stayed|and (?:smell|colou?r|texture|look|scent)|looks?|smells?|feels?|is|are|of it|of|the same|it|today|it's) )*(?:fine|good|ok|okay|great|perfect|well|lovely|nice|nicely|smooth|firm|alright|right|sound|unchanged|fresh|in order|everything (?:is |was )?(?:fine|ok|okay|good|in order|well)|as it should|no (?:changes?|problems?|cracks?|grain|graininess|mou?ld|bloom|sweat(?:ing)?|faults?|issues?|complaints?)|nothing (?:wrong|odd|unusual))\b/i;
const badWords =
  /\b(?:rancid|mou?ldy?|mou?ld|grainy|gritty|off|bad|too soft|too hard|(?:very|really|so) hard|sunk|dipped|soft|sticky|sweaty|sweating|cracked|separated|wrong|discolou?red|dull|odd|strange|weird|funny|burnt|sour|stale|musty|oily|greasy|runny|brittle|crumbly|uneven|sunken|bubbles?|bubbly|streaky|streaks|cloudy|specks?|spots?|spotty|tacky|draggy|rough|faded|pitted|holes?|craters?|cracks?|white bloom|bloom|wet|leaking|lumpy|dents?|not (?:fine|good|ok|okay|right))\b/i;
/** "No cracks", "nothing wrong": bad words that are denied. */
const deniedBad =
  /\b(?:no|without(?: any)?|not|nothing|never|free of) (?:\w+ )?(?:grain\w*|mou?ldy?|mou?ld|bloom|cracks?|spots?|sweat\w*|holes?|bubbles?|streaks?|off|rancid|wrong|odd|dents?|bad|sticky|soft|strange)\b(?: or \w+)?/gi;

const someTime =
  '(?:(?:after )?(?:an? |one |two |three |four |\\d+ |first |second )?[ -]?(?:days?|weeks?|months?)(?: later| on| old| after)?|today|update|quality(?: look| check)?|check(?:ed)?|look|inspection|on|of|for)';
const timeFirst = new RegExp(`^(?:${someTime}\\W+)+`, 'i');
const bareFine = new RegExp(
  `^\\W*(?:${someTime}\\W+)*(?:(?:still|all|and|is|are|quite|very|absolutely) )*(?:fine|good|perfect|great|lovely|ok|okay|alright|as it should(?: be)?)\\W*$`,
  'i',
);

/** "Week later, 26-KIVO still perfect": no verb at all. */
const bareVerdict = (text: string): boolean | undefined =>
  bareFine.test(text.replace(/_+/g, ' ').replace(/\s+/g, ' ')) &&
  /\b(?:still|all|week|month|day|look|check)/i.test(text)
    ? true
    : undefined;

const looksWrong =
  /\b(?:does|do|did|is|are|was|were|has|have)(?:n't| not) (?:\w+ ){0,2}(?:look|smell|feel|seem|set|right|good|fine|nice|firm|ok|okay|well|properly)\b/i;
/** "All fine with 27-KUFE", "nothing wrong with it", "checked, no problems". */
const allWell =
  /\b(?:all (?:is )?(?:fine|well|good|ok|okay) with|(?:everything|all) (?:is |was )?in order|(?:nothing|no faults?|no problems?) (?:is )?(?:wrong )?(?:with|in|on)) _|\b(?:checked|inspected|examined|looked at|quality (?:look|check))\b[^.;]{0,30}\b(?:no (?:changes?|problems?|faults?|issues?)|nothing (?:wrong|odd|unusual)|unchanged|all (?:fine|good|well))\b/i;

/** "26-KIVO has kept its shape through the hot week, all fine". */
const endsWell = /[,;.:-]\s*(?:it is |it's |they are )?all (?:is )?(?:fine|well|good|ok|okay|in order)\W*$/i;

/** "Quality, 26-KIVO, day 7: colour even, glide good". */
const headed =
  /^\W*(?:(?:one|two|first|second|\d+|day|week|month)[\s-]+)*(?:quality|inspection|check(?:up)?|look)\b[^:]{0,60}:.{0,80}\b(?:good|fine|ok|okay|even|smooth|firm|normal|perfect|nice|clean)\b/i;

/** No comma after it: "great" after a sale is read as "27-KUFE, great", and says nothing of the balm. */
const codeFirst =
  /^[^\p{L}_]*_+(?:\s*[:!-]\s*|\s+)(?:(?:still|a bit|a little|very|too|slightly|quite|all|looks?|is) )*/iu;
const bareGood =
  /^(?:fine|good|ok|okay|great|perfect|lovely|alright)(?: (?:after|at|on|today|now|an?|one|two|three|\d+|days?|weeks?|months?|later|still|so far|to me|as new))*\W*$/i;
/** "27-KUFE rancid", "27-KUFE ok": a code, and what was seen. */
const aloneIn = ({ text }: Reading): boolean | undefined => {
  const match = codeFirst.exec(text);
  const left = match ? text.slice(match[0].length) : '';
  if (left === '' || text.includes('?')) return undefined;
  const seen = left.replace(timeFirst, '');
  const seenBad = badWords.exec(
    seen.replace(/^(?:(?:an?|bit|little|slightly|very|too|rather|quite)\s+)+/i, ''),
  );
  if (seen !== left && seenBad?.index === 0) return false;
  if (seen !== left && fineWords.test(seen) && !badWords.test(seen.replace(deniedBad, ' '))) return true;
  if (bareGood.test(left)) return true;
  const bad = badWords.exec(left);
  return bad?.index === 0 && bad[0] !== 'wrong' && left.length < 60 ? false : undefined;
};

/** What a look found: fine, not fine, or nothing that tells. */
const verdictIn = (rest: Reading): boolean | undefined => {
  const bare = bareVerdict(rest.text);
  if (bare !== undefined) return bare;
  const alone = aloneIn(rest);
  if (alone !== undefined) return alone;
  if (allWell.test(rest.text) || endsWell.test(rest.text)) return true;
  if (headed.test(rest.text)) return !badWords.test(rest.text.replace(deniedBad, ' '));
  if (looksWrong.test(rest.text)) return false;
  const cue = looksCue.exec(rest.text);
  if (!cue) return undefined;
  const after = rest.text
    .slice(cue.index + cue[0].length)
    .replace(/_+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/^\W+/, '');
  const denied = after.match(deniedBad) !== null;
  if (badWords.test(after.replace(deniedBad, ' '))) return false;
  if (denied) return true;
  return fineWords.test(after) || /:\s*(?:fine|ok|good)/i.test(rest.text) ? true : undefined;
};

/** "After 2 weeks", "day 7": no count of tins. */
const isAge = ({ from, to }: Item, text: string): boolean =>
  /\b(?:day|week|month) $/i.test(text.slice(Math.max(0, from - 7), from)) ||
  /^[\s-]*(?:days?|weeks?|months?)\b/i.test(text.slice(to, to + 8));

/** "Looked at 26-KIVO, it has white spots": the balm has them, and nobody's skin. */
const looksAt = /\b(?:looked at|had a look at|checked|inspected|examined|quality (?:look|check))\b/i;
const ofSkin =
  /\b(?:skin|lips?|face|hands?|arms?|rash|itch\w*|red|burn\w*|she|he|her|his|my|customer|lady|man|woman|child|somebody|someone)\b/i;
const lookedWeight = 3.7;

/** "Nothing wrong with it", "doesn't look right": told, though there is a "not" in it. */
const saysWell = (text: string): boolean =>
  !/\?|^\W*(?:is|are|does|do|what|how|why|if)\b/i.test(text) && (allWell.test(text) || looksWrong.test(text));

const hoped =
  /\b(?:(?<!as (?:it|they) )should|hope|hopefully|would|could|might|weather|fun|entry|entries|undo|take (?:it|that|this|_+) back|scratch that|delete|remove)\b/i;
const writtenWrong = /\b(?:date|day|count|number|name|weight|label|recipe)s?\b.{0,20}\bwrong\b/i;

/** Hopes, questions, slips in the book, and whatever has amounts in it. */
const isNoLook = ({ text, items }: Reading): boolean =>
  hoped.test(text) ||
  writtenWrong.test(text) ||
  (asksOrPlans(text) && !saysWell(text)) ||
  items.some((item) => /[gvn%]/.test(item.letter) && !isAge(item, text));

/** "26-KIVO looks fine", "26-KIVO smells rancid": a look some days after the pour. */
export const claimLook = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const { rest, days } = bench;
  if (isNoLook(rest)) return undefined;
  const fine = verdictIn(rest);
  const meant = batchMeant(reading, bench);
  if (fine === undefined || meant.lot === undefined || meant.said?.kind === 'lot') return undefined;
  if (meant.trouble) return refuse(meant.trouble, 3.3);
  const said = reading.text
    .slice(meant.said?.to ?? 0)
    .trim()
    .slice(0, longestNote);
  const on = days.find(({ role }) => role === 'on')?.past;
  const text = fine || said === '' ? undefined : said;
  const weight = looksAt.test(rest.text) && !ofSkin.test(rest.text) ? lookedWeight : 3.4;
  return claim({ action: 'look', lot: meant.lot, fine, ...defined({ text, on }) }, weight, meant.assumed);
};
