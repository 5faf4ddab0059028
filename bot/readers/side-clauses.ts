const weekday = "(?:mon|tues|wednes|thurs|fri|satur|sun)days?(?:'s)?";
const ahead = `(?:${weekday}|tomorrow|tonight|next (?:week|month|weekend|term)(?:'s)?|at the weekend)`;
const subject = "(?:i|we|he|she|it|they|there|the|our|my|everyone|everybody|[a-z]+'s)";
const words = '[^,.;:!?\\d\\n]';
const reason = `(?:because|as|since|so(?: that)?) (?=${subject}\\b)${words}{2,80}\\b${ahead}${words}{0,30}`;
/** "…, because the fair is on Saturday", "…, so we are ready for Sunday": on no such day was anything done. */
const reasonLast = new RegExp(`[,;]?\\s+${reason}(?=\\s*(?:[.!]|$))`, 'i');
const reasonFirst = new RegExp(`^\\s*${reason},\\s+(?=\\S)`, 'i');
const inTime = new RegExp(
  `[,;]?\\s+(?:in time|(?:all |just )?ready|just right) for (?:the |our )?${words}{0,30}\\b${ahead}${words}{0,20}(?=\\s*(?:[.!]|$))`,
  'i',
);
/** "For the fair on Saturday": that day is the fair's. */
const ofEvent = new RegExp(
  `(\\bfor (?:the|our|my|a) (?:[\\p{L}'’-]+ ){0,2}[\\p{L}'’-]+) on ${weekday}(?= *(?:[,.;!?]|$))`,
  'iu',
);

/** "When I got home, I opened G7": asks nothing, and names nothing. */
const things =
  '(?:oils?|butters?|wax|beeswax|lanolin|balms?|salves?|tins?|jars?|pots?|tubes?|sticks?|lots?|batch|batches|shelf|recipe|bottle|count|counted|weighed|weigh|looked|opened|poured|made)';
const meanwhile = new RegExp(
  `^\\s*(?:when|while|once|as soon as|now that|since|as) (?:i|we|he|she|it|they|everyone|the \\p{L}+)\\b(?!${words}*\\b${things}\\b)${words}{2,50},\\s+(?=(?:i|we|he|she|they|the|our|my|an?|all|both|lot|\\d|\\p{L}+ (?:tins?|jars?|pots?|tubes?|sticks?|of|(?:gave|took|brought|bought|sold))\\b))`,
  'iu',
);
/** "When Q was empty, …" may name a lot. */
const code = /\p{Lu}{2}|\p{Lu}\b(?!')/u;
const withoutMeanwhile = (text: string): string =>
  text.replace(meanwhile, (clause) => (code.test(clause.replace(/\bI\b/g, 'i')) ? clause : ''));

/** "By the way", "as agreed", "to my surprise": said by the way. */
const byTheWay =
  /,?\s*\b(?:at long last|by the way|to (?:my|our|everyone's|everybody's) (?:\w+ )?(?:surprise|relief|delight|horror|joy|shame|dismay)|(?:just )?as (?:agreed|planned|promised|you asked|asked|requested|usual|expected|discussed|arranged))\b,?/gi;

/** "…, which was a relief". */
const aside =
  /,\s+which (?:was|is|were|made|came as|feels?|felt|pleased|suits?|helps?|helped) (?!(?:best|bought|made|poured|given|sold|left|now|lot|good (?:to|till|until)|dated|marked|of|from|for|in|on|at)\b)[^,.;:!?\d\n]{2,40}(?=\s*(?:\.|!|$))/i;

/** "CH-41 is 140 g, not more". */
const noMore =
  /(?<=\d ?(?:k?g|grams?|ml|oz|tins|jars|pots|tubes|sticks)),? (?:and )?(?:not|no) (?:more|less)(?: and (?:not|no) (?:more|less))?(?= *(?:[.!,;]|$))/i;

const oClock =
  "(?: o'?clock)?(?: (?:in the (?:morning|afternoon|evening)|at night|this (?:morning|afternoon|evening)|sharp))?";
/** "At half past nine": when in the day something was done is written nowhere. */
const clock = new RegExp(
  `\\s*\\b(?:at|around|about|by|shortly (?:before|after)|just (?:before|after)) (?:half past|(?:a )?quarter (?:past|to)|(?:five|ten|twenty|twenty-five) (?:past|to)) (?:one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|\\d{1,2})\\b${oClock}`,
  'i',
);
const ofClock =
  /\b(?:remind\w*|workshop|class|course|plan|timetable|start\w*|begin\w*|daily|every|message|heat|melt\w*|when|how|what)\b/i;

/** So little left of a message was no message. */
const leastLeft = 8;

/** "Used 60 g of K12 to test the new melting pot": what for is no melting. */
const whatFor =
  /^(\W*(?:(?:i|we) )?(?:used|took|needed) [^.;!?\n]{5,80}?) to (?:test|try(?: out)?|clean|check|show|polish|grease|season|oil|wax)\b[^.,;!?\d\n]{0,60}(?:[,.]? (?:so |and )?please take (?:it|that) off (?:the|our) (?:stock|shelf|book))?/i;

/** "Poured 24 tins of it, and we took the almond oil from lot K2": with that. */
const tookFrom =
  /(?<=\bpoured\b[^;!?]{5,160}),? (?:and |for (?:it|which|that) )?(?:we|i) (?:took|used|drew) (?=(?:the |our )?[\p{L} ]{3,40} (?:from|of|out of) (?:lot |bottle |bag |tub )?[^\s,.;]*\d)/iu;

/** "As a thank-you, the school got 4 tins". */
const asGift =
  /^\s*(?:as|by way of|for) an? (?:small |little )?(?:thank[- ]you|thanks|gift|present|prize|treat|surprise|welcome)(?: present| gift)?,\s+(?=\S)/i;

/** A message without clauses that say why, meanwhile or at what hour: a day, a number or a question in them is none of its own. */
export const withoutSideClauses = (text: string): string => {
  const first = withoutMeanwhile(
    text
      .replace(byTheWay, ' ')
      .replace(asGift, '')
      .replace(whatFor, '$1')
      .replace(tookFrom, ' with ')
      .replace(reasonFirst, ''),
  );
  const last = [reasonLast, inTime, ...(first.includes('?') ? [] : [aside])].reduce(
    (rest, clause) => rest.replace(clause, ''),
    first.replace(ofEvent, '$1').replace(noMore, ''),
  );
  const plain = ofClock.test(last) ? last : last.replace(clock, '');
  return plain.trim().length < leastLeft ? text : plain;
};
