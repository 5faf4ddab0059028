import { type Features, featuresOfSaying } from './features.ts';
import { isIngredientKind } from './pieces.ts';

/** A way of saying something, and the plain form that means the same. */
export interface Saying {
  readonly features: Features;
  readonly plain: string;
  /** Topic of the message before, where the saying needs one. */
  readonly after?: string;
}

/**
 * Reads a list of sayings: a line that begins with `=` is a plain form, `@ topic` says what has to be asked before it, and
 * the lines below are other ways of saying it. The plain form is a saying too.
 */
export const sayingsIn = (text: string): Saying[] => {
  const all: Saying[] = [];
  let plain = '';
  let after: string | undefined;
  for (const line of text.split('\n').map((each) => each.trim())) {
    if (line === '' || line.startsWith('#')) continue;
    if (line.startsWith('@')) {
      after = line.slice(1).trim();
      continue;
    }
    if (line.startsWith('=')) {
      plain = line.slice(1).trim();
      after = undefined;
      all.push({ features: featuresOfSaying(plain), plain });
      continue;
    }
    all.push({ features: featuresOfSaying(line), plain, ...(after ? { after } : {}) });
  }
  return all;
};

/** Which slots a saying has, in any order, with kinds of ingredient as one: what a message has to have as well. */
export const signatureOf = ({ slots }: Pick<Features, 'slots'>): string =>
  slots
    .map(({ kind }) => {
      if (isIngredientKind(kind)) return 'i';
      return kind === 'g' || kind === 'v' ? 'size' : kind;
    })
    .toSorted()
    .join(' ');
