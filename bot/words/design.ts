import { defined } from '../../core/defined.ts';
import { type Design, design, type Proposal } from '../../core/design/design.ts';
import { openQuestions } from '../../core/design/exclusions.ts';
import type { DesignLine } from '../../core/design/sketch.ts';
import type { Wishes } from '../../core/design/wishes.ts';
import { hazardsOf } from '../../core/hazards.ts';
import type { Answer, Block, NextStep, Warning } from '../answer.ts';
import type { DesignWish } from '../topics/design.ts';
import { designFigures } from './design-figures.ts';
import { formNames, relaxText, withoutName } from './design-relax.ts';
import { nameOf, whyOf } from './design-why.ts';
import { both, degrees, forecastWarnings } from './forecast.ts';
import { plain } from './numbers.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const wishesOf = (wish: DesignWish): Wishes => ({
  form: wish.form,
  vegan: wish.vegan ?? false,
  without: wish.without ?? [],
  with: (wish.with ?? []).map(({ ingredient, percent }) => ({ ingredient, ...defined({ percent }) })),
  ...defined({ survivesC: wish.survivesC, shelfLifeMonths: wish.shelfLifeMonths }),
});

const lineName = ({ ingredient, infusedWith }: DesignLine): string =>
  infusedWith ? `${shortName(infusedWith)}-infused ${shortName(ingredient)}` : shortName(ingredient);

/** One table for all proposals, a column each: what differs is seen at a glance and fits a phone. */
const table = (proposals: readonly Proposal[]): Block => {
  const shares = proposals.map(({ lines }) => new Map(lines.map((line) => [lineName(line), line.percent])));
  const names = [...new Set(shares.flatMap((each) => [...each.keys()]))];
  const cell = (percent: number | undefined): string => (percent === undefined ? '' : plain(percent, 2));
  return {
    kind: 'table',
    columns: [
      { title: 'percent', align: 'left' },
      ...proposals.map((_, place) => ({ title: String(place + 1), align: 'right' as const })),
    ],
    rows: names.map((name) => [name, ...shares.map((each) => cell(each.get(name)))]),
  };
};

const bands = {
  'does-not-set': 'liquid',
  ointment: 'soft as an ointment',
  tin: 'soft under the finger',
  stick: 'firm',
  hard: 'very hard',
} as const;

const forecastText = ({ forecast, survivesC }: Proposal): string => {
  const { softensC, fullyMeltedC, firmness } = forecast;
  const soft = softensC === undefined ? '' : `, softens about ${degrees(softensC)}`;
  const melted = fullyMeltedC === undefined ? '' : `, melted about ${degrees(fullyMeltedC)}`;
  const holds = survivesC === undefined ? ', for cool rooms only' : `, survives ${both(survivesC)}`;
  return `${bands[firmness.band]}${soft}${melted}${holds}.`;
};

const proposalText = (proposal: Proposal, place: number): string =>
  `${place + 1} ${nameOf(proposal)}: ${forecastText(proposal)} ${whyOf(proposal)}`;

const wishedText = (wishes: Wishes): string => {
  const without = wishes.without.length > 0 ? `without ${wishes.without.map(withoutName).join(', ')}` : '';
  const keeps = wishes.shelfLifeMonths === undefined ? '' : `keeps ${plain(wishes.shelfLifeMonths)} months`;
  const parts = [wishes.vegan ? 'vegan' : '', without, keeps].filter(Boolean);
  return parts.length > 0 ? `Kept: ${parts.join('; ')}.` : '';
};

const titleOf = ({ wishes, proposals }: Design): string => {
  const what = `${wishes.vegan ? 'vegan ' : ''}${formNames[wishes.form]}`;
  const heat = wishes.survivesC === undefined ? '' : ` that survives ${degrees(wishes.survivesC)}`;
  if (proposals.length === 0) return `No recipe fits: ${what}${heat}`;
  return `${proposals.length === 1 ? 'A recipe' : `${proposals.length} recipes`} for a ${what}${heat}`;
};

