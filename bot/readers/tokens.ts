/** A run of letters, a number, a line break or a single sign, with its place in the tidied text. */
export interface Token {
  readonly kind: 'word' | 'number' | 'break' | 'sign';
  readonly text: string;
  /** Lower case. */
  readonly word: string;
  readonly from: number;
  readonly to: number;
  /** True when nothing stands between this token and the one before. */
  readonly glued: boolean;
}

const shape =
  /(?<word>[eE]\d{3}\b|[\p{L}\p{M}]+(?:'[\p{L}]+)*)|(?<number>\d+(?:[.,]\d+)*)|(?<break>(?<![ \t])[ \t]*\n\s*)|(?<sign>\S)/gu;

const kindOf = (groups: Readonly<Record<string, string | undefined>>): Token['kind'] => {
  if (groups.word !== undefined) return 'word';
  if (groups.number !== undefined) return 'number';
  return groups.break === undefined ? 'sign' : 'break';
};

/** Most tokens one message is read for; a sixty-line recipe has about five hundred. */
export const maxTokens = 1200;

export const tokens = (text: string): readonly Token[] => {
  const list: Token[] = [];
  let end = -1;
  for (const match of text.matchAll(shape)) {
    if (list.length >= maxTokens) break;
    const from = match.index;
    list.push({
      kind: kindOf(match.groups ?? {}),
      text: match[0],
      word: match[0].toLowerCase(),
      from,
      to: from + match[0].length,
      glued: from === end,
    });
    end = from + match[0].length;
  }
  return list;
};
