import type { RuleSourceId, RuleStatus } from '../data/rules/sources.ts';

/** One thing in a wording that decided something. */
export interface ClaimMatch {
  readonly words: string;
  readonly verdict: 'reword' | 'medicinal';
  readonly why: string;
  readonly instead?: string;
  /** No cosmetic wording keeps the wish: leave it out. */
  readonly leaveOut?: true;
  readonly denied?: true;
  readonly unsure?: true;
  /** Regions differ and this one was not seen: the stricter reading. */
  readonly askLocally?: true;
  readonly source: readonly RuleSourceId[];
  readonly status: RuleStatus;
}
