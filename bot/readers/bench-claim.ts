import { anyWord, type Claim, claim, type Reading, refuse } from '../reading.ts';
import { readAdvice } from './bench-advice.ts';
import { readDilution } from './bench-dilute.ts';
import { readFill } from './bench-fill.ts';
import { benchAgain } from './bench-last.ts';
import { benchCues } from './bench-words.ts';

/** A wording asked about belongs on a label, whatever it speaks of. */
const wording =
  /\b(?:can|may|could) (?:i|we) (?:say|write|claim|call)\b|\ballowed to (?:say|write|claim|call|print)\b|\bclaim\b|\bwording\b|\bon (?:the|a|my|our) label\b/i;

/** What a message would mean at the bench: alcohol to thin, how full a tin has to be, or what to do. */
export const claimBench = (reading: Reading): Claim | undefined => {
  const again = benchAgain(reading);
  if (again) return claim(again, 3.1);
  if ((!anyWord(reading, benchCues) && !/\bin it\b/i.test(reading.text)) || wording.test(reading.text))
    return undefined;
  const fill = readFill(reading);
  if (fill) return 'trouble' in fill ? refuse(fill.trouble, 2.6) : claim({ fill }, 3.1);
  const alcohol = readDilution(reading);
  if (alcohol) return claim({ alcohol }, 3.1);
  const advice = readAdvice(reading.text);
  return advice === undefined ? undefined : claim({ advice }, 3.1);
};
