import type { Candidate, Ranking } from '../../core/substitute/rank.ts';
import { type PartName, weightsOf } from '../../core/substitute/rank-parts.ts';
import type { Block } from '../answer.ts';
import { shortName } from './warnings.ts';

export const partNames: Readonly<Record<PartName, string>> = {
  fatty_acids: 'fatty acids alike',
  feel: 'feel alike',
  keeping: 'keeps as well',
  allergens: 'no new allergen',
  density: 'density alike',
  melting: 'melting range alike',
  firmness: 'firmness, gram for gram',
  full_melt: 'same full melt',
  share: 'within its usual share',
  evidence: 'strength well known',
  vegan: 'no less vegan',
  lips: 'fit for lips',
  kind: 'same kind',
  practice: 'named by makers',
};

/** Candidates beside each other: more columns do not fit a phone. */
const mostColumns = 4;

const cell = ({ parts }: Candidate, name: PartName): string => {
  const part = parts[name];
  return part === undefined ? '–' : String(part);
};

const rowsOf = (ranking: Ranking, shown: readonly Candidate[]): readonly (readonly string[])[] =>
  (Object.entries(weightsOf[ranking.role]) as [PartName, number][])
    .filter(([name]) => shown.some(({ parts }) => parts[name] !== undefined))
    .toSorted(([, a], [, b]) => b - a)
    .map(([name, weight]) => [partNames[name], String(weight), ...shown.map((each) => cell(each, name))]);

const namesOf = (shown: readonly Candidate[], places: readonly number[]): Block => ({
  kind: 'list',
  items: shown.map(
    ({ ingredient, score }, at) => `${(places[at] ?? 0) + 1} ${shortName(ingredient)}: ${score} in all`,
  ),
});

/** What pulls a candidate up and down most against the one before it, or the best. */
const lead = (ranking: Ranking, one: Candidate, other: Candidate): Block[] => {
  const weights = weightsOf[ranking.role];
  const moves = (Object.keys(weights) as PartName[])
    .map((name) => ({
      name,
      points: ((one.parts[name] ?? 0) - (other.parts[name] ?? 0)) * (weights[name] ?? 0),
    }))
    .filter(({ points }) => points !== 0)
    .toSorted((a, b) => b.points - a.points);
  const [best] = moves;
  const worst = moves.at(-1);
  const better = best && best.points > 0 ? `better in "${partNames[best.name]}"` : '';
  const worse = worst && worst.points < 0 ? `worse in "${partNames[worst.name]}"` : '';
  const said = [better, worse].filter(Boolean).join(', ');
  return said
    ? [
        {
          kind: 'text',
          text: `Beside ${shortName(other.ingredient)}, ${shortName(one.ingredient)} is ${said}.`,
        },
      ]
    : [];
};

const meaning: Block = {
  kind: 'assumed',
  text: 'The score is the mean of its parts (0 to 100), each counted by its weight; a part nobody can tell (–) is left out. The weights are the house’s own choice.',
};

/** The scores taken apart: of the best few, or of one candidate beside the best other one. */
export const scoreBlocks = (ranking: Ranking, about: string | undefined): readonly Block[] => {
  const { candidates } = ranking;
  const asked = candidates.find(({ ingredient }) => ingredient === about);
  const rival = asked && candidates.find((each) => each !== asked);
  const shown = asked ? [asked, ...(rival ? [rival] : [])] : candidates.slice(0, mostColumns);
  const places = shown.map((each) => candidates.indexOf(each));
  return [
    namesOf(shown, places),
    ...(asked && rival ? lead(ranking, asked, rival) : []),
    {
      kind: 'table',
      columns: [
        { title: 'part', align: 'left' },
        { title: 'weight', align: 'right' },
        ...places.map((place) => ({ title: String(place + 1), align: 'right' as const })),
      ],
      rows: rowsOf(ranking, shown),
    },
    meaning,
  ];
};
