import { dilute } from '../../core/bench/dilute.ts';
import { hygiene } from '../../core/workshop/hygiene.ts';
import { degrees } from './forecast.ts';
import { readable } from './numbers.ts';

/** A heading with its sentences, as they stand on the handout. */
export interface SheetPart {
  readonly heading: string;
  readonly items: readonly string[];
}

const [patchLow, patchHigh] = hygiene.patchTestHours.value;
const [jarLow = 35, jarHigh = 50] = hygiene.warmJarsC.value;
const [alcoholLow, alcoholHigh] = hygiene.alcoholPercent.value;

export const burnText = `Burnt: cool running water for ${hygiene.coolBurnMin.value} minutes, rings off, leave stuck wax on the skin, cover loosely. No ice, butter or oil. A doctor for blisters bigger than a coin, face, hands, children, or in doubt.`;

export const fireText = `Burning wax or oil: heat off, lid or fire blanket on, never water, never carry it; covered for ${hygiene.keepCoveredMin.value} minutes. Not out at once: everybody out, fire service.`;

/** One litre of disinfectant, for those who buy strong alcohol. */
export const mixingText = (): string => {
  const mixed = dilute({ fromPercent: 96, toPercent: alcoholLow ?? 70 });
  if (!mixed.ok) return '';
  const { spiritMl, madeUpToMl } = mixed.value;
  return `From 96 % alcohol: ${readable(spiritMl)} ml filled up to ${madeUpToMl} ml with boiled, cooled water is ${alcoholLow} %.`;
};

const hotPart: SheetPart = {
  heading: 'Hot wax and fire',
  items: [
    'Water bath only, never unwatched, never a bare flame. Jugs two thirds full at most, handles turned in.',
    'A hot jug burns hands: dry oven glove; a wet cloth lets heat through.',
    'The bath must not boil dry; top up with hot water only.',
    'Smoke means heat off now.',
    fireText,
    burnText,
  ],
};

const alcoholPart: SheetPart = {
  heading: 'Alcohol and flame',
  items: [
    `${alcoholLow} to ${alcoholHigh} % alcohol disinfects best. Its vapour lights at about ${degrees(hygiene.alcoholFlashC.value)} (from memory), so at room temperature.`,
    'Disinfect first, let everything dry with the window open, bottle closed and away: only then hot plates on. Never spray near one.',
  ],
};

const cleanPart: SheetPart = {
  heading: 'Clean and dry',
  items: [
    'Hands washed, hair tied, gloves for filling; no food at the bench, pets outside.',
    'Everything that touches balm is fully dry. No fresh plants, no honey, no steam in the jug: water brings mould.',
    'Nobody with a cold sore, stomach upset or open sore on the hands fills lip balm. Single-use spatulas for trying.',
  ],
};

const glassItem = `Glass jars: whole, dry, warmed to ${jarLow} to ${degrees(jarHigh)}, never on cold stone; a jump of about ${hygiene.glassJumpC.value} °C breaks ordinary glass. If one breaks, bin the whole pour near it.`;

const peoplePart: SheetPart = {
  heading: 'People',
  items: [
    'Ask before: nuts, bee products and propolis, daisy family, wool wax, scents; asthma; pregnancy or medicines (ask a doctor or pharmacist about scents).',
    'Children only with an adult at the pouring table, none at the hot wax.',
    `No scented balm for children under ${hygiene.noScentUnderYears.value}; no honey on babies' lips.`,
    `Patch test: a little on the inner forearm, covered, ${patchLow} to ${patchHigh} hours. No reaction is no proof of safety. Not on broken or sore lips.`,
    'Swelling of tongue or throat, or hard breathing: emergency number at once.',
  ],
};

/** The hygiene and safety sheet. @param glass true when something is filled into glass. */
export const safetySheet = (glass: boolean): readonly SheetPart[] => [
  hotPart,
  alcoholPart,
  { ...cleanPart, items: glass ? [...cleanPart.items, glassItem] : cleanPart.items },
  peoplePart,
];

/** The same in a few lines, for the chat. */
export const shortSheet = (glass: boolean): readonly string[] => [
  fireText,
  burnText,
  ...(glass ? [glassItem] : []),
  mixingText(),
];
