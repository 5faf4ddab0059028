import { settleAll } from './book/journal-long.ts';
import type { Keeper } from './book/keeper.ts';
import { openKeeper } from './book/keeper-open.ts';
import { openStore } from './book/store.ts';
import { localGroup } from './console/local.ts';
import { seedDemo } from './demo.ts';
import { type Pipkin, pipkin } from './handle.ts';
import { faultFields, type Log, type LogLevel } from './log.ts';
import { Agenda } from './remind/agenda.ts';
import { waitingAlongside, waitingGroups } from './remind/index-key.ts';
import { ReminderLoop } from './remind/loop.ts';
import type { Sender } from './remind/sender.ts';

/** Everything a front-end needs, with the store open. */
export interface House {
  readonly pipkin: Pipkin;
  readonly keeper: Keeper;
  /** Faults of the program met so far: replies that had to be an apology. */
  faults(): number;
  /**
   * Tells groups daily what is due, through `sender`, from now until the house is closed or the loop is stopped. Only the
   * process that has the store may, and only for groups it `owns`. A store that can only be read is never swept: what was
   * sent could not be written down.
   */
  remind(about: RemindAbout): Promise<ReminderLoop | undefined>;
  close(): Promise<void>;
}

export interface RemindAbout {
  readonly sender: Sender;
  readonly owns: (group: string) => boolean;
  readonly clock: () => number;
}

/** Opens the store and puts the bot together over it. Rejects with a plain sentence when the store cannot be used. */
export const openHouse = async (storeUrl: string, log: Log, level: LogLevel): Promise<House> => {
  const store = await openStore(storeUrl);
  if (!store.readOnly) await settleAll(store);
  const agenda = new Agenda();
  const alongside = waitingAlongside((group, at) => agenda.set(group, at));
  const keeper = openKeeper(store, { alongside });
  let loop: ReminderLoop | undefined;
  let faults = 0;
  const onFault = (id: string, fault: unknown): void => {
    faults++;
    log.error('fault', { id, ...faultFields(fault, level) });
  };
  return {
    pipkin: pipkin({ keeper, onFault }),
    keeper,
    faults: () => faults,
    async remind(about) {
      if (store.readOnly) return undefined;
      // What was written since the start is newer than what the scan reads.
      for await (const { group, at } of waitingGroups(store))
        if (agenda.at(group) === undefined) agenda.set(group, at);
      const onFault = (fault: unknown): void => log.error('reminder.fault', faultFields(fault, level));
      loop = new ReminderLoop({ ...about, keeper, agenda, onFault });
      loop.start();
      return loop;
    },
    async close() {
      await loop?.stop();
      await keeper.close();
    },
  };
};

/** The same for whoever sits at this machine: a new local book starts with the demo recipes. */
export const openHouseHere = async (...about: Parameters<typeof openHouse>): Promise<House> => {
  const house = await openHouse(...about);
  await seedDemo(await house.keeper.open(localGroup), Date.now());
  return house;
};
