import type { OilAllergenRow } from '../data/rules/allergen-row.ts';
import { allergenRows } from '../data/rules/allergens.ts';
import { groupedNames, limitedConstituents } from '../data/rules/constituents.ts';
import { oilAllergenRows } from '../data/rules/oil-allergens.ts';
import { type Watched, watchedThings } from '../data/rules/watched.ts';
import { ingredientById, isAromaRow } from '../ingredients.ts';

/** A supplier's figure for one substance in one scent, percent of the scent. Replaces any general figure. */
export interface Analysis {
  readonly ingredient: string;
  readonly name: string;
  readonly percent: number;
}

/** Share of a substance in an ingredient, percent. `certain` is false where the figures are from memory. */
export interface Share {
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly certain: boolean;
}

const labelNames = new Map(allergenRows.map(({ name }) => [name.toLowerCase(), name]));

/** The group's name on labels: neral is Citral, alpha-pinene is Pinene. Unknown names stay as they are. */
export const groupName = (name: string): string => {
  const plain = name.trim().toLowerCase();
  return groupedNames[plain] ?? labelNames.get(plain) ?? name.trim();
};

const watchedById = new Map(watchedThings.map((thing) => [thing.id, thing]));

export const watchedThing = (id: string): Watched | undefined => watchedById.get(id);

const isCertain = (status: string): boolean => status === 'read' || status === 'read-secondary';

const rowShare = (row: OilAllergenRow): Share => ({
  name: groupName(row.name),
  low: row.low,
  high: row.high,
  certain: isCertain(row.status),
});

const libraryShares = (id: string): Share[] => {
  const found = ingredientById(id);
  if (!found || !isAromaRow(found)) return [];
  const { allergens, how } = found.constituents;
  return allergens.map(({ name, low, high }) => ({
    name: groupName(name),
    low,
    high,
    certain: isCertain(how),
  }));
};

/** Of two figures for the same thing the higher counts, and the lower end that both allow. */
const merged = (shares: readonly Share[]): Share[] => {
  const byName = new Map<string, Share>();
  for (const share of shares) {
    const before = byName.get(share.name);
    byName.set(
      share.name,
      before
        ? {
            name: share.name,
            low: Math.min(before.low, share.low),
            high: Math.max(before.high, share.high),
            certain: before.high >= share.high ? before.certain : share.certain,
          }
        : share,
    );
  }
  return [...byName.values()];
};

const generalShares = (id: string): Share[] =>
  merged([
    ...[...oilAllergenRows, ...limitedConstituents]
      .filter((row) => row.ingredients.includes(id))
      .map(rowShare),
    ...libraryShares(id),
    ...(watchedThing(id)?.shares ?? []).map((share) => ({
      ...share,
      certain: watchedThing(id)?.kind === 'substance',
    })),
  ]);

/**
 * What is in an ingredient, by label name, percent of the ingredient: general ranges (the higher of two tables), or
 * the supplier's own figures where given. A certificate's parts of one group (neral, geranial) add up.
 */
export const sharesOf = (id: string, analyses: readonly Analysis[]): readonly Share[] => {
  const own = new Map<string, number>();
  for (const { ingredient, name, percent } of analyses) {
    if (ingredient !== id) continue;
    own.set(groupName(name), (own.get(groupName(name)) ?? 0) + percent);
  }
  return [
    ...[...own].map(([name, percent]) => ({ name, low: percent, high: percent, certain: true })),
    ...generalShares(id).filter(({ name }) => !own.has(name)),
  ];
};
