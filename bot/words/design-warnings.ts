import type { Design, Proposal } from '../../core/design/design.ts';
import { openQuestions } from '../../core/design/exclusions.ts';
import type { Wishes } from '../../core/design/wishes.ts';
import { type Hazard, hazardsOf } from '../../core/hazards.ts';
import type { Warning } from '../answer.ts';
import { withoutName } from './design-relax.ts';
import { forecastWarnings } from './forecast.ts';
import { capital } from './lists.ts';
import { localRules, potCautions, shortName, warningOf } from './warnings.ts';

const pocketC = 37;

const surviving: Readonly<Record<Wishes['form'], string>> = {
  stick: 'stays firm',
  tin: 'does not slump, though it may go soft',
  tube: 'stays a paste and does not run',
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
    text: capital(
      `${ingredients.map(shortName).join(', ')}: a question for whoever avoids ${withoutName(without)}; ask before handing it out.`,
    ),
  }));

const once = (warnings: readonly Warning[]): Warning[] => [
  ...new Map(warnings.map((warning) => [`${warning.code} ${warning.text}`, warning])).values(),
];

/** Hazards that only list ingredients are told once, with those of all proposals. */
const joined = (hazards: readonly Hazard[]): readonly Hazard[] => {
  const all: Hazard[] = [];
  for (const hazard of hazards) {
    const at = all.findIndex((other) => other.code === hazard.code);
    const other = all[at];
    if (other && 'ingredients' in other && 'ingredients' in hazard)
      all[at] = { ...other, ingredients: [...new Set([...other.ingredients, ...hazard.ingredients])] };
    else all.push(hazard);
  }
  return all;
};

const estimate = (form: Wishes['form']): Warning => ({
  code: 'rough-estimate',
  text: `"Survives" means a ${form} ${surviving[form]}. Reckoned, not measured, to some 4 °C: make a trial first.`,
});

/** What the forecast warns of; a tube that survives a pocket is not said to melt in it. */
const meltWarnings = ({ forecast, survivesC = 0 }: Proposal): Warning[] =>
  forecastWarnings(forecast).filter(
    ({ code }) => code !== 'rough-estimate' && !(code === 'melts-in-a-pocket' && survivesC >= pocketC),
  );

/** What is told of a grainy or slow balm belongs to the one that is made; the overview keeps to what all must know. */
const detailCodes = new Set(['may-grain', 'softer-at-first']);

/** Everything to mind with the proposals, or with the one that is shown in full. */
export const designWarnings = (made: Design, shown: Proposal | undefined): Warning[] => {
  const first = shown ?? made.proposals[0];
  const hazards = (shown ? [shown] : made.proposals).flatMap(({ lines }) =>
    hazardsOf({ lines, strained: [], tooSmall: [] }),
  );
  const own = first ? meltWarnings(first).filter(({ code }) => shown || !detailCodes.has(code)) : [];
  return [
    ...questions(made),
    ...once(joined(hazards).map(warningOf)),
    ...own,
    ...(first ? [estimate(made.wishes.form), ...potCautions] : []),
    localRules,
  ];
};