const noPrices = 'Prices are not in my book yet, so I could not mind the cost. Say it again once they are.';
const pocketC = 37;

const surviving: Readonly<Record<Wishes['form'], string>> = {
  stick: 'stays firm',
  tin: 'does not slump, though it may go soft',
  tube: 'stays a paste and does not run',
};

const blocksOf = (made: Design, wish: DesignWish): Block[] => {
  const { proposals, wishes } = made;
  const kept = wishedText(wishes);
  return [
    ...made.relaxed.map((relaxed) => ({ kind: 'text', text: relaxText(relaxed) }) as const),
    ...(kept ? [{ kind: 'text', text: kept } as const] : []),
    ...(wish.price ? [{ kind: 'text', text: noPrices } as const] : []),
    ...(proposals.length > 0
      ? [table(proposals), { kind: 'list', items: proposals.map(proposalText) } as const]
      : []),
  ];
};

const idsOf = (proposals: readonly Proposal[]): readonly string[] => [
  ...new Set(
    proposals.flatMap(({ lines }) =>
      lines.flatMap(({ ingredient, infusedWith }) =>
        infusedWith ? [ingredient, infusedWith] : [ingredient],
      ),
    ),
  ),
];

const questions = ({ proposals, wishes }: Design): Warning[] =>
  openQuestions(idsOf(proposals), wishes.without).map(({ without, ingredients }) => ({
    code: without === 'nuts' ? 'nut-allergen' : 'ask-supplier',
    text: `${ingredients.map(shortName).join(', ')}: a question for whoever avoids ${withoutName(without)}; ask before handing it out.`,
  }));

const once = (warnings: readonly Warning[]): Warning[] => [
  ...new Map(warnings.map((warning) => [`${warning.code} ${warning.text}`, warning])).values(),
];

const estimate = (form: Wishes['form']): Warning => ({
  code: 'rough-estimate',
  text: `"Survives" means a ${form} ${surviving[form]}. Reckoned, not measured, to some 4 °C: make a trial first.`,
});

/** What the forecast warns of; a tube that survives a pocket is not said to melt in it. */
const meltWarnings = ({ forecast, survivesC = 0 }: Proposal): Warning[] =>
  forecastWarnings(forecast).filter(
    ({ code }) => code !== 'rough-estimate' && !(code === 'melts-in-a-pocket' && survivesC >= pocketC),
  );

const warningsOf = (made: Design): Warning[] => {
  const [first] = made.proposals;
  const hazards = made.proposals.flatMap(({ lines }) => hazardsOf({ lines, strained: [], tooSmall: [] }));
  const own = first ? meltWarnings(first) : [];
  return [
    ...questions(made),
    ...once(hazards.map(warningOf)),
    ...own,
    ...(first ? [estimate(made.wishes.form), ...potCautions] : []),
    localRules,
  ];
};

/** Longest sentence a button can carry in the group chat. */
const longestStep = 95;

/** The whole recipe in a sentence, so that it can be asked without being saved; left away where it is too long. */
const scaleStep = ({ lines }: Proposal, place: number): NextStep[] => {
  const recipe = lines.map((line) => `${plain(line.percent, 2)}% ${lineName(line)}`).join(', ');
  const say = [`scale ${recipe} to 24 tins of 15 ml`, `scale ${recipe} to 500 g`].find(
    (each) => each.length <= longestStep,
  );
  return say ? [{ label: `Weigh out ${place + 1}`, say }] : [];
};

/** Answers wishes with up to three recipes, or says which wish to relax and by how much. */
export const answerDesign = (wish: DesignWish): Answer => {
  const made = design(wishesOf(wish));
  return {
    title: titleOf(made),
    blocks: blocksOf(made, wish),
    figures: designFigures(made, wish),
    warnings: warningsOf(made),
    next: made.proposals.flatMap(scaleStep),
  };
};
