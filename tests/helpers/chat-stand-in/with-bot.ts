import { memoryNotes } from '../../../bot/book/notes.ts';
import type { Pace } from '../../../bot/discord/front.ts';
import { type DiscordOptions, type RunningChat, startDiscord } from '../../../bot/discord/run.ts';
import type { Pipkin } from '../../../bot/handle.ts';
import type { Topic } from '../../../bot/topic.ts';
import { keptLog } from './samples.ts';
import { StandIn, type StandInSetup } from './stand-in.ts';

export interface ChatSetup extends StandInSetup {
  readonly pipkin: Pipkin;
  readonly topics: readonly Topic[];
  readonly pace?: Partial<Pace>;
  readonly limits?: DiscordOptions['limits'];
  readonly notes?: DiscordOptions['notes'];
  readonly remind?: DiscordOptions['remind'];
}

export interface Chat {
  readonly standIn: StandIn;
  readonly running: RunningChat;
  readonly log: ReturnType<typeof keptLog>;
  /** Starts the bot once more against the same stand-in, as after a restart. */
  restart(topics?: readonly Topic[]): Promise<void>;
  close(): Promise<void>;
}

/** The bot with the real client, connected to a stand-in of its own. Close it when done. */
export const chatWith = async ({
  pipkin,
  topics,
  pace,
  remind,
  limits,
  notes = memoryNotes(),
  ...setup
}: ChatSetup): Promise<Chat> => {
  const standIn = await StandIn.start(setup);
  const log = keptLog();
  const enter = (list: readonly Topic[]): Promise<RunningChat> =>
    startDiscord({
      token: standIn.token,
      apiUrl: standIn.apiUrl,
      pipkin,
      topics: list,
      log,
      ...(pace ? { pace } : {}),
      notes,
      ...(limits ? { limits } : {}),
      ...(remind ? { remind } : {}),
    });
  let running = await enter(topics).catch(async (fault: unknown) => {
    await standIn.close();
    throw fault;
  });
  return {
    standIn,
    log,
    get running() {
      return running;
    },
    async restart(list = topics) {
      await running.stop();
      running = await enter(list);
    },
    async close() {
      await running.stop();
      await standIn.close();
    },
  };
};
