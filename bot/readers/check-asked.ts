import { watchedThing } from '../../core/check/composition.ts';
import { isScent } from '../../core/check/other-findings.ts';
import { ingredientById, isAdditive } from '../../core/ingredients.ts';
import { anyWord, type Reading } from '../reading.ts';
import type { Subject } from './body.ts';
import { asksLook, asksWhether } from './check-forms.ts';

/** What a look is about, and what else was said of it. */
export interface Parts {
  readonly subject: Subject;
  readonly more: Readonly<Record<string, unknown>>;
}

const isSmallAdditive = (id: string): boolean => {
  const found = ingredientById(id);
  return found !== undefined && isAdditive(found);
};

const holdsLimited = ({ subject }: Parts): boolean => {
  const ids = subject.ingredient?.ingredients ?? subject.lines?.map(({ ingredient }) => ingredient) ?? [];
  return ids.some((id) => isScent(id) || watchedThing(id) !== undefined || isSmallAdditive(id));
};

/** One ingredient is asked about in passing by many words; only a scent, or "on lips", makes it this question. */
const isAboutLips = (reading: Reading, parts: Parts): boolean =>
  anyWord(reading, ['lip', 'lips', 'balm', 'balms', 'children', 'kids', 'babies']) || holdsLimited(parts);

/** "Arnica oil in a lip balm?": a question of one thing, without a verb. */
export const inBalm =
  /\b(?:in|on|for)\s+(?:an?\s+|my\s+|our\s+|the\s+)?(?:lip ?balms?|lips)\b[^?]{0,12}\?\W*$/i;

const mayPut =
  /\b(?:can|could|may|should)\s+(?:i|we|you)\s+(?:add|put|use|have|take)\b[^?]{0,60}\b(?:lip ?balms?|lips)\b/i;

const modals = 'can may should is are how too most'.split(' ');
/** Of a whole recipe written out these ask for a look at it. */
const wholeCues =
  'pass passes nuts allergens allergen ok okay fine alright right wrong problem problems acceptable suitable worry worried good sun sunlight sunshine'.split(
    ' ',
  );

/** "How strong can I make it", "the most I may add": for a limit, whatever else the words around it would make. */
const mostAsked =
  /\bhow (?:strong|much|many|high)\b.{0,40}\b(?:can|may|could|is allowed|is safe)\b|\bhow many drops\b|\bmax(?:imum)?\b|\bthe most\b/i;

/** "I want a balm with shea and no nuts": one that is to be made up. */
const wantsOne =
  /\b(?:want|need|would like|'d like|looking for|after) an? (?:[a-z-]+ ){0,3}(?:balm|salve|stick|tube)\b/i;

/** True for a message that asks for a look at what it names. */
export const isAsked = (reading: Reading, parts: Parts, strong: boolean): boolean => {
  if (strong) return true;
  const { subject } = parts;
  if (wantsOne.test(reading.text)) return false;
  if (/\bwhat(?:'s| is| are)\b.{1,40}\bgood for\b/i.test(reading.text)) return false;
  if (asksWhether(reading) && subject.recipe === undefined && isAboutLips(reading, parts)) return true;
  if (subject.recipe !== undefined) return anyWord(reading, wholeCues) && !/\bbe made\b/i.test(reading.text);
  if ((subject.lines?.length ?? 0) > 1 && anyWord(reading, wholeCues)) return true;
  const asks = anyWord(reading, [...modals, ...wholeCues, 'sun', 'sunlight', 'sunshine']);
  return (asks || inBalm.test(reading.text)) && isAboutLips(reading, parts);
};

const isForSomebody = (parts: Parts): boolean =>
  parts.more.wearer !== undefined &&
  parts.subject.recipe === undefined &&
  (parts.subject.ingredient?.ingredients?.length ?? 1) === 1 &&
  holdsLimited(parts);

/** How sure a look is asked for; undefined where it is a question of another kind. */
export const weightOf = (reading: Reading, parts: Parts, strong: boolean): number | undefined => {
  // A region in the question is no setting to be changed.
  if (parts.more.region !== undefined) return 3.2;
  // "Is 0.5 % of it ok for children" is a question of that share, and no talk of scents and children.
  if (isForSomebody(parts)) return 3.15;
  // "The most beeswax" is no question of limits.
  if (mostAsked.test(reading.text) && parts.subject.ingredient) return holdsLimited(parts) ? 2.9 : undefined;
  // "Could I add 1 % clove oil to a lip balm": of a share, no recipe to be written down.
  if (mayPut.test(reading.text) && holdsLimited(parts)) return 3.1;
  // "I'd like to put 3 % … in my lip balm, is that too strong", "a nut allergy, can she use R": nothing to be designed or swapped.
  if (asksWhether(reading) || asksLook(reading)) return 3.1;
  return strong || parts.subject.recipe !== undefined || anyWord(reading, wholeCues) ? 2.8 : 2.3;
};
