import { type Design, designing, type Proposal } from '../../core/design/design.ts';
import type { Wishes } from '../../core/design/wishes.ts';
import type { Answer, Block, Made, NextStep, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { DesignWish } from '../topics/design.ts';
import { giveWay, inTurns } from '../turns.ts';
import { designFigures } from './design-figures.ts';
import { lineName } from './design-lines.ts';
import { priceBlocks, priceFigures, priceRow } from './design-price.ts';
import { formNames, relaxText, withoutName } from './design-relax.ts';
import { shownBlocks } from './design-shown.ts';
import { designWarnings } from './design-warnings.ts';
import { mainOf, nameOf } from './design-why.ts';
import { wishesOf } from './design-wishes.ts';
import { degrees } from './forecast.ts';
import { plain } from './numbers.ts';

/** One table for all proposals, a column each: what differs is seen at a glance and fits a phone. */
const table = (made: Design): Block => {
  const { proposals } = made;
  const shares = proposals.map(({ lines }) => new Map(lines.map((line) => [lineName(line), line.percent])));
  const names = [...new Set(shares.flatMap((each) => [...each.keys()]))];
  const cell = (percent: number | undefined): string => (percent === undefined ? '' : plain(percent, 2));
  return {
    kind: 'table',
    columns: [
      { title: 'percent', align: 'left' },
      ...proposals.map((_, place) => ({ title: String(place + 1), align: 'right' as const })),
    ],
    rows: [
      ...names.map((name) => [name, ...shares.map((each) => cell(each.get(name)))]),
      ...forecastRows(proposals),
      ...priceRow(made),
    ],
  };
};

/** Whole degrees, or nothing known. */
const cells = (title: string, values: readonly (number | undefined)[]): readonly string[] => [
  title,
  ...values.map((value) => (value === undefined ? '–' : String(Math.round(value)))),
];

/** What each will do, in the rows below its lines. */
const forecastRows = (proposals: readonly Proposal[]): readonly (readonly string[])[] => [
  cells(
    'softens °C',
    proposals.map(({ forecast }) => forecast.softensC),
  ),
  cells(
    'melted °C',
    proposals.map(({ forecast }) => forecast.fullyMeltedC),
  ),
  cells(
    'survives °C',
    proposals.map(({ survivesC }) => survivesC),
  ),
  cells(
    'keeps months',
    proposals.map(({ keeps }) => keeps?.months),
  ),
];

const proposalText = (proposal: Proposal, place: number): string => `${place + 1} ${mainOf(proposal)}`;

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

const askMore: Block = {
  kind: 'text',
  text: 'Say "show me the second" for its forecast in full, or "24 tins of 15 ml of the second".',
};

const relaxBlocks = (made: Design): readonly Block[] =>
  made.relaxed.map((relaxed) => ({ kind: 'text', text: relaxText(relaxed) }));

const allBlocks = (made: Design): readonly Block[] => {
  const { proposals, wishes } = made;
  const kept = wishedText(wishes);
  return [
    ...(kept ? [{ kind: 'text', text: kept } as const] : []),
    ...(proposals.length > 0
      ? [table(made), { kind: 'list', items: proposals.map(proposalText) } as const]
      : []),
    ...(proposals.length > 1 ? [askMore] : []),
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

/** The proposals to go on from, the one told in full first; each keeps the number it is picked by. */
const madeOf = (proposals: readonly Proposal[], show: number | undefined): readonly Made[] => {
  const made = proposals.map((proposal, place) => ({
    name: `proposal ${place + 1}, ${nameOf(proposal)}`,
    number: place + 1,
    lines: proposal.lines.map(({ percent, ...line }) => ({
      ...line,
      amount: percent,
      unit: 'percent' as const,
    })),
  }));
  return made.toSorted((a, b) => Number(b.number - 1 === show) - Number(a.number - 1 === show));
};

/** Answers wishes with up to three recipes, or says which wish to relax and by how much. */
export const answerDesign = async (wish: DesignWish, tools: Tools): Promise<Answer | Trouble> => {
  const wishes = wishesOf(wish, tools);
  if ('code' in wishes) return wishes;
  await giveWay();
  const made = await inTurns(designing(wishes));
  await giveWay();
  const { proposals } = made;
  const shown = wish.show === undefined ? undefined : proposals[wish.show];
  return {
    title: shown ? `${(wish.show ?? 0) + 1} ${nameOf(shown)}` : titleOf(made),
    blocks: [
      ...relaxBlocks(made),
      ...(shown ? shownBlocks(shown) : allBlocks(made)),
      ...priceBlocks(made, wish, tools),
    ],
    figures: { ...designFigures(made, wish), ...priceFigures(made, wish, tools) },
    warnings: designWarnings(made, shown),
    next: shown ? scaleStep(shown, wish.show ?? 0) : proposals.flatMap(scaleStep),
    made: madeOf(proposals, wish.show),
  };
};
