import type { RuleSourceId, RuleStatus } from './sources.ts';

/** A fragrance allergen of EU Annex III. Percentages are of the finished product; "over" means strictly more. */
export interface AllergenRow {
  readonly kind: 'allergen' | 'prohibited';
  readonly entry: number;
  readonly name: string;
  /** What else goes under this name. */
  readonly covers?: string;
  readonly cas: readonly string[];
  /** One of the original 26. */
  readonly oldList: boolean;
  readonly leaveOnOverPercent?: number;
  readonly rinseOffOverPercent?: number;
  /** ISO dates; missing: named all along. */
  readonly newProductsFrom?: string;
  readonly allStockFrom?: string;
  readonly extra?: string;
  readonly source: readonly RuleSourceId[];
  readonly cite: string;
  readonly status: RuleStatus;
}

/** Percent of an allergen in a scent. */
export interface OilAllergenRow {
  readonly ingredients: readonly string[];
  readonly latin: string;
  readonly name: string;
  readonly low: number;
  readonly high: number;
  readonly source: readonly RuleSourceId[];
  readonly cite: string;
  readonly status: RuleStatus;
}
