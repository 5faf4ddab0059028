import type { How } from '../../core/data/ingredient.ts';
import { sources } from '../../core/data/sources.ts';

export interface Provenance {
  readonly source: readonly string[];
  readonly how: How;
}

const howText: Readonly<Record<How, string>> = {
  read: 'read',
  'read-secondary': 'read second-hand',
  memory: 'from memory',
  derived: 'calculated',
  'common-practice': 'common practice, no source',
};

/** A source's name without its remarks, short enough for a chat; the whole entry stands in the table of sources. */
const shortTitle = (id: string): string => {
  const what = sources.find((source) => source.id === id)?.what ?? id;
  return (
    what
      .replace(/\s*\([^)]*\)/g, '')
      .split(/[;:]/)[0]
      ?.trim() ?? what
  );
};

/** Where a figure comes from, in words. */
export const sourceText = ({ source, how }: Provenance): string =>
  how === 'common-practice' ? howText[how] : `${source.map(shortTitle).join('; ')} (${howText[how]})`;

/** Figures from memory are "about"; only those read may stand as they are. */
export const about = ({ how }: Provenance): string =>
  how === 'read' || how === 'read-secondary' ? '' : 'about ';
