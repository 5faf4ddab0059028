import { stepDecimals } from '../../core/steps.ts';
import { lengthMin } from '../../core/workshop/timeline.ts';
import type { WorkshopRecipe } from '../../core/workshop/workshop.ts';
import type { Answer, Block, NextStep, Trouble, Warning } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { WorkshopWish } from '../topics/workshop.ts';
import { both } from './forecast.ts';
import { atStep, plain } from './numbers.ts';
import { volumesAssumed } from './scale.ts';
import { toolsIn } from './units-said.ts';
import { shortName } from './warnings.ts';
import { containersOf, workshopFigures } from './workshop-figures.ts';
import { type WorkshopFiles, whereText, workshopFiles } from './workshop-files.ts';
import { kitTexts } from './workshop-kit.ts';
import { eachText, nameOf, type Planned, planFor } from './workshop-plan.ts';
import { shortSheet } from './workshop-sheet.ts';
import { isBefore, longStep, whenText } from './workshop-steps.ts';
import { asideTable, kitTable, shoppingTable, togetherTexts } from './workshop-tables.ts';
import { usesGlass, workshopWarnings } from './workshop-warnings.ts';

const text = (said: string): Block => ({ kind: 'text', text: said });
const assumed = (said: string): Block => ({ kind: 'assumed', text: said });

const titleOf = ({ makings }: Planned): string => `Workshop: ${makings.map(nameOf).join(' and ')}`;

const kitBlocks = (recipe: WorkshopRecipe, planned: Planned, at: number, tools: Tools): Block[] => {
  const { kit, melting } = recipe;
  const { wish, makings, lossPercent } = planned;
  const making = wish.makings[at];
  const what = making ? eachText(making) : '';
  const name = makings.length > 1 ? `${nameOf(makings[at])}: ` : '';
  const pour =
    melting.firstPour && making?.size.unit === 'ml'
      ? ` About ${plain(melting.firstPour.first * kit.fillGEach, 1)} g hot fills each to the line, ${plain(melting.firstPour.topUp * kit.fillGEach, 1)} g tops up the dent.`
      : '';
  return [
    text(
      `${name}Each person makes ${what}: ${plain(kit.fillGEach, 1)} g in each, with ${plain(lossPercent)} % for jug and spoon.${pour}`,
    ),
    kitTable(recipe, tools.settings.units),
  ];
};

const shared = ({ people: [least, most], jugsPerPerson, jugs }: WorkshopRecipe['jugs']): string => {
  if (jugsPerPerson > 1) return `${jugsPerPerson} for each person`;
  if (jugs === 1) return 'for everybody together';
  if (most <= 1) return 'one person each';
  return `${least === most || least < 1 ? most : `${least} or ${most}`} people each`;
};

const jugText = ({ jugs, melting }: WorkshopRecipe, name: string): string => {
  const pour = melting.pourC === undefined ? 'hot' : `at ${both(melting.pourC)}`;
  return `${name}${jugs.jugs} ${jugs.jugs === 1 ? 'jug' : 'jugs'} of ${plain(jugs.jugMl)} ml, ${shared(jugs)}: at most ${plain(jugs.hotMlFullest, 0)} ml ${pour}, two thirds are ${plain((jugs.jugMl * 2) / 3, 0)} ml.`;
};

const bathText = ({ plan, wish }: Planned): string => {
  const { jugs, atOnce, rounds } = plan.baths;
  if (rounds > 1) return `${jugs} jugs, ${atOnce} at a time: ${rounds} rounds of melting.`;
  const there =
    wish.hotPlates !== undefined && wish.hotPlates > atOnce ? `; ${wish.hotPlates - atOnce} to spare` : '';
  return `${atOnce} water ${atOnce === 1 ? 'bath' : 'baths'}, one jug in each: everything melts at once${there}.`;
};

const jugBlocks = (planned: Planned): Block[] => {
  const several = planned.makings.length > 1;
  const texts = planned.plan.recipes.map((recipe, at) =>
    jugText(recipe, several ? `${nameOf(planned.makings[at])}: ` : ''),
  );
  return [text([...texts, bathText(planned)].join(' '))];
};

const dayBlocks = (planned: Planned, decimals: number): Block[] => [
  text(`The day takes about ${lengthMin(planned.plan.timeline)} minutes from people's arrival:`),
  {
    kind: 'list',
    items: planned.plan.timeline.map((entry) => {
      const takes = isBefore(entry) ? '' : ` (${entry.minutes} min)`;
      return `${whenText(entry, planned.wish.start)}${takes}: ${longStep(entry, planned, decimals)}`;
    }),
  },
];

const strainedTexts = ({ plan }: Planned, decimals: number): string[] =>
  plan.steeped.inMelt.map(
    ({ herb, herbG }) =>
      `There is no liquid oil to steep ${shortName(herb)} in: ${atStep(herbG, decimals)} g goes into the melt and is strained out before pouring; herb and cloth keep some of it.`,
  );

