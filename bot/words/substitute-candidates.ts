import type { Portion } from '../../core/substitute/mix.ts';
import { type Ranking, rank } from '../../core/substitute/rank.ts';
import type { PartName } from '../../core/substitute/rank-parts.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import { whyOf } from './substitute-why.ts';
import { localRules, shortName } from './warnings.ts';
import { withoutWords } from './without.ts';

const partNames: Readonly<Record<PartName, string>> = {
  fatty_acids: 'fatty acids alike',
  feel: 'feel alike',
  keeping: 'keeps as well',
  allergens: 'no new allergen',
  density: 'density alike',
  melting: 'melting range alike',
  firmness: 'same firmness, gram for gram',
  full_melt: 'same full melt',
  share: 'within its usual share',
  evidence: 'strength well known',
  vegan: 'vegan',
  lips: 'fit for lips',
  kind: 'same kind',
  practice: 'named by makers',
};

const rounded = (value: number): number => Number(value.toFixed(2));

const candidateFigures = (old: string, ranking: Ranking): FigureValue =>
  ranking.candidates.map((candidate) => ({
    ingredient: candidate.ingredient,
    score: candidate.score,
    why: whyOf(old, ranking.role, candidate),
    parts: { ...candidate.parts },
    ...(candidate.effect
      ? {
          percent: rounded(candidate.effect.percent),
          firmness_change_percent: rounded(candidate.effect.firmnessPercent),
          fully_melted_change_c: rounded(candidate.effect.fullyMeltedC),
        }
      : {}),
  }));

/** Rows of the table: more would not be read. */
const shownCandidates = 5;

const table = (old: string, ranking: Ranking): Block => ({
  kind: 'table',
  columns: [
    { title: 'instead', align: 'left' },
    { title: 'score', align: 'right' },
    { title: 'why', align: 'left' },
  ],
  rows: ranking.candidates
    .slice(0, shownCandidates)
    .map((candidate) => [
      shortName(candidate.ingredient),
      String(candidate.score),
      whyOf(old, ranking.role, candidate),
    ]),
});

const roleText: Readonly<Record<Ranking['role'], string>> = {
  oil: 'an oil: fatty acids first, then feel, keeping and allergens',
  butter: 'a butter: firmness and full melt gram for gram, melting range, fatty acids',
  wax: 'a wax: full melt at the share that holds the set, and how sure its strength is',
  aroma: 'scent: by kind only, and what lips stand',
  herb: 'a herb to infuse: by kind only, never for what it is said to do',
  additive: 'an additive: by its group only',
};

/** Below this even the best is no likeness. */
const alikeScore = 62;

const noLikeness = (old: string, ranking: Ranking): Block[] =>
  (ranking.candidates[0]?.score ?? 0) < alikeScore
    ? [{ kind: 'text', text: `Nothing is really like ${shortName(old)}; these come nearest.` }]
    : [];

const unranked = ({ unranked: ids }: Ranking): Block[] =>
  ids.length > 0
    ? [
        {
          kind: 'assumed',
          text: `Not ranked, because nobody I could read has measured how they melt in oil: ${ids.map(shortName).join(', ')}.`,
        },
      ]
    : [];

/** Parts of the best candidate's score, best part first; all parts are in the figures. */
const partsText = ({ candidates: [best], role }: Ranking): Block[] =>
  best
    ? [
        {
          kind: 'assumed',
          text: `Score of ${shortName(best.ingredient)} out of: ${Object.entries(best.parts)
            .map(([name, part]) => `${partNames[name as PartName]} ${part}`)
            .join(
              ', ',
            )}.${role === 'oil' ? ' Keeping is reckoned from fatty acids with weights from memory: about.' : ''}`,
        },
      ]
    : [];

/** Longest a button's message may be. */
const longestSay = 95;

const next = (old: string, ranking: Ranking, name: string | undefined): NextStep[] =>
  name === undefined
    ? []
    : ranking.candidates
        .slice(0, 3)
        .map(({ ingredient }) => ({
          label: shortName(ingredient),
          say: `swap ${shortName(old)} for ${shortName(ingredient)} in "${name}"`,
        }))
        .filter(({ say, label }) => say.length <= longestSay && label.length <= 80);

export interface Asked {
  readonly old: string;
  readonly portions?: readonly Portion[];
  readonly name?: string;
  readonly withouts: readonly string[];
}

const none = (old: string, withouts: readonly string[]): Trouble => ({
  code: 'not-found',
  text: `I know nothing that could stand in for ${shortName(old)}${withoutWords(withouts)}. Ask about one ingredient, for example "what can replace almond oil".`,
});

const cautions = (ranking: Ranking): Warning[] =>
  ranking.role === 'wax'
    ? [{ code: 'rough-estimate', text: 'Waxes differ by lot and maker: make a trial tin first.' }]
    : [];

/** Answers what can stand in for something, best first. */
export const answerCandidates = ({ old, portions, name, withouts }: Asked): Answer | Trouble => {
  const ranked = rank(old, portions, withouts);
  if (!ranked.ok) {
    if (ranked.problem.code === 'unknown-ingredient')
      return {
        code: 'unknown-ingredient',
        text: `I do not know the ingredient "${old}". Try "what can replace almond oil".`,
      };
    const has = (portions ?? []).map(({ ingredient }) => shortName(ingredient)).join(', ');
    return {
      code: 'not-found',
      text: `There is no ${shortName(old)} in this recipe. It has ${has}.`,
    };
  }
  const ranking = ranked.value;
  if (ranking.candidates.length === 0) return none(old, withouts);
  const where = name ?? (portions ? 'your recipe' : 'a plain salve');
  return {
    title: `Instead of ${shortName(old)} in ${where}${withoutWords(withouts)}`,
    blocks: [
      ...noLikeness(old, ranking),
      table(old, ranking),
      { kind: 'assumed', text: `Judged as ${roleText[ranking.role]}.` },
      ...partsText(ranking),
      ...unranked(ranking),
    ],
    figures: {
      replaces: old,
      role: ranking.role,
      candidates: candidateFigures(old, ranking),
      unranked: [...ranking.unranked],
      without: [...withouts],
    },
    warnings: [...cautions(ranking), localRules],
    next: next(old, ranking, name),
  };
};
