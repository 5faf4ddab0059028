import { ingredientById } from '../../core/ingredients.ts';
import { mostPriced } from '../../core/substitute/cheapest.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import { plainRecipe, type Ranking, ranked } from '../../core/substitute/rank.ts';
import type { PartName } from '../../core/substitute/rank-parts.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { Tools } from '../topic.ts';
import { inTurns } from '../turns.ts';
import { noStock, stockOf } from './in-stock.ts';
import { plain } from './numbers.ts';
import { coverFigures, coversOf, coverText, isMade, type Make } from './stock-cover.ts';
import { type PriceTold, priceTold } from './substitute-price.ts';
import { partNames, scoreBlocks } from './substitute-scores.ts';
import { whyOf } from './substitute-why.ts';
import { localRules, shortName } from './warnings.ts';
import { withoutWords } from './without.ts';

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
          text: `Not ranked, as their melt in oil was never measured: ${ids.map(shortName).join(', ')}.`,
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
  readonly mix?: Mix;
  readonly name?: string;
  readonly withouts: readonly string[];
  /** Cheapest first, at the prices noted. */
  readonly byPrice: boolean;
  /** Only what is on the shelf. */
  readonly stocked: boolean;
  /** With `stocked`: what is to be made of it, so that the stock has to be enough. */
  readonly make?: Make;
  /** The scores taken apart; of one candidate when it is named. */
  readonly scores: boolean;
  readonly about?: string;
}

const none = ({ old, withouts, stocked }: Asked): Trouble => ({
  code: 'not-found',
  text: stocked
    ? `Nothing in stock could stand in for ${shortName(old)}${withoutWords(withouts)}. Ask without the stock: "what can replace ${shortName(old)}".`
    : `I know nothing that could stand in for ${shortName(old)}${withoutWords(withouts)}. Ask about one ingredient, for example "what can replace almond oil".`,
});

const cautions = (ranking: Ranking): Warning[] =>
  ranking.role === 'wax'
    ? [{ code: 'rough-estimate', text: 'Waxes differ by lot and maker: make a trial tin first.' }]
    : [];

const rankTrouble = ({ old, mix }: Asked, code: string): Trouble => {
  if (code === 'unknown-ingredient')
    return {
      code: 'unknown-ingredient',
      text: `I do not know the ingredient "${old}". Try "what can replace almond oil".`,
    };
  const has = (mix?.portions ?? []).map(({ ingredient }) => shortName(ingredient)).join(', ');
  return { code: 'not-found', text: `There is no ${shortName(old)} in this recipe. It has ${has}.` };
};

const notRanked = ({ old, about = '' }: Asked): Trouble => ({
  code: 'not-found',
  text: `${shortName(about)} is not among what I would put in the place of ${shortName(old)}: it does another job in a balm, is not for lips, or is too unlike. Ask "what is ${shortName(about)}".`,
});

const likenessBlocks = (asked: Asked, ranking: Ranking): readonly Block[] => [
  ...noLikeness(asked.old, ranking),
  table(asked.old, ranking),
  { kind: 'assumed', text: `Judged as ${roleText[ranking.role]}.` },
  ...partsText(ranking),
  ...unranked(ranking),
];

/** Candidates of which grams are told. */
const mostCovered = 6;

interface Shelf {
  readonly blocks: readonly Block[];
  readonly figures: Answer['figures'];
  /** Ids of which there is too little for the batch. */
  readonly short: ReadonlySet<string>;
}

const anyShelf: Shelf = { blocks: [], figures: {}, short: new Set() };

const heldText = (ranking: Ranking, stock: ReadonlyMap<string, number>): string =>
  ranking.candidates
    .slice(0, mostCovered)
    .map(({ ingredient }) => `${shortName(ingredient)} ${plain(stock.get(ingredient) ?? 0, 1)} g`)
    .join(', ');

