import type { AllergenRow } from '../data/rules/allergen-row.ts';
import { allergenRows } from '../data/rules/allergens.ts';
import { ownLabelNames } from '../data/rules/constituents.ts';
import type { RuleSourceId, RuleStatus } from '../data/rules/sources.ts';
import type { Region } from '../settings.ts';
import { type Amount, type CheckLine, tidy } from './amounts.ts';
import { watchedThing } from './composition.ts';

/** Which list of allergens a region asks to be named on a day: all 81 entries, the 24 that are left of the old one, none. */
export type AllergenList = 'full' | 'old' | 'none';

export interface AllergenRule {
  readonly list: AllergenList;
  readonly source: RuleSourceId;
  readonly status: RuleStatus;
}

/** New products from this day carry the full list; what was supplied before may be sold with the old one until the other. */
const fullFrom = '2026-08-01';
const allStockFrom = '2028-08-01';
const canadaFrom = '2026-04-12';

const euRule = (placedOn: string, soldOn: string): AllergenRule => ({
  list: placedOn >= fullFrom || soldOn >= allStockFrom ? 'full' : 'old',
  source: 'EU2023-1545',
  status: 'read',
});

const caRule = (placedOn: string, soldOn: string): AllergenRule => {
  const list =
    placedOn >= fullFrom || soldOn >= allStockFrom ? 'full' : soldOn >= canadaFrom ? 'old' : 'none';
  return { list, source: 'CA-SOR2024-63', status: 'read-secondary' };
};

/**
 * The list in force. Dates are ISO days: `placedOn` when the unit was first supplied, `soldOn` the day asked about.
 * Northern Ireland follows the EU; `uk` is Great Britain.
 */
export const allergenRule = (region: Region, placedOn: string, soldOn = placedOn): AllergenRule => {
  switch (region) {
    case 'eu':
      return euRule(placedOn, soldOn);
    case 'ca':
      return caRule(placedOn, soldOn);
    case 'uk':
      return { list: 'old', source: 'GB-ALLERGENS', status: 'read-secondary' };
    case 'us':
      return { list: 'none', source: 'US-AGENDA', status: 'read' };
    case 'au':
      return { list: 'none', source: 'AU-STANDARD', status: 'memory' };
  }
};

export interface Declarable {
  readonly name: string;
  readonly percent: number;
  /** Must stand in the ingredient list there and then. */
  readonly declare: boolean;
  /** False when the share rests on figures from memory. */
  readonly certain: boolean;
}

export type Use = 'leave-on' | 'rinse-off';

const rowsByName = new Map(
  allergenRows.filter(({ kind }) => kind === 'allergen').map((row) => [row.name, row]),
);

const threshold = (row: AllergenRow, use: Use): number =>
  (use === 'leave-on' ? row.leaveOnOverPercent : row.rinseOffOverPercent) ?? 0;

/** The name under which a scent is itself an entry of the list. */
const ownName = (ingredient: string): string | undefined =>
  ownLabelNames[ingredient] ?? watchedThing(ingredient)?.labelName;

/** Scents that are entries themselves, at their own share; one name for the oils that share an entry. */
const ownEntries = (lines: readonly CheckLine[]): Amount[] => {
  const byName = new Map<string, number>();
  for (const { ingredient, percent } of lines) {
    const name = ownName(ingredient);
    if (name) byName.set(name, tidy((byName.get(name) ?? 0) + percent));
  }
  return [...byName].map(([name, percent]) => ({
    name,
    percent,
    lowPercent: percent,
    certain: true,
    from: [],
  }));
};

/**
 * The fragrance allergens in a balm, most first. One is to be named when its share is strictly over the threshold
 * (0.001 % on what stays on, 0.01 % on what is washed off) and its entry is on the list in force.
 */
export const declarable = (
  lines: readonly CheckLine[],
  amounts: readonly Amount[],
  list: AllergenList,
  use: Use = 'leave-on',
): readonly Declarable[] =>
  [...amounts, ...ownEntries(lines)]
    .flatMap(({ name, percent, certain }): Declarable[] => {
      const row = rowsByName.get(name);
      if (!row || percent <= 0) return [];
      const listed = list === 'full' || (list === 'old' && row.oldList);
      return [{ name, percent, certain, declare: listed && percent > threshold(row, use) }];
    })
    .toSorted((a, b) => b.percent - a.percent || a.name.localeCompare(b.name));
