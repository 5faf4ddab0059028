import { defined } from '../../core/defined.ts';
import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readBench } from './bench-reading.ts';
import { type Subject, subjectBefore, takeOwnIngredients, takeRemembered, takeSubject } from './body.ts';
import { leftover } from './leftover.ts';
import { readPointed } from './pointed-name.ts';
import { boardOf, takeShape } from './target.ts';

/** How long something keeps, and not when things on the shelf end. */
const keepsCue =
  /\bshelf[- ]?li(?:fe|ves)\b(?!.{0,12}\d)|\bhow long (?:does|do|will|would|can|could|should|is|are)\b.{0,60}\b(?:keep|last|good|fresh|stay|stays|kept|usable|store|stored|safe to use)\b|\b(?:keeps?|lasts?) (?:for )?how long\b|\bhow (?:quickly|fast|soon) (?:does|do|will|would)\b.{0,60}\b(?:go|turn|goes) (?:off|rancid|bad|stale)\b|\bwhen (?:does|do|will|would)\b.{0,60}\b(?:go|turn) (?:off|rancid|bad|stale)\b|\bkeeping (?:time|quality)\b/i;

export const keepsWords: ReadonlySet<string> = new Set(
  `how long does do will would can could should keep keeps keeping kept last lasts lasting good fresh stay stays usable store stored shelf life
  lifetime before it goes go going off rancid bad stale turn turns when quickly fast soon using use used quality time date best for is are what
  whats what's once poured made open opened homemade home-made expect until till many months weeks years cupboard bathroom drawer room`.split(
    /\s+/,
  ),
);

const read = (reading: Reading): Claim | undefined => {
  if (!keepsCue.test(reading.text) || readBench(reading).lots.length > 0) return undefined;
  const board = boardOf(reading.items);
  takeShape(board, /nc/); // "a tin of"
  const own = takeSubject(board);
  // How long one ingredient keeps is told with the ingredient.
  if (own.ingredient) return undefined;
  if (own.trouble) return refuse(own.trouble, 2.7);
  const named: Subject | undefined =
    own.recipe !== undefined || own.lines ? own : takeRemembered(board, reading, keepsWords);
  const before = named ? undefined : subjectBefore(reading);
  const subject = named ?? (before && { ...before, assumed: [] });
  takeOwnIngredients(board, reading, subject?.recipe);
  const { blocking } = leftover(board, keepsWords, subject !== undefined);
  if (!subject || blocking.length > 0) return undefined;
  const { recipe, lines } = subject;
  return claim(
    { action: 'keeps', ...defined({ recipe, lines: recipe === undefined ? lines : undefined }) },
    2.8,
    subject.assumed,
  );
};

/** "How long does the hand balm keep?": what decides the date of a tin poured today. */
export const claimKeeps = readPointed(read);
