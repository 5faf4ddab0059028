import { hygiene } from '../../core/workshop/hygiene.ts';
import type { TimelineEntry, WorkshopStep } from '../../core/workshop/timeline.ts';
import { both, degrees } from './forecast.ts';
import { atStep } from './numbers.ts';
import { shortName } from './warnings.ts';
import type { Planned } from './workshop-plan.ts';

const dayMin = 24 * 60;

const twoDigits = (value: number): string => String(value).padStart(2, '0');

/** Clock time so many minutes after a start such as "14:00"; midnight is passed as on a clock. */
export const clockAt = (start: string, atMin: number): string => {
  const [hours = 0, mins = 0] = start.split(':').map(Number);
  const total = (((hours * 60 + mins + atMin) % dayMin) + dayMin) % dayMin;
  return `${twoDigits(Math.floor(total / 60))}:${twoDigits(total % 60)}`;
};

/** "+0:35", "-1:15": minutes from people's arrival where no start is said. */
const fromStart = (atMin: number): string => {
  const minutes = Math.abs(atMin);
  return `${atMin < 0 ? '-' : '+'}${Math.floor(minutes / 60)}:${twoDigits(minutes % 60)}`;
};

/** Words of a moment on the day. */
export const momentText = (start: string | undefined, atMin: number): string =>
  start === undefined ? fromStart(atMin) : clockAt(start, atMin);

/** Steps on days before the workshop have no time of day. */
export const isBefore = ({ atMin }: TimelineEntry): boolean => atMin <= -dayMin;

const beforeText = (atMin: number): string => {
  const days = Math.round(-atMin / dayMin);
  if (days === 7) return 'a week before';
  return days === 1 ? 'the day before' : `${days} days before`;
};

export const whenText = (entry: TimelineEntry, start: string | undefined): string =>
  isBefore(entry) ? beforeText(entry.atMin) : momentText(start, entry.atMin);

const roundText = ({ rounds }: TimelineEntry): string => {
  if (!rounds) return '';
  const [first, last] = rounds;
  return first === last ? ` round ${first}` : ` rounds ${first} to ${last}`;
};

const shortWords: Readonly<Record<WorkshopStep, string>> = {
  ask: 'ask about allergies',
  infuse: 'infuse the oil',
  wash: 'wash and dry tools and containers',
  'set-up': 'set up and disinfect',
  'warm-baths': 'warm the water baths',
  welcome: 'welcome and safety',
  weigh: 'weigh the kits',
  melt: 'melt',
  pour: 'pour',
  set: 'let it set, uncovered',
  label: 'write labels',
  clean: 'clean up',
  'hand-out': 'close, hand out',
};

/** A step in a few words: "melt round 2". */
export const shortStep = (entry: TimelineEntry): string => `${shortWords[entry.step]}${roundText(entry)}`;

/** "200 g olive oil with 25 g calendula": what is steeped before the day. */
export const infusionTexts = ({ plan }: Planned, decimals: number): readonly string[] =>
  plan.steeped.ahead.map(({ herb, oil, infusion, ways }) => {
    const g = (grams: number): string => `${atStep(grams, decimals)} g`;
    const [low, high] = ways.hours;
    return `${g(infusion.herbG)} dried ${shortName(herb)} in ${g(infusion.oilInSureG)} ${shortName(oil)} for ${g(infusion.oilOutG)} strained (warm, ${both(ways.bathC[0])} to ${both(ways.bathC[1])}, ${low} to ${high} hours, then stand overnight; cold: start ${ways.coldWeeks[0]} to ${ways.coldWeeks[1]} weeks before)`;
  });

interface Heat {
  readonly bath: string;
  readonly pour: string;
}

const unique = (all: readonly string[]): string[] => [...new Set(all)];

const heatOf = ({ plan }: Planned): Heat => {
  const melting = plan.recipes.map((recipe) => recipe.melting);
  const baths = melting.flatMap(({ bathC }) => (bathC ? [`${both(bathC[0])} to ${both(bathC[1])}`] : []));
  const pours = melting.flatMap(({ pourC }) => (pourC === undefined ? [] : [both(pourC)]));
  return { bath: unique(baths).join('; '), pour: unique(pours).join('; ') };
};

const scentText = ({ plan }: Planned): string => {
  const below = plan.recipes.flatMap(({ kit, melting }) =>
    kit.together.length > 0 && melting.addAromaBelowC !== undefined ? [melting.addAromaBelowC] : [],
  );
  return below.length > 0 ? ` Stir the scent in first, below ${degrees(Math.min(...below))}.` : '';
};

/** Each step with what to mind in it, before it happens. */
const longWords: Readonly<Record<WorkshopStep, (planned: Planned, decimals: number) => string>> = {
  ask: () =>
    'Ask everybody about allergies (nuts, bee products, daisy family, wool), asthma and pregnancy, and whether children come. Long hair tied, sleeves that roll up, closed shoes.',
  infuse: (planned, decimals) => `Infuse: ${infusionTexts(planned, decimals).join('. ')}.`,
  wash: () =>
    'Wash, rinse and fully dry tools, jugs and containers; air-dry overnight. One wet spoon brings mould. Weigh the spare.',
  'set-up': () =>
    `Set up: bench free of food, window open. Wipe bench and tools with ${hygiene.alcoholPercent.value[0]} % alcohol, keep them wet ${hygiene.wetMin.value} minutes, let all of it dry, close the bottle and put it away. No flame and no hot plate before that.`,
  'warm-baths': () =>
    'Alcohol dry, closed and away? Only then hot plates on. Water as high as the melt will stand, a stand under each jug.',
  welcome: () =>
    'Welcome: allergies once more, hands washed, hair tied. Show cold water, lids and fire blanket. Nobody with a cold sore fills lip balm.',
  weigh: () => 'Weigh the kits into dry bowls: read aloud, tick each line.',
  melt: (planned) => {
    const { bath } = heatOf(planned);
    return `Melt in the water bath${bath ? `, ${bath}` : ''}: one person stays with it, no water or steam into the jug, look at the water every ${hygiene.lookAtBathMin.value} minutes.`;
  },
  pour: (planned) => {
    const { pour } = heatOf(planned);
    return `Pour${pour ? ` at about ${pour}` : ''}: dry oven glove, wipe the jug's foot, pour away from you.${scentText(planned)}`;
  },
  set: () => 'Let it set uncovered and unmoved; a lid on warm balm sweats inside.',
  label: () => 'Labels: what is in it, the date, whose it is.',
  clean: () =>
    'Clean up: hot plates off, wax wiped off warm with paper, never down the drain; then hot water and washing-up liquid.',
  'hand-out': () =>
    `Lids on at room temperature. Patch test at home first: inner forearm, ${hygiene.patchTestHours.value.join(' to ')} hours; no reaction is no proof.`,
};

/** A step as a sentence, with its round. */
export const longStep = (entry: TimelineEntry, planned: Planned, decimals: number): string => {
  const text = longWords[entry.step](planned, decimals);
  const round = roundText(entry);
  if (!round) return text;
  const [first = 1] = entry.rounds ?? [];
  // The words about heat are told once; later rounds are the same again.
  return first > 1 ? `${entry.step === 'melt' ? 'Melt' : 'Pour'}${round}.` : `${text} (${round.trim()})`;
};
