import { lotKey } from '../../core/bench/codes.ts';
import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading } from '../reading.ts';
import { lotsIn } from './lots.ts';

const noun =
  '(?:one|change|entry|step|thing|edit|message|command|bit|record|note|line|booking|sentence|statement|input|item|part|action|information|report)';
const did =
  '(?: (?:that |which )?(?:i|we|i.ve|we.ve)(?: have| had)?(?: just| last| only)? (?:did|said|wrote|written|told|typed|entered|recorded|put|noted|made|sent|booked|added|reported|gave|given|logged|keyed|tapped)(?: (?:you|to you|in|down|up|it|there|here))*)';
const latest = `(?:the|my|our|that) (?:very )?(?:last|latest|previous|newest|most recent)(?: ${noun}){0,2}${did}?`;
const what = `(?:all )?what${did}`;
const when = '(?: (?:just now|last|just|before|a (?:minute|moment|second) ago|right now|there|again))*';
const object = `(?:${latest}|${what}|(?:that|this)(?: last)? ${noun}${did}?)${when}`;
const verb =
  '(?:undo|unsave|revert|reverse|withdraw|retract|cancel|scrap|scratch|strike|ignore|disregard|delete|remove|erase|forget|drop|void|take back|take out|take away|cross out|strike out|strike off|wipe out|rub out|get rid of|clear)';
const parted = `(?:take|cross|strike|rub|wipe|scratch) ${object} (?:back|out|off|away)(?: of the book| again)?`;
/** "Take back the last thing I wrote", "cross the last entry out": the last change, whatever it is called. */
const takesBackLast = new RegExp(
  `^(?:${verb} ${object}(?: (?:from|in|out of) (?:the|our|my) (?:book|list|record))?|${parted})$`,
  'i',
);

const aboutIt = new RegExp(
  `^${verb} (?:${what}|what was (?:said|written|noted)) (?:about|on|of|for|with) .{2,60}$`,
  'i',
);
/** "Take back what I wrote about the trays", right after it. */
export const undoesWhatWas = (clause: string): boolean => aboutIt.test(clause);

export const undoesLast = (clause: string): boolean => takesBackLast.test(clause);

const deletes =
  /^(?:delete|remove|erase|scrap|strike|drop|take out|cross out|get rid of|cancel)\b(?: (?:the|this|that|our|my|entry|record|purchase|line|of|for|about|whole|all|lot|batch|number|code|entire|again|from|book|out|shelf|stock|list|please|completely))*$/i;

/** "Delete lot PM8": what brought it into the book is undone, where nothing builds on it. */
export const claimDeleteLot = (clauses: readonly string[], reading: Reading): Claim | undefined => {
  const [said, second] = lotsIn(reading);
  if (!said || second || said.kind === 'new') return undefined;
  const code = reading.text.slice(said.from, said.to);
  const bare = clauses.find((clause) => clause.includes(code));
  if (bare === undefined || !deletes.test(bare.replace(code, ' ').replace(/\s+/g, ' ').trim()))
    return undefined;
  const house = reading.bench.lots.get(lotKey(said.code))?.draws;
  const kind = said.kind === 'batch' ? 'pour' : house ? 'infusion' : 'purchase';
  return claim({ action: 'undo', ...defined({ kind, about: { lot: said.code } }) }, 3.4);
};
