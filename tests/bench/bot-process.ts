import { type ChildProcess, fork } from 'node:child_process';
import { once } from 'node:events';
import { join } from 'node:path';
import type { Block, Reply } from '../../bot/answer.ts';
import { openKeeper } from '../../bot/book/keeper-open.ts';
import { openStore } from '../../bot/book/store.ts';
import { seedDemo } from '../../bot/demo.ts';
import { type Pipkin, pipkin } from '../../bot/handle.ts';
import { markLasting } from '../../bot/lasting.ts';
import { logTo } from '../../bot/log.ts';
import { chatReply } from '../../bot/render/discord.ts';
import type { Topic } from '../../bot/topic.ts';
import { topics } from '../../bot/topics.ts';
import { guildId } from '../helpers/chat-stand-in/people.ts';
import { answered, echoTopic } from '../helpers/chat-stand-in/samples.ts';
import type { StandIn } from '../helpers/chat-stand-in/stand-in.ts';

// The bot in a process of its own, with the real client, so that the stand-in's work is not counted as its.

/** What the bot's process says about itself when asked. */
export interface Usage {
  readonly cpuMs: number;
  readonly rss: number;
  readonly faults: number;
}

const ready = 'a ready answer';
const same = 'as long an answer';
const unlimited = { burst: 1e9, perMinute: 1e9 };

/** What is asked for in the chat: by the command, as words. */
export const asked = { recipe: 'Fernlea hand balm', tins: 24, size: '15 ml' } as const;

const sentence = 'Nothing in this text was worked out by anybody. ';

/** Short enough to be taken for one line without being measured: writing it is as cheap as writing text can be. */
const paragraph = 400;

/** Plain text that becomes a message of just so many characters. */
const textOf = (length: number): Block[] => {
  const text = sentence.repeat(Math.ceil(length / sentence.length)).slice(0, length);
  return Array.from({ length: Math.ceil(length / paragraph) }, (_, at) => {
    // One character for the line end before the next.
    const part = text.slice(at * paragraph + Math.sign(at), (at + 1) * paragraph);
    return { kind: 'text', text: part.replace(/^ | $/g, '.') };
  });
};

/**
 * Two answers to measure against. "echo" says back a text as long as the scale command's answer, in one message as that is:
 * the least a command with as much to say can do. "ready" gives the scale command's own answer, made beforehand: what is
 * left is writing it as a message with its buttons.
 */
const withBaselines = async (house: Pipkin): Promise<Pipkin> => {
  const text = `scale ${asked.recipe} to ${asked.tins} tins of ${asked.size}`;
  const member = { id: 'm1', name: 'a member', roles: [], manages: false };
  const made = await house.hear({ text, group: `guild:${guildId}`, channel: 'hall', member, at: Date.now() });
  const [message] = chatReply(made).messages;
  const long: Reply = answered({ title: '', blocks: textOf(message.text.length) });
  // Neither is written anew each time.
  for (const reply of [made, long]) if ('answer' in reply) markLasting(reply.answer);
  return {
    ...house,
    hear: async (heard) => {
      if (heard.text === ready) return made;
      return heard.text === same ? long : house.hear(heard);
    },
  };
};

const sayingOnly = (name: string, words: string): Topic => ({
  ...echoTopic,
  name,
  slash: { ...echoTopic.slash, say: () => words },
});

/** Runs the bot until told to stop. The chat library is loaded only here, as `npm start` does. */
export const runBot = async (folder: string, apiUrl: string, token: string): Promise<void> => {
  const { startDiscord } = await import('../../bot/discord/run.ts');
  const keeper = openKeeper(await openStore(join(folder, 'store')));
  await seedDemo(await keeper.open(`guild:${guildId}`), Date.now());
  let faults = 0;
  const house = pipkin({ keeper, onFault: () => faults++ });
  const log = logTo((line) => process.stderr.write(line), 'error', Date.now);
  const running = await startDiscord({
    token,
    apiUrl,
    pipkin: await withBaselines(house),
    topics: [...topics, sayingOnly('echo', same), sayingOnly('ready', ready)],
    log,
    // One member asks everything here, faster than anybody could.
    limits: { member: unlimited, group: unlimited, underWay: 100_000 },
  });
  process.on('message', async (groups: readonly string[] | 'stop' | 'usage') => {
    if (groups === 'stop') {
      await running.stop();
      await keeper.close();
      process.disconnect();
      return;
    }
    if (groups !== 'usage') for (const group of groups) await keeper.open(group);
    const { user, system } = process.cpuUsage();
    process.send?.({ cpuMs: (user + system) / 1000, rss: process.memoryUsage.rss(), faults } satisfies Usage);
  });
  process.on('disconnect', () => process.exit());
  process.send?.('ready');
};

export interface BotProcess {
  /** Opens these groups' books, if any, and says what the process has used so far. */
  usage(groups?: readonly string[]): Promise<Usage>;
  stop(): Promise<void>;
}

const next = (child: ChildProcess): Promise<unknown> =>
  new Promise((resolve, reject) => {
    const gone = () => reject(new Error('the bot ended'));
    child.once('exit', gone);
    child.once('message', (message) => {
      child.off('exit', gone);
      resolve(message);
    });
  });

/** Starts the bot against `standIn`; resolves when it is ready. */
export const startBot = async (folder: string, standIn: StandIn): Promise<BotProcess> => {
  const child = fork(process.argv[1] ?? '', ['bot', folder, standIn.apiUrl, standIn.token]);
  await next(child);
  return {
    usage: async (groups) => {
      child.send(groups ?? 'usage');
      return (await next(child)) as Usage;
    },
    stop: async () => {
      const ended = once(child, 'exit');
      child.send('stop');
      await ended;
    },
  };
};
