/** A mark's label beside its upright line, like a flag on its pole. */
export interface Flag {
  /** Place of the pole. */
  readonly x: number;
  /** Width of the label. */
  readonly width: number;
}

export interface PlacedFlag {
  /** Left edge of the label. */
  readonly left: number;
  /** 0 is the lane nearest to the plot. */
  readonly lane: number;
}

interface Span {
  readonly left: number;
  readonly right: number;
}

type Side = 'left' | 'right';

export const flagGap = 5;
/** Space kept free between two labels in one lane, and between a label and a strange pole. */
const airX = 10;
const airPole = 3;

const spanOf = (flag: Flag, side: Side, room: Span): Span => {
  const wished = side === 'right' ? flag.x + flagGap : flag.x - flagGap - flag.width;
  const left = Math.max(room.left, Math.min(wished, room.right - flag.width));
  return { left, right: left + flag.width };
};

const sideBySide = (a: Span, b: Span): boolean => a.left >= b.right + airX || b.left >= a.right + airX;

/** A pole may not run through a strange label: the label then has to hang higher than the pole's own. */
const covers = (span: Span, pole: number): boolean =>
  pole > span.left - airPole && pole < span.right + airPole;

/** `above[i]` holds the flags that flag i must hang higher than; nothing if two would have to hang above each other. */
const higherThan = (
  flags: readonly Flag[],
  spans: readonly Span[],
): readonly (readonly number[])[] | undefined => {
  const above = spans.map((span, at) =>
    flags.flatMap((other, place) => (place !== at && covers(span, other.x) ? [place] : [])),
  );
  const knotted = above.some((lower, at) => lower.some((other) => above[other]?.includes(at)));
  return knotted ? undefined : above;
};

/** Lowest lane from which a label neither overlaps the placed ones nor hangs below one it must be above. */
const laneOf = (
  at: number,
  spans: readonly Span[],
  lower: readonly number[],
  lanes: readonly (number | undefined)[],
): number => {
  const own = spans[at] ?? { left: 0, right: 0 };
  const least = Math.max(0, ...lower.map((other) => (lanes[other] ?? -1) + 1));
  const taken = new Set(
    spans.flatMap((span, other) => (other !== at && !sideBySide(span, own) ? [lanes[other]] : [])),
  );
  let lane = least;
  while (taken.has(lane)) lane++;
  return lane;
};

/** Lanes for labels whose sides are settled; nothing when the "higher than" relation runs in a circle. */
const lanesFor = (
  spans: readonly Span[],
  above: readonly (readonly number[])[],
): readonly number[] | undefined => {
  const lanes: (number | undefined)[] = spans.map(() => undefined);
  for (let placed = 0; placed < spans.length; placed++) {
    const next = lanes.findIndex(
      (lane, at) => lane === undefined && (above[at] ?? []).every((other) => lanes[other] !== undefined),
    );
    if (next < 0) return undefined;
    lanes[next] = laneOf(next, spans, above[next] ?? [], lanes);
  }
  return lanes.map((lane) => lane ?? 0);
};

type Sides = readonly Side[];

const other = (side: Side): Side => (side === 'left' ? 'right' : 'left');

/** Flags that part in the middle, then flags that face each other: the first kind never gets in its own way. */
const sidesToTry = (count: number): readonly Sides[] =>
  (['left', 'right'] as const).flatMap((first) =>
    Array.from({ length: count + 1 }, (_, split) =>
      Array.from({ length: count }, (_unused, at) => (at < split ? first : other(first))),
    ),
  );

const fits = (flag: Flag, side: Side, room: Span): boolean =>
  side === 'right' ? flag.x + flagGap + flag.width <= room.right : flag.x - flagGap - flag.width >= room.left;

/** Labels that would be pushed over their own pole at the picture's edge change sides. */
const turnedIn = (flags: readonly Flag[], sides: Sides, room: Span): Sides =>
  flags.map((flag, at) => {
    const side = sides[at] ?? 'right';
    return !fits(flag, side, room) && fits(flag, other(side), room) ? other(side) : side;
  });

const placedOn = (flags: readonly Flag[], sides: Sides, room: Span): readonly PlacedFlag[] | undefined => {
  const spans = flags.map((flag, at) => spanOf(flag, sides[at] ?? 'right', room));
  const above = higherThan(flags, spans);
  const lanes = above && lanesFor(spans, above);
  return lanes?.map((lane, at) => ({ lane, left: spans[at]?.left ?? 0 }));
};

/** Poles may run behind labels here, labels still do not overlap. */
const crowded = (flags: readonly Flag[], room: Span): readonly PlacedFlag[] => {
  const spans = flags.map((flag) => spanOf(flag, 'right', room));
  const lanes =
    lanesFor(
      spans,
      spans.map(() => []),
    ) ?? [];
  return spans.map(({ left }, at) => ({ left, lane: lanes[at] ?? at }));
};

export const lanesOf = (placed: readonly PlacedFlag[]): number =>
  placed.reduce((most, { lane }) => Math.max(most, lane + 1), 0);

/** A lane less is worth more than any number of labels hanging lower. */
const lanePrice = 1000;

const heightOf = (placed: readonly PlacedFlag[]): number => placed.reduce((sum, { lane }) => sum + lane, 0);

/**
 * Places for labels, `flags` sorted by pole: no two overlap, none leaves `room` (unless wider than it), as few lanes as
 * the ways tried allow. Poles run clear of strange labels too, unless the marks are so crowded that no way is found.
 */
export const placeFlags = (flags: readonly Flag[], room: Span): readonly PlacedFlag[] => {
  const ways = sidesToTry(flags.length).flatMap((sides) => [sides, turnedIn(flags, sides, room)]);
  const placed = ways.flatMap((sides) => {
    const found = placedOn(flags, sides, room);
    return found ? [{ found, cost: lanesOf(found) * lanePrice + heightOf(found) }] : [];
  });
  const best = placed.sort((a, b) => a.cost - b.cost)[0];
  return best?.found ?? crowded(flags, room);
};
