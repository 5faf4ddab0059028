import { herbNames, scentNames } from '../data/rules/claim-words.ts';
import type { ClaimMatch } from './match.ts';
import { hasAny } from './words.ts';

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** An ingredient said to do something can be named for what it is: a scent, or an infused oil. */
const ofIngredient = (text: string): string | undefined => {
  if (hasAny(text, ['charcoal'])) return undefined;
  const herb = herbNames.find((name) => hasAny(text, [name]));
  if (herb) return `With ${herb} infused oil`;
  if (hasAny(text, ['honey'])) return 'Honey-scented balm';
  const scent = scentNames.find((name) => hasAny(text, [name]));
  return scent ? `${capital(scent)} scent` : undefined;
};

interface Rewording {
  readonly when: readonly string[];
  readonly say: string;
}

/** By what is wished for, most telling first. */
const rewordings: readonly Rewording[] = [
  { when: ['zinc*'], say: 'Zinc oxide for a soft white look' },
  { when: ['collagen', 'elastin'], say: 'Smooths the look of lips' },
  { when: ['circulation', 'blood-flow', 'plump*', 'fuller'], say: 'For a fuller-looking shine' },
  { when: ['regenerat*', 'overnight'], say: 'Overnight softness' },
  { when: ['wrinkle*', 'fine lines', 'anti-age*', 'anti-agi*'], say: 'Smooths the look of fine lines' },
];

const isAboutBody = ({ verdict, denied }: ClaimMatch): boolean => verdict === 'medicinal' && denied !== true;

/** A denial, a disease, the sun: no cosmetic wording of it, whatever the verb. */
const isLeftOut = ({ denied, leaveOut }: ClaimMatch): boolean => denied === true || leaveOut === true;

/**
 * A cosmetic wording that keeps the wish without the effect claimed, or nothing where it is better left out.
 */
export const suggestionFor = (text: string, matches: readonly ClaimMatch[]): string | undefined => {
  const [worst] = matches;
  if (!worst) return undefined;
  const wished = rewordings.find(({ when }) => hasAny(text, when))?.say;
  if (matches.some((match) => isLeftOut(match) && match.verdict === worst.verdict))
    return hasAny(text, ['zinc*']) ? wished : undefined;
  const ingredient = isAboutBody(worst) ? ofIngredient(text) : undefined;
  return wished ?? ingredient ?? worst.instead;
};
