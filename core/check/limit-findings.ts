import type { CheckLine } from './amounts.ts';
import { cutBy } from './cut.ts';
import type { Finding, Level } from './finding.ts';
import type { Compared } from './limits.ts';

const isRead = ({ status }: Compared): boolean => status === 'read' || status === 'read-secondary';
const isLaw = ({ kind }: Compared): boolean => kind === 'law' || kind === 'law-prohibited';

/**
 * Only a law that was read stops, and only where the recipe is over even by the low end of what the scent may hold:
 * what is from memory warns.
 */
const levelOf = (row: Compared): Level => (isLaw(row) && isRead(row) && row.surelyOver ? 'stop' : 'warn');

/** How far over: the share of the limit. Prohibited things are as far over as can be. */
const excess = ({ percent, limitPercent }: Compared): number =>
  limitPercent > 0 ? percent / limitPercent : Number.POSITIVE_INFINITY;

const rank = (row: Compared): number => (levelOf(row) === 'stop' ? 1e9 : 0) + Math.min(1e8, excess(row));

const codeOf = (worst: Compared): 'prohibited' | 'not-for-lips' | 'over-limit' => {
  if (worst.limitPercent > 0) return 'over-limit';
  return isLaw(worst) && worst.product !== 'lip colour' ? 'prohibited' : 'not-for-lips';
};

const groupsOf = (rows: readonly Compared[]): Compared[][] => {
  const groups = new Map<string, Compared[]>();
  for (const row of rows) {
    const key = `${row.from.toSorted().join(' ')}${row.forAge ? ' for an age' : ''}`;
    groups.set(key, [...(groups.get(key) ?? []), row]);
  }
  return [...groups.values()];
};

const findingOf = (rows: readonly Compared[], lines: readonly CheckLine[]): Finding[] => {
  const [worst, ...others] = rows.toSorted((a, b) => rank(b) - rank(a));
  if (!worst) return [];
  const factor = Math.min(...rows.map((row) => 1 / excess(row)));
  return [
    {
      code: codeOf(worst),
      level: rows.some((row) => levelOf(row) === 'stop') ? 'stop' : 'warn',
      rows: [worst, ...others],
      cuts: cutBy(lines, worst.from, factor),
    },
  ];
};

/** One finding for each oil, or set of oils, that is over something: the worst row first. An opinion is told elsewhere. */
export const limitFindings = (
  compared: readonly Compared[],
  lines: readonly CheckLine[],
): readonly Finding[] =>
  groupsOf(compared.filter(({ ok, kind }) => !ok && kind !== 'opinion')).flatMap((rows) =>
    findingOf(rows, lines),
  );

/** Laws that are announced: a warning until their day. The change is said once, where today's findings say it. */
export const comingFindings = (
  coming: readonly Compared[],
  today: readonly Finding[],
  lines: readonly CheckLine[],
): readonly Finding[] =>
  groupsOf(coming).flatMap((rows): Finding[] => {
    const [row, ...others] = rows;
    if (!row) return [];
    const said = today.some(
      (finding) => 'cuts' in finding && finding.cuts.some(({ ingredient }) => row.from.includes(ingredient)),
    );
    const cuts = said ? [] : cutBy(lines, row.from, 1 / excess(row));
    return [{ code: 'limit-coming', level: 'warn', rows: [row, ...others], cuts }];
  });