const containerTexts = (planned: Planned, tools: Tools): string => {
  const texts = containersOf(planned, tools).map(({ container, need, toBuy, pack }) => {
    const packs = pack === undefined ? '' : `, bought as ${toBuy} in packs of ${pack}`;
    return `${need} ${container}${need === 1 ? '' : 's'}${packs}`;
  });
  return `And ${texts.join(', ')}, spare ones counted in.`;
};

const assumedBlocks = (planned: Planned, tools: Tools): Block[] => {
  const { wish, plan } = planned;
  const volumes = plan.recipes.flatMap(({ kit }) => volumesAssumed(kit.scaled, tools.settings.region));
  const stepG = wish.stepG ?? tools.settings.stepG;
  return [
    ...(wish.sparePercent === undefined
      ? [assumed(`${planned.sparePercent} % spare (common practice): say for example "spare 15 %".`)]
      : []),
    ...(wish.jugMl === undefined ? [assumed('Jug sizes are mine: say for example "jugs of 250 ml".')] : []),
    ...(wish.hotPlates === undefined
      ? [assumed('As many hot plates as jugs: say for example "2 hot plates".')]
      : []),
    ...(wish.start === undefined ? [assumed('No start was given: say for example "start at 14:00".')] : []),
    assumed('Times, scales for four people each and counts of tools are common practice: adjust them.'),
    assumed(`Weighed on scales that read ${stepG} g.`),
    ...[...new Set(volumes)].map(assumed),
  ];
};

/** Codes of warnings about what is in the balm, which everybody should read on the handout. */
const contentCodes = new Set([
  'nut-allergen',
  'bee-allergen',
  'wool-allergen',
  'daisy-family',
  'food-allergen',
  'not-for-lips',
  'lip-caution',
  'light-sensitising',
  'brings-water',
]);

const contentsOf = (warnings: readonly Warning[]): string[] =>
  warnings.filter(({ code }) => contentCodes.has(code)).map((warning) => warning.text);

const noHandoutTexts: Readonly<Record<NonNullable<WorkshopFiles['noHandout']>, string>> = {
  'too-long': 'All these lines do not fit on one printed page: plan one recipe at a time for a handout.',
  'not-written': 'The handout could not be written just now; ask again in a moment.',
};

const filesText = ({ noHandout }: WorkshopFiles): Block[] =>
  noHandout === undefined ? [] : [text(noHandoutTexts[noHandout])];

const nextOf = ({ wish, makings }: Planned): NextStep[] => {
  const [making] = makings;
  const [asked] = wish.makings;
  if (!making?.name || !asked || makings.length > 1) return [];
  const count = wish.people * asked.each;
  return [
    { label: 'Heat plan', say: `heat plan for "${making.name}"` },
    {
      label: 'What it costs',
      say: `cost of "${making.name}" for ${count} ${asked.container}s of ${asked.size.amount} ${asked.size.unit}`,
    },
    { label: 'Check it', say: `check "${making.name}"` },
  ];
};

const blocksOf = (planned: Planned, tools: Tools, decimals: number): Block[] => [
  text(whereText(planned)),
  ...planned.plan.recipes.flatMap((recipe, at) => kitBlocks(recipe, planned, at, tools)),
  asideTable(planned, decimals),
  ...[...togetherTexts(planned, decimals), ...strainedTexts(planned, decimals)].map(text),
  ...jugBlocks(planned),
  ...dayBlocks(planned, decimals),
  shoppingTable(planned, decimals),
  text(containerTexts(planned, tools)),
  text(`Bring: ${kitTexts(planned).join(', ')}.`),
  { kind: 'list', items: shortSheet(usesGlass(planned)) },
];

/** Plans a workshop: kits, what is set aside, jugs, the day, what to buy and bring, and a handout to print. */
export const answerWorkshop = async (wish: WorkshopWish, given: Tools): Promise<Answer | Trouble> => {
  const tools = toolsIn(wish.units, given);
  const planned = planFor(wish, tools);
  if ('code' in planned) return planned;
  const decimals = stepDecimals(wish.stepG ?? tools.settings.stepG);
  const warnings = workshopWarnings(planned);
  const title = titleOf(planned);
  const made = await workshopFiles(planned, title, contentsOf(warnings), tools, decimals);
  const named = (type: string): string | null => made.files.find((file) => file.type === type)?.name ?? null;
  return {
    title,
    blocks: [...blocksOf(planned, tools, decimals), ...filesText(made), ...assumedBlocks(planned, tools)],
    figures: {
      ...workshopFigures(planned, tools, decimals),
      handout: named('application/pdf'),
      picture: named('image/png'),
    },
    warnings,
    next: nextOf(planned),
    files: made.files,
  };
};
