import { oncePerReading, type Reading } from '../reading.ts';
import { readAgain } from '../understand.ts';

const saves = '(?:save|store|keep|record|remember|add|note(?: down)?|write down)';
/** "Save: Stall balm = 10 g candelilla, …", "our Sunday stick recipe = 30 candelilla, …". */
const equals = new RegExp(
  `^\\W*(?:(?:please|pls|and|also|new|ok|so)\\W+)*(?:(?<verb>${saves})\\b\\W*)?(?:(?:our|my|the|a|this|new)\\s+)*(?<first>recipe\\b(?: for)?\\W*)?(?<name>[^=:\\n\\d,;]{2,40}?)(?<after>\\s+recipe)?\\s*=\\s*(?=[\\d\\p{L}])`,
  'iu',
);

/** The message with the name of a recipe led in as it is by most people, where it stands before a sign of equality. */
export const withNameLedIn = oncePerReading((reading: Reading): Reading => {
  const { text } = reading;
  if (!text.includes('=')) return reading;
  const { verb, first, name, after } = equals.exec(text)?.groups ?? {};
  if (name === undefined || (verb ?? first ?? after) === undefined) return reading;
  return readAgain(text.replace(equals, `save recipe ${name.trim()}: `), reading);
});
