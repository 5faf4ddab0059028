/**
 * The words that tell which way containers went, in lists that batch-gone-verbs.ts makes expressions of. Entries stand between
 * commas. In an entry
 *
 *     …        is up to sixty characters of anything
 *     (a|b)    is either, (a )? may be left out, (a )* may be there several times
 *     -word    says that this word does not come next
 *     ^ and $  are the beginning and the end of the message, marks left aside; a colon may have spaces before it
 *     {name}   is one of the pieces below
 *     _        is a code, which has been taken out before
 */

const tins = '(?:tins?|jars?|pots?|sticks?|tubes?)';
const number = '(?:one|two|three|four|five|six|seven|eight|nine|ten|twelve|a dozen)';
const animal = '(?:dog|cat|puppy|toddler|baby|goat|mouse|hens?|chickens?)';
/** "The care home": a house that bears it in its name. */
const careHome =
  "\\b(?<!\\b(?:care|nursing|rest|retirement|children's|people's|residential|funeral|foster) )home\\b";
const notHere =
  '(?:us|me|home|risk|room|ease|best|least|rest|once|hand|my|our|label\\w*|lids?|the (?:ready|moment|back|front|top|bottom|end))';
/** Where things of one's own stand. */
const ownPlace =
  'the (?:shelf|shelves|cupboard|drawer|box|house|fridge|bench|kitchen|table|rack|tray|book|way|mo[ou]lds?|post|mail|oven|freezer|cellar|attic|larder|pantry|shed|garage|bag|car|sun|cold|same|right|middle|tins?|end|whole|list|record|stock)';
const money = '(?:[€£$] ?\\d[\\d.,]*|\\d[\\d.,]*(?: ?(?:€|£|\\$|euros?|eur|pounds?|quid|dollars?))?)';
const someShop =
  "(?:the|our|a|my) (?:[\\w'’-]+ ){0,2}(?:shop|store|cafe|café|salon|deli|library|office|school|tea ?room|hall|raffle|tombola|auction|lottery|basket|stocking|hamper|stall|gift|church|counter|surgery|window)";
const dropped = 'dropped (?:it|them|those|these|both|all) (?:off|round|over)';
const droppedAt = '(?:[^,.;]{1,40} )?(?:off|round|in|over|by) (?:at|to|with|for)';
/** What is asked to be done: first in a message, or after "please". */
const order = '(?:^\\W*|\\b(?:please|pls|and|so|also|then|now|must),? )(?:(?:please|pls|also|just|kindly) )*';

export const pieces: Readonly<Record<string, string>> = {
  tins,
  number,
  animal,
  money,
  order,
  dropped,
  someShop,
  'some words': '(?:[^\\s.;!?]{1,20}\\s+){0,6}',
  back: 'back(?! (?:step|steps|door|garden|seat|yard|porch|room|shelf|in|as(?! (?:she|he|it|they|we|i)\\b)|for)\\b)',
  counted: `(?:\\d+|${number}) (?:more )?(?:${tins} (?:of |from |out of )?|of |from |out of )?_+`,
  'at somebody': `(?:at|with) (?!${notHere}\\b)(?=\\w)`,
  'in their place': `(?:on|in) (?=(?:the|her|his|their|ward|room|unit|class|group)\\b)(?!${ownPlace}\\b)`,
  'they have sold out':
    "(?<!\\b(?:they|she|he|it|who)(?:'d| had|'ve| have|'s| has| is| are| was| were)? (?=sold out))sold",
  'carried but not home': `(?:took|taken|taking|takes|carried|brought|drove|walked|dropped|passed|moved)\\b(?!.{0,40}${careHome})`,
  'dropped in': 'dropped (?:[^,.;]{1,40} )?(?:off|round|in|over|by)(?= (?:at|to|with|for)\\b)',
  'dropped but not off': `dropped(?! (?:it|them|those|these|both|all) (?:off|round|over)\\b)(?! ${droppedAt}\\b)`,
  'not by me': "(?<!\\b(?:i|we|i've|we've)\\b.{0,30})",
};

/** Put aside, and given away since. */
export const givenAside = '(put|set) … aside … (given|sent|handed|donated) to';

export const keptBack = '(keep|keeping|kept|held|hold|holding|set|put) {some words}back -from -in';

export const back = `
  ^back:, returned -ones -tins -jars -pots -tubes -sticks, returns, back from,
  (came|come|got|took|taken|brought|bringing|brings|gave|give|gives|given|hands|sends|handed|sent|posted|mailed|shipped|sending|passed|dropped) … {back},
  (are|is|were|was|has|have) … {back}, (was|were) (sent|brought|taken|handed) back,
  (picked|collected|fetched|took|taken|got) … again from, (picked|collected|fetched|took|taken|got) … from … again,
  (come|came|are|is) (back )?home from, (took|brought|carried|got) … home (again )?from, unsold … from (the|our),
  \\d+ ({tins}|(of )?_+) … back$
`;

