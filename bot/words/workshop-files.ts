import { drawable } from '../../core/chart/chart-text.ts';
import { dayChart } from '../../core/chart/day-chart.ts';
import { type Handout, type HandoutPart, handoutPage, paperFor } from '../../core/paper/handout.ts';
import { lengthMin } from '../../core/workshop/timeline.ts';
import type { AnswerFile } from '../answer.ts';
import type { Tools } from '../topic.ts';
import { atStep } from './numbers.ts';
import { localRules } from './warnings.ts';
import { eachText, nameOf, type Planned } from './workshop-plan.ts';
import { safetySheet } from './workshop-sheet.ts';
import { isBefore, longStep, momentText, shortStep, whenText } from './workshop-steps.ts';
import { lineName, togetherTexts } from './workshop-tables.ts';
import { usesGlass } from './workshop-warnings.ts';

const hot = new Set(['warm-baths', 'melt', 'pour']);

/** "12 people · Saturday, 14:00 · village hall". */
export const whereText = ({ wish }: Planned): string =>
  [
    `${wish.people} ${wish.people === 1 ? 'person' : 'people'}`,
    [wish.day, wish.start].filter(Boolean).join(', '),
    wish.room ?? '',
  ]
    .filter(Boolean)
    .join(' · ');

/** The day as SVG: what is done on the days before as lines, the day's steps as bars. */
export const timelineSvg = (planned: Planned): string | undefined => {
  const { start } = planned.wish;
  const { timeline } = planned.plan;
  return dayChart({
    title: `Workshop: ${whereText(planned)}`,
    before: timeline.filter(isBefore).map((entry) => `${whenText(entry, start)}: ${shortStep(entry)}`),
    steps: timeline
      .filter((entry) => !isBefore(entry))
      .map((entry) => ({
        text: `${momentText(start, entry.atMin)}  ${shortStep(entry)}, ${entry.minutes} min`,
        atMin: entry.atMin,
        minutes: entry.minutes,
        hot: hot.has(entry.step),
      })),
    tick: (atMin) => momentText(start, atMin),
    theme: 'light',
  })?.svg;
};

const kitParts = (planned: Planned, decimals: number): HandoutPart[] =>
  planned.plan.recipes.map(({ kit }, at) => {
    const making = planned.wish.makings[at];
    return {
      kind: 'table',
      heading: `Your kit: ${drawable(nameOf(planned.makings[at]))}${making ? `, ${eachText(making)}` : ''}`,
      rows: kit.lines.map((line) => [lineName(line), `${atStep(line.grams, decimals)} g`] as const),
      total: ['together', `${atStep(kit.weighedG, decimals)} g`],
    };
  });

/** The day for those who come: the leader's errands before it are in the answer. */
const dayPart = (planned: Planned, decimals: number): HandoutPart => ({
  kind: 'list',
  heading: `The day, about ${lengthMin(planned.plan.timeline)} minutes`,
  items: planned.plan.timeline
    .filter((entry) => !isBefore(entry) && entry.atMin >= 0)
    .map((entry) => `${momentText(planned.wish.start, entry.atMin)} ${longStep(entry, planned, decimals)}`),
});

const togetherPart = (planned: Planned, decimals: number): HandoutPart[] => {
  const items = togetherTexts(planned, decimals).map((text) => text.replace(/^\* /, ''));
  return items.length > 0 ? [{ kind: 'list', heading: 'Weighed for everybody', items }] : [];
};

/** Lines to be filled in by hand; nothing is invented. */
const notesPart: HandoutPart = {
  kind: 'list',
  heading: 'My notes',
  items: [
    'Name: ________________________________',
    'Lot numbers: ____________________________',
    'Poured at: ______ °C   Set after: ______ min',
  ],
};

const containsPart = (contains: readonly string[]): HandoutPart[] =>
  contains.length > 0 ? [{ kind: 'list', heading: 'What to know about what is in it', items: contains }] : [];

/** @param contains warnings about the ingredients themselves. */
export const handoutOf = (
  planned: Planned,
  title: string,
  contains: readonly string[],
  decimals: number,
): Handout => ({
  title: drawable(title),
  subtitle: drawable(whereText(planned)),
  left: [
    ...kitParts(planned, decimals),
    ...togetherPart(planned, decimals),
    dayPart(planned, decimals),
    notesPart,
  ],
  right: [
    ...safetySheet(usesGlass(planned)).map(
      ({ heading, items }) => ({ kind: 'list', heading, items }) as const,
    ),
    ...containsPart(contains),
  ],
  footer: localRules.text,
});

const picture = async (planned: Planned): Promise<AnswerFile[]> => {
  const svg = timelineSvg(planned);
  if (svg === undefined) return [];
  const { pngOf } = await import('../pictures/picture.ts');
  return [{ name: 'workshop-timeline.png', type: 'image/png', bytes: await pngOf(svg) }];
};

const paper = async (handout: Handout, tools: Tools): Promise<AnswerFile[]> => {
  const page = handoutPage(handout, paperFor(tools.settings.region));
  if (!page) return [];
  const { pdfOf } = await import('../papers/paper.ts');
  const bytes = await pdfOf({ title: handout.title, language: 'en', pages: [page] }, tools.at);
  return [{ name: 'workshop-handout.pdf', type: 'application/pdf', bytes }];
};

export interface WorkshopFiles {
  readonly files: readonly AnswerFile[];
  /** Why there is no handout: too much for one page, or it could not be written just now. */
  readonly noHandout?: 'too-long' | 'not-written';
}

/** Handout and picture. One that cannot be made is left out: the answer does not fail with it. */
export const workshopFiles = async (
  planned: Planned,
  title: string,
  contains: readonly string[],
  tools: Tools,
  decimals: number,
): Promise<WorkshopFiles> => {
  const handout = handoutOf(planned, title, contains, decimals);
  const [printed, drawn] = await Promise.allSettled([paper(handout, tools), picture(planned)]);
  const pages = printed.status === 'fulfilled' ? printed.value : undefined;
  const files = [...(pages ?? []), ...(drawn.status === 'fulfilled' ? drawn.value : [])];
  if (pages && pages.length > 0) return { files };
  return { files, noHandout: pages ? 'too-long' : 'not-written' };
};
