/** The words of a list that is written as one text, over several lines or not. */
export const wordsOf = (text: string): readonly string[] => text.trim().split(/\s+/);

/** The same to look a word up in. */
export const wordSet = (text: string): ReadonlySet<string> => new Set(wordsOf(text));
