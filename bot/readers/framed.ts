/** "Thank you for keeping count.": said after everything, and nothing is kept. */
const thanks =
  /[.!?;]\s+(?:(?:many|lots of|with) )?(?:thanks|thank you|cheers|much obliged)\b[^.!?\n\d]{0,60}[.!]*\s*$/i;
/** "Well done! Please show us …". */
const praise =
  /^\s*(?:well done|great|lovely|perfect|brilliant|wonderful|marvellous|excellent|splendid|super|good (?:job|work)|nice (?:job|work)|(?:thanks|thank you)\b[^.!?\n\d]{0,60})(?:,? (?:pipkin|everyone|all|team))?\s*[!.]+\s+(?=\S)/i;
const it = '(?: (?:it|that|this|them|these|everything|all of (?:it|that|this)))';
const book =
  '(?: (?:in|into|to|for|on) (?:the|our|my) (?:bench book|book|records?|notebook|notes|file|books))';
/** "… Could you write that down, please?": telling it is asking for it. */
const toBeWritten = new RegExp(
  `(?:[.!;,]|\\s-)?\\s(?:(?:so|and) )?(?:(?:can|could|would|will) you (?:please |kindly |just )?|please |kindly )(?:(?:write|note|jot|put|mark|get)${it} down${book}?|(?:note|record|log|register|enter|write)${it}${book}?|put${it}${book}|make a note(?: of${it})?${book}?)(?: for (?:me|us))?(?:,? (?:please|thanks|thank you|would you))?[\\s?.!]*$`,
  'i',
);

/** What comes after so few characters is the message itself. */
const leastBefore = 10;
const without = (text: string, end: RegExp): string => {
  const match = end.exec(text);
  return match && match.index >= leastBefore ? `${text.slice(0, match.index)}.` : text;
};

/** A message without the frame of courtesies around what it tells or asks. */
export const withoutFrame = (text: string): string =>
  without(without(text, thanks).replace(praise, ''), toBeWritten);
