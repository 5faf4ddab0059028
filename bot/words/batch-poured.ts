import { lotKey } from '../../core/bench/codes.ts';
import type { Pour } from '../../core/bench/pour.ts';
import type { Batch } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import type { Answer, Block, NextStep } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { batchFigures, lossOf, versionOf } from './batch-figures.ts';
import type { Poured } from './batch-pour.ts';
import {
  batchWarnings,
  bestBeforeText,
  gramsText,
  linesTable,
  text,
  tinsText,
  yieldText,
} from './batch-text.ts';
import { dayText, longDayText, todayFor } from './bench-dates.ts';
import { lowAfter } from './bench-low.ts';
import { shortName } from './warnings.ts';

/** What the shelf had to say to a pour: shortfall, lots left alone, lots that were named in vain. */
export const shelfTexts = (pour: Pour, state: BookState): string[] => {
  const bench = benchOf(state);
  const lotName = (code: string): string => {
    const lot = bench.lots.get(lotKey(code));
    return lot ? `${shortName(lot.ingredient)} lot ${lot.lot}` : `lot ${code}`;
  };
  const ends = (code: string): string => {
    const day = bench.lots.get(lotKey(code))?.bestBefore;
    return day ? ` (${dayText(day)})` : '';
  };
  // A herb that the recipe does not name is in the tins, and belongs on their label.
  const herbs = pour.lines.flatMap(({ infusedWith, draws }) =>
    draws.flatMap(({ lot }) => {
      const herbsIn = bench.lots.get(lotKey(lot))?.herbs;
      return herbsIn && infusedWith === undefined
        ? [
            `${lotName(lot)} has ${herbsIn.map(shortName).join(' and ')} in it, which the recipe does not name: name it on the label.`,
          ]
        : [];
    }),
  );
  const short = pour.short.map(({ ingredient, grams }) => `${gramsText(grams)} ${shortName(ingredient)}`);
  return [
    ...(short.length > 0
      ? [`Not covered by the stock: ${short.join(', ')}. The batch is written down all the same.`]
      : []),
    ...herbs,
    ...pour.leftAlone.map((code) => `${lotName(code)} is past its date${ends(code)} and was left alone.`),
    ...pour.pastDate.map(
      (code) => `${lotName(code)} was past its date${ends(code)}: use this batch at home, if at all.`,
    ),
    ...pour.unused.map(
      (code) => `Nothing was drawn from ${lotName(code)}: it is empty, or of nothing in this batch.`,
    ),
    ...(pour.unknown.length > 0
      ? [`Not in the stock, so only noted: ${pour.unknown.map((code) => `lot ${code}`).join(', ')}.`]
      : []),
  ];
};

const lossStep = (batch: Batch, tools: Tools): NextStep[] => {
  const loss = lossOf(batch);
  if (loss === undefined || loss > 50 || loss === tools.settings.lossPercent) return [];
  return [{ label: `Set loss to ${loss}%`, say: `set loss to ${loss}%` }];
};

export const batchSteps = (batch: Batch, tools: Tools): NextStep[] => [
  ...lossStep(batch, tools),
  { label: 'Keep one', say: `keep one of ${batch.lot}` },
  { label: `Show ${batch.lot}`, say: `batch ${batch.lot}` },
  { label: 'Labels', say: `labels for batch ${batch.lot}` },
];

const versionText = (batch: Batch, state: BookState): string => {
  const version = versionOf(batch, state);
  return version === undefined ? '' : `, version ${version}`;
};

const madeText = (batch: Batch): string => {
  const heat = [
    ...(batch.bathC === undefined ? [] : [`bath ${batch.bathC} °C`]),
    ...(batch.pourC === undefined ? [] : [`poured at ${batch.pourC} °C`]),
  ];
  const who = batch.by ? ` by ${batch.by}` : '';
  const at = heat.length > 0 ? `; ${heat.join(', ')}` : '';
  return `Poured on ${longDayText(batch.madeOn)}${who}${at}.`;
};

/** What is told after a pour was written down: its code first. */
export const pouredAnswer = (poured: Poured, state: BookState, tools: Tools): Answer => {
  const bench = benchOf(state);
  const batch = bench.batches.get(lotKey(poured.lot)) as Batch;
  const touched = batch.lines.map(({ ingredient }) => ingredient);
  const later = poured.saidLater
    ? [
        `You said best before ${dayText(poured.saidLater)}; I kept the earlier day, which its lots and oils allow.`,
      ]
    : [];
  const more = [...later, ...shelfTexts(poured.pour, state), ...lowAfter(bench, todayFor(tools), touched)];
  const blocks: Block[] = [
    text(`Lot code: ${batch.lot}. Write it on every ${batch.container}.`),
    text(bestBeforeText(batch)),
    linesTable(batch),
    text(`${madeText(batch)} Weighed out: ${gramsText(batch.weighedG)}.`),
    ...yieldText(batch),
    ...more.map(text),
    ...batch.notes.flatMap(({ text: note }) => (note ? [text(`Note: ${note}`)] : [])),
    ...poured.assumed.map((words) => ({ kind: 'assumed', text: words }) as const),
  ];
  return {
    title: `${batch.lot}: ${batch.name}${versionText(batch, state)}, ${tinsText(batch)}`,
    blocks,
    figures: batchFigures(batch, state),
    warnings: batchWarnings(batch),
    next: batchSteps(batch, tools),
  };
};
