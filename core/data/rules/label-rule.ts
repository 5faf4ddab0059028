import type { Region } from '../../settings.ts';
import type { RuleSourceId, RuleStatus } from './sources.ts';

/** What may have to stand on a label. */
export const labelElements = [
  'identity',
  'function',
  'net',
  'net-decimals',
  'net-figure-height',
  'ingredients',
  'ingredients-not-listed',
  'botanical-names',
  'colour-names',
  'aroma-word',
  'nano',
  'allergens',
  'durability-date',
  'period-after-opening',
  'lot',
  'warnings',
  'maker',
  'contact',
  'country-of-origin',
  'language',
  'before-sale',
] as const;
export type LabelElement = (typeof labelElements)[number];

export type Requirement =
  | 'yes'
  | 'no'
  | 'info'
  | 'unless-clear'
  | 'yes-if-any'
  | 'yes-if-e-mark'
  | 'yes-if-over-threshold'
  | 'if-imported'
  | 'if-claimed-or-imported'
  | 'if-30-months-or-less'
  | 'if-over-30-months';

/** One rule of one region about one element. Short for the rule: the act itself decides. */
export interface LabelRule {
  readonly region: Region;
  readonly element: LabelElement;
  readonly required: Requirement;
  readonly rule: string;
  readonly example?: string;
  readonly exemptWhen?: string;
  /** First day the rule applies, ISO date; missing: in force for long. */
  readonly from?: string;
  readonly source: RuleSourceId;
  /** The place in words. */
  readonly cite: string;
  readonly status: RuleStatus;
}
