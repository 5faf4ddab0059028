/** Ways containers leave the house, are kept, or come back. */
export type How = 'given' | 'sold' | 'used' | 'wasted' | 'kept' | 'back';

/** Most telling first: "2 broken ones came back" came back. */
const verbs: readonly (readonly [How, RegExp])[] = [
  [
    'back',
    /\b(?:returned|returns|(?:came|come|got|took|taken|brought|bringing|gave|given|handed|sent|posted|passed|are|is|were|was|has|have)\b.{0,60}\bback(?! (?:in|as|for)\b)|back from)\b/i,
  ],
  [
    'kept',
    /\b(?:keep|keeping|kept|retain|retained|hold back|held back|put aside|set aside|put by|(?:put|set)\b.{1,40}\baside|retention|(?:reference|control) sample|as (?:an? |the |our )?(?:retention |reference |control |retained )*samples?)\b/i,
  ],
  [
    'wasted',
    /\b(?:in|into|to) (?:the|our) (?:bin|rubbish|trash|garbage|compost|skip)\b|\b(?:threw|thrown|binned|wasted|discarded|chucked)\b/i,
  ],
  ['sold', /\b(?:sold|sell|sells|selling|sale of|customers? bought|people bought)\b/i],
  [
    'given',
    /\b(?:gave|given|give|gives|giving|gifts?|gifted|donated|donate|handed|hand out|lent|went(?: out| off)? to|(?:gone|going|off) to|sent|send|posted|delivered|dropped off|left with|passed on|traded|swapped)\b/i,
  ],
  [
    'wasted',
    /\b(?:dropped|broke|broken|spilled|spilt|ruined|smashed|cracked|crushed|squashed|leaked|melted|spoiled|spoilt|lost|damaged|stolen)\b/i,
  ],
  [
    'used',
    /\b(?:used|opened|finished|tried|tested|ate|(?:took|taken)\b.{0,40}\b(?:home|myself|ourselves|test|testing|tester|testers))\b/i,
  ],
];

/** Which way a stretch of text tells of; `taken` where somebody is said to have taken or bought some. */
export const howIn = (text: string, taken: boolean): How | undefined => {
  const found = verbs.find(([, pattern]) => pattern.test(text))?.[0];
  if (found !== undefined) return found;
  if (!taken) return undefined;
  return /\b(?:bought|purchased|buys)\b/i.test(text) ? 'sold' : 'given';
};
