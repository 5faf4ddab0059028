import { type CheckReport, checkRecipe } from '../../core/check/check.ts';
import { roomFor } from '../../core/check/most.ts';
import { isScent } from '../../core/check/other-findings.ts';
import { type ShareProblem, type Shares, sharesOfLines } from '../../core/check/shares.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer, Block, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { CheckWish } from '../topics/check.ts';
import { applyChange } from './check-apply.ts';
import { figuresOf } from './check-figures.ts';
import { nextSteps } from './check-next.ts';
import { allergenLines, capital, limitTable, regionNames, verdictWords } from './check-tables.ts';
import { type Batch, findingWarning, howSeen, nameOf, share } from './check-text.ts';
import { judged } from './check-unclear.ts';
import { isoDay } from './day.ts';
import { findRecipe } from './find-recipe.ts';
import { troubleOf } from './problems.ts';
import { localRules } from './warnings.ts';

const shareTrouble = (problem: ShareProblem): Trouble =>
  problem.code === 'no-batch-for-drops'
    ? {
        code: 'missing',
        text: `How big is the balm? Drops only tell with it, for example "is 5 drops of ${nameOf(problem.ingredient)} ok in 100 g balm".`,
      }
    : troubleOf(problem);

const assumed = (wish: CheckWish, region: Region, on: string, batch: Batch): Block[] => [
  {
    kind: 'assumed',
    text: `Rules of ${regionNames[region]} for something first handed out on ${on}; shares of substances by the high end of what an oil may hold (~ from memory).`,
  },
  ...(wish.analyses
    ? [
        {
          kind: 'assumed',
          text: 'The figures you gave for the oil count instead of the general ones.',
        } as const,
      ]
    : []),
  ...(batch.said
    ? []
    : [
        {
          kind: 'assumed',
          text: 'A batch of 100 g for the drops; a drop is 20 to 40 to the millilitre, and heavy ones count.',
        } as const,
      ]),
];

const warningsOf = (report: CheckReport, batch: Batch): Warning[] => [
  ...report.findings.map((finding) => findingWarning(finding, batch)),
  localRules,
];

interface Subject {
  readonly name?: string;
  readonly title: string;
  readonly lines: readonly RecipeLine[];
}

const titleOfLines = (lines: readonly RecipeLine[]): string => {
  const [only, second] = lines;
  return only && !second && only.unit === 'percent'
    ? `${only.amount} % ${nameOf(only.ingredient)} in a lip balm`
    : 'Your recipe';
};

const subjectOf = (wish: CheckWish, tools: Tools): Subject | Trouble => {
  if (wish.recipe === undefined) return { title: titleOfLines(wish.lines ?? []), lines: wish.lines ?? [] };
  const found = findRecipe(wish.recipe, tools.book);
  return 'code' in found ? found : { name: found.name, title: found.name, lines: found.lines };
};

/** Names that may be a restricted plant: said now, or when the recipe was saved. */
const doubtfulOf = (wish: CheckWish, lines: readonly RecipeLine[]): readonly string[] => [
  ...new Set([...(wish.doubtful ?? []), ...lines.flatMap(({ doubtful }) => doubtful ?? [])]),
];

const inputOf = (wish: CheckWish, lines: readonly RecipeLine[], region: Region, on: string) => ({
  region,
  on,
  wearer: wish.wearer ?? ('anyone' as const),
  use: wish.use ?? ('leave-on' as const),
  analyses: wish.analyses ?? [],
  doubtful: doubtfulOf(wish, lines),
});

