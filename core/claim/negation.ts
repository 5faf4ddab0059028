/** Where a clause ends: what is denied in one is not denied in the next. */
const clauseEnd =
  /[,;.!?:]|\s(?:but|yet|and it|it also|because)\s|\sand\s(?=(?:it\s)?(?:does|do|is|isn't|doesn't|don't|will|won't|cannot|can't|can|has|have|not|never|heals|cures|treats|kills|relieves|soothes|fights|reduces|prevents|calms|repairs|numbs|eases|stops|clears)\s)|\s-\s/;

const denials =
  /(?<![a-z])(?:not|no|never|without|cannot|can't|cant|won't|wont|isn't|isnt|doesn't|doesnt|don't|dont|didn't|nor|neither|non|free of|free from|instead of|far from being)(?![a-z])/g;

/** "Not only heals", "no more cold sores": said as a denial, meant as a promise. */
const promises =
  /(?:not (?:only|just|merely|simply)|(?:doesn't|does not|don't|do not|isn't|is not|won't|will not) (?:only|just|merely|simply)|no more|no longer|never again|why not)(?![a-z])/;

/** Furthest a denial reaches, in characters: "does not claim in any way to heal". */
const reach = 60;

/** The part of the clause that stands before a place. */
const beforeInClause = (text: string, at: number): string =>
  text
    .slice(Math.max(0, at - reach), at)
    .split(clauseEnd)
    .at(-1) ?? '';

const afterInClause = (text: string, at: number): string =>
  text.slice(at, at + reach).split(clauseEnd)[0] ?? '';

/** True when the word at `at` is denied in its own clause. */
export const isDenied = (text: string, at: number): boolean => {
  const before = beforeInClause(text, at);
  if (promises.test(before)) return false;
  if (/\bnever\b/.test(before) && /\bagain\b/.test(afterInClause(text, at))) return false;
  const after = afterInClause(text, at);
  return [...before.matchAll(denials)].length % 2 === 1 || /^[a-z-]+[ -]free(?![a-z])/.test(after);
};

/** "Never again", "no more", "goodbye to": the end of something is promised. */
export const isPromise = (text: string): boolean =>
  /(?<![a-z])(?:no more|no longer|goodbye to|never\b.*\bagain)(?![a-z])/.test(text);
