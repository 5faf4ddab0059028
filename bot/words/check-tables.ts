import type { Declarable } from '../../core/check/allergens.ts';
import type { CheckReport } from '../../core/check/check.ts';
import type { Compared } from '../../core/check/limits.ts';
import type { Region } from '../../core/settings.ts';
import type { Block } from '../answer.ts';
import { howSeen, share } from './check-text.ts';

export const regionNames: Readonly<Record<Region, string>> = {
  eu: 'the EU',
  uk: 'Great Britain',
  us: 'the US',
  ca: 'Canada',
  au: 'Australia',
};

export const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Most rows of limits that are shown; all of them are in the figures. */
const mostRows = 6;

const closeness = ({ percent, limitPercent }: Compared): number =>
  limitPercent > 0 ? percent / limitPercent : Number.POSITIVE_INFINITY;

/** What comes closest to its limit, as rows for a narrow chat. */
export const limitTable = (limits: readonly Compared[]): Block[] => {
  const shown = limits
    .filter(({ percent, limitPercent, ok }) => percent > 0 && (!ok || limitPercent > 0))
    .toSorted((a, b) => closeness(b) - closeness(a))
    .slice(0, mostRows);
  if (shown.length === 0) return [];
  return [
    {
      kind: 'table',
      columns: [
        { title: 'what', align: 'left' },
        { title: 'has %', align: 'right' },
        { title: 'most %', align: 'right' },
        { title: '', align: 'left' },
      ],
      rows: shown.map((row) => [
        `${row.what.replace(/ \(.*$/, '')}${row.forAge ? ', for a child' : ''}`,
        share(row.percent).replace(' %', ''),
        `${row.status === 'memory' ? '~' : ''}${share(row.limitPercent).replace(' %', '')}`,
        row.ok ? 'within' : 'over',
      ]),
    },
  ];
};

const whichList = ({ allergenRule }: CheckReport, region: Region): string => {
  const { list, status } = allergenRule;
  const where = regionNames[region];
  if (list === 'none')
    return `${capital(where)} has no list of scent allergens in force (${howSeen(status)}); naming them is a kindness`;
  const what = list === 'full' ? 'the list of 81' : 'the long-standing list';
  return `${capital(where)}: ${what}, above 0.001 % on what stays on (${howSeen(status)})`;
};

const named = (allergens: readonly Declarable[]): string =>
  allergens.map(({ name, percent, certain }) => `${name} ${certain ? '' : '~'}${share(percent)}`).join(', ');

/** The scent allergens to name, and by which list. */
export const allergenLines = (report: CheckReport, region: Region, rinseOff: boolean): Block[] => {
  if (report.allergens.length === 0) return [];
  const must = report.allergens.filter(({ declare }) => declare);
  const rest = report.allergens.filter(
    ({ declare, percent }) => !declare && percent > (rinseOff ? 0.01 : 0.001),
  );
  const head = must.length > 0 ? `Name on the label: ${named(must)}.` : 'No scent allergen has to be named.';
  const others = rest.length > 0 ? ` Not asked for there: ${named(rest)}.` : '';
  const rule = rinseOff
    ? whichList(report, region).replace('0.001 % on what stays on', '0.01 % on what is rinsed off')
    : whichList(report, region);
  return [{ kind: 'text', text: `${head}${others} ${rule}.` }];
};

/** The verdict for a title: counted, and never "safe". */
export const verdictWords = (report: CheckReport): string => {
  const count = (level: string): number => report.findings.filter((each) => each.level === level).length;
  const things = (many: number): string => (many === 1 ? '1 thing' : `${many} things`);
  if (report.verdict === 'not-ok') {
    const more = count('warn') > 0 ? `, ${things(count('warn'))} to look at` : '';
    return `not within the figures I know: ${things(count('stop'))} to change${more}`;
  }
  return report.verdict === 'warn' ? `${things(count('warn'))} to look at` : 'within the figures I know';
};
