import type { SwapNote } from '../../core/melt/swapped.ts';
import type { DoneWithout, Step } from '../../core/substitute/do-without.ts';
import type { Replaced } from '../../core/substitute/replaced.ts';
import { orList } from '../readers/ask-back.ts';
import { percentText, plain } from './numbers.ts';
import { shortName } from './warnings.ts';
import { withoutName } from './without.ts';

/** A trial tin is a warning of its own, and how far full melt moves is told with its degrees. */
const noteText: Readonly<Record<SwapNote, ((replaced: Replaced) => string) | undefined>> = {
  'already-firm': ({ to }) =>
    `It is firm enough without any ${shortName(to)}; add some for its feel if you like.`,
  'make-a-trial-tin': undefined,
  'full-melt-moves': undefined,
  'carnauba-evidence-conflicts': () =>
    'On carnauba the evidence conflicts: laboratories find it half as strong as candelilla, makers find it the hardest.',
  'not-as-only-wax': () =>
    'Carnauba is used at 1 to 3 % beside other waxes, not as the only one (common practice).',
  'weak-alone-in-sticks': () => 'Rice bran wax alone has been reported weak in sticks.',
};

const gaveWay: Readonly<Record<Replaced['way'], string>> = {
  'firmness-held': 'the liquid oil takes up the difference',
  'butters-give-way': 'there is no liquid oil, so the butters take up the difference',
  'gram-for-gram': 'gram for gram',
  'gram-for-gram-firmed': 'gram for gram',
  herb: 'herb for herb',
};

const firmed = ({ firmedWith, addedPercent = 0 }: Replaced): string =>
  firmedWith ? `, with ${percentText(addedPercent)} more ${shortName(firmedWith)} to hold the set` : '';

/** What was done, in one sentence. */
export const doneLine = (replaced: Replaced): string => {
  const { from, to, way, percent, takenPercent, leftPercent } = replaced;
  if (way === 'herb') return `${shortName(to)} for ${shortName(from)}, weighed as before.`;
  const difference = Math.abs(percent - takenPercent) < 0.05 ? 'gram for gram' : gaveWay[way];
  const whole = leftPercent === undefined ? '' : ` of the ${percentText(takenPercent + leftPercent)}`;
  return `${percentText(percent)} ${shortName(to)} for ${percentText(takenPercent)}${whole} ${shortName(from)}; ${difference}${firmed(replaced)}.`;
};

const rangeLine = ({ range, to, percent }: Replaced): string[] => {
  if (!range) return [];
  const [low, high] = range;
  const top = high === undefined ? 'more than the oil leaves room for' : `${plain(high, 0)} %`;
  return [
    `By what is known of its strength, ${shortName(to)} may need ${plain(low, 0)} % to ${top}: start at about ${plain(percent, 0)} %.`,
  ];
};

/** Percent apart that is worth telling. */
const telling = 1;

const fullMeltLine = ({ withFullMeltPercent, percent, to }: Replaced): string[] =>
  withFullMeltPercent === undefined || Math.abs(withFullMeltPercent - percent) < telling
    ? []
    : [
        `To come nearer to the old full melt as well, take ${percentText(withFullMeltPercent)} ${shortName(to)} and a little less firmness.`,
      ];

const adviceLine = ({ advice, to }: Replaced): string[] =>
  advice
    ? [
        `${shortName(to)} is softer at 25 °C: about ${percentText(advice.percent)} more ${shortName(advice.wax)} from the oil holds the set.`,
      ]
    : [];

const herbLine = ({ mix, to }: Replaced): string[] => {
  const herbs = mix.portions
    .filter(({ ingredient, infusedWith }) => ingredient === to && infusedWith !== undefined)
    .map(({ infusedWith = '' }) => shortName(infusedWith));
  return herbs.length > 0 ? [`Steep the ${orList(herbs)} anew, in ${shortName(to)}.`] : [];
};

/** What to know about one swap beyond its figures. */
export const noteLines = (replaced: Replaced): string[] => [
  ...rangeLine(replaced),
  ...fullMeltLine(replaced),
  ...adviceLine(replaced),
  ...replaced.notes.flatMap((note) => {
    const text = noteText[note];
    return text ? [text(replaced)] : [];
  }),
  ...herbLine(replaced),
];

const stepLine = (step: Step): string => {
  if (step.kind === 'replaced') return doneLine(step.replaced);
  const into = step.into ? `: its ${percentText(step.percent)} go to the ${shortName(step.into)}` : '';
  return `${shortName(step.from)} is left out${into}.`;
};

const askLine = ({ ask }: DoneWithout, without: string): string[] => {
  const names = ask.filter((each) => each.without === without).map(({ ingredient }) => shortName(ingredient));
  if (names.length === 0) return [];
  return without === 'nuts'
    ? [`Still in it, and a question for the allergic person: ${names.join(', ')}.`]
    : [`Ask the supplier, for ${withoutName(without)}: ${names.join(', ')}.`];
};

const claimLine = (withouts: readonly string[]): string[] =>
  withouts.some((without) => ['nuts', 'peanut', 'sesame', 'soy', 'wheat'].includes(without))
    ? [
        'No guarantee for an allergic person: shared jugs and spoons, and traces from the supplier, count too.',
      ]
    : [];

const nothingToDo = (withouts: readonly string[]): string =>
  withouts.length > 0
    ? `Nothing has to change: there is none of it in the recipe (${withouts.map(withoutName).join(', ')}).`
    : 'The recipe stays as it is: each ingredient is on the shelf.';

/** What was done to do without something (or, without names, to use only the stock), and what stays a question. */
export const withoutLines = (done: DoneWithout, withouts: readonly string[]): string[] => [
  ...(done.steps.length > 0 ? done.steps.map(stepLine) : [nothingToDo(withouts)]),
  ...withouts.flatMap((without) => askLine(done, without)),
  ...claimLine(withouts),
];
