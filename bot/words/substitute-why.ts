import { ingredientById } from '../../core/ingredients.ts';
import { oxidisabilityOf } from '../../core/substitute/oxidation.ts';
import type { Candidate, Ranking } from '../../core/substitute/rank.ts';
import { plain } from './numbers.ts';

const signed = (value: number, unit: string): string =>
  Math.round(value) === 0 ? 'as before' : `${value > 0 ? '+' : '−'}${Math.abs(Math.round(value))}${unit}`;

const oilWhy = (old: string, { ingredient, parts }: Candidate): string => {
  const found = ingredientById(ingredient);
  const before = ingredientById(old);
  const acids = parts.fatty_acids === undefined ? [] : [`${parts.fatty_acids} % of the fatty acids shared`];
  const feel = found && 'feel' in found ? [found.feel.replace(';', ',')] : [];
  const was = before ? oxidisabilityOf(before) : undefined;
  const is = found ? oxidisabilityOf(found) : undefined;
  const keeps =
    was === undefined || is === undefined || Math.abs(is - was) < 0.5
      ? []
      : [is > was ? 'turns rancid sooner (about)' : 'keeps better (about)'];
  return [...acids, ...feel, ...keeps].join('; ');
};

const butterWhy = ({ effect, ingredient }: Candidate): string => {
  const melts = ingredientById(ingredient)?.meltC;
  const range = melts
    ? [`melts at ${plain(melts.low ?? melts.value, 0)} to ${plain(melts.high ?? melts.value, 0)} °C`]
    : [];
  if (!effect) return range.join('');
  const firmer = Math.round(effect.firmnessPercent);
  const firm =
    Math.abs(firmer) < 5
      ? 'about as firm'
      : `about ${Math.abs(firmer)} % ${firmer > 0 ? 'firmer' : 'softer'} at 25 °C`;
  return [`gram for gram ${firm}`, ...range].join('; ');
};

const waxWhy = ({ effect, parts }: Candidate): string => {
  if (!effect) return 'judged by its melting range alone';
  const sure = (parts.evidence ?? 0) < 40 ? '; its strength is uncertain' : '';
  const alone = (parts.share ?? 100) < 30 ? '; unusual as the only wax, or at this share' : '';
  return `about ${plain(effect.percent, 0)} % holds the set; fully melted ${signed(effect.fullyMeltedC, ' °C')}${sure}${alone}`;
};

const otherWhy = (role: Ranking['role'], { ingredient, parts }: Candidate): string => {
  const note = ingredientById(ingredient)?.lipNote;
  const same = (parts.kind ?? 0) >= 80;
  const kinds = { aroma: 'family of scent', herb: 'botanical family', additive: 'group' } as const;
  const kind = role === 'herb' || role === 'aroma' || role === 'additive' ? kinds[role] : 'kind';
  return `${same ? `the same ${kind}` : `another ${kind}`}${note ? `; ${note}` : ''}`;
};

const remarksOf = (old: string, { ingredient }: Candidate): string[] => {
  const found = ingredientById(ingredient);
  if (!found) return [];
  const flag = found.allergen.flag;
  const same = ingredientById(old)?.allergen.flag === flag;
  const brings = same || flag === 'none' || flag === 'fragrance' ? [] : [flag.replace('-', ' ')];
  const animal = found.vegan === 'no' && ingredientById(old)?.vegan !== 'no' ? ['not vegan'] : [];
  const lips = found.lips === 'caution' && !found.lipNote ? ['with care on lips'] : [];
  return [...brings, ...animal, ...lips];
};

/** One line on why a candidate stands where it stands. */
export const whyOf = (old: string, role: Ranking['role'], candidate: Candidate): string => {
  const main =
    role === 'oil'
      ? oilWhy(old, candidate)
      : role === 'butter'
        ? butterWhy(candidate)
        : role === 'wax'
          ? waxWhy(candidate)
          : otherWhy(role, candidate);
  return [main, ...remarksOf(old, candidate)].filter(Boolean).join('; ');
};
