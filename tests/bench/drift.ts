/** Memory at one moment, in bytes; `heapUsed` right after a full collection. */
export interface Sample {
  readonly minute: number;
  /** Requests so far. */
  readonly asked: number;
  readonly heapUsed: number;
  readonly rss: number;
}

/** How memory changed over the samples that count. */
export interface Drift {
  readonly samples: number;
  readonly minutes: number;
  readonly requests: number;
  /** By the straight line of least squares through them, from the first to the last: bytes. */
  readonly heap: number;
  readonly rss: number;
  /** The line's value at the last sample: bytes. */
  readonly heapAtEnd: number;
  readonly rssAtEnd: number;
}

/** The beginning is not counted: code is compiled, caches fill. */
const warmUpShare = 0.4;

/**
 * What counts as flat, whatever the length of the run: the lines rise by no more than this. Collections leave a heap a
 * megabyte or two apart from each other, and resident memory moves in steps. Books grow by what is saved, which is well
 * below.
 */
export const most = { heap: 6 * 1024 * 1024, rss: 30 * 1024 * 1024 } as const;

/** Fewer samples make no line. */
const fewest = 6;

/** Rise of the straight line of least squares, and where it ends. */
const line = (
  xs: readonly number[],
  ys: readonly number[],
): { readonly rise: number; readonly end: number } => {
  const mean = (list: readonly number[]) => list.reduce((all, one) => all + one, 0) / list.length;
  const [x0, y0] = [mean(xs), mean(ys)];
  const above = xs.reduce((all, x, at) => all + (x - x0) * ((ys[at] ?? 0) - y0), 0);
  const below = xs.reduce((all, x) => all + (x - x0) ** 2, 0);
  const slope = below === 0 ? 0 : above / below;
  const last = xs.at(-1) ?? 0;
  return { rise: slope * (last - (xs[0] ?? 0)), end: y0 + slope * (last - x0) };
};

export const drift = (all: readonly Sample[]): Drift => {
  const counted = all.slice(Math.floor(all.length * warmUpShare));
  const minutes = counted.map(({ minute }) => minute);
  const heap = line(
    minutes,
    counted.map(({ heapUsed }) => heapUsed),
  );
  const rss = line(
    minutes,
    counted.map(({ rss }) => rss),
  );
  const [first, last] = [counted[0], counted.at(-1)];
  return {
    samples: counted.length,
    minutes: (last?.minute ?? 0) - (first?.minute ?? 0),
    requests: (last?.asked ?? 0) - (first?.asked ?? 0),
    heap: heap.rise,
    rss: rss.rise,
    heapAtEnd: heap.end,
    rssAtEnd: rss.end,
  };
};

const megabytes = (bytes: number): string => `${(bytes / 1024 / 1024).toFixed(2)} MB`;

/** The verdict, and the lines that tell it. */
export const judged = (found: Drift): { readonly flat: boolean; readonly lines: readonly string[] } => {
  const flat = found.samples >= fewest && found.heap <= most.heap && found.rss <= most.rss;
  const each = found.requests > 0 ? ` (${Math.round(found.heap / found.requests)} bytes a request)` : '';
  return {
    flat,
    lines: [
      `${found.samples} samples over ${found.minutes.toFixed(1)} minutes, ${found.requests} requests`,
      `heap after a full collection: ${megabytes(found.heap)} up${each}, ${megabytes(found.heapAtEnd)} at the end; at most ${megabytes(most.heap)} up is flat`,
      `resident: ${megabytes(found.rss)} up, ${megabytes(found.rssAtEnd)} at the end; at most ${megabytes(most.rss)} up is flat`,
      found.samples < fewest ? 'too few samples to tell' : flat ? 'flat' : 'NOT FLAT',
    ],
  };
};