/** What the shelf holds of the candidates, and whether that is enough for what is to be made. */
const shelfOf = async (
  { old, mix, stocked, make }: Asked,
  ranking: Ranking,
  stock: ReadonlyMap<string, number>,
  tools: Tools,
): Promise<Shelf | Trouble> => {
  if (!stocked) return anyShelf;
  const rule: Block = { kind: 'assumed', text: 'Only what is in stock and in date.' };
  if (!mix || !isMade(make))
    return { ...anyShelf, blocks: [{ kind: 'text', text: `In stock: ${heldText(ranking, stock)}.` }, rule] };
  const covers = await coversOf(mix, old, ranking.candidates.slice(0, mostCovered), stock, { make, tools });
  if ('code' in covers) return covers;
  const short = covers.filter(({ neededG, haveG }) => haveG < neededG);
  return {
    blocks: [...(covers.length > 0 ? [{ kind: 'text', text: coverText(covers) } as const] : []), rule],
    figures: { stock: coverFigures(covers) },
    short: new Set(short.map(({ ingredient }) => ingredient)),
  };
};

/** What there is enough of comes first. */
const enoughFirst = (ranking: Ranking, { short }: Shelf): Ranking => ({
  ...ranking,
  candidates: ranking.candidates.toSorted(
    (a, b) => Number(short.has(a.ingredient)) - Number(short.has(b.ingredient)),
  ),
});

const priceOf = async (asked: Asked, ranking: Ranking, tools: Tools): Promise<PriceTold | undefined> => {
  const found = ingredientById(asked.old);
  if (!asked.byPrice || !found) return undefined;
  const mix = asked.mix ?? { portions: plainRecipe(found), strained: [] };
  return priceTold(asked.old, mix, ranking, tools);
};

const titleOf = ({ old, name, mix, withouts, byPrice, scores }: Asked): string => {
  const where = name ?? (mix ? 'your recipe' : 'a plain salve');
  const what = scores ? 'Scores instead of' : byPrice ? 'Cheapest instead of' : 'Instead of';
  return `${what} ${shortName(old)} in ${where}${withoutWords(withouts)}`;
};

/** Candidates in the order they are told in, so that buttons and figures begin with the first of them. */
const ordered = (ranking: Ranking, told: PriceTold | undefined): Ranking => {
  if (!told || told.order.length === 0) return ranking;
  const place = (id: string): number => {
    const at = told.order.indexOf(id);
    return at < 0 ? told.order.length : at;
  };
  return {
    ...ranking,
    candidates: ranking.candidates.toSorted((a, b) => place(a.ingredient) - place(b.ingredient)),
  };
};

const optionsOf = (asked: Asked, stock: ReadonlyMap<string, number>) => ({
  ...(asked.stocked ? { only: new Set(stock.keys()) } : {}),
  ...(asked.byPrice || asked.about !== undefined ? { most: mostPriced } : {}),
});

/** Answers what can stand in for something: best likeness first, cheapest first, or the scores taken apart. */
export const answerCandidates = async (asked: Asked, tools: Tools): Promise<Answer | Trouble> => {
  const { old, withouts } = asked;
  const stock = asked.stocked ? stockOf(tools) : new Map<string, number>();
  if (asked.stocked && stock.size === 0) return noStock;
  const found = await inTurns(ranked(old, asked.mix?.portions, withouts, optionsOf(asked, stock)));
  if (!found.ok) return rankTrouble(asked, found.problem.code);
  const { candidates } = found.value;
  if (candidates.length === 0) return none(asked);
  if (asked.about !== undefined && !candidates.some(({ ingredient }) => ingredient === asked.about))
    return notRanked(asked);
  const told = await priceOf(asked, found.value, tools);
  const shelf = await shelfOf(asked, found.value, stock, tools);
  if ('code' in shelf) return shelf;
  const ranking = enoughFirst(ordered(found.value, told), shelf);
  const main = asked.scores ? scoreBlocks(ranking, asked.about) : told?.blocks;
  return {
    title: titleOf(asked),
    blocks: [...(main ?? likenessBlocks(asked, ranking)), ...shelf.blocks],
    figures: {
      replaces: old,
      role: ranking.role,
      candidates: candidateFigures(old, ranking),
      unranked: [...ranking.unranked],
      without: [...withouts],
      ...(asked.about === undefined ? {} : { about: asked.about }),
      ...told?.figures,
      ...shelf.figures,
    },
    warnings: [...cautions(ranking), localRules],
    next: next(old, ranking, asked.name),
    offers: ranking.candidates.map(({ ingredient }) => ingredient.replaceAll('-', ' ')),
  };
};
