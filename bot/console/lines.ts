/** A line without its line break, or the fact that one was longer than allowed (its text is dropped as it comes). */
export type Line = { readonly kind: 'line'; readonly text: string } | { readonly kind: 'too-long' };

const lineFeed = 0x0a;

/** What is kept of a line that has begun and not ended. Never holds more than `most` bytes. */
const begun = (most: number) => {
  let parts: Buffer[] = [];
  let length = 0;
  let first = true;
  return {
    add(part: Buffer): void {
      length += part.length;
      if (length <= most) parts.push(part);
      else parts = [];
    },
    isEmpty: (): boolean => length === 0,
    end(): Line {
      const text = Buffer.concat(parts).toString('utf8').replace(/\r$/, '');
      const line: Line =
        length > most
          ? { kind: 'too-long' }
          : { kind: 'line', text: first ? text.replace(/^\uFEFF/, '') : text };
      parts = [];
      length = 0;
      first = false;
      return line;
    },
  };
};

/**
 * Splits a byte stream into lines as they come, in constant memory however long a line or the stream is. A last line
 * without a line break counts; bytes that are no UTF-8 become U+FFFD; a byte order mark at the start is dropped.
 * `most` is the longest line in bytes.
 */
export async function* linesOf(input: AsyncIterable<Buffer | string>, most: number): AsyncGenerator<Line> {
  const line = begun(most);
  for await (const piece of input) {
    const chunk = typeof piece === 'string' ? Buffer.from(piece) : piece;
    let from = 0;
    for (let end = chunk.indexOf(lineFeed); end >= 0; end = chunk.indexOf(lineFeed, from)) {
      line.add(chunk.subarray(from, end));
      yield line.end();
      from = end + 1;
    }
    if (from < chunk.length) line.add(chunk.subarray(from));
  }
  if (!line.isEmpty()) yield line.end();
}
