import type { How } from './batch-gone-verbs.ts';
import { nameAfter, noPlace } from './bench-text.ts';

const small =
  '(?=\\d|_|(?:an?|one|two|three|four|five|six|seven|eight|nine|ten|eleven|twelve|half|all|both|some|the (?:last|rest|other|first)|another|our|my|us|tins?|jars?|pots?|tubes?|sticks?)\\b)';
const adverbs = '(?:(?:has|have|had|also|just|then|already|kindly|been)\\s+)*';
const taking =
  '(?:took|take|taken|is taking|are taking|is having|are having|keeps|confiscated|pocketed|borrowed|bought|buys|takes|got|has|have|had|received|purchased|collected|ordered and (?:got|received|took)|grabbed|bagged|nabbed|claimed|helped (?:him|her|them)sel(?:f|ves) to|snapped up|picked up|(?:were|was|are|been) (?:given|handed|sent|sold)|walked off with|went home with|went off with|left with|came away with|went away with|drove off with|accepted|become|became)';
const lead =
  '^(?:\\W|_|\\b(?:and|also|then|so|today|yesterday|this morning|this afternoon|later|ok|oh|oops|whoops|ah|erm|sorry|right|actually|no|correction|erratum|mistake|well|hang on|hi|hey|hello|pipkin|please|note|noted|that|as (?:a|an) (?:thank you|thanks|gift|present|prize|treat|sample))\\b)*';
const place =
  "((?:ward|year|class|room|group|table|unit|form|grade) \\d{1,2}[a-z]?|(?:the\\s+|my\\s+|our\\s+|a\\s+|an\\s+)?\\p{L}[\\p{L}\\p{N}'’.& -]{0,60}?)";
const taker = new RegExp(
  `${lead}${place}(?:,_+)?\\s+${adverbs}${taking}\\s+(?:another\\s+|home\\s+)?${small}`,
  'iu',
);
const returner = new RegExp(
  `${lead}${place}\\s+${adverbs}(?:returned|(?:brought|brings|bring|gave|give|gives|given|hands|handed|sends|sent|is sending|mailed|shipped|took|taken|posted|passed)(?=.{0,60}\\bback\\b))`,
  'iu',
);
const bareReturner = new RegExp(`${lead}${place}\\s+${small}.{0,60}\\bback\\W*$`, 'iu');
const bareTaker = new RegExp(
  `${lead}${place}\\s+(?:\\d{1,3}|one|two|three|four|five|six)\\s*[,;.!]*\\s*(?:and\\s*)?$`,
  'iu',
);
/** "… and the vicar two tins of 26-KIVO", after somebody who was given some. */
const nextReceiver = new RegExp(
  `${lead}${place}\\s+(?:\\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve) (?:tins?|jars?|pots?|tubes?|sticks?)\\b`,
  'iu',
);
const ownVerb =
  /\b(?:kept|keep|used|threw|thrown|binned|dropped|broken?|lost|poured|made|filled|returned|bought|got|opened|of|only|just|another|about|in|at|with|from|for|and)\b/i;
