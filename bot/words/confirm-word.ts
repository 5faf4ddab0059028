import { crc32 } from 'node:zlib';

const consonants = 'BDFGKLMRSVZJ';
const vowels = 'AEIOU';

/**
 * A word of six letters for typing as a confirmation: the same for the same thing, another as soon as anything about it
 * changes. It guards against slips and says nothing secret.
 */
export const confirmWord = (...about: readonly (string | number)[]): string => {
  let rest = crc32(JSON.stringify(about));
  let word = '';
  for (let count = 0; count < 3; count += 1) {
    word += consonants.charAt(rest % consonants.length);
    rest = Math.floor(rest / consonants.length);
    word += vowels.charAt(rest % vowels.length);
    rest = Math.floor(rest / vowels.length);
  }
  return word;
};
