import type { Slot } from '../likeness/features.ts';
import { isIngredientKind } from '../likeness/pieces.ts';
import { isBackground } from '../readers/background-words.ts';

const people =
  /^(?:people|persons?|participants?|guests?|pupils?|students?|scouts?|learners?|makers?|women|men|ladies|girls|boys|children|kids|friends|members?|colleagues|visitors|heads?|folks?|adults|teens|teenagers|brownies|guides|of|us|in|attendees|places|seats|sign|nurses|neighbours|patients|residents|clients|customers|nieces|nephews|cousins|sisters|brothers|grandchildren|volunteers|helpers|teachers|hikers|walkers|bridesmaids)$/;

/** Numbers that count nothing the bench knows of: "forty copies". */
const noNoun =
  /^(?:until|till|since|then|or|to|and|more|other|through|within|after|times|little|small|tiny|big|large|new|nice|empty)$/;
const age = /^(?:turn(?:s|ed|ing)?|aged?|over)$/;
export const isIdle = ({ kind, text, before, after }: Slot): boolean =>
  kind === 'n' &&
  (text === 'half' ||
    age.test(before) ||
    (/^(?:19|20)\d\d$/.test(text) && !held.test(after)) ||
    (isBackground(after) && !people.test(after) && !noNoun.test(after)));

/** "Twenty little jars": what a count of containers may stand before. */
const held = /^(?:tins?|jars?|pots?|tubes?|sticks?|tubs?|containers?|times)$/;
const containers =
  /^(?:tins?|jars?|pots?|tubes?|sticks?|tubs?|containers?|of|in|short|more|left|empty|little|small|tiny|big|large|new|nice|each)$/;

const named = (list: string): RegExp => new RegExp(`\\b(?:${list.replaceAll(' ', '|')})$`, 'i');
const away = named(
  'of replace replacing swap swapping without for no lose losing ditch ditching scrap scrapping dump dumping chuck chucking from drop dropping except trade exchange not avoid care skip have has had where out',
);
const toward = named('with to for use using be become becomes try trying by put try and add take into in');

const isMoney = ({ text, before, after }: Slot): boolean =>
  (before === 'at' && /^(?:an?|per)$/.test(after)) ||
  /[€£$]|\d[.,]\d\d\b|\b(?:euros?|eur|pounds?|quid|gbp|dollars?)\b/i.test(text) ||
  /^(?:each|apiece|euros?|pounds?|quid|dollars?)$/i.test(after);

/** "3 hours" are no people. */
const countsSame = (plain: string, open: Slot, slot: Slot): boolean => {
  if (/^hours?$/.test(open.after)) return /^hours?$/.test(slot.after);
  if (/^(?:sell|what margin)\b/.test(plain)) return isMoney(slot);
  if (plain.startsWith('start at')) return /^(?:am|pm|o'clock|h|sharp|in|)$/i.test(slot.after);
  if (open.after === 'hot')
    return /^(?:hot|hobs?|rings?|burners?|stoves?|plates?|cookers?)$/i.test(slot.after);
  if (open.after === 'mm') return /^(?:mm|millimet\w+)$/i.test(slot.after);
  if (open.after === 'times') return slot.after === 'times' || slot.before === 'times';
  if (/^(?:x|tins)$/.test(open.after))
    return slot.before === 'of' || containers.test(slot.after) || people.test(slot.after);
  const isNamed = people.test(slot.after) || people.test(slot.before);
  return isNamed || (/^(?:of|for)$/.test(slot.before) && !held.test(slot.after));
};

const isTwin = ([{ text }]: readonly [Slot, Slot]): boolean => /^\{i\d\}$/.test(text);

/** The word before a thing, articles apart. */
const leadOf = (text: string, { from }: Slot): string =>
  text.slice(Math.max(0, from - 24), from).replace(/\s+(?:(?:the|my|our|all|some|that|this)\s+)?$/i, '');

/** What stands after these goes, whatever is said of the other. */
const surelyAway =
  /\b(?:where(?: there)?(?: is| was| were| are)?|over|not use|not using|not want|don't use|don't want|not|instead of|in place of|the place of|rather than|stead of|replac(?:e|es|ing)|substitute for|without|out of)(?:\s+(?:the|my|our|all))*$/i;

const inHalves = /\bhalf[ -](?:and|n|&)[ -]half\b|\bfifty[ -]fifty\b/i;

/** "Put jojoba in instead of the olive oil": the words before two ingredients say which goes and which comes. */
const swapsSame = (plain: string, text: string, [first, second]: readonly Slot[]): boolean => {
  const [goes, comes] = plain.startsWith('swap ') ? [first, second] : [second, first];
  if (!goes || !comes) return false;
  const [from, to] = [leadOf(text, goes), leadOf(text, comes)];
  if (surelyAway.test(from) && !surelyAway.test(to)) return true;
  if (plain.startsWith('swap half') && (inHalves.test(text) || /\bhalf(?: of)?$/i.test(from))) return true;
  return away.test(from) && (toward.test(to) || to === '');
};

const isLeftOut = (text: string, { from, to }: Slot): boolean =>
  /\b(?:without|no|not|nor|free (?:of|from)|avoid(?:ing)?|allergic to|hates?|minus|leave out|skip)\s+(?:(?:any|the|my)\s+)?$/i.test(
    text.slice(Math.max(0, from - 24), from),
  ) || /^[- ]free\b/i.test(text.slice(to, to + 6));

/** What stays out of a new recipe is said to, and nothing else is. */
const leavesOutSame = (plain: string, text: string, pairs: readonly (readonly [Slot, Slot])[]): boolean =>
  !plain.startsWith('design') ||
  pairs.every(
    ([open, slot]) => !isIngredientKind(open.kind) || (open.before === 'without') === isLeftOut(text, slot),
  );

/** "Replace the kryptonite with beeswax": what is said to come in is not what is to be replaced. */
const comesIn = (text: string, slot: Slot): boolean =>
  /\b(?:replac\w*|swap\w*|substitut\w*|exchang\w*)\b[^.?!]*\b(?:with|by)$/i.test(
    text.slice(0, slot.from).replace(/\s+(?:(?:the|my|our|some|any)\s+)?$/i, ''),
  );

/** Whether things may stand in a form's places, by the words beside them. */
export const agreesWith =
  (plain: string, text: string) =>
  (chosen: ReadonlyMap<Slot, Slot>): boolean => {
    const pairs = [...chosen];
    if (!pairs.every(([open, slot]) => open.kind !== 'n' || countsSame(plain, open, slot))) return false;
    if (!leavesOutSame(plain, text, pairs)) return false;
    const [thing] = pairs.filter(([open]) => isIngredientKind(open.kind)).map(([, slot]) => slot);
    if (plain.startsWith('what can replace') && thing && comesIn(text, thing)) return false;
    const isSwap = plain.startsWith('swap ') || plain.includes('instead of');
    const twins = pairs.filter(isTwin).map(([, slot]) => slot);
    return !isSwap || twins.length === 0 || swapsSame(plain, text, twins);
  };