const receiver = new RegExp(
  `\\b(?:gave|given|sold|sent|mailed|lent|handed|posted|brought|passed|dropped|left|send|give)\\s+(?:out\\s+|off\\s+)?${place}\\s+${small}`,
  'iu',
);
const toPlace =
  /(?:(?<=_ (?:are|is|stands?|sits?|lies?|lives?) (?:now |already |all )*(?:(?:over|up|down|out) )?)(?:at|with|(?:on|in)(?= (?:the|her|his|their|ward|room|unit|class|group)\b)) |\s[-=]*>|(?<=\b(?:bought|taken|collected|ordered|picked up|snapped up|fetched|claimed) )by |\b(?:to (?!(?:be|throw|bin|give|sell|send|keep|use|test|take|make|get|say|go|come|have|pour|open|melt|chuck|toss|hand|put|return|write|note|tell|try|show|display|see|look|check|demonstrate|let|finish|help|celebrate|thank|eat|burn|teach|decorate|clean|re-?pour|remelt|reuse|melt)\b)|at (?!\d|_|(?:number|no\.|noon|midday|midnight|lunch\w*|tea ?time|break ?time|breakfast|dinner|supper|night|once|cost|least|last|first)\b)|among(?:st)? |with (?!\d|_|(?:an?|one|two|three|four|five|six|some) (?:tins?|jars?|pots?|sticks?|tubes?|of)\b)|on (?=(?:the|our|a) (?:[\w'’-]+ ){0,2}(?:market|bazaar|fair|f[eê]te|stall|festival|show|sale)\b)|in(?:to)? (?=(?:the|our|a|my|her|his|their) (?:[\w'’-]+ ){0,2}(?:shop|store|cafe|café|salon|deli|library|office|school|tea ?room|hall|raffle|tombola|auction|lottery|hamper|basket|stocking|window|church|surgery|staff ?room|gift ?box|parcel)\b)|on (?=(?:the|our|a|my|her|his|their) (?:[\w'’-]+ ){0,2}(?:doorstep|porch|desk|gate|step)\b)))\s*/i;
const fromPlace = /\b(?:from|(?<=\bback )off|(?<=\b(?:returned|(?:brought|sent|given|handed) back) )by)\s+/i;
const forPlace = /\bfor\s+(?=(?:the|our|my|a|(?:her|his|their)(?= \p{L}))\b|\p{Lu})/u;

/** "My aunt came by on Sunday, she left with 2 tins": who it was is said before. */
const visitor = new RegExp(
  `${lead}(?:(?:i|we) had\\s+)?${place}\\s+(?:had |has |have |just )?(?:came|called|rang|popped|visited|phoned|dropped|stopped|wrote|looked in|was here|were here|texted|emailed|over\\b)`,
  'iu',
);
const ofSomebody =
  /\b(?:he|she|they)\b.{0,20}\b(?:took|left|got|bought|went|had|has)\b|\b(?:gave|brought|sold|sent|handed|took) (?:him|her|them)\b/i;

/** "Marta came by and", "guess who": more than a name. */
const goesOn = /\b(?:came|went|comes|goes|called|and then|who)\b|\band$/i;
/** "Left a tin of …", "27-KUFE: sold 4", "the dog ate a tin": what stands there is no name. */
const noName =
  /^(?:a|an|another|the) (?:year|month|week|day(?! (?:centre|center|nursery|care|room|school|club)\b)|while|bit|start|laugh|change|test|trial|time)\b|\b(?:tins?|jars?|pots?|tubes?|sticks?) of\b|^(?:sell|give|send|keep|use|take|bring|sold|gave|given|kept|used|binned|threw|lost|sent|left|took|bought|opened|broke|dropped|returned|poured|shared(?: out)?|handed(?: out)?|got|had|has)$|^(?:threw|got|took|sold|binned) |^(?:the|my|our|a|an|about|around|roughly)$|\b(?:ate|eats|chewed|licked|sat|stood|trod)$/i;
const named = (text: string, pattern: RegExp): string | undefined => {
  const name = pattern.exec(text)?.[1]?.trim();
  return name === undefined || noPlace.test(name) || goesOn.test(name) || noName.test(name)
    ? undefined
    : name;
};

const goVerb =
  /\b(?:gave|given|give|sold|sent|took|taken|went|gone|handed|left|brought|donated|posted|delivered|lent|swapped|flogged|shifted)\b/i;

/** "She was so kind to water my plants, so I gave her two": where to is said after the verb, or first of all. */
const fromVerb = (text: string): string =>
  /^(?:\W|_|\band\b|\balso\b)*to\b/i.test(text) ? text : text.slice(goVerb.exec(text)?.index ?? 0);

const pronoun = /^(?:her|him|them|us|me|it|you|(?:her|him|my|them|our)sel(?:f|ves))$/i;

const againTo = (text: string): string | undefined => {
  const name = goVerb.test(text) ? undefined : named(text, nextReceiver);
  return name === undefined || ownVerb.test(name) ? undefined : name;
};

/** "And 4 for physio": one word, and nothing else in it. */
const forOne =
  /^(?:\W|_|\b(?:and|then|also|plus|more)\b)*(?:\d{1,3}|an?|one|two|three|four|five|six|seven|eight|nine|ten|twelve)(?: more)?(?: (?:tins?|jars?|pots?|tubes?|sticks?))?(?: of)?[ _]* for ((?!(?:sale|free|nothing|testing|tests?|use|later|now|samples?|keeps|good|fun|once|each|all|both|pouring|melting|display)\b)\p{L}[\p{L}'’-]{2,20}(?: (?!too\b|as\b|also\b)[\p{L}\d'’-]{1,20}){0,2}?)(?: too| as well| also)?\W*$/iu;

const forWhom = (text: string): string | undefined => {
  const name = nameAfter(text, forPlace)?.name ?? forOne.exec(text)?.[1];
  return name === undefined || noPlace.test(name) || noName.test(name) ? undefined : name;
};

/** "Gave Anna 3 tins in the hall": who got them stands right behind the verb, and nobody after "to". */
export const ownReceiver =
  /\b(?:gave|given|sent|handed|lent|mailed|posted|brought) (?:\p{Lu}\p{Ll}|(?:the|my|our|his|her) (?!(?:other|last|first|next|remaining|rest|usual|old|new)\b))(?!.*\bto (?:the|my|our|\p{Lu}))/u;

/** "The tea room took 6", "gave the library 3 tins", "6 to the fair", "2 came back from the shop". */
export const placeIn = (text: string, how: How): string | undefined => {
  if (how === 'back')
    return nameAfter(text, fromPlace)?.name ?? named(text, returner) ?? named(text, bareReturner);
  if (how === 'kept' || how === 'wasted') return undefined;
  const given = ownReceiver.test(text) ? named(text, receiver) : undefined;
  if (given !== undefined) return given;
  const after = nameAfter(fromVerb(text), toPlace)?.name;
  if (after !== undefined && !pronoun.test(after)) return after;
  return (
    named(text, taker) ?? named(text, receiver) ?? forWhom(text) ?? named(text, bareTaker) ?? againTo(text)
  );
};

/** "At the market today I sold 7 tins of A and 3 of B": where it was is said before the verb. */
const placeFirst =
  /^\W*(?:(?:so|and|well|today|yesterday|tonight|this (?:morning|afternoon|evening)|_+|on _+)\W+)*at (?=(?:the|our|a|my)\b|\p{Lu})/iu;
const stockedWith =
  /\b(?:re)?(?:stocked|filled|supplied|topped)(?: up)? ((?:the|our|my) [\p{L}'’-]+(?: [\p{L}'’-]+){0,2}?)(?: shelf)?(?: up)? with\b/iu;
export const leadingPlace = (whole: string, how: How | undefined): string | undefined => {
  if (how !== 'sold' && how !== 'given') return undefined;
  const stocked = stockedWith.exec(whole)?.[1];
  if (stocked !== undefined) return stocked;
  const name = nameAfter(whole, placeFirst)?.name;
  return name === undefined || noName.test(name) ? undefined : name;
};

const endPlace =
  /[,;:]\s*((?:the |our |my )?(?:[\p{L}'’-]+ ){0,2}(?:shop|store|market|fair|f[eê]te|stall|pharmacy|chemist|caf[eé]|school|library|church|hospice|hospital|club|group|hall|pub|inn|salon|spa|clinic|surgery|bakery|deli|bazaar|show|museum|farm|nursery|guild|choir|tombola|raffle|online|playgroup|garden centre))\W*$/iu;
/** "Sold: 27-KUFE, 4 tins, market": a place by itself at the end. */
export const trailingPlace = (clause: string, how: How | undefined): string | undefined =>
  how === 'sold' || how === 'given' ? endPlace.exec(clause)?.[1]?.trim() : undefined;

export const visitorIn = (whole: string, clause: string, how: How | undefined): string | undefined =>
  (how === 'given' || how === 'sold') && ofSomebody.test(clause) ? named(whole, visitor) : undefined;

export const isTaking = (text: string): boolean => named(text, taker) !== undefined;
