import type { Veils } from './readers/veiled-names.ts';

const isRecord = (value: unknown): value is Readonly<Record<string, unknown>> =>
  typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype;

const mapped = (value: unknown, named: Veils['named']): unknown => {
  if (typeof value === 'string') return named(value);
  if (Array.isArray(value)) {
    const list = value.map((each) => mapped(each, named));
    return list.some((each, at) => each !== value[at]) ? list : value;
  }
  if (!isRecord(value)) return value;
  const entries = Object.entries(value).map(([key, each]) => [key, mapped(each, named)] as const);
  return entries.some(([key, each]) => each !== value[key]) ? Object.fromEntries(entries) : value;
};

/**
 * A thing read off a message with the names of recipes in the place of their veils, however deep they stand in it. What
 * has none is the very same thing.
 */
export const unveiled = <T>(value: T, veils: Veils): T =>
  veils.list.length === 0 ? value : (mapped(value, veils.named) as T);
