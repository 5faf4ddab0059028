import type { Hazard } from '../hazards.ts';
import type { Compared } from './limits.ts';

/** Not within a law that was read; a warning with its source; a thing to know or to tell. */
export type Level = 'stop' | 'warn' | 'note';

/** The most of an ingredient that would clear a finding, percent of the balm; 0 means leave it out. */
export interface Cut {
  readonly ingredient: string;
  readonly nowPercent: number;
  readonly mostPercent: number;
}

/** One thing a check found, with the change that would clear it. The bot writes the words. */
export type Finding =
  | {
      readonly code: 'over-limit' | 'prohibited' | 'not-for-lips' | 'limit-coming';
      readonly level: Level;
      readonly rows: readonly [Compared, ...Compared[]];
      readonly cuts: readonly Cut[];
    }
  | {
      readonly code: 'aroma-too-high';
      readonly level: Level;
      readonly percent: number;
      readonly usualPercent: number;
      readonly cuts: readonly Cut[];
    }
  | {
      readonly code: 'light-sensitising';
      readonly level: Level;
      /** Sum of share / limit; over 1 it sensitises. */
      readonly sum: number;
      readonly oils: readonly string[];
      readonly cuts: readonly Cut[];
    }
  | { readonly code: 'light-herb'; readonly level: Level; readonly ingredient: string }
  | {
      readonly code: 'keep-off-lips';
      readonly level: Level;
      readonly ingredient: string;
      readonly note?: string;
    }
  | { readonly code: 'brings-water'; readonly level: Level; readonly ingredients: readonly string[] }
  | { readonly code: 'wrong-species'; readonly level: Level; readonly said: string }
  | { readonly code: 'peanut-protein'; readonly level: Level; readonly region: 'eu' | 'uk' }
  | {
      readonly code: 'not-for-children';
      readonly level: Level;
      readonly ingredients: readonly string[];
      readonly why: 'breathing' | 'salicylate' | 'honey' | 'other';
    }
  | {
      /** The wearer is pregnant; what is told to be left out then, if any of it is. */
      readonly code: 'pregnancy';
      readonly level: Level;
      readonly ingredients: readonly string[];
    }
  | { readonly code: 'pets'; readonly level: Level }
  | { readonly code: 'unknown-scent'; readonly level: Level; readonly ingredients: readonly string[] }
  | {
      readonly code: 'dose-over-usual';
      readonly level: Level;
      readonly ingredient: string;
      readonly percent: number;
      readonly usualPercent: number;
    }
  | { readonly code: 'ask-certificate'; readonly level: Level; readonly what: readonly string[] }
  | { readonly code: 'hazard'; readonly level: Level; readonly hazard: Hazard };
