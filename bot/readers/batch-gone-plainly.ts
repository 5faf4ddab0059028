import { lotKey } from '../../core/bench/codes.ts';
import { tinsLeft } from '../../core/bench/state.ts';
import type { Reading } from '../reading.ts';
import { blanked, readAgain } from '../understand.ts';
import { toEach } from './batch-gone-each.ts';
import { ownReceiver } from './batch-gone-places.ts';
import { lotsIn } from './lots.ts';

const soldThere =
  /\b(they|he|she|the [\p{L}'’-]+(?: [\p{L}'’-]+){0,3}?) (?:have |has |had |only )?sold (?:only |just )?(?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|some|most|half|a few)(?: of (?:them|those|these|(\d{2}-\p{L}{3,6})))?(?: tins?| jars?| pots?| tubes?| sticks?)?(?:,? (?:and|but)\b|[,;.])\s*(?=.{0,80}\b(?:back|returned)\b)/iu;
/** "They sold 3 and gave 2 back": what they sold was out of the house before. */
const theySold = (text: string): string =>
  text.replace(soldThere, (_all, who: string, code?: string) =>
    code === undefined ? 'they ' : `${code}: ${who} `,
  );

const onePerson =
  /\bone (?=(?:[\p{L}-]+(?:['’]s)? )?(?:dad|parent|grandma|granny|colleague|teacher|guest|helper|volunteer|resident|cub|scout|girl guide|buyer|customer|lady|man|woman|person|client|visitor|shopper|friend|neighbour|nurse|patient|mum|mother|member|student|pupil|boy|girl|child)\b)/giu;
/** "One customer sent a stick back": a customer. */
const onePersonIs = (text: string): string => text.replace(onePerson, 'a ');

const righted =
  /\b(?:to|at|for|from) [^,;.]{2,40}?,?\s+(?:no,? wait|wait|no|sorry|i meant?|rather)\b(?:[,\s]+(?:no|sorry|wait|i meant?)\b){0,3},?\s+(?=(?:to|at|for|from) \p{L})/iu;
/** "To Anna, no wait, to Beth": only where it went in the end. */
const rightedAlong = (text: string): string => text.replace(righted, '');

const notForSale =
  /,?\s*(?:so )?(?:i|we) (?:do not|don't|won't|will not|can't|cannot|could not|couldn't) sell (?:them|it|those|that)\b/i;
const unsold =
  /\b(?:(?:weren't|wasn't|were not|was not|had not been|hadn't been) sold|(?:didn't|did not|wouldn't|would not|couldn't|could not) (?:sell|shift)(?: (?:them|it|those|these|any more))?)\b/gi;
const cameBack = /\b(?:back|returned|returns|home)\b/i;
/** "2 tins weren't sold and came back": not sold is no plan here. */
const restWent =
  /,?\s*(?:and |but )?(?:all )?(?:the )?(?:rest|others?|remainder) (?:of (?:them|it) )?(?:(?:was|were|is|are|has|have|all) )*(?:went|gone|sold|sold out)(?! to\b)\b/i;
const soldFewer =
  /^\W*((?:the |my |our )?[\p{L}'’ -]{2,40}?) (?:did not|didn't|could not|couldn't) (?:sell|shift) \w+(?: of (?:them|those|these))?, (?:so|and) (?=[^.;]*\b(?:\d|one|two|three|four|five|six|seven|eight|nine|ten)\b[^.;]*\bback\b)([^.;!]*)/iu;
const notSold = (text: string): string =>
  (cameBack.test(text)
    ? text.replace(soldFewer, '$2 from $1').replace(unsold, 'unsold').replace(restWent, '')
    : text
  ).replace(notForSale, '');

const mustGo =
  /\b(?:must|have to|has to|had to|will have to|need to|needs to|ought to) (?:all |both |sadly )?(?:go|be (?:put|thrown|chucked))(?= (?:straight )?(?:(?:in|into|to|on) (?:the|our|my) (?:bin|rubbish|trash|garbage|compost|skip|tip)|out|away)\b)/i;
/** "2 tins must go in the bin, the lids had rusted": they count no more. */
const binnedNow = (text: string): string => text.replace(mustGo, 'went');

const outing =
  /^\W*(?:(?:hi|hello|evening|morning|afternoon|so|ok|well|right|just|pipkin)\W+)*(?:(?:i|we)(?:'m|'re|'ve| am| are| was| were| have| went)?\s+)?(?:(?:just|now|all|finally|safely|only)\s+)*(?:(?:got |came |come )?(?:back|home|in) from|been (?:to|at|out at)|(?:was|were|out|over|stood|spent (?:the|all) (?:day|morning|afternoon|evening)|(?:a |what a )?(?:good|great|busy|long|cold|wet|slow|lovely|quiet|fine) (?:day|morning|afternoon|evening)) at|went to)\s+((?:the|our|a|my|this|today's|yesterday's) [^,.;:!?\d_]{2,40}|\p{Lu}[^,.;:!?\d_]{2,40}?)(?:\s*[,.;:!]\s*|\s+and\s+)(?=.{0,60}\b(?:sold|gave|given|flogged|handed|left|shifted|swapped|people bought)\b)/iu;
const days = /\s+(?:today|yesterday|this (?:morning|afternoon|evening)|last night|on \w+day|now)\s*$/i;
const ownPlace = /\b(?:to|at) (?=(?:the|our|a|my|mrs?|ms)\b|\p{Lu}\p{Ll})/u;
const letHave =
  /\b(?:(i|we) let ((?:the |our |my |her |his |their )?\p{L}[^,.;:!?\d_]{1,40}?) have) (?=(?:another )?(?:\d|an?\b|one\b|two\b|three\b|four\b|five\b|six\b|seven\b|eight\b|nine\b|ten\b|some\b))/iu;
/** "We let the school have 4 tins": given. */
const letIsGiven = (text: string): string => text.replace(letHave, '$1 gave $2 ');

const backFrom =
  /^\s*(?:i am|i'm|we are|we're)(?: just| now| finally)? back from [^.!?\d_]{2,40}[.!]\s+(?=\S)/i;
/** "I am back from the hall. Two tins were broken": nothing comes back. */
const withoutComingHome = (text: string): string => text.replace(backFrom, '');

const tookAndSold =
  /\b(?:took|brought|carried|had) (?:\S+ ){1,2}(?:tins? |jars? |pots? |tubes? |sticks? )?(?:of |from )?(_+) (?:along |down |over |up )?(?:to|with (?:me|us) to|at) ((?:the|our|a|my) [^,.;:!?\d_]{2,40}?|\p{Lu}[^,.;:!?\d_]{2,40}?)(?:,? (?:and|but)|[,;.]) (?:(?:i|we) )?(?:only |just )?(sold|gave away|got rid of) (\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)(?: of (?:them|those|these))?\b/iu;
/** "Took 10 to the sale and sold 9 of them": nine went, and the tenth came home again. */
const tookSome = (message: Reading): string => {
  const [code, second] = lotsIn(message);
  const match = code && !second ? tookAndSold.exec(blanked(message.text, [code])) : null;
  if (!match || !code) return message.text;
  const [all, , place = '', verb = '', count = ''] = match;
  const how = /^sold$/i.test(verb) ? 'sold' : 'gave';
  const told = `${how} ${count} of ${code.code} ${how === 'sold' ? 'at' : 'to'} ${place.trim()}`;
  return message.text.slice(0, match.index) + told + message.text.slice(match.index + all.length);
};

/** "Back from the market, I sold 11 tins of it there": where it was is said before. */
const onOuting = (text: string): string => {
  const match = outing.exec(text);
  if (!match) return text;
  const said = text.slice(match[0].length).replace(/\s*\b(?:over |up |down )?there\b/i, '');
  const day = days.exec(match[1] ?? '')?.[0] ?? '';
  const place = (match[1] ?? '').replace(days, '').trim();
  if (ownPlace.test(said) || ownReceiver.test(said)) return `${said}${day}`;
  const end = /^[^,.;!]*/.exec(said)?.[0] ?? said;
  return `${end.trimEnd()} at ${place}${day}${said.slice(end.length)}`;
};

/** "…, he already has one": no count of what went or came. */
const hasSome =
  /[,;]\s*(?:as |because |since |and )?(?:he|she|they|who) (?:already |still )?(?:has|have|had|got) (?:already |still )?(?:one|some|enough|plenty|another|two)\b[^.;_\d]{0,30}[.!]*\s*$/i;
const withoutOwn = (text: string): string => text.replace(hasSome, '');

/** "…, the lid won't open", "…, her dog only wants to eat it": why, and no plan. */
const thingWillNot =
  /[,;]\s*(?:as |because |since |but |and )?(?:[\p{L}-]+(?:['’]s| is| was|['’]re| are) not (?=keen|fond|into|happy|a fan|much of)|(?:the|its|their|his|her|my) (?:[\p{L}-]+ ){1,2}(?:won'?t|wouldn'?t|can'?t|couldn'?t|doesn'?t|didn'?t|don'?t|isn'?t|wasn'?t|never|only want(?:s|ed)?|wants?|wanted|does not|did not|would not|will not|could not|cannot)\b)[^.;:!?\d_]*[.!]*\s*$/iu;
const withoutWhy = (text: string): string => text.replace(thingWillNot, '');

const whoever =
  /(\b(?:gave|given|sold|sent|handed|brought|to|for) (?:the|my|our|an?) [\p{L}'’-]+(?: [\p{L}'’-]+)?),? who (?!got\b|took\b|bought\b|had\b|has\b)[^,.;\d_]{2,40}?,?(?= (?:\d|an?\b|one\b|two\b|three\b|four\b|five\b|six\b|ten\b)|\s*[.!]*\s*$)/iu;
/** "Gave the lad who helps me one": the lad. */
const withoutWho = (text: string): string => text.replace(whoever, '$1');

const eachOf =
  /\b(\d{1,3}|an?|one|two|three|four|five|six|ten)((?: more)?(?: (?:tins?|jars?|pots?|tubes?|sticks?))?)(?:,? each)? (?:of|from) (?:each of |both )?(?=_+(?:, _+)*,? and _+)/i;
const askedAndGot =
  /(?:\b(?:has|have|had) )?\basked (?:me |us )?for,? and (?:has |have |had |then )?(?:received|got|had|was given|were given|been given|taken|took),?/gi;
const wanting =
  "(?:asked (?:me |us )?for|(?:would|'d) (?:also )?(?:like|love)|wants|wanted|needs|needed|requested|ordered|was after|were after)";
const handing =
  '(?:(?:now )?(?:has|have|got|took) (?:it|them|those)|(?:(?:so |and )?(?:i|we)(?:.ve| have)? )?(?:just |already |also )*(?:gave|given|sent|handed|passed|let|dropped|took|brought|delivered|posted) (?:it|them|her|him|those|these)\\b[^.;!?_\\d]{0,40})';
/** "The school would like 2 tins, and I have just given them to them". */
const askedAndHas = new RegExp(
  `\\b${wanting} ((?:another )?(?:\\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve)\\b[^,.;!?]{1,40}?)(?:[,.;]? (?:and |so |and so )?|\\s*[,.;]\\s*)${handing}`,
  'gi',
);
const writeItDown =
  /[.;!]\s*(?:so |and )?(?:please )?(?:write|note|put|jot|record|enter|mark|log)(?: (?:it|that|this|them))?(?: down| in)?(?: please)?(?: that (?:they|it|those) (?:went|are|were|have gone|has gone|is)\b[^.;!?_\d]{0,60})?\s*[.!]*\s*$/i;
/** "Matron asked for, and received, 2": she has them. */
const asked = (text: string): string =>
  text
    .replace(askedAndGot, 'received')
    .replace(askedAndHas, (_all, many: string) => `received ${many.replace(/^another /i, '')}`)
    .replace(writeItDown, '');

const ofMany =
  /\b(\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: tins?| jars?| pots?| tubes?| sticks?)? (?:out )?of (?:the |his |her |their |my |our |its |those )?(?:\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|twenty)(?= (?:tins|jars|pots|tubes|sticks)\b)/gi;
/** "Of those 4 he sent one back". */
const ofThoseMany =
  /\b(?:out )?of (?:those|these|the|his|her|their|\d{2}-\p{L}{3,6}) (?:\d{1,3}|two|three|four|five|six|seven|eight|nine|ten|twelve)\b,? (?=(?:he|she|they|i|we|the|my|our)\b)/iu;
/** "Returned 2 of 6 tins": two of them. */
const someOfMany = (text: string): string => text.replace(ofMany, '$1').replace(ofThoseMany, '');

const halfOf =
  /\b(?:one |a |exactly |just )?half (?:of )?(?:all )?(?:the |my |our |those |these )?(?:(remaining|last|left) )?(?:tins |jars |pots |tubes |sticks )?(?:of |from |in )?(?:the |batch )*(?=_)/i;
/** "Half of the tins of it": how many that is, where all of them are here yet, or the remaining ones are meant. */
const halfIs = (message: Reading): string => {
  const [code, second] = lotsIn(message);
  const batch = code && !second ? message.bench.batches.get(lotKey(code.code)) : undefined;
  const match = code ? halfOf.exec(blanked(message.text, [code])) : null;
  if (!batch || !match) return message.text;
  const left = tinsLeft(batch);
  if (left % 2 !== 0 || (match[1] === undefined && left !== batch.count)) return message.text;
  const { text } = message;
  return `${text.slice(0, match.index)}${left / 2} of ${text.slice(match.index + match[0].length)}`;
};

/** "One tin each of A and B": one of each of them. */
const ofEachCode = (message: Reading): string => {
  const codes = lotsIn(message);
  const plain = blanked(message.text, codes);
  const match = eachOf.exec(plain);
  const [first, second] = codes;
  if (!match || !first || !second || !/\beach\b|\bboth\b/i.test(match[0])) return message.text;
  const [all, count = '', holder = ''] = match;
  const last = codes.at(-1) ?? second;
  const told = codes.map(({ code }) => `${count}${holder} of ${code}`).join(', ');
  return first.from < match.index + all.length
    ? message.text
    : `${message.text.slice(0, match.index)}${told}${message.text.slice(last.to)}`;
};

const few = '(\\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve)';
const ofThoseThere = new RegExp(
  `\\b(?:out )?of (?:the|those|his|her|their) ${few}(?: (?:tins?|jars?|pots?|tubes?|sticks?))?(?: (?:of|from) _+)? (?:for|at|to|with|in|from) ([^,.;:!?\\d_]{2,40}?),? ${few} (?:of them )?(?:were|was|have been|has been|are|is|got|have|has) (?:been )?(?:sold|bought)\\b[,;]?(?: and| but)? ${few}\\b[^.;!]*\\b(?:back|returned)\\b[^.;!]*`,
  'iu',
);
/** "Of the three jars for the bazaar two were sold, one I have back": what was sold there was out before. */
const soldOfThose = (message: Reading): string => {
  const [code, second] = lotsIn(message);
  const match = code && !second ? ofThoseThere.exec(blanked(message.text, [code])) : null;
  return match && code ? `${match[4]} of ${code.code} came back from ${match[2]}` : message.text;
};

const dealtOut =
  /^\W*(?:distribution|distributed|given out|handed out|issued|dispatched|deliveries|delivered|shared out|where (?:they|it) went)(?: list)?(?: of| from| for)?\s+_+\s*[:-]\s*((?:\d{1,3}|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: (?:tins?|jars?|pots?|tubes?|sticks?))? .*)$/iu;
/** "Distribution of 26-KIVO: 10 yoga studio, 8 bookshop": who got how many. */
const dealt = (message: Reading): string => {
  const [code, second] = lotsIn(message);
  const list = code && !second ? dealtOut.exec(blanked(message.text, [code]))?.[1] : undefined;
  if (!code || list === undefined) return message.text;
  const parts = list
    .replace(/[.\s]+$/, '')
    .split(/,? and |[,;] ?/)
    .map((part) =>
      /^(\S+)(?: (?:tins?|jars?|pots?|tubes?|sticks?))? (?:to |for )?(\p{L}.*)$/iu.exec(part.trim()),
    );
  if (parts.some((part) => part === null)) return message.text;
  const told = parts.map((part, at) => `${part?.[1]}${at === 0 ? ` of ${code.code}` : ''} to ${part?.[2]}`);
  return `gave ${told.join(', ')}`;
};

/** What was told of containers that went or came back, in a way that the readers of them know. */
export const gonePlainly = (message: Reading): Reading => {
  const each = toEach(message) ?? message;
  const byCode =
    [dealt, ofEachCode, tookSome, halfIs, soldOfThose]
      .map((plainer) => plainer(each))
      .find((said) => said !== each.text) ?? each.text;
  const plain = [
    notSold,
    theySold,
    rightedAlong,
    binnedNow,
    onOuting,
    withoutComingHome,
    letIsGiven,
    withoutWho,
    asked,
    onePersonIs,
    someOfMany,
    withoutOwn,
    withoutWhy,
  ].reduce((text, plainer) => plainer(text), byCode);
  return plain === each.text ? each : readAgain(plain, each);
};
