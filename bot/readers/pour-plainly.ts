import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';
import { bodyBefore } from './batch-pour-before.ts';
import { letters } from './lexicon.ts';
import { lotsIn } from './lots.ts';

const otherVerb =
  /\b(?:poured|pour|made|make|filled|sold|gave|given|kept|binned|threw|bought|used|back|returned|opened|scale|label|cost|how|what)\b/i;

/** "Did the Harbour balm today: 12 tins of 15 g": no question. */
const didThe =
  /^(\W*(?:(?:i|we|just|also|then|today|yesterday|so|ok)\W+)*)did (?:the|our|my|some|another)\b(?=[^?]{2,80}\d)/i;
/** "It was 14 tins of the balm that I poured yesterday". */
const thatWas = /,? (?:which|that) (?:i|we) (?:have )?(?:poured|made)\b/i;
const managed =
  /\b(?:i|we) (?:just |also |finally )?managed(?: to (?:do|make|get))?(?: (?:out|through))?(?= )/i;
const usedTo = /\bused\b([^.;!?]{2,60}?)\bto (?:pour|make|fill)\b/i;
const forgotTo =
  /\bforgot(?:ten)? to (?:log|record|write(?: down)?|say|enter|mention|note|tell you|put (?:in|down))(?: (?:that|about|it|this))?\b[\s:,-]*/i;
const another =
  /^(\W*(?:(?:and|then|also|ok)\W+)*)another (?=\d{1,3} |\w+ (?:tins?|jars?|pots?|tubes?|sticks?)\b)/i;
const barely =
  /^\W*(?:(?:ok|okay|and|done|right|yes|all|just|now|so|i|we)\W+)*poured(?: (?:it|that|them|this))?(?: (?:today|now|just now|this morning|this afternoon|this evening|yesterday|already|too|all|out))*\W*$/i;

const oclock = '(?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d{1,2})';
/** "At half past four", "between 2 and 4 pm", "5pm": when, and nothing more. */
const clock = new RegExp(
  `\\b(?:(?:at|by|around|about|since|till|until|from) )?${oclock} o'?clock\\b|\\b(?:(?:at|around|about|since|till|until|from) )?(?:half past|quarter (?:past|to)) ${oclock}\\b|\\b(?:between|from) ${oclock}(?::\\d\\d)? ?(?:am|pm)? (?:and|to|till|until) ${oclock}(?::\\d\\d)? ?(?:am|pm|o'clock)\\b|\\b(?:(?:at|around|about|since|till|until|from) )?\\d{1,2}(?:[:.]\\d\\d)? ?(?:am|pm|o'clock)\\b`,
  'gi',
);
/** "Room 19": how warm it was is noted nowhere. */
const room = /,?\s*\broom(?: temperature)?(?: at| was| is)? \d{2}(?: ?°? ?c\b)?/gi;
/** "Planned 18 tins, got 16", "instead of 18": how many it was to be. */
const wished =
  /,?\s*\b(?:(?:i |we )?(?:planned|wanted|aimed for|hoped for|expected)|(?:was |were )?(?:meant|supposed) to be|instead of|not the)(?: for)? (?:\d{1,3}|a dozen|two dozen)(?: (?:tins?|jars?|pots?|tubes?|sticks?))?(?: we (?:planned|wanted))?(?= (?:of|but|and|,)|\s*[,.;]|\W*$)(?:,? but)?/i;
const onlyGot = /\b(?:but )?(?:only )?got (?:only )?(\d{1,3})(?= of\b|\W*$)/i;

/** "25 g net in each": what each holds, and not what was weighed out. */
const netEach = /(\d[\d.,]{0,6} ?(?:g|grams?|ml)) (?:net|nett|weight)(?=,? (?:in )?(?:each|apiece|per))/gi;

