import type { WithoutKind } from '../../core/substitute/without.ts';
import { shortName } from './warnings.ts';

const kindNames: Readonly<Record<WithoutKind, string>> = {
  nuts: 'nuts',
  peanut: 'peanut',
  animal: 'animal products',
  bee: 'bee products',
  wool: 'wool products',
  palm: 'palm',
  coconut: 'coconut',
  scent: 'scent',
  soy: 'soy',
  sesame: 'sesame',
  wheat: 'wheat',
  mineral: 'mineral wax',
};

export const withoutName = (without: string): string =>
  Object.hasOwn(kindNames, without) ? kindNames[without as WithoutKind] : shortName(without);

/** " without nuts and palm", or nothing. */
export const withoutWords = (withouts: readonly string[]): string => {
  const names = withouts.map(withoutName);
  if (names.length === 0) return '';
  return ` without ${names.length === 1 ? names[0] : `${names.slice(0, -1).join(', ')} and ${names.at(-1)}`}`;
};
