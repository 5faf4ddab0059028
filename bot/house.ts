import { settleAll } from './book/journal-long.ts';
import type { Keeper } from './book/keeper.ts';
import { openKeeper } from './book/keeper-open.ts';
import { openStore } from './book/store.ts';
import { localGroup } from './console/local.ts';
import { seedDemo } from './demo.ts';
import { type Pipkin, pipkin } from './handle.ts';
import { faultFields, type Log, type LogLevel } from './log.ts';

/** Everything a front-end needs, with the store open. */
export interface House {
  readonly pipkin: Pipkin;
  readonly keeper: Keeper;
  /** Faults of the program met so far: replies that had to be an apology. */
  faults(): number;
  close(): Promise<void>;
}

/** Opens the store and puts the bot together over it. Rejects with a plain sentence when the store cannot be used. */
export const openHouse = async (storeUrl: string, log: Log, level: LogLevel): Promise<House> => {
  const store = await openStore(storeUrl);
  if (!store.readOnly) await settleAll(store);
  const keeper = openKeeper(store);
  let faults = 0;
  const onFault = (id: string, fault: unknown): void => {
    faults++;
    log.error('fault', { id, ...faultFields(fault, level) });
  };
  return {
    pipkin: pipkin({ keeper, onFault }),
    keeper,
    faults: () => faults,
    close: () => keeper.close(),
  };
};

/** The same for whoever sits at this machine: a new local book starts with the demo recipes. */
export const openHouseHere = async (...about: Parameters<typeof openHouse>): Promise<House> => {
  const house = await openHouse(...about);
  await seedDemo(await house.keeper.open(localGroup), Date.now());
  return house;
};
