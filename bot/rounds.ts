import { type BackupPlan, backUp } from './book/backup.ts';
import { forgetDue } from './book/forgetting.ts';
import type { Keeper } from './book/keeper.ts';
import type { Store } from './book/store.ts';
import { faultFields, type Log, type LogLevel } from './log.ts';

export interface Rounds {
  readonly keeper: Keeper;
  readonly store: Store;
  readonly log: Log;
  readonly level: LogLevel;
  readonly backups: BackupPlan | undefined;
}

/** How often what waits for its time is looked at, in milliseconds. */
const roundMs = 10 * 60 * 1000;

/** Groups that asked to be forgotten are forgotten when their time has come, whether anybody writes or not. */
const forgetRound = async ({ keeper, store, log, level }: Rounds): Promise<void> => {
  try {
    const count = store.readOnly ? 0 : await forgetDue(keeper, store, Date.now());
    if (count > 0) log.info('forgotten', { count });
  } catch (fault) {
    log.error('forgetting-failed', faultFields(fault, level));
  }
};

/** Of several processes over one store, the first does it for all. */
const backupRound = async ({ store, log, level, backups }: Rounds): Promise<void> => {
  if (!backups || (store.shard?.index ?? 0) > 0) return;
  try {
    const done = await backUp(store, backups, Date.now());
    if (done) log.info('backed-up', { entries: done.entries, groups: done.groups });
  } catch (fault) {
    log.error('backup-failed', faultFields(fault, level));
  }
};

/** Does what waits for its time, now and again and again; the function it gives ends that. */
export const keepRounds = (rounds: Rounds): (() => Promise<void>) => {
  let round: Promise<void> = Promise.resolve();
  const begin = (): void => {
    round = round.then(() => forgetRound(rounds)).then(() => backupRound(rounds));
  };
  begin();
  const timer = setInterval(begin, roundMs).unref();
  return async () => {
    clearInterval(timer);
    await round;
  };
};
