import { defined } from '../defined.ts';
import { fail, ok, type Result } from '../result.ts';
import type { Batch } from './state.ts';
import { holdersOf, placeKey } from './trace.ts';

/** What is told to have come back: so many or all there are, from a place or from no place named. */
export interface Returned {
  readonly count?: number | undefined;
  readonly all?: true | undefined;
  readonly to?: string | undefined;
}

export interface Moved {
  readonly count: number;
  /** Where it went, or came back from. */
  readonly to?: string;
}

/** A place that holds containers of a batch; one that was not named has no `to`. */
export interface Place {
  readonly to?: string;
  readonly count: number;
}

export type ReturnProblem =
  /** More than there are outside the house. */
  | { readonly code: 'too-many'; readonly count: number }
  /** Several places hold some, and which of them it came from makes a difference. */
  | { readonly code: 'which-place'; readonly said?: string; readonly places: readonly Place[] };

const wordsOf = (to: string): readonly string[] => placeKey(to).split(/\s+/);

/** The place meant by a name: its own name, or the only one that has all of its words ("the fair": the spring fair). */
const placeNamed = (places: readonly Place[], said: string): Place | undefined => {
  const exact = places.find(({ to }) => to !== undefined && placeKey(to) === placeKey(said));
  if (exact) return exact;
  const words = wordsOf(said);
  const near = places.filter(
    ({ to }) => to !== undefined && words.every((word) => wordsOf(to).includes(word)),
  );
  return near.length === 1 ? near[0] : undefined;
};

type Taken = Result<readonly Moved[], ReturnProblem>;

const taken = (count: number, to: string | undefined): Taken => ok([{ count, ...defined({ to }) }]);

/** What no name was told for: everything, from the only place, or from those that were not named either. */
const fromAnywhere = (places: readonly Place[], count: number): Taken => {
  const [only, second] = places;
  if (!second) return taken(count, only?.to);
  if (places.reduce((sum, place) => sum + place.count, 0) === count) return ok(places);
  const unnamed = places.find(({ to }) => to === undefined);
  return unnamed && unnamed.count >= count ? taken(count, undefined) : fail({ code: 'which-place', places });
};

/** What came back from a place by its name. A stranger may bring back what went to the one place that has any. */
const fromPlace = (places: readonly Place[], count: number, said: string): Taken => {
  const place = placeNamed(places, said);
  if (place && place.count >= count) return taken(count, place.to);
  const [, second] = places;
  const unnamed = places.find(({ to }) => to === undefined);
  const others = (unnamed?.count ?? 0) + (place?.count ?? 0);
  return !second || others >= count ? taken(count, said) : fail({ code: 'which-place', said, places });
};

const less = (places: readonly Place[], back: readonly Moved[]): readonly Place[] => {
  const left = places.map(({ to, count }) => {
    const gone = back.filter((each) => each.to === to).reduce((sum, each) => sum + each.count, 0);
    return { count: count - gone, ...defined({ to }) };
  });
  return left.filter(({ count }) => count > 0);
};

/** One part of what came back, with what is still out. */
const partBack = (places: readonly Place[], { count = 1, all, to }: Returned): Taken => {
  const out = places.reduce((sum, place) => sum + place.count, 0);
  const named = to === undefined ? undefined : placeNamed(places, to);
  const wanted = all ? (named?.count ?? out) : count;
  if (wanted > out || wanted < 1) return fail({ code: 'too-many', count: Math.max(1, wanted) });
  return to === undefined ? fromAnywhere(places, wanted) : fromPlace(places, wanted, to);
};

/**
 * Containers of a batch that came back, each part with the place it came from: the place that was named, or the only one
 * it can be. Where several places hold some and it is not known which of them it was, that is the problem.
 */
export const returnsOf = (batch: Batch, parts: readonly Returned[]): Taken => {
  let places: readonly Place[] = holdersOf({ batches: [{ batch }] }).map(
    ({ lots: _lots, ...place }) => place,
  );
  const moved: Moved[] = [];
  for (const part of parts) {
    const back = partBack(places, part);
    if (!back.ok) return back;
    moved.push(...back.value);
    places = less(places, back.value);
  }
  return ok(moved);
};