const answerLines = (
  wish: CheckWish,
  tools: Tools,
  region: Region,
  on: string,
): Answer | Trouble | Promise<Answer | Trouble> => {
  const subject = subjectOf(wish, tools);
  if ('code' in subject) return subject;
  const weighed = sharesOfLines(subject.lines, region, wish.batchG);
  if (!weighed.ok) return shareTrouble(weighed.problem);
  const shares: Shares = weighed.value;
  const batch: Batch = {
    grams: shares.batchG ?? 100,
    said: shares.batchG !== undefined,
    alone: shares.partial,
  };
  const { report, assumed: meant } = judged(
    {
      lines: shares.lines,
      strained: [...shares.strained, ...(wish.infused ?? []).map((ingredient) => ({ ingredient }))],
      ...inputOf(wish, subject.lines, region, on),
    },
    wish.unclear,
  );
  if (wish.apply) {
    const { title } = subject;
    const input = inputOf(wish, subject.lines, region, on);
    return applyChange({ wish, title, findings: report.findings, shares, input, region }, tools);
  }
  const scent = report.aromaPercent > 0 ? `Scent ${share(report.aromaPercent)} of the balm. ` : '';
  return {
    title: `${capital(subject.title)}: ${verdictWords(report)}`,
    blocks: [
      { kind: 'text', text: `${scent}This compares with the figures I know; it is no safety assessment.` },
      ...limitTable(report.limits),
      ...allergenLines(report, region, wish.use === 'rinse-off'),
      ...meant.map((text) => ({ kind: 'assumed', text }) as const),
      ...assumed(wish, region, on, batch),
    ],
    figures: figuresOf(report, region, on),
    warnings: warningsOf(report, batch),
    next: nextSteps(report.findings, shares, subject.name),
  };
};

const roomLine = (what: string, percent: number, cite: string, status: string): string =>
  `${what}: ${status === 'memory' ? 'about ' : ''}${share(percent)} (${status === 'practice' ? howSeen(status) : `${cite}, ${howSeen(status)}`})`;

const answerOne = (id: string, wish: CheckWish, region: Region, on: string): Answer => {
  const input = inputOf(wish, [], region, on);
  const strained = wish.herb ? [{ ingredient: wish.herb }] : [];
  const line = { ingredient: id, percent: 0, ...(wish.fresh ? { fresh: true } : {}) };
  const report = checkRecipe({ lines: [line], strained, ...input });
  const rooms = roomFor(id, input);
  const [least] = rooms;
  const batch: Batch = { grams: wish.batchG ?? 100, said: wish.batchG !== undefined, alone: true };
  const off = report.findings.some(({ level }) => level !== 'note');
  const name = wish.herb ? `${nameOf(wish.herb)} in a lip balm` : `${nameOf(id)} in a lip balm`;
  const verdict = off || !least ? verdictWords(report) : `at most about ${share(least.mostPercent)}`;
  return {
    title: `${capital(name)}: ${verdict}`,
    blocks: [
      ...(rooms.length > 0
        ? [
            {
              kind: 'list',
              items: rooms
                .slice(0, 5)
                .map((room) => roomLine(room.what, room.mostPercent, room.cite, room.status)),
            } as const,
          ]
        : []),
      { kind: 'text', text: 'This compares with the figures I know; it is no safety assessment.' },
      ...assumed(wish, region, on, batch).slice(0, 1),
    ],
    figures: {
      ...figuresOf(report, region, on),
      ingredient: id,
      most_percent: least && !off ? least.mostPercent : null,
      rooms: rooms.map(({ what, mostPercent, cite, status }) => ({
        what,
        most_percent: mostPercent,
        source: cite,
        status,
      })),
    },
    warnings: warningsOf(report, batch),
    next:
      least && isScent(id) && !off
        ? [{ label: 'Check that share', say: `is ${least.mostPercent}% ${nameOf(id)} ok in a lip balm` }]
        : [],
  };
};

/** A look at a recipe, at a share of something, or at one ingredient: what is over, what to name, what would clear it. */
export const answerCheck = (wish: CheckWish, tools: Tools): Answer | Trouble | Promise<Answer | Trouble> => {
  const region = wish.region ?? tools.settings.region;
  const on = wish.on ?? isoDay(tools.at);
  return wish.ingredient === undefined
    ? answerLines(wish, tools, region, on)
    : answerOne(wish.ingredient, wish, region, on);
};
