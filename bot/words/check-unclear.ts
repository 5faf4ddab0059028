import { type CheckInput, type CheckReport, checkRecipe, type Verdict } from '../../core/check/check.ts';
import { orList } from '../readers/ask-back.ts';
import type { CheckWish } from '../topics/check.ts';
import { nameOf } from './check-text.ts';

const ranks: readonly Verdict[] = ['within', 'warn', 'not-ok'];

const isWorse = (a: CheckReport, b: CheckReport): boolean => {
  const [first, second] = [ranks.indexOf(a.verdict), ranks.indexOf(b.verdict)];
  if (first !== second) return first > second;
  const weighty = ({ findings }: CheckReport): number =>
    findings.filter(({ level }) => level !== 'note').length;
  return weighty(a) > weighty(b);
};

const withMeaning = (input: CheckInput, from: string, to: string): CheckInput => ({
  ...input,
  lines: input.lines.map((line) => (line.ingredient === from ? { ...line, ingredient: to } : line)),
  strained: input.strained.map((herb) => (herb.ingredient === from ? { ...herb, ingredient: to } : herb)),
});

export interface Judged {
  readonly report: CheckReport;
  readonly input: CheckInput;
  /** What was judged, a sentence for each name that stays open. */
  readonly assumed: readonly string[];
}

/** A name that may be several things is judged as each of them; the worst is told, and said so. */
export const judged = (input: CheckInput, unclear: CheckWish['unclear'] = []): Judged => {
  let worst: Judged = { input, report: checkRecipe(input), assumed: [] };
  for (const { said, ids } of unclear) {
    const [from = ''] = ids;
    let [chosen, best] = [from, worst];
    for (const id of ids.slice(1)) {
      const other = withMeaning(worst.input, from, id);
      const report = checkRecipe(other);
      if (isWorse(report, best.report)) [chosen, best] = [id, { ...worst, input: other, report }];
    }
    const names = orList(ids.map(nameOf));
    const sentence = `"${said}" can be ${names}. I judged each; this is the strictest, ${nameOf(chosen)}.`;
    worst = { ...best, assumed: [...worst.assumed, sentence] };
  }
  return worst;
};
