import { type ScaleStep, scaleSteps } from '../../core/settings.ts';
import { gramsIn, isMassUnit } from '../../core/units.ts';
import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { type Found, none } from './settings-words.ts';

const stepCue =
  /\b(?:scales?|balance)[,:]?(?:\s+(?:can|only|that|now|just|is|are|has|have|an?|do|does|will|which|steps?|display|readability))*\s+(?:reads?|reading|goes|go|weighs?|steps?|accurate|accuracy|precise|precision|resolution|shows?|measures?|resolves?|down)\b|\bset (?:the|our|my) scales? to\b|\b(?:scale|default)\s+step\b|\bstep\s+(?:of|is|to|size)\b|\bset\s+(?:the\s+)?step\b/i;

const badStep: Found = {
  ...none,
  trouble: {
    code: 'bad-quantity',
    text: 'A scale can read 1 g, 0.1 g, 0.01 g or 0.001 g here. For example "scale reads 0.01 g".',
  },
};

/** "Hundredths of a gram". */
const partOfGram = /\b(tenths?|hundredths?|thousandths?) of (?:a |one )?grams?\b/i;

const isWeight = (item: Item): boolean =>
  item.letter === 'g' || item.letter === 'n' || (item.letter === 'u' && item.unit === 'g');

/** "our scale reads 0.01 g", "scale goes down to a gram". */
export const readStep = (reading: Reading): Found => {
  if (!stepCue.test(reading.corrected)) return none;
  const stepG = partOf(reading.corrected);
  return stepG === undefined ? weightOf(reading) : { wish: { stepG } };
};

const partOf = (text: string): ScaleStep | undefined => {
  const part = partOfGram.exec(text)?.[1]?.toLowerCase() ?? '';
  if (part.startsWith('te')) return 0.1;
  if (part.startsWith('hu')) return 0.01;
  return part === '' ? undefined : 0.001;
};

const weightOf = (reading: Reading): Found => {
  const item = reading.items.find(isWeight);
  if (!item || item.upTo !== undefined) return none;
  const unit = item.unit !== undefined && isMassUnit(item.unit) ? item.unit : 'g';
  const grams = Number(((item.value ?? 1) * gramsIn(unit)).toFixed(6));
  const stepG: ScaleStep | undefined = scaleSteps.find((step) => step === grams);
  return stepG === undefined ? badStep : { wish: { stepG } };
};

const lossCue =
  /\b(?:set|default|usual|usually|always|our|change|make|normal|from now on|allow)\b.*\b(?:loss|losses|waste|wastage|allowance)\b|\b(?:loss|waste|allowance)\b.*\b(?:default|always|from now on)\b|^\W*(?:the |our )?(?:loss|losses|loss allowance|allowance|waste|wastage)\b|^\W*(?:please |can (?:you|we) |could (?:you|we) |let's |we |i |now |ok |so )*(?:go |set it |put it |switch |return |change )?(?:back|return|allow|take|use|reckon|count|calculate|lose|losing|expect)\b.*\b(?:loss|losses|waste|wastage|allowance)\b|\b(?:loss|waste|allowance)\b.{0,12}\b(?:back|again)\b|^\W*(?:we|i) (?:usually |always |normally |generally |only |now )*(?:lose|waste|allow|expect to lose|spill)\b.{0,12}\d/i;

const forGood = /\b(?:set|default|always|usual)\b/i;

/** "set loss to 5 %"; a bare "loss 5 %" right after a scaling or a workshop is about that, not about the group. */
export const readLoss = (reading: Reading): Found => {
  if (!lossCue.test(reading.corrected)) return none;
  if (/^(?:scale|workshop)$/.test(reading.last?.topic ?? '') && !forGood.test(reading.corrected)) return none;
  if (reading.items.some((each) => /[Rigvc]/.test(each.letter))) return none;
  const item = reading.items.find((each) => each.letter === '%' || each.letter === 'n');
  if (item?.value !== undefined) return { wish: { lossPercent: item.value } };
  return /\bno\b/i.test(reading.corrected) ? { wish: { lossPercent: 0 } } : none;
};