const asLines: readonly (readonly [RegExp, string])[] = [
  // "Today's production for the museum shop: 44 tins …".
  [
    /^\W*(today|yesterday)'s (?:production|output|yield|work)(?: for (?:the|our|my) [\p{L}' -]{3,30})?\s*:\s*/iu,
    '$1 poured ',
  ],
  // "Mixed from 30% beeswax and 70% olive oil", "a blend of …".
  [
    /,?\s*\b(?:(?:which|that|they|it|i|we|all|each) )?(?:(?:was|were|are|is|have|had|had been) )?(?:mixed|blended|melted|stirred|prepared|composed|consisting|concocted|formulated|put) (?:together )?(?:from|of|out of|using|with)\b/gi,
    ', with',
  ],
  [
    /\b(?:of|with|from|using) (?:a|the) (?:simple |plain |new |warm )?(?:mix|mixture|blend|melt|recipe|ratio) (?:of|with)\b/gi,
    'with',
  ],
  [
    /[,;:]? (?:the )?(?:composition|recipe|formula|mix|mixture|blend|ratio|proportions?|made up of|comprising)(?: (?:is|was|being|used))?[\s:,]+(?=\d)/gi,
    ', with ',
  ],
  [/[,:]? (?:a|the) (?:simple |plain )?(?:mix|mixture|blend|ratio) of\b/gi, ', with'],
  // "What went in was 22% beeswax".
  [
    /[.;,:]\s*(?:and )?(?:what|all that|everything that) (?:went in(?:to (?:it|them|the pot|the jug))?|i used|we used|is in (?:it|them))(?: (?:was|were|is|are))?[\s:]*(?=\d)/gi,
    ', with ',
  ],
  [
    /\b(?:finished|completed|put together|stirred up|got ready)\b(?= (?:\d|a dozen|\w+ (?:tins|jars|pots|tubes|sticks)))/gi,
    'made',
  ],
  [/(?<=\b(?:tins|jars|pots|tubes|sticks)) for (?:the|our|my) [\p{L}' -]{3,30}?(?=[,.;:])/giu, ''],
  // "For every 20 g of wax I took 80 g of oil", "25 g of wax to every 75 g", "per 75 g".
  [/\bfor (?:each|every) (?=\d)/gi, 'with '],
  [
    /\b(?:i|we) (?:took|used|added|put in|put|weighed in|weighed|had|stirred in|stirred|mixed|melted|blended) (?=\d)/gi,
    '',
  ],
  [/\b(?:to|on|with) (?:each|every) (?=\d)|\bper (?=\d)/gi, 'and '],
];

const asksFor = /\b(?:scale|labels?|cost|price|check|save|recipe|make|need|want|how|what|would|will|can)\b/i;
const pourVerb = /\b(?:poured|made|filled|manufactured|compounded|produced|cast|finished|done|did)\b/i;
/** "44 tins of 12 g, blended from …" tells that it was done. */
const saidDone = (told: string, plain: string): string =>
  told !== plain &&
  /\b(?:mixed|blended|prepared|melted|stirred)\b/i.test(told) &&
  !pourVerb.test(plain) &&
  !asksFor.test(told)
    ? `poured ${plain}`
    : plain;

const withLines = (reading: Reading, said: string): string => {
  const has = (letter: RegExp): boolean => reading.items.some((item) => letter.test(item.letter));
  return has(/i/) && has(/c/) && has(/[g%p]/) && !has(/R/) && !reading.text.includes('?')
    ? saidDone(
        said,
        asLines.reduce((text, [pattern, plain]) => text.replace(pattern, plain), said),
      )
    : said;
};

const withoutWhen = (text: string): string => text.replace(clock, '').replace(room, '');
const withoutWished = (text: string): string => {
  const plain = text.replace(wished, '');
  return plain === text ? text : plain.replace(onlyGot, '$1 tins');
};

const hasPour = ({ items }: Reading): boolean =>
  items.some(({ letter }) => letter === letters.recipe) &&
  items.some(({ letter }) => letter === letters.container);

/** "And a second one: poured 8 tins". */
const secondOne =
  /^\W*(?:(?:and|then|ok|also)\W+)*(?:a|the|my|our|one) (?:(?:second|third|fourth|next|other|further|more) )+(?:(?:one|pour|batch|lot|time)\b)?(?: today| too)?\s*[:,-]\s*(?:(?:i|we)(?:'ve| have)? )?(?:poured|made|filled)\b/i;

const plainly = (reading: Reading): string => {
  const text = reading.text.replace(secondOne, 'poured another').replace(netEach, '$1');
  const { last } = reading;
  if (barely.test(text) && last?.topic === 'scale' && bodyBefore(reading))
    return text.replace(/\bpoured\b(?: (?:it|that|them|this))?/i, 'I poured that');
  if (!hasPour(reading) || text.includes('?')) return withLines(reading, text);
  const told = withoutWished(withoutWhen(text))
    .replace(thatWas, ' poured')
    .replace(didThe, '$1made the')
    .replace(managed, 'we made')
    .replace(usedTo, 'with$1poured');
  const withLots = another.test(told) && lotsIn(reading).some(({ kind }) => kind === 'lot');
  const more = withLots && !otherVerb.test(told) ? told.replace(another, '$1poured another ') : told;
  return otherVerb.test(more) ? more : more.replace(forgotTo, 'poured ');
};

/** The message with a pour told in plainer words: "did the balm", "used K12 to pour", "we managed 12 tins". */
export const pourPlainly = oncePerReading((reading): Reading => {
  const plain = plainly(reading);
  return plain === reading.text ? reading : readAgain(plain, reading);
});
