import type { BenchReading } from './bench-reading.ts';
import { longestNote } from './bench-text.ts';

/** The day something was done, ISO. */
export const dayIn = ({ days }: BenchReading): string | undefined =>
  days.find(({ role }) => role === 'on')?.past;

/** What stands after a comma, "because", a dash or a colon: the reason in the maker's own words. */
export const reasonIn = (text: string): string | undefined => {
  const match = /(?:[,;:]\s+|\s-\s|\bbecause\b\s*|\bsince\b\s*|\bas it\b)([^_]{3,})$/i.exec(text);
  const said = match?.[1]
    ?.replace(/_+/g, ' ')
    .replace(/\s+/g, ' ')
    .replace(/[\s.!]+$/, '')
    .trim()
    .slice(0, longestNote);
  return said && /\p{L}{3}/u.test(said) ? said : undefined;
};
