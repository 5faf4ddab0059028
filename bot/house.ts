import { everyIndex } from './alongside.ts';
import type { BackupPlan } from './book/backup.ts';
import { checkWhole } from './book/copy.ts';
import { settleAll } from './book/journal-long.ts';
import type { Keeper } from './book/keeper.ts';
import { openKeeper } from './book/keeper-open.ts';
import { type Notes, notesIn } from './book/notes.ts';
import { isHalfRestored } from './book/restore.ts';
import { type OpenOptions, openStore, type Store } from './book/store.ts';
import { StoreTrouble } from './book/trouble.ts';
import { localGroup } from './console/local.ts';
import { seedDemo } from './demo.ts';
import { type Pipkin, pipkin } from './handle.ts';
import { faultFields, type Log, type LogLevel } from './log.ts';
import { Agenda } from './remind/agenda.ts';
import { waitingGroups } from './remind/index-key.ts';
import { ReminderLoop } from './remind/loop.ts';
import type { Sender } from './remind/sender.ts';
import { keepRounds } from './rounds.ts';
import { noWatch, type Watch } from './watch/watch.ts';

/** Everything a front-end needs, with the store open. */
export interface House {
  readonly pipkin: Pipkin;
  readonly keeper: Keeper;
  /** What the group chat keeps for a group beside its book. */
  readonly notes: Notes;
  /** Faults of the program met so far: replies that had to be an apology. */
  faults(): number;
  /**
   * Tells groups daily what is due, through `sender`, from now until the house is closed or the loop is stopped. Only the
   * process that has the store may, and only for groups it `owns`. A store that can only be read is never swept: what was
   * sent could not be written down.
   */
  remind(about: RemindAbout): Promise<ReminderLoop | undefined>;
  /** Resolves when another process has taken over the groups of this one; a store of one process has none. */
  readonly lost?: Promise<void>;
  close(): Promise<void>;
}

export interface RemindAbout {
  readonly sender: Sender;
  readonly owns: (group: string) => boolean;
  readonly clock: () => number;
}

/** How the store is opened, where its daily backups go, if there are to be any, and who looks on. */
export interface HouseOptions extends OpenOptions {
  readonly backups?: BackupPlan | undefined;
  readonly watch?: Watch;
}

/** Refuses what a copy or a restore has left half-done; finishes or undoes what a change of one book has. */
const makeWhole = async (store: Store): Promise<void> => {
  await checkWhole(store);
  if (await isHalfRestored(store))
    throw new StoreTrouble(
      'damaged',
      `A restore into the store "${store.shown}" was cut off. Run "npm run restore" with the same backup file once more.`,
    );
  if (!store.readOnly) await settleAll(store);
};

const openWhole = async (storeUrl: string, options: OpenOptions): Promise<Store> => {
  const store = await openStore(storeUrl, options);
  try {
    await makeWhole(store);
    return store;
  } catch (fault) {
    await store.close();
    throw fault;
  }
};

/** Opens the store and puts the bot together over it. Rejects with a plain sentence when the store cannot be used. */
export const openHouse = async (...about: Parameters<typeof openAll>): Promise<House> =>
  (await openAll(...about)).house;

interface Opened {
  readonly house: House;
  readonly store: Store;
}

const openAll = async (
  storeUrl: string,
  log: Log,
  level: LogLevel,
  { backups, watch = noWatch, ...options }: HouseOptions = {},
): Promise<Opened> => {
  const store = watch.store(await openWhole(storeUrl, options));
  const agenda = new Agenda();
  const keeper = openKeeper(store, { alongside: everyIndex((group, at) => agenda.set(group, at)) });
  watch.books(() => keeper.books());
  const endRounds = keepRounds({ keeper, store, log, level, backups });
  let loop: ReminderLoop | undefined;
  let faults = 0;
  const onFault = (id: string, fault: unknown): void => {
    faults++;
    log.error('fault', { id, ...faultFields(fault, level) });
  };
  const house: House = {
    pipkin: watch.pipkin(pipkin({ keeper, onFault })),
    keeper,
    notes: notesIn(store),
    faults: () => faults,
    ...(store.lost ? { lost: store.lost } : {}),
    async remind(about) {
      if (store.readOnly) return undefined;
      // Of a shared store, only what this process may write.
      const owns = (group: string): boolean => store.owns(group) && about.owns(group);
      // What was written since the start is newer than what the scan reads.
      for await (const { group, at } of waitingGroups(store))
        if (owns(group) && agenda.at(group) === undefined) agenda.set(group, at);
      const onFault = (fault: unknown): void => log.error('reminder.fault', faultFields(fault, level));
      const sender = watch.sender(about.sender);
      loop = new ReminderLoop({ ...about, sender, owns, keeper, agenda, onFault });
      loop.start();
      return loop;
    },
    async close() {
      await loop?.stop();
      await endRounds();
      await keeper.close();
    },
  };
  return { house, store };
};

/** Says that the demo recipes were once put into this store: a book that was forgotten does not get them again. */
const demoKey = 'd/demo';

const seedOnce = async ({ house, store }: Opened): Promise<void> => {
  if (store.readOnly || (await store.keyv.get(demoKey)) !== undefined) return;
  await seedDemo(await house.keeper.open(localGroup), Date.now());
  // Not being able to is no reason not to start: it is tried again next time.
  await store.writeAll([{ key: demoKey, value: true }]).catch(() => undefined);
};

/** The same for whoever sits at this machine: a new store's local book starts with the demo recipes. */
export const openHouseHere = async (...about: Parameters<typeof openAll>): Promise<House> => {
  const opened = await openAll(...about);
  await seedOnce(opened);
  return opened.house;
};
