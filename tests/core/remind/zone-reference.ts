/**
 * Local time by Intl.DateTimeFormat: ICU's own reading of the IANA rules, independent of the Temporal arithmetic under
 * test (which asks ICU for offsets, but finds instants, gaps and overlaps by itself).
 */

const hourMs = 3_600_000;
export const dayMs = 24 * hourMs;

export interface Wall {
  readonly day: string;
  readonly time: string;
}

const formats = new Map<string, Intl.DateTimeFormat>();

const formatOf = (zone: string): Intl.DateTimeFormat => {
  const there = formats.get(zone);
  if (there) return there;
  const made = new Intl.DateTimeFormat('sv-SE', {
    timeZone: zone,
    dateStyle: 'short',
    timeStyle: 'short',
    hourCycle: 'h23',
  });
  formats.set(zone, made);
  return made;
};

/** The local day and time of an instant; the Swedish form is ISO: "2026-03-29 02:30". */
export const wallAt = (atMs: number, zone: string): Wall => {
  const [day = '', time = ''] = formatOf(zone).format(atMs).split(' ');
  return { day, time };
};

/** Minutes the local clock is ahead of UTC. */
export const offsetAt = (atMs: number, zone: string): number => {
  const { day, time } = wallAt(atMs, zone);
  const whole = Math.floor(atMs / 60_000) * 60_000;
  return (Date.parse(`${day}T${time}:00Z`) - whole) / 60_000;
};

export interface Jump {
  /** The first instant with the new offset. */
  readonly atMs: number;
  readonly before: number;
  readonly after: number;
}

const bisect = (fromMs: number, toMs: number, zone: string): number => {
  const old = offsetAt(fromMs, zone);
  let [low, high] = [fromMs, toMs];
  while (high - low > 60_000) {
    const middle = Math.floor((low + high) / 2 / 60_000) * 60_000;
    if (offsetAt(middle, zone) === old) low = middle;
    else high = middle;
  }
  return high;
};

/** Every change of the clocks between two instants (whole minutes), looked for day by day. */
export const jumpsIn = (zone: string, fromMs: number, toMs: number): readonly Jump[] => {
  const jumps: Jump[] = [];
  let before = offsetAt(fromMs, zone);
  for (let at = fromMs; at < toMs; at += dayMs) {
    const after = offsetAt(at + dayMs, zone);
    if (after !== before) jumps.push({ atMs: bisect(at, at + dayMs, zone), before, after });
    before = after;
  }
  return jumps;
};

export const nextIsoDay = (day: string): string =>
  new Date(Date.parse(`${day}T00:00:00Z`) + dayMs).toISOString().slice(0, 10);
