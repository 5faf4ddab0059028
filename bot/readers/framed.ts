/** Sentences that are only talk, wherever they stand: nothing in them is counted, given, dated or asked. */
const talk: readonly string[] = [
  '(?:(?:many|lots of|with) )?(?:thanks|thank you|cheers|much obliged)\\b[^.!?\\n\\d]{0,60}',
  '(?:well done|great|lovely|perfect|brilliant|wonderful|marvellous|excellent|splendid|super|(?:good|nice) (?:job|work))(?:,? (?:pipkin|everyone|all|team))?',
  'sorry (?:to (?:bother|trouble|disturb) you|for (?:the|this) (?:late|long|delayed) (?:entry|message|note))(?: again| so late)?',
  'it (?:has |had )?(?:rained|snowed|poured with rain)\\b[^.!?\\n\\d]{0,30}|it (?:was|is) (?:raining|snowing|a (?:lovely|cold|hot|wet|rainy|sunny|busy|long) (?:day|morning|afternoon|evening))\\b[^.!?\\n\\d]{0,30}',
  'we (?:all )?had an? (?:\\p{L}+ )?(?:session|day|meeting|time|morning|afternoon|evening|class|workshop)\\b[^.!?\\n\\d]{0,30}',
  'the (?:group|circle|class) met\\b[^.!?\\n\\d]{0,30}',
  "(?:(?:and )?(?:another|one more|next|last)(?: one| thing| entry| item)|that(?:'s| is| was| will be) (?:all|it|everything)(?: (?:for (?:today|now|tonight|this (?:week|morning|evening))|from (?:me|us)|so far|then|folks))*)",
  'see you\\b[^.!?\\n\\d]{0,30}|until (?:then|tomorrow|next time)|more (?:tomorrow|later|soon|next (?:time|week))|(?:bye|goodbye|good ?night|take care)(?: (?:for now|all|everyone|then))?',
  'have an? \\p{L}+ (?:day|evening|weekend|week|time|night|morning|afternoon)\\b[^.!?\\n\\d]{0,20}|(?:i )?hope (?:you|all)\\b[^.!?\\n\\d]{0,40}',
  "(?:i|we)(?:'ll| will) (?:write|tell|report|say|be in touch|let you know|send)\\b[^.!?\\n\\d]{0,40}",
];
const anyTalk = `(?:${talk.join('|')})`;
const talkFirst = new RegExp(`^\\s*${anyTalk}\\s*[!.:]+\\s+(?=\\S)`, 'iu');
const talkLast = new RegExp(`[.!?;]\\s+${anyTalk}[!.\\s]*$`, 'iu');

/** "Hi all,", "morning everyone!": a greeting to everybody gives nothing to all. */
const greeting =
  /^\s*(?:hi|hello|hey|good ?morning|morning|good ?evening|evening|good ?afternoon|afternoon) (?:(?:to )?(?:you )?all|everyone|everybody|folks|team|both|friends)\s*[,.!:-]+\s+(?=\S)/i;

/** "One more for the book:", "quick update:", "news from the kitchen:": what stands over an entry. */
const headWords =
  "(?:and|also|just|here|is|are|a|an|the|our|my|one|another|next|last|first|final|quick|short|small|little|new|good|bad|sad|great|more|thing|things|item|entry|entries|update|news|message|for|from|to|of|in|on|write|put|note|add|enter|down|book|record|records|today|today's|tonight's|kitchen|hall|bench|group|circle|me|us|you)";
const head = new RegExp(`^\\s*(?<words>${headWords}(?:,? ${headWords}){0,7})\\s*:\\s+(?=\\S)`, 'i');
const isHead = /\b(?:one|thing|things|item|entry|entries|update|news|message)\b/i;
const withoutHead = (text: string): string => {
  const [all, words] = head.exec(text) ?? [];
  return all !== undefined && words !== undefined && isHead.test(words) ? text.slice(all.length) : text;
};

