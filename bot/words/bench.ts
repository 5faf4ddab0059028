import { type DiluteProblem, dilute } from '../../core/bench/dilute.ts';
import { type FillReport, judgeFill } from '../../core/bench/filling.ts';
import { defined } from '../../core/defined.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BenchWish } from '../topics/bench.ts';
import { adviceOf } from './bench-advice.ts';
import { regionNames } from './check-tables.ts';
import { plain, readable } from './numbers.ts';
import { localRules } from './warnings.ts';

const diluteTrouble = (problem: DiluteProblem): Trouble =>
  problem.code === 'not-weaker'
    ? {
        code: 'bad-quantity',
        text: `Water makes nothing stronger: ${plain(problem.fromPercent)} % cannot become ${plain(problem.toPercent)} %. For example "dilute 96 % ethanol to 70 %".`,
      }
    : {
        code: 'bad-quantity',
        text: 'A strength is more than 0 and at most 100 % by volume. For example "dilute 96 % ethanol to 70 %".',
      };

const answerDilution = ({ alcohol = {} }: BenchWish): Answer | Trouble => {
  const { fromPercent = 96, toPercent = 70, makeMl, haveMl } = alcohol;
  const mixed = dilute({ fromPercent, toPercent, ...defined({ makeMl, haveMl }) });
  if (!mixed.ok) return diluteTrouble(mixed.problem);
  const { spiritMl, madeUpToMl } = mixed.value;
  const guessed = alcohol.fromPercent === undefined || alcohol.toPercent === undefined;
  return {
    title: `${plain(fromPercent)} % alcohol to ${plain(toPercent)} %`,
    blocks: [
      {
        kind: 'text',
        text: `${readable(spiritMl)} ml of the ${plain(fromPercent)} %, filled up to ${readable(madeUpToMl)} ml with clean water (boiled, cooled). Fill up to the mark: the two shrink when they mix.`,
      },
      {
        kind: 'text',
        text: 'To disinfect, 70 to 80 % works best; keep it wet for 3 minutes, then let it dry fully.',
      },
      ...(guessed
        ? [{ kind: 'assumed', text: `I took ${fromPercent} % to ${toPercent} % by volume.` } as const]
        : []),
      {
        kind: 'source',
        text: 'Strength and contact time: infection-control review and university safety page (read).',
      },
    ],
    figures: {
      from_percent: fromPercent,
      to_percent: toPercent,
      spirit_ml: spiritMl,
      made_up_to_ml: madeUpToMl,
    },
    warnings: [
      {
        code: 'flame-and-alcohol',
        text: 'No flame, hot plate or spark near it. Label the bottle; close it before the hob goes on.',
      },
      { code: 'not-in-the-balm', text: 'For tools and tins only: no alcohol and no water in the balm.' },
      localRules,
    ],
    next: [{ label: 'How to disinfect', say: 'how do I disinfect tins' }],
  };
};

const grams = (value: number): string => `${readable(value)} g`;

const ruleText = (report: FillReport): string => {
  const { rule, region, declaredG, toleranceG, t1G, t2G, status } = report;
  const seen = status === 'memory' ? ', from memory' : '';
  if (rule === 'every') {
    const why =
      status === 'read'
        ? `under ${grams(5)} there is no average system`
        : `I know no tolerance for ${regionNames[region]}, so take the strict way`;
    return `Every one has to hold ${grams(declaredG)} or more: ${why}.`;
  }
  if (region === 'eu' || region === 'uk')
    return `By the average system a ${grams(declaredG)} pack may be ${grams(toleranceG ?? 0)} short now and then: under ${grams(t1G ?? 0)} it counts as short (1 in 40 at most), under ${grams(t2G ?? 0)} it may not go out. The mean may not be under ${grams(declaredG)}.`;
  return `The mean may not be under ${grams(declaredG)}, and no single one more than ${grams(toleranceG ?? 0)} short (${grams(t2G ?? 0)} at least${seen}).`;
};

const weighedText = (report: FillReport): string[] => {
  const { weighed, meanG = 0, declaredG, short, inadequate, rule } = report;
  if (weighed.length === 0) return [];
  const least = rule === 'every' ? declaredG : (report.t1G ?? declaredG);
  return [
    weighed.length > 1
      ? `Mean of ${weighed.length}: ${meanG.toFixed(2)} g, ${meanG < declaredG ? 'under' : 'not under'} ${grams(declaredG)}.`
      : '',
    short.length > 0 ? `Short (under ${grams(least)}): ${short.map(grams).join(', ')}.` : 'None is short.',
    inadequate.length > 0 ? `May not go out: ${inadequate.map(grams).join(', ')}.` : '',
  ].filter(Boolean);
};

const verdict = (report: FillReport): string => {
  const what = `${grams(report.declaredG)} declared`;
  if (report.ok === undefined) return `How full a tin of ${grams(report.declaredG)} has to be`;
  return report.ok ? `${what}: full enough` : `${what}: not full enough`;
};

const answerFill = ({ fill }: BenchWish, tools: Tools): Answer | Trouble => {
  const region = fill?.region ?? tools.settings.region;
  const judged = judgeFill(fill?.declaredG ?? 0, fill?.weighed ?? [], region);
  if (!judged.ok)
    return {
      code: 'bad-quantity',
      text: 'Weights are more than 0 g and at most 25 kg. For example "is a 15 g tin that holds 13.5 g ok".',
    };
  const report = judged.value;
  return {
    title: verdict(report),
    blocks: [
      ...weighedText(report).map((text) => ({ kind: 'text', text }) as const),
      { kind: 'text', text: ruleText(report) },
      {
        kind: 'text',
        text: `Simplest in a small batch: fill ${grams(Number((report.declaredG * 1.02).toFixed(1)))} or a little more, and weigh every one (house choice).`,
      },
      { kind: 'assumed', text: `Rules of ${regionNames[region]}; weights without the tin.` },
      {
        kind: 'source',
        text: 'EU and UK: gov.uk, weights and measures, packaged goods (read). Australia: measurement.gov.au (read). US: NIST Handbook 133 (from memory).',
      },
    ],
    figures: {
      rule: report.rule,
      region,
      declared_g: report.declaredG,
      tolerance_g: report.toleranceG ?? null,
      t1_g: report.t1G ?? null,
      t2_g: report.t2G ?? null,
      mean_g: report.meanG ?? null,
      weighed: report.weighed.length,
      short: report.short.length,
      inadequate: report.inadequate.length,
      ok: report.ok ?? null,
    },
    warnings: [localRules],
  };
};

const answerAdvice = (id: string): Answer | Trouble => {
  const found = adviceOf(id);
  if (!found)
    return { code: 'not-found', text: 'I have no advice on that. For example "how do I disinfect tins".' };
  return {
    title: found.title,
    blocks: [
      { kind: 'list', items: found.steps },
      { kind: 'source', text: found.source },
    ],
    figures: { advice: found.id, steps: found.steps.length },
    // A fire or a burn is no moment for cosmetic rules.
    warnings: [...found.warnings, ...(found.makes ? [localRules] : [])],
  };
};

/** Answers what is asked at the bench: alcohol to thin, how full a tin has to be, or what to do. */
export const answerBench = (wish: BenchWish, tools: Tools): Answer | Trouble => {
  if (wish.advice !== undefined) return answerAdvice(wish.advice);
  return wish.fill ? answerFill(wish, tools) : answerDilution(wish);
};
