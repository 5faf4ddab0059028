const ordinals = [
  'first',
  'second',
  'third',
  'fourth',
  'fifth',
  'sixth',
  'seventh',
  'eighth',
  'ninth',
  'tenth',
  'eleventh',
  'twelfth',
  'thirteenth',
  'fourteenth',
  'fifteenth',
  'sixteenth',
  'seventeenth',
  'eighteenth',
  'nineteenth',
  'twentieth',
  'twenty-first',
  'twenty-second',
  'twenty-third',
  'twenty-fourth',
  'twenty-fifth',
  'twenty-sixth',
  'twenty-seventh',
  'twenty-eighth',
  'twenty-ninth',
  'thirtieth',
  'thirty-first',
];
const spelled = [...ordinals]
  .reverse()
  .map((word) => word.replace('-', '[ -]'))
  .join('|');
const months = 'january|february|march|april|may|june|july|august|september|october|november|december';
const ofMonth = new RegExp(`\\b(?:the )?(${spelled}) of (?=(?:${months})\\b)`, 'gi');

/** "The first of June 2029" is 1 June 2029. */
export const withDaysInFigures = (text: string): string =>
  text.replace(
    ofMonth,
    (_said, word: string) => `${ordinals.indexOf(word.toLowerCase().replace(' ', '-')) + 1} `,
  );
