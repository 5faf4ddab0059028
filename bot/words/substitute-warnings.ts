import { hazardsOf } from '../../core/hazards.ts';
import { takenIn } from '../../core/melt/forecast.ts';
import { roughnessOf } from '../../core/melt/rough.ts';
import type { Comparison } from '../../core/substitute/compare.ts';
import type { Mix } from '../../core/substitute/mix.ts';
import type { Block, Warning } from '../answer.ts';
import { forecastAssumed, roughText } from './forecast.ts';
import { type Changed, replacedIn } from './substitute-figures.ts';
import { localRules, potCautions, warningOf } from './warnings.ts';

const trialTin: Warning = {
  code: 'rough-estimate',
  text: 'Waxes differ by lot and maker: make a trial tin before the batch.',
};

const pocketIndex = 60;

const pocket = ({ before, after }: Comparison): Warning[] => {
  const [was, is] = [before.heat?.firmnessAt37, after.heat?.firmnessAt37];
  if (was === undefined || is === undefined || is >= pocketIndex || was < pocketIndex) return [];
  return [{ code: 'melts-in-a-pocket', text: 'Softer in a warm pocket than before: carry it upright.' }];
};

const hazards = ({ portions, strained }: Mix): Warning[] =>
  hazardsOf({ lines: portions, strained, tooSmall: [] }).map(warningOf);

/** Codes said once; the weigh-out brings its own. */
const onceEach = (warnings: readonly Warning[]): Warning[] => [
  ...new Map(warnings.map((warning) => [`${warning.code} ${warning.text}`, warning])).values(),
];

/** The melting sums had a part in the answer: a wax, butter or oil changed, not only a scent or herb. */
const isMelted = (changed: Changed): boolean => replacedIn(changed).some(({ way }) => way !== 'herb');

const rough = (changed: Changed, { after: { blend } }: Comparison): Warning[] => {
  const because = blend && isMelted(changed) ? roughnessOf(blend).because : [];
  return because.length > 0 ? [{ code: 'rough-estimate', text: roughText(because) }] : [];
};

/** What the melting sums left out of the changed recipe, or took by another's figures. */
export const meltNotes = (changed: Changed, { after: { blend } }: Comparison): readonly Block[] =>
  blend && isMelted(changed) ? forecastAssumed({ leftOut: blend.leftOut, takenAs: takenIn(blend) }) : [];

/** Everything to mind after a change; `weighed` are the warnings of the weigh-out, where there is one. */
export const changeWarnings = (
  changed: Changed,
  comparison: Comparison,
  weighed: readonly Warning[] | undefined,
): Warning[] => {
  const waxy = replacedIn(changed).some(({ notes }) => notes.includes('make-a-trial-tin'));
  return onceEach([
    ...(waxy ? [trialTin] : []),
    ...rough(changed, comparison),
    ...pocket(comparison),
    ...(weighed ?? [...hazards(changed.after), ...potCautions, localRules]),
  ]);
};
