import type { Reading } from '../reading.ts';
import type { Item } from './item.ts';
import { readNumber } from './number.ts';

/** A stretch of the message that is spoken for, as places in its text. */
export interface Span {
  readonly from: number;
  readonly to: number;
}

/** A number in the message, written in digits or words. */
export interface Figure extends Span {
  readonly value: number;
}

/** All numbers of a message in order, "one" and "a dozen" among them. */
export const figuresIn = ({ tokens }: Reading): readonly Figure[] => {
  const figures: Figure[] = [];
  for (let at = 0; at < tokens.length; ) {
    const read = readNumber(tokens, at);
    const first = tokens[at];
    const last = read && tokens[read.next - 1];
    if (read && first && last) figures.push({ value: read.value, from: first.from, to: last.to });
    at = Math.max(at + 1, read?.next ?? 0);
  }
  return figures;
};

const reach = 60;

/** What a pattern finds right after a place; the pattern has to begin with `^`. */
export const after = (text: string, at: number, shape: RegExp): RegExpExecArray | undefined =>
  shape.exec(text.slice(at, at + reach)) ?? undefined;

/** True when the text right before a place ends in the pattern, which has to end with `$`. */
export const before = (text: string, at: number, shape: RegExp): RegExpExecArray | undefined =>
  shape.exec(text.slice(Math.max(0, at - reach), at)) ?? undefined;

export const overlaps = (a: Span, b: Span): boolean => a.from < b.to && b.from < a.to;

/** Items that no span covers. */
export const outside = (items: readonly Item[], spans: readonly Span[]): readonly Item[] =>
  items.filter((item) => !spans.some((span) => overlaps(item, span)));