/** "Please note that …", "I would like to report that …": telling it is enough. */
const toTell =
  /^\s*(?:please |kindly )?(?:(?:can|could|would|will) you (?:please |kindly |just )?|(?:i|we)(?:'d| would)? (?:like|want|wish|need|have) to (?:also )?|(?:i|we) (?:can|may|must|should) (?:also )?|let me )?(?:note(?: down)?|tell you|say|report|mention|record|write down|add|let you know|inform you|be noted) that (?=\S)/i;

const it = '(?: (?:it|that|this|them|these|everything|all of (?:it|that|this)))';
const book =
  '(?: (?:in|into|to|for|on) (?:the|our|my) (?:bench book|book|records?|notebook|notes|file|books))';
/** "… Could you write that down, please?": telling it is asking for it. */
const toBeWritten = new RegExp(
  `(?:[.!;,]|\\s-)?\\s(?:(?:so|and) )?(?:(?:can|could|would|will) you (?:please |kindly |just )?|please |kindly )(?:(?:write|note|jot|put|mark|get)${it} down${book}?|(?:note|record|log|register|enter|write)${it}${book}?|put${it}${book}|make a note(?: of${it})?${book}?)(?: for (?:me|us))?(?:,? (?:please|thanks|thank you|would you))?[\\s?.!]*$`,
  'i',
);

/** "I would like these two purchases to be written down:", "I need to know which …": how it is led up to. */
const ledUpTo =
  /^\s*(?:(?:i|we)(?:'d| would) like [^.:;?!\n\d]{1,60}\b(?:written|noted|entered|recorded|put|booked)(?: down| in)?(?: in the book)?\s*:\s+|(?:i|we)(?:'d)? (?:need|want|would like|like|have) to (?:know|see|learn|find out),? (?=(?:what|which|where|who|whom|how)\b))(?=\S)/i;

/** "Would you enter 200 g of wax as bought today? It keeps till May": told, and no question. */
const askedToEnter =
  /^\s*(?:please )?(?:can|could|would|will) you (?:please |kindly |just )?(?:enter|add|record|log|register|book in|book|write down|put down|note down|note)\s+(?=(?:\d|an?\b|half|one|two|three|the (?:purchase|delivery))[^?\n]{5,200}\?)([^?\n]{5,200})\?/i;
const asBought = /\bas (?=(?:bought|received|delivered|purchased)\b)/i;
/** "… Please enter it as bought today." */
const enteredAs =
  /[.;,]\s+(?:please |kindly |so )*(?:enter|write|book|put|note|record|mark) (?:it|them|that|both|all of (?:it|them))(?: down)? as (bought|received|thrown away|waste|wasted)(?: (today|yesterday))?(?: please)?[\s.!]*$/i;
const enteredFirst = (text: string): string => {
  const [all, how = '', day] = enteredAs.exec(text) ?? [];
  if (all === undefined) return text;
  const said = text.slice(0, -all.length);
  const isBought = /^(?:bought|received)$/i.test(how);
  const plain = isBought
    ? said.replace(/\b(?:i|we) (?:also |now )?have (?=\d|an?\b|half)/i, 'I bought ')
    : said;
  return `${plain}${day === undefined ? '' : `, ${day}`}.`;
};

/** "Today's pour was Hive balm, and it gave us 25 tins": poured. */
const pourWas =
  /^\s*((?:today|yesterday)'s|the|our|my) pour (?:(?:today|yesterday) )?(?:was|is)(?: of)? (\p{L}[^,.;:\d\n]{2,40}?)[,;:.]? (?:and )?(?:it|that|we|which) (?:gave|made|filled|came to|yielded|got|makes|gives|has filled)(?: us| me)?(?: out of it)? (?=\d|[a-z]+ (?:tins?|jars?|pots?|tubes?|sticks?)\b)/iu;

/** "Please note that 26-KIVO took long to set": of a batch or lot, and no figure in it, is a note. */
const remark =
  /^(?:(?:the )?(?:lot|batch) )?\S*\d\S*\s(?!.*\b(?:\d+|one|two|three|four|five|six|seven|eight|nine|ten|twelve|all|half)\b)/i;

/** "Could you note that I poured 12 tins?" asks nothing. */
const withoutToTell = (text: string): string => {
  const said = toTell.exec(text)?.[0];
  if (said === undefined) return text;
  const told = text.slice(said.length);
  if (/\bnote\b/i.test(said) && remark.test(told)) return text;
  return /^\s*(?:can|could|would|will)\b/i.test(said) ? told.replace(/\s*\?\s*$/, '') : told;
};

const toldTwice =
  /,?\s+(?:so|and) (?:(?:can|could|would|will) you (?:please )?|please |kindly )(?:write down|note(?: down)?|record|put down|enter) that ([^.;!?\n]*)[.!?\s]*$/i;
const numbersOf = (text: string): readonly string[] => text.match(/\b\d+\b/g) ?? [];
/** "He took 3 jars, so please write down that 3 jars were given to him": told once. */
const withoutSecondTelling = (text: string): string => {
  const [all, again = ''] = toldTwice.exec(text) ?? [];
  if (all === undefined) return text;
  const first = text.slice(0, -all.length);
  const said = numbersOf(again);
  return said.length > 0 && said.every((each) => numbersOf(first).includes(each)) ? `${first}.` : text;
};

/** What comes after so few characters is the message itself. */
const leastBefore = 10;
const withoutEnd = (text: string, end: RegExp): string => {
  const match = end.exec(text);
  return match && match.index >= leastBefore ? `${text.slice(0, match.index)}.` : text;
};

/** So many sentences of talk at either end. */
const rounds = 3;

/** A message without the frame of courtesies around what it tells or asks. */
export const withoutFrame = (text: string, left = rounds): string => {
  const start = [greeting, talkFirst, ledUpTo].reduce((rest, frame) => rest.replace(frame, ''), text);
  const told = enteredFirst(start.replace(askedToEnter, '$1.').replace(asBought, '')).replace(
    pourWas,
    '$1 pour: $2, ',
  );
  const bare = withoutEnd(withoutEnd(withoutSecondTelling(withoutHead(told)), talkLast), toBeWritten);
  return bare === text || left === 0 ? withoutToTell(bare) : withoutFrame(bare, left - 1);
};
