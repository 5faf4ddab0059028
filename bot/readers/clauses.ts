/** A stretch of a message that tells one thing of several. */
export interface Clause {
  readonly from: number;
  readonly to: number;
  readonly text: string;
}

const separator = /(?:[,;.&+]|\n|\band\b|\bthen\b|\bplus\b|\s-\s)\s*/gi;

const boundaryIn = (text: string, start: number, end: number): number | undefined => {
  const last = [...text.slice(start, end).matchAll(separator)].at(-1);
  return last && start + last.index + last[0].length;
};

/**
 * The message cut so that each part has one of the marks in it: at the last comma, "and" or the like before each
 * further mark. Marks with nothing between them stay together ("to room 12").
 * @param opens whether the text from a boundary to its mark and a little further begins a part of its own.
 */
export const clausesAt = (
  text: string,
  marks: readonly number[],
  opens: (stretch: string) => boolean = () => true,
): readonly (Clause & { readonly mark: number })[] => {
  const starts: { at: number; mark: number }[] = [];
  for (const mark of marks) {
    const before = starts.at(-1);
    const at = before ? boundaryIn(text, before.mark + 1, mark) : 0;
    if (at !== undefined && (!before || opens(text.slice(at, mark + 60)))) starts.push({ at, mark });
  }
  const all = starts.length > 0 ? starts : [{ at: 0, mark: 0 }];
  return all.map(({ at, mark }, index) => {
    const to = all[index + 1]?.at ?? text.length;
    return { from: at, to, text: text.slice(at, to), mark };
  });
};
