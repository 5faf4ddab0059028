import { defined } from '../../core/defined.ts';
import type { ChangeKind } from './book-words.ts';

/** Words of which one stands in each of these questions. */
export const kindCues =
  'batches made pours poured bought buy purchases purchase purchased deliveries sold sell gave gifts sales came'.split(
    ' ',
  );

const kinds: readonly (readonly [ChangeKind, RegExp])[] = [
  ['purchase', /\b(?:bought|buy|purchases?d?|deliver(?:y|ies)|came in|come in|brought in)\b/i],
  ['gift', /\b(?:gave|give|given|gifts?|sold|sell|sales)\b/i],
  ['pour', /\b(?:pour(?:ed|s)?|batch(?:es)?|made|make)\b/i],
];

const verb =
  '(?:pour(?:ed)?|ma[dk]e|bought|buy|brought in|purchased?|sold|sell|gave|give|given|given away|give away|gave away)';
const noun =
  '(?:batch(?:es)?|ones|pours|balms|lots|purchases|deliveries|gifts|sales|things|everything|all|stuff)';
const name = '(?<who>\\p{L}[\\p{L}\\p{N} _.-]{0,39}?)';
const after = '(?: (?:so far|in total|already|when|and when|altogether))*';

const byMember: readonly RegExp[] = [
  `^(?:which|what)(?: all)?(?: ${noun})?(?: (?:did|has|have|was|were))? ${name} (?:has |have |had )?${verb}${after}$`,
  `^(?:all |the |list |every )*${noun}(?: of (?:them|those))?(?: (?:that|which))?(?: (?:were|was|are))?(?: ${verb})? (?:by|from) ${name}${after}$`,
  `^(?:all |all of |the |list |every )*(?:everything|all|whatever|${noun})(?: (?:that|which))? ${name} (?:has |have |had )?${verb}${after}$`,
  `^(?:has|have|did) ${name} (?:ever )?${verb} (?:anything|something|any \\p{L}+)${after}$`,
  `^(?:all )?${name}'s? (?:own )?(?:batch(?:es)?|pours|purchases|gifts|sales)${after}$`,
].map((pattern) => new RegExp(pattern, 'iu'));

/** "What did we buy", "the purchases", "what was bought when". */
const bought =
  /^(?:when did we (?:buy|get) (?:what|which)|(?:what|which)(?: lots| things| ingredients| stock| all)* (?:did|have|has|was|were|is|are)(?: (?:we|i|you|been|all))* (?:buy|bought|purchased?|brought in|come in)(?: in)?(?: when| and when)*|(?:what|everything|all|whatever)(?: (?:that|which))?(?: (?:we|i))?(?: (?:was|were|have|has))? (?:bought|came in|purchased)(?: when| and when)*|(?:what|which) (?:purchases|deliveries) (?:were|are|have|did|was)(?: (?:there|we|been|you|have|made|make|got|had|noted))*|(?:all |the |our |list |every |list of )*(?:purchases|deliveries|buys))$/i;

/** "What did we sell", "how many tins have we given away": in a stretch of days that is said besides. */
const went =
  /^(?:what|how (?:many|much)|which|everything)(?: (?:tins|jars|pots|sticks|tubes|balms|batches|things|ones))?(?: all)? (?:did|have|has|had|was|were|that)?(?: (?:we|i|been))*(?: (?:sell|sold|give|given|gave))(?: (?:away|out|altogether|in all))*$/i;

/** The kind of what went out, where days were named. */
export const wentOut = (text: string): KindAsked | undefined =>
  went.test(text) ? { kind: 'gift' } : undefined;

export interface KindAsked {
  readonly kind: ChangeKind;
  readonly member?: string;
}

const kindIn = (text: string): ChangeKind | undefined => kinds.find(([, words]) => words.test(text))?.[0];

/** What kind of entries a question asks for, and whose; undefined where it asks for none. */
export const kindAsked = (text: string): KindAsked | undefined => {
  if (bought.test(text)) return { kind: 'purchase' };
  for (const pattern of byMember) {
    const match = pattern.exec(text);
    const member = match?.groups?.who?.trim();
    const kind = member === undefined ? undefined : kindIn(text.replace(member, ' '));
    if (member !== undefined && kind !== undefined) return { kind, ...defined({ member }) };
  }
  return undefined;
};
