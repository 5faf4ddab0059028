/** "a", "a and b", "a, b and c". */
export const andList = (names: readonly string[]): string =>
  names.length < 2 ? (names[0] ?? '') : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`;

/** With a capital letter to begin a sentence. */
export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);
