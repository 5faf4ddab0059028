import type { Sourced } from '../data/ingredient.ts';
import type { LimitKind, LimitRow } from '../data/rules/limit-row.ts';
import { limitRows } from '../data/rules/limits.ts';
import { limitedIngredients, limitedSubstance } from '../data/rules/links.ts';
import type { RuleStatus } from '../data/rules/sources.ts';
import { ingredientById, isAromaRow } from '../ingredients.ts';
import type { Region } from '../settings.ts';
import { type Amount, type CheckLine, tidy } from './amounts.ts';

/** One figure a recipe was compared with. Percent of the balm. */
export interface Compared {
  /** What is counted: a substance's label name or an ingredient's id. Findings about one subject belong together. */
  readonly subject: string;
  readonly what: string;
  readonly percent: number;
  readonly limitPercent: number;
  readonly ok: boolean;
  /** False where it only is over by the high end of a range from memory. */
  readonly surelyOver: boolean;
  readonly kind: LimitKind;
  readonly status: RuleStatus;
  readonly cite: string;
  readonly product: string;
  readonly from: readonly string[];
  /** ISO day from which the row applies. */
  readonly appliesFrom?: string;
  readonly note?: string;
  /** Where the limit is that of an age: what holds for everybody is compared as well. */
  readonly forAge?: true;
}

/** Who it is for, where a limit depends on it. */
export type Wearer = 'anyone' | 'children' | 'babies' | 'pregnant';

const slack = 1e-9;

export const inForce = (row: LimitRow, region: Region, on: string): boolean =>
  appliesIn(row, region) && (row.from ?? '') <= on && on <= (row.until ?? '9999-12-31');

const appliesIn = (row: LimitRow, region: Region): boolean =>
  row.regions === 'any' || row.regions.includes(region);

/** Laws announced for later than `on`, up to two years ahead. */
const isComing = (row: LimitRow, region: Region, on: string): boolean =>
  appliesIn(row, region) &&
  row.from !== undefined &&
  row.from > on &&
  Number(row.from.slice(0, 4)) - Number(on.slice(0, 4)) <= 2;

interface Counted {
  readonly subject: string;
  readonly percent: number;
  readonly lowPercent: number;
  readonly certain: boolean;
  readonly from: readonly string[];
}

const countedFor = (
  row: LimitRow,
  lines: readonly CheckLine[],
  amounts: readonly Amount[],
): Counted | undefined => {
  const substance = limitedSubstance[row.id];
  const amount = substance ? amounts.find(({ name }) => name === substance) : undefined;
  if (amount) return { ...amount, subject: amount.name };
  const ids = limitedIngredients[row.id] ?? [];
  const own = lines.filter(({ ingredient }) => ids.includes(ingredient));
  if (own.length === 0) return undefined;
  const percent = tidy(own.reduce((sum, line) => sum + line.percent, 0));
  return {
    subject: row.id,
    percent,
    lowPercent: percent,
    certain: true,
    from: own.map(({ ingredient }) => ingredient),
  };
};

/** Where the limit itself depends on the wearer's age. */
const limitFor = (row: LimitRow, region: Region, wearer: Wearer): number | undefined => {
  if (row.id !== 'methyl-salicylate' || wearer === 'anyone' || wearer === 'pregnant') return row.limit;
  if (region === 'eu') return 0;
  return region === 'uk' && wearer === 'babies' ? 0.02 : row.limit;
};

const compared = (row: LimitRow, counted: Counted, limit: number): Compared => ({
  subject: counted.subject,
  what: row.what,
  percent: counted.percent,
  limitPercent: limit,
  ok: limit > 0 ? counted.percent <= limit + slack : false,
  surelyOver: counted.certain || counted.lowPercent > limit + slack,
  kind: row.kind,
  status: row.status,
  cite: row.cite,
  product: row.product,
  from: counted.from,
  ...(row.from === undefined ? {} : { appliesFrom: row.from }),
  ...(row.note === undefined ? {} : { note: row.note }),
});

export interface Asked {
  readonly lines: readonly CheckLine[];
  readonly amounts: readonly Amount[];
  readonly region: Region;
  /** ISO day. */
  readonly on: string;
  readonly wearer: Wearer;
}

const handbook = (cite: string | undefined, { how }: Sourced): Pick<Compared, 'cite' | 'status'> => ({
  cite: `essential-oil safety handbook, 2014${cite ? `: ${cite}` : ''}`,
  status: how === 'read' || how === 'read-secondary' ? how : 'memory',
});

/** Each oil against the handbook's most on skin; the light-sensitising ones are summed elsewhere. */
const handbookRows = (lines: readonly CheckLine[]): Compared[] =>
  lines.flatMap(({ ingredient, percent }) => {
    const found = ingredientById(ingredient);
    if (!found || !isAromaRow(found) || found.limits.phototoxic) return [];
    const limit = found.limits.dermalMaxPercent;
    if (limit === undefined) return [];
    return [
      {
        subject: ingredient,
        what: found.name,
        percent: tidy(percent),
        limitPercent: limit,
        ok: percent <= limit + slack,
        surelyOver: true,
        kind: 'guidance',
        ...handbook(found.limits.basis, found.limits),
        product: 'skin',
        from: [ingredient],
      },
    ];
  });

const compareRows = (rows: readonly LimitRow[], asked: Asked): Compared[] =>
  rows.flatMap((row) => {
    const counted = countedFor(row, asked.lines, asked.amounts);
    const limit = limitFor(row, asked.region, asked.wearer);
    if (!counted || limit === undefined || row.unit !== '%') return [];
    // Peanut oil is not limited, its protein is: that is told with the nuts.
    if (row.id === 'peanut-protein') return [];
    return limit === 0 && row.limit !== undefined && row.limit > 0
      ? [{ ...compared(row, counted, limit), forAge: true }, compared(row, counted, row.limit)]
      : [compared(row, counted, limit)];
  });

/** Everything a recipe can be compared with on that day, the rows in force. */
export const compareLimits = (asked: Asked): readonly Compared[] => [
  ...compareRows(
    limitRows.filter((row) => inForce(row, asked.region, asked.on)),
    asked,
  ),
  ...handbookRows(asked.lines),
];

/** Laws that are announced and would be broken then. */
export const comingLimits = (asked: Asked): readonly Compared[] =>
  compareRows(
    limitRows.filter((row) => row.kind === 'law' && isComing(row, asked.region, asked.on)),
    asked,
  ).filter(({ ok }) => !ok);

/** Rows about something in the recipe for which no figure was found: the supplier's certificate decides. */
export const withoutFigure = (asked: Asked): readonly LimitRow[] =>
  limitRows.filter(
    (row) =>
      row.limit === undefined &&
      !row.allowed &&
      appliesIn(row, asked.region) &&
      (countedFor(row, asked.lines, asked.amounts)?.percent ?? 0) > 0,
  );
