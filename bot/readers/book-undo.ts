import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { subjectIn } from './book-subject.ts';
import { claimDeleteLot, undoesLast, undoesWhatWas } from './book-undo-words.ts';
import { kindOf, oneAtATime, undoWhat } from './book-words.ts';

export const undoCues = [
  ...'undo undoing undone withdraw retract void rescind enter record redo take call scrap scratch revert reverse cancel strike roll rollback'.split(
    ' ',
  ),
  ...'nonsense rubbish error typo incorrect entry wrong mistake accident oops whoops mean didnt ignore disregard delete remove erase forget drop happened happen never put bring restore reinstate rub cross wipe step back kill test right correct want'.split(
    ' ',
  ),
  "didn't",
];

const that =
  '(?:that|this|it|that one|this one|mine|my one|my own(?: one| entry)?|(?:that|the|my(?: own)?|our) last (?:one|change|entry|step|thing|edit|action|message|command|bit)|my(?: own)? last|the last|last(?: one| change| entry| thing)?|what i (?:just )?(?:did|said|wrote|told you|entered|recorded)(?: last| just now| just)?)';
const plainUndo = new RegExp(
  [
    `^(?:oops|whoops|sorry|no)?[ ,]*(?:undo|unsave|revert|reverse|withdraw|retract|void|rescind|rollback|roll back)(?: ${that})?$`,
    `^(?:oops|whoops|sorry|no)?[ ,]*(?:take|call) ${that} back(?: again)?$`,
    `^make ${that} (?:undone|unsaid)$`,
    `^(?:oops|whoops|sorry|no)?[ ,]*take back (?:${that})$`,
    `^(?:oops|whoops|sorry|no)?[ ,]*(?:scrap|scratch|strike|cancel|ignore|disregard) ${that}$`,
    `^(?:delete|remove|drop|reverse|unrecord|unwrite|erase|forget) (?:(?:that|the|my|our) (?:very )?last (?:one|change|entry|step|thing|edit|message|bit|record|note)|what i (?:just )?(?:did|said|wrote|told you)|that (?:entry|record|change))$`,
    `^undo (?:(?:that|the|my|our) )?(?:last |latest )?(?:thing|bit|step|message|entry|change|record)(?: (?:i|we) (?:just )?(?:did|said|wrote|told you|entered|made|recorded))?$`,
    `^(?:oops|oh no|oh dear|whoops|sorry|no)?[ ,.!]*(?:please )?(?:cross|strike|rub|wipe|take|scratch) (?:out|off) (?:(?:that|the|my) (?:very )?last (?:line|entry|one|note|record)|the last)$`,
    `^(?:cross|strike|rub|wipe|take|scratch|leave) (?:(?:that|the|my) (?:very )?(?:last |latest )?(?:line|entry|one|note|record)|the last) (?:out|off|away|back)(?: again)?$`,
    '^(?:that(?: one)?|this|it|the last one|that last one|(?:my|that|the) last (?:message|entry|one|change)(?: of mine)?) (?:was|is) (?:wrong|a mistake|nonsense|rubbish|not right|an error|a typo|not true|incorrect)$',
    '^(?:that|it) (?:never|did not|didn.t) happen(?:ed)?$',
    "^(?:oops|whoops|argh|sorry|no)[ ,!.-]*(?:wrong|wrong (?:one|button|recipe|batch|lot|thing)|my mistake|mistake|(?:that|it) was (?:wrong|a mistake|an accident|not right)|(?:i )?(?:did not|didn't|didnt) mean (?:that|it|to))$",
    '^(?:that|this|it) was (?:wrong|a mistake|an accident|a slip|the wrong one)(?:[ ,.-]*(?:undo|take it back|revert)(?: (?:it|that))?)?$',
    "^(?:i )?(?:did not|didn't|didnt) mean (?:that|to do that|to (?:save|record|log|pour|write) (?:that|it))(?:[ ,.-]*undo(?: (?:it|that))?)?$",
  ].join('|'),
  'i',
);
const redo =
  /^(?:redo(?: (?:that|it|the last (?:one|change)))?|undo the undo|(?:put|bring) (?:that|it) back(?: in)?(?: again)?(?: after all)?|(?:enter|write|put|record|note) (?:it|that)(?: down| in)? again(?: after all)?|(?:restore|reinstate) (?:that|it)|i (?:do )?want (?:that|it) back|do (?:that|it) (?:again )?after all)$/i;
