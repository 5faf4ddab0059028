/**
 * A sum either works out or names its problem. Core never throws for bad input: a problem is a code with facts,
 * and the bot writes the sentence.
 */
export type Result<T, P> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly problem: P };

export const ok = <T>(value: T): { readonly ok: true; readonly value: T } => ({
  ok: true,
  value,
});

export const fail = <P>(problem: P): { readonly ok: false; readonly problem: P } => ({ ok: false, problem });
