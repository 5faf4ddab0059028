/** "Item 6: …", "any other business: …": the minutes of a meeting. */
const inMinutes =
  /^\s*(?:(?:agenda |final |last |next |first )?(?:item|point)(?: (?:no\.? ?)?\d{1,2})?|any other business|a\.?o\.?b\.?|matters arising|query from the floor)\s*[:.)-]\s*(?=\S)/i;
/** "Before I melt anything, check …": when it is asked is not what is asked. */
const beforehand =
  /^\s*(?:before|while|when|since|as) (?:i|we) (?![^,:]{0,40}(?:\d|\bpoured\b|\bbought\b))[^,.;:!?\n]{3,40}[,:]\s*(?=(?:please |can you |could you |would you )?check\b)/i;
/** "To be on the safe side, I want …": why it is asked. */
const toBeSafe =
  /^\s*(?:just )?(?:to be (?:on the safe side|safe|sure|certain)|for (?:safety's sake|the (?:file|folder|binder|record|records))|while (?:i|we)(?:'m| am|'re| are) (?:at it|here))\s*[,:]?\s+(?=(?:i|we|please|could|can|may|show|give|print|what|which|where|who|how|the|make)\b)/i;
/** "Could we keep 2 of it aside as samples please": asked for, and done by writing it down. */
const asksToKeep =
  /^\s*(?:please )?(?:can|could|may|might) (?:we|i|you) (?:please )?((?:keep|put|set|hold)\b[^?\n]{1,60}\b(?:aside|back|by)\b[^?\n]{0,40}\b(?:samples?|please)\b[^?\n]{0,40})\??/i;
/** "I'd like it in the book as lot M27". */
const likedInBook =
  /\b(?:i|we)(?:'d| would) like (?:it|that|this|them|these) (?:put |written |entered |noted )?(?:down )?in(?:to)? (?:the|our) (?:book|stock|records?)\b/gi;
/** "Recipe Stall stick: 30 % beeswax, …", "Recipe // Hive balm // …", "our recipe Hive balm is …": written down, it is to be kept. */
const recipeHeaded =
  /^\s*(?:(?:new|our|my|the) )?recipe(?: to (?:go|put|keep|write) (?:in|down)(?: here)?| for (?:the|this) (?:book|notebook))?\s*(?:[:,=]|\/\/|\|)?\s*(?:(?:name|named|called|title|is called)[:,]?\s+)?"?(?<name>\p{Lu}[\p{L}'-]*(?: [\p{L}'-]+){0,5}?)"?\s*(?:[.:,=]|\/\/|\||\b(?:is|has|takes|contains|consists of|is (?:made|mixed) (?:of|from|with))\b|\s-(?=\s))\s*(?<lines>[^\n?]*\d ?(?:%|percent\b|parts?\b|g\b)[^\n?]*)$/iu;
const withRecipeSaved = (text: string): string => {
  const { name, lines } = recipeHeaded.exec(text)?.groups ?? {};
  if (
    name === undefined ||
    lines === undefined ||
    (lines.match(/\d ?(?:%|percent|parts?\b|g\b)/gi) ?? []).length < 2
  )
    return text;
  return `save recipe ${name}: ${lines.replace(/\s*(?:\/\/|\||\s\/\s)\s*/g, ', ').replace(/[,.]?\s*(?:please )?(?:write|put|keep|note|save) (?:it|this)(?: in| down)?(?: please)?\W*$/i, '')}`;
};

/** "Save recipe Boiler Room. Beeswax 35 %. Olive oil 65 %.": a list in sentences. */
const savedInSentences =
  /^\s*((?:please )?(?:save|store|keep) (?:the |a |this |new )*recipe [^.:\n\d]{2,40})\. (?=[a-z][^\n:]{0,200}\d ?(?:%|g\b|percent|parts?\b|oz\b))/i;

/** A message without what opens it and asks nothing. */
export const withoutOpening = (text: string): string => {
  const plain = withRecipeSaved(text)
    .replace(inMinutes, '')
    .replace(beforehand, '')
    .replace(toBeSafe, '')
    .replace(asksToKeep, '$1')
    .replace(likedInBook, 'in the book');
  const saved = savedInSentences.exec(plain);
  return saved
    ? `${saved[1]}: ${plain
        .slice(saved[0].length)
        .replace(/\.(?=\s)/g, ',')
        .replace(/[.,]\s*$/, '')}`
    : plain;
};
