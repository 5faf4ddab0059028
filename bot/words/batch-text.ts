import { plusDays, printedMonth } from '../../core/bench/days.ts';
import { type Batch, tinsLeft } from '../../core/bench/state.ts';
import { hazardsOf } from '../../core/hazards.ts';
import type { Block, Warning } from '../answer.ts';
import { lossOf } from './batch-figures.ts';
import { dayText, printedText, reasonText } from './bench-dates.ts';
import { containersText } from './cost-money.ts';
import { plain } from './numbers.ts';
import { localRules, shortName, warningOf } from './warnings.ts';

/** Days after the pour on which a batch is looked at (common practice, no source). */
export const lookAfterDays = 7;

export const text = (words: string): Block => ({ kind: 'text', text: words });

/** "24 tins of 15 ml". */
export const tinsText = ({ count, container, size }: Pick<Batch, 'count' | 'container' | 'size'>): string =>
  containersText(count, container, size);

/** "1 tin", "5 tins". */
export const countText = (count: number, container: string): string =>
  `${count} ${container}${count === 1 ? '' : 's'}`;

export const gramsText = (grams: number): string => `${plain(grams, 3)} g`;

export const bestBeforeText = ({ bestBefore, because }: Pick<Batch, 'bestBefore' | 'because'>): string =>
  `Best before ${dayText(bestBefore)} (print ${printedText(bestBefore)}): ${reasonText(because, bestBefore)}.`;

const lineName = ({ ingredient, infusedWith, strained }: Batch['lines'][number]): string => {
  const oil = ingredient === 'infused-oil' ? 'oil' : shortName(ingredient);
  const name = infusedWith ? `${shortName(infusedWith)}-infused ${oil}` : shortName(ingredient);
  return strained ? `${name} (strained out)` : name;
};

const lotCells = ({ draws, grams, shortG = 0 }: Batch['lines'][number]): string => {
  const [only, second] = draws;
  if (only && !second && only.grams === grams) return only.lot;
  const parts = draws.map((each) => `${each.lot} ${plain(each.grams, 3)}`);
  return [...parts, ...(shortG > 0 ? [`none ${plain(shortG, 3)}`] : [])].join(', ');
};

/** Lines with the lots they came from; the column of lots only where there are any. */
export const linesTable = (batch: Pick<Batch, 'lines'>): Block => {
  const lots = batch.lines.some(({ draws, shortG = 0 }) => draws.length > 0 || shortG > 0);
  return {
    kind: 'table',
    columns: [
      { title: 'ingredient', align: 'left' },
      { title: 'g', align: 'right' },
      ...(lots ? [{ title: 'lots', align: 'left' } as const] : []),
    ],
    rows: batch.lines.map((line) => [
      lineName(line),
      plain(line.grams, 3),
      ...(lots ? [lotCells(line)] : []),
    ]),
  };
};

/** Weighed out against filled. */
export const yieldText = (batch: Pick<Batch, 'weighedG' | 'filledG'>): Block[] => {
  const loss = lossOf(batch);
  if (batch.filledG === undefined) return [];
  const both = `Weighed out ${gramsText(batch.weighedG)}, filled ${gramsText(batch.filledG)}`;
  if (loss === undefined) return [text(`${both}: more than was weighed out, so one of the two is wrong.`)];
  return [
    text(
      `${both}: ${gramsText(Number((batch.weighedG - batch.filledG).toFixed(3)))} stayed behind, ${plain(loss, 1)} %.`,
    ),
  ];
};

export const lookDueText = (batch: Batch, today: string): string | undefined => {
  const due = plusDays(batch.madeOn, lookAfterDays);
  if (batch.looks.length > 0 || tinsLeft(batch) <= 0 || due > today) return undefined;
  return `A look is due since ${dayText(due)}: grain, smell, specks, weight. Say "${batch.lot} looks fine", or what is wrong.`;
};

/** A printed month in or before the month of making leaves no time to give it out. */
const isShort = ({ bestBefore, madeOn }: Batch): boolean => printedMonth(bestBefore) <= madeOn.slice(0, 7);

/** What whoever gets a tin should know, by the lines of the batch. */
const handingOut = (batch: Batch): Warning[] => {
  const lines = batch.lines
    .filter(({ strained }) => !strained)
    .map(({ ingredient, grams, percent = 0 }) => ({ ingredient, grams, percent }));
  const strained = batch.lines
    .filter((line) => line.strained)
    .map(({ ingredient, grams }) => ({ ingredient, grams }));
  return hazardsOf({ lines, strained, tooSmall: [] }).map(warningOf);
};

export const batchWarnings = (batch: Batch): Warning[] => [
  ...(isShort(batch)
    ? [
        {
          code: 'short-shelf-life',
          text: `Best before ${dayText(batch.bestBefore)} is too soon after the pour: use it at home, do not give it out.`,
        },
      ]
    : []),
  ...(batch.rough
    ? [
        {
          code: 'rough-estimate',
          text: 'The date is reckoned from a usual shelf life, not read off a lot: note the lots with their dates.',
        },
      ]
    : []),
  ...handingOut(batch),
  localRules,
];
