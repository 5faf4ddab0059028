/** Lines that go together. What `open` and `close` hold is written again on each page the lines are spread over. */
export interface Piece {
  readonly open: string;
  readonly lines: readonly string[];
  readonly close: string;
}

const joined = (page: string, more: string): string => (page === '' ? more : `${page}\n${more}`);

/** Where to cut at or before `at`: not within a surrogate pair, nor between a backslash and what it escapes. */
const cut = (line: string, at: number): number => {
  const before = line.slice(0, at);
  const slashes = /\\*$/.exec(before)?.[0].length ?? 0;
  const splits = /[\uD800-\uDBFF]$/.test(before) || slashes % 2 === 1;
  return splits ? at - 1 : at;
};

/** A line longer than a page: a few letters under thousands of combining marks, say, which no word wrap parts. */
const chopped = (line: string, room: number): string[] => {
  if (line.length <= room) return [line];
  const at = cut(line, room);
  return [line.slice(0, at), ...chopped(line.slice(at), room)];
};

const linesOf = ({ open, lines, close }: Piece, room: number): readonly string[] => {
  const most = room - open.length - close.length;
  return lines.every((line) => line.length <= most) ? lines : lines.flatMap((line) => chopped(line, most));
};

/** Adds one piece to the pages so far; the last of them is the one being written. */
const added = (done: readonly string[], piece: Piece, room: number): readonly string[] => {
  const before = done.slice(0, -1);
  let page = done.at(-1) ?? '';
  let inside = false;
  for (const line of linesOf(piece, room)) {
    const grown = inside ? `${page}\n${line}` : joined(page, piece.open + line);
    if (grown.length + piece.close.length <= room) page = grown;
    else {
      before.push(inside ? page + piece.close : page);
      page = piece.open + line;
    }
    inside = true;
  }
  return [...before, inside ? page + piece.close : page];
};

/**
 * Pieces set onto as few pages as they need, none longer than `room` UTF-16 units (the platform counts characters,
 * which are never more). Pages break between lines; only a line longer than a page is broken itself.
 */
export const pages = (pieces: readonly Piece[], room: number): string[] =>
  pieces
    .reduce((done, piece) => added(done, piece, room), [''] as readonly string[])
    .filter((page) => page !== '');
