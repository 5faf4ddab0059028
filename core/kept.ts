/**
 * A pure function of something that is never changed (a saved recipe's lines, say), reckoned once for each such thing. What
 * it came to is kept for as long as the thing itself is; seen from outside nothing is different.
 */
export const keptFor = <Thing extends object, Outcome>(
  work: (thing: Thing) => Outcome,
): ((thing: Thing) => Outcome) => {
  const known = new WeakMap<Thing, { readonly outcome: Outcome }>();
  return (thing) => {
    const before = known.get(thing);
    if (before) return before.outcome;
    const outcome = work(thing);
    known.set(thing, { outcome });
    return outcome;
  };
};