export const kept = `
  (put|putting|set|setting) … (aside|by|away|on one side|to one side), put aside, set aside, put by,
  keep, keeping, kept, retain, retained, retaining, reserve, reserved, reserving,
  (hold|holding) back, (hold|holding|held) … back, (hold|holding|holds|held) on to,
  retention, (reference|control) sample, (sample|archive|retention) (box|drawer|shelf|cupboard|tin),
  (as|is|thats|that's) (the|a|our|my) control, for (the|our|my) (drawer|archives?|records|files?|retention \\w+),
  (is|are|as) (a |an |the |our )?(retention |reference |control |retained )*(sample|samples),
  for (comparison|reference|our records|the records|my records), not to be sold, not for sale,
  ^(_+\\W*)?(sample|samples)\\W*\\d+, \\d+\\W*(_+\\W*)?(sample|samples)$
`;

export const wasted = `
  (as|that's|is|was) (waste|a loss|a write-off|losses), went through the (wash|washing machine|dryer), out (they|it) went, left … (ruined|melted|spoiled|spoilt|rancid|broken|cracked),
  (in|into|to) (the|our) (bin|rubbish|trash|garbage|compost|skip), straight in(to)? the bin,
  had to (bin|throw|discard|chuck), threw, thrown, binned, scrap, scrapped, destroy, destroyed,
  {order}(throw|chuck|toss|bin|ditch), (dispose|disposed|disposing) of, rejected, condemned, wasted, waste:,
  discard, discarded, chucked, (wrote|written|write|writing) off, out of the (count|book|stock)
`;

export const sold = `
  {they have sold out}, flogged, shifted, offloaded, raffled, auctioned, (customer|buyer|sale):, sell, sells, selling, sale of,
  (was|were|been|got) (all )?(bought|snapped up), (customer|customers|people) bought,
  (took|made|got|earned|brought in) {money}( each)? for
`;

export const given = `
  ^out:, gave, given, give, gives, giving, gift, gifts, gifted, donated, donate, donating, lent, traded, swapped,
  (was|were|been|is|are|got) (all )?(taken|collected|picked up|fetched|claimed) by,
  issued, dispensed, distributed, allocated, dished out, doled out, passed on, shared (out )?(\\d+|an?|{number}),
  sending, sent, send, handing, handed, hand out, bringing, delivering, delivered, mailed, shipped, posted, in the post to,
  (went|gone) (home|off|away|out) with, (gone|going|off) to, the rest … (goes|go) to, (found|made) (their|its) way,
  went( out| off)?( by (post|parcel|mail|courier|train|van|bus))? to, {carried but not home} … (to|round to|over to|along to),
  {dropped in}, dropped off, {dropped}, brought (him|her|them|over|round), popped (\\d+|an?|{number}), left with,
  \\d+ (more )?{tins} … (are|is|stand|sit|lie) (now |still )?(at|with) [a-z]\\w*,
  {counted} (are|is|stands?|sits?|lies?|lives?) (now |already |all )*((over|up|down|out) )?({at somebody}|{in their place})\\w+,
  put (another )?(\\d+|_+|an?|some|{number}) … (in|into|on|at) {someShop},
  left (another |the |her |him |them )?(\\d+|_+|an?|some|{number}),
  (he|she|they|who) (also |has |have |then )?(took|taken|takes) … home, {not by me}(took|taken) … home,
  (left|came away|went away|drove off|walked out) with, on (commission|consignment|sale or return),
  (re)?stocked (the|our|my), filled up the, supplied (the|our), free (tins|samples|jars|sticks|pots)
`;

export const spoilt = `
  {dropped but not off}, {animal} (has |had |have )?(ate|eaten|eats|got), (mice|rats|ants|moths) (got|ate|had|were),
  broke, broken, breakage, breakages, spilled, spilt, ruined, smashed, cracked, crushed, squashed, slipped, in pieces, to pieces, to bits, shattered,
  fell, fallen, leaked, melted, spoiled, spoilt, lost, damaged, dented, bent, scratched, sank, burst, flattened, exploded,
  overboard, went (under|mouldy|rancid|astray|walkabout|off|bad), gone off, went rusty, rusted, (run|ran) over,
  stolen, stole, nicked, pinched, swiped, missing, nibbled, gnawed, chewed, licked, froze, soaked, got wet, caught fire,
  snapped -up, snapping, emptied, tipped over, trodden on, (sat|stood|trod|stepped|sitting|landed|bit) (down )?(on|into)
`;

export const used = `
  used, using, for (my|our) own use, opened, finished, tried, tested, ate, (is|are|as) (my |our |a |the |an )*(open )?testers?,
  (took|taken) … (myself|ourselves|test|testing|tester|testers), (took|taken) … home
`;

/** No more than that they are not here any longer. */
export const gone = '_+ gone, (tin|tins|jar|jars|pot|pots|tube|tubes|stick|sticks) gone, got rid of';
