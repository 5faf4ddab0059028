import type { ChainProblem } from '../../core/infuse/chain.ts';
import type { InfuseProblem } from '../../core/infuse/infuse.ts';
import type { YieldProblem } from '../../core/infuse/yields.ts';
import type { ScaleProblem } from '../../core/target.ts';
import type { Trouble } from '../answer.ts';
import { plain, readable } from './numbers.ts';
import { troubleOf } from './problems.ts';

type Own = InfuseProblem | YieldProblem | Exclude<ChainProblem, ScaleProblem>;

const bad = (text: string): Trouble => ({ code: 'bad-quantity', text });
const example = 'infuse 40 g dried calendula in sunflower oil';

const words: { [C in Own['code']]: (problem: Extract<Own, { code: C }>) => Trouble } = {
  'no-amount': () => ({
    code: 'missing',
    text: `How much? Give the herb, the oil or the infused oil you want, for example "${example}".`,
  }),
  'not-a-number': () => bad(`That is no amount I can weigh. Try "${example}".`),
  'herb-keeps-all': ({ ratio, uptakeGPerG }) =>
    bad(
      `At 1:${plain(ratio)} the herb would drink all the oil: it keeps about ${plain(uptakeGPerG)} g to the gram. Take more oil, for example "at 1:8".`,
    ),
  'more-out-than-in': ({ oilInG, oilOutG }) =>
    bad(
      `More oil cannot come out (${readable(oilOutG)} g) than went in (${readable(oilInG)} g). Check the two figures, for example "I got 260 g out of 40 g calendula in 320 g sunflower oil".`,
    ),
  'do-not-agree': ({ ratio, saidRatio }) =>
    bad(
      `Those amounts make 1:${plain(ratio)}, not 1:${plain(saidRatio)}. Leave one of the three out, for example "${example}".`,
    ),
  'infusion-too-small': ({ stepG }) => ({
    code: 'out-of-range',
    text: `That is too little for a scale that reads ${stepG} g. Make more, for example "${example}".`,
  }),
  'infusion-too-big': ({ mostG }) => ({
    code: 'out-of-range',
    text: `That is more than I am made for (${mostG / 1000} kg). Try "${example}".`,
  }),
  'too-much-kept': ({ uptakeGPerG, mostGPerG }) => ({
    code: 'out-of-range',
    text: `That would mean the herb kept ${plain(uptakeGPerG)} g of oil to the gram; more than ${mostGPerG} g is oil spilt or a slip. Nothing was recorded: check the figures and say it again, for example "I got 260 g out of 40 g calendula in 320 g sunflower oil".`,
  }),
  'no-oil-line': () => ({
    code: 'missing',
    text: 'There is no liquid oil in that recipe to infuse. Name the line that shall be infused, for example "olive oil infused 1:8 with calendula".',
  }),
  'no-herb': () => ({
    code: 'missing',
    text: 'Infused with which herb? For example "24 tins of 15 ml of Fernlea hand balm, oil infused 1:8 with calendula".',
  }),
};

const isOwn = (problem: Own | ScaleProblem): problem is Own => Object.hasOwn(words, problem.code);

/** A problem of infusing in words; those of scaling have theirs already. */
export const infuseTrouble = (problem: Own | ChainProblem): Trouble => {
  const shared: Own | ScaleProblem = problem;
  return isOwn(shared) ? (words[shared.code] as (of: Own) => Trouble)(shared) : troubleOf(shared);
};
