import type { Region } from '../../settings.ts';
import type { RuleSourceId, RuleStatus } from './sources.ts';

/**
 * What kind of rule it is. Laws say no; industry, guidance and opinions warn with their source; practice warns
 * mildly; derived figures are reckoned from others.
 */
export type LimitKind =
  | 'law'
  | 'law-prohibited'
  | 'industry'
  | 'guidance'
  | 'opinion'
  | 'practice'
  | 'derived';

export interface LimitRow {
  readonly id: string;
  readonly what: string;
  /** Missing: no figure was found (or `allowed` says it all). */
  readonly limit?: number;
  readonly allowed?: true;
  readonly unit: '%' | 'ppm' | 'kDa';
  readonly kind: LimitKind;
  readonly product: string;
  /** `ch` is no region of its own here: information only. */
  readonly regions: readonly (Region | 'ch')[] | 'any';
  /** First and last day the row applies, ISO dates. */
  readonly from?: string;
  readonly until?: string;
  readonly source: readonly RuleSourceId[];
  /** The place in words, for the answer. */
  readonly cite: string;
  readonly status: RuleStatus;
  readonly note?: string;
}