/** Right after something was written these are about that. */
const afterDone =
  /^(?:(?:no|oops|sorry|wait|ah|oh)[ ,.!]+)*(?:(?:delete|remove|erase|rub|cross|strike|take|wipe|roll|cancel|scrap|drop|leave|forget|kill) (?:that|it|this|those)(?: (?:entry|line|one|last one|again|out|off|back|away))*|(?:cancel|delete|remove|erase|scrap|drop) (?:that|the|this) (?:entry|line|note|record)|(?:go )?(?:one |a )?(?:step )?back(?: one step| a step| one)?)$/i;
/** "It was right after all", after something was undone. */
const rightAfterAll =
  /^(?:(?:no|oops|sorry|wait|ah|oh|but)[ ,.!]+)*(?:it|that|this|they) (?:was|were|is) (?:right|correct|true|fine|ok|okay)(?: after all)?$/i;
const numbered = /^(?:undo|revert) (?:(?:entry|number|no\.?|change|#)\s*)*#?\s*(?<number>\d{1,7})$/i;
const several =
  /^undo (?:everything|all|the last \d+|\d+ (?:changes|things|times)|twice|(?:the )?last (?:two|three|few))\b/i;
/** "undo the last price", "undo my pour of 26-KIVO": a kind of change, and perhaps what it was about. */
const ofKind =
  /^(?:undo|revert|take back|cancel) (?:(?:the|my|our|that|last|latest|change|changes|to|of|in|on)\s+)*(?<kind>[a-z]+)\b(?<rest>.*)$/i;
/** "Delete the last pour": of other verbs only the last of a kind, so that "delete the recipe" stays what it is. */
const lastOfKind =
  /^(?:delete|remove|scrap|scratch|strike|drop|forget) (?=(?:the|my|our|that) (?:very )?(?:last|latest) )/i;
const filler =
  /^(?:\s|'s|\b(?:of|to|for|in|on|about|the|my|our|lot|batch|recipe|change|changes|entry|report|record|that|one|and|again|thing|things|bit|stuff|business)\b|[,.])*$/i;

/** "Undo that gift to Bob", right after it. */
const toWhom =
  /^\W*(?:(?:that|the|my|this|one)\b\W*)*(?:to|from|at|for|of) (?:the |our |my )?[\p{L}'-]+(?: [\p{L}'-]+){0,2}\W*$/iu;

const claimOfKind = (text: string, reading: Reading): Claim | undefined => {
  const match = ofKind.exec(text);
  if (!match) return undefined;
  const subject = subjectIn(reading, text);
  const kind = kindOf(match.groups?.kind ?? '');
  const rest = subject ? text.replace(subject.said, ' ') : text;
  const words = rest
    .replace(/^(?:undo|revert|take back|cancel)\b/i, ' ')
    .replace(kind ? (match.groups?.kind ?? '') : '', ' ');
  const around = words.replace(/\b(?:last|latest)\b/gi, ' ');
  const isLast = kind !== undefined && reading.last?.done === true && toWhom.test(around);
  if ((!kind && !subject) || !(isLast || filler.test(around))) return undefined;
  return claim({ action: 'undo', ...defined({ kind, about: subject?.about }) }, 3.3);
};

const clauseEnd = /\s*(?:[.,;:!?\n]+|\s-+\s|\b(?:so|and|but|because|cos)\b)\s*/i;
/** Verbs that take back by themselves: a clause with "wrong" alone may be about anything. */
const takesBack =
  /\b(?:undo|unsave|revert|reverse|rollback|roll back|take|call|scrap|scratch|strike|cancel|ignore|disregard|delete|remove)\b/i;
const polite =
  /^(?:(?:please|pls|can you|could you|would you|will you|kindly|i|we|want to|need to|have to|let's|just|ok|oh|no|sorry|then|now|quickly)\s+)+|\s+(?:please|pls|for me|for us|thanks|thank you|again|now|then|would you|quickly)$/gi;

/** The clauses of a message, without what is said for politeness. */
const clausesIn = (text: string): readonly string[] =>
  text.split(clauseEnd).map((clause) => clause.replace(polite, '').trim());

/** "Undo that", "take the last thing back". */
const isPlainUndo = (clause: string): boolean => plainUndo.test(clause) || undoesLast(clause);

/** "Undo the specimen", right after it. */
const undoOf = /^undo (?:the|that|my|this) [\p{L}-]+(?: [\p{L}-]+)?$/iu;
const isOfLast = (text: string, { last, items }: Reading): boolean =>
  last?.topic === 'batch' &&
  last.done === true &&
  undoOf.test(text.replace(polite, '').trim()) &&
  !items.some(({ letter }) => /[iR]/.test(letter));
/** "No, that was the candle wax. Undo!": why it is taken back is talk, as long as no other figure is told. */
const withReason = (text: string, { items, last }: Reading): boolean => {
  if (
    items.some(
      ({ letter, misspelt, word }) =>
        /[gv%t]/.test(letter) || (letter === 'c' && misspelt === undefined && word !== 'containers'),
    )
  )
    return false;
  const clauses = text.split(clauseEnd).filter((clause) => clause.trim() !== '');
  const bare = clauses.map((clause) => clause.replace(polite, '').trim());
  const takes = (clause: string): boolean =>
    (takesBack.test(clause) && plainUndo.test(clause)) || (last?.done === true && afterDone.test(clause));
  return clauses.length > 1 && bare.some(takes);
};

/** "Undo the pour and the purchase" is two things. */
const namesMore = (clause: string): boolean =>
  /\b(?:too(?! (?:much|many|little|few|late|early|long|big|small|high|low)\b)|also|as well|both|all)\b/i.test(
    clause,
  ) || clause.split(/\s+/).some((word) => kindOf(word.replace(/\W/g, '')) !== undefined);

/** "Undo that I was asleep": typed without a comma. */
const undoneAndWhy =
  /^((?:undo|redo|revert) (?:that|it|this))\s+(?:(?:pls|plz|please|thanks)\s+)?(?=(?:i|we|it|he|she|they|my|the|wrong|not)\b)/i;

/** "Take the last thing back. 2 kg is too much.": so plain that figures told besides are only why. */
const saysLast = (text: string): boolean => clausesIn(text).some(undoesLast);

/** "Redo it", "undo the last pour": one clause of talk around it, as long as no figure is told. */
const amongTalk = (text: string, reading: Reading): Claim | undefined => {
  const has = (letter: RegExp): boolean => reading.items.some((item) => letter.test(item.letter));
  // "It says 2029 on the can" counts no cans.
  const counts = reading.items.some(
    ({ letter, value = 0 }) => letter === 'n' && (value < 1900 || value > 2100),
  );
  if ((has(/[gv%t]/) || (counts && has(/c/))) && !saysLast(text)) return undefined;
  const clauses = clausesIn(text.replace(undoneAndWhy, '$1, '));
  const asking = clauses.filter(
    (clause) =>
      redo.test(clause) || undoesLast(clause) || /^(?:undo|revert|take back|cancel)\b/i.test(clause),
  );
  const [only, second] = asking;
  if (only === undefined || second !== undefined || text === only) return undefined;
  if (redo.test(only)) return claim({ action: 'redo' }, surelyTakenBack);
  if (clauses.some((clause) => clause !== only && namesMore(clause))) return undefined;
  if (isPlainUndo(only)) return claim({ action: 'undo' }, surelyTakenBack);
  return claimOfKind(only, reading);
};

/** Above a pour or a gift that is told of in the talk around it. */
const surelyTakenBack = 3.55;

/** "Wait no redo it". */
const secondThought =
  /^(?:(?:wait|no|nope|oh|oops|ah|hm|sorry|actually|hang on|hold on)\b[ ,.!]*)+((?:undo|redo|revert|take|put|bring)\b)/i;

/** What is taken back, or done again, without saying what it was. */
const lastTakenBack = (text: string, reading: Reading): Claim | undefined => {
  const after = reading.last?.done === true;
  if (isPlainUndo(text)) return claim({ action: 'undo' }, 3.3);
  if (redo.test(text) || (wasUndone(reading) && rightAfterAll.test(text)))
    return claim({ action: 'redo' }, 3.3);
  if ((after && (afterDone.test(text) || undoesWhatWas(text))) || withReason(text, reading))
    return claim({ action: 'undo' }, after ? surelyTakenBack : 3.3);
  return undefined;
};

const wasUndone = ({ last }: Reading): boolean => last?.topic === 'book' && last.request.action === 'undo';

/** "undo", "take that back", "undo the last price", "undo 12", "redo". */
export const claimUndo = (said: string, reading: Reading): Claim | undefined => {
  const text = said.replace(secondThought, '$1').replace(lastOfKind, 'undo ');
  const plain =
    claimDeleteLot(clausesIn(said), reading) ?? lastTakenBack(text, reading) ?? amongTalk(text, reading);
  if (plain) return plain;
  if (several.test(text)) return refuse(oneAtATime, 2.8);
  const number = numbered.exec(text)?.groups?.number;
  if (number) return claim({ action: 'undo', entry: Number(number) }, 3.3);
  if (!/^(?:undo|revert|take back|cancel)\b/i.test(text)) return undefined;
  const kind = claimOfKind(text, reading);
  if (kind) return kind;
  if (isOfLast(text, reading)) return claim({ action: 'undo' }, 3.3);
  return /^undo\b/i.test(text) ? refuse(undoWhat, 2.8) : undefined;
};
