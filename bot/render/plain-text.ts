/** Longer texts are looked at by a regular expression, which is quicker there. */
const longest = 80;

/**
 * Whether a short text is made of nothing but the signs of a plain keyboard, on one line: one column each, nothing to take
 * out. Nearly every cell of a table is, and this costs a tenth of the regular expressions that know the rest of Unicode.
 */
export const isPlainShort = (text: string): boolean => {
  if (text.length > longest) return false;
  for (let at = 0; at < text.length; at += 1) {
    const code = text.charCodeAt(at);
    if (code < 0x20 || code > 0x7e) return false;
  }
  return true;
};
