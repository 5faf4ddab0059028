import { z } from 'zod';
import { batchCorrected, batchLooked, batchNoted, batchPoured, tinsBack, tinsGone } from './batch-events.ts';
import {
  lotBought,
  lotCounted,
  lotDated,
  lotNoted,
  lotOpened,
  lotPriced,
  lowMarkSet,
  oilInfused,
  stockTaken,
} from './lot-events.ts';
import { reactionFollowed, reactionNoted } from './reaction-events.ts';
import {
  dueAnswered,
  reminderBegun,
  reminderFailed,
  reminderSent,
  reminderSet,
  reminderStopped,
} from './reminder-events.ts';

export const benchEvents = [
  lotBought,
  oilInfused,
  lotOpened,
  lotDated,
  lotPriced,
  lotNoted,
  lotCounted,
  stockTaken,
  lowMarkSet,
  batchPoured,
  batchCorrected,
  batchNoted,
  tinsGone,
  tinsBack,
  batchLooked,
  reactionNoted,
  reactionFollowed,
  reminderSet,
  reminderStopped,
  reminderBegun,
  reminderSent,
  reminderFailed,
  dueAnswered,
] as const;

export const benchEvent = z.discriminatedUnion('kind', benchEvents);
export type BenchEvent = z.output<typeof benchEvent>;
export type BenchEventOf<K extends BenchEvent['kind']> = Extract<BenchEvent, { readonly kind: K }>;
