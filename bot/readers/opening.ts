/** "Item 6: …", "any other business: …": the minutes of a meeting. */
const inMinutes =
  /^\s*(?:(?:agenda |final |last |next |first )?(?:item|point)(?: (?:no\.? ?)?\d{1,2})?|any other business|a\.?o\.?b\.?|matters arising|query from the floor)\s*[:.)-]\s*(?=\S)/i;
/** "Before I melt anything, check …": when it is asked is not what is asked. */
const beforehand =
  /^\s*(?:before|while|when|since|as) (?:i|we) (?![^,:]{0,40}(?:\d|\bpoured\b|\bbought\b))[^,.;:!?\n]{3,40}[,:]\s*(?=(?:please |can you |could you |would you )?check\b)/i;
/** "Save recipe Boiler Room. Beeswax 35 %. Olive oil 65 %.": a list in sentences. */
const savedInSentences =
  /^\s*((?:please )?(?:save|store|keep) (?:the |a |this |new )*recipe [^.:\n\d]{2,40})\. (?=[a-z][^\n:]{0,200}\d ?(?:%|g\b|percent|parts?\b|oz\b))/i;

/** A message without what opens it and asks nothing. */
export const withoutOpening = (text: string): string => {
  const plain = text.replace(inMinutes, '').replace(beforehand, '');
  const saved = savedInSentences.exec(plain);
  return saved
    ? `${saved[1]}: ${plain
        .slice(saved[0].length)
        .replace(/\.(?=\s)/g, ',')
        .replace(/[.,]\s*$/, '')}`
    : plain;
};
