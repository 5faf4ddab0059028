/** Requests of these topics, as words for what is done. */
const done =
  '(?:infus\\w{1,4}|steep\\w{0,3}|macerat\\w{1,4}|check\\w{0,3}|label\\w{0,4}|sticker\\w?|cost\\w{0,3}|print\\w{0,3}|plan\\w{0,4}|workshop|class|course)';
const offs: readonly RegExp[] = [
  new RegExp(
    `^\\W*(?:(?:please|pls|ok|okay|no|oh|and|so|hi|hello)\\W+){0,3}(?:do not|don'?t|never|(?:there(?:'s| is) )?no need to|cancel|scrap|drop|skip)\\s+(?:the\\s+|that\\s+|my\\s+|our\\s+|it\\s+)?${done}\\b`,
    'i',
  ),
  new RegExp(
    `\\b(?:do not|don'?t|does not|doesn'?t|no longer|not going to|never)\\s+(?:want|wish|need|plan|intend)\\s+(?:me |us |you |them )?to\\s+${done}\\b`,
    'i',
  ),
];

/** "Don't check R", "we no longer want to infuse it": a request that is not made. Asking why, or whether, is. */
export const isCalledOff = (text: string): boolean =>
  /\b(?:n[o']t|nt|never|no|cancel|scrap|drop|skip)\b|n't\b/i.test(text) &&
  !text.includes('?') &&
  offs.some((pattern) => pattern.test(text));

const asks =
  /\?|\b(?:how (?:much|many|long)|what|which|please|pls|can you|could you|give me|tell me|amounts?|need|want|work out|calculate)\b/i;
const past =
  /\b(?:we|i|she|he|they|somebody|someone)\s+(?:have |has |had |'ve )?(?:just |already )?(?:infused|steeped|soaked|macerated|made|poured|labelled|checked)\b|\b(?:workshop|class|course)\b[^.!?]{0,30}\b(?:was|went|were)\b/i;
const whenDone =
  /\b(?:yesterday|ago|last (?:week|month|year|night|time|summer|saturday|sunday)|was|went|were|turned out)\b/i;

/** "Yesterday we infused …, and it went well": told, and nothing asked. */
export const isToldOnly = (text: string): boolean =>
  past.test(text) && whenDone.test(text) && !asks.test(text);
