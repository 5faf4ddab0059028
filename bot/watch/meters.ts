import { Counter, collectDefaultMetrics, Gauge, Histogram, Registry } from 'prom-client';
import type { Reply } from '../answer.ts';
import type { Store } from '../book/store.ts';
import type { Pipkin } from '../handle.ts';
import type { Sender } from '../remind/sender.ts';
import type { Standing, Watch } from './watch.ts';

/** Upper bounds in seconds: from a tenth of a millisecond, which one append takes, to what a member no longer waits for. */
const buckets = [0.0001, 0.0003, 0.001, 0.003, 0.01, 0.03, 0.1, 0.3, 1, 3, 10];

const outcomeOf = (reply: Reply): string => ('error' in reply ? reply.error.code : 'answered');

/** Does `work`, and says how many seconds it took and whether it came to an end. */
const timed = async <T>(
  work: () => Promise<T>,
  took: (seconds: number, done: boolean) => void,
): Promise<T> => {
  const start = performance.now();
  let done = false;
  try {
    const value = await work();
    done = true;
    return value;
  } finally {
    took((performance.now() - start) / 1000, done);
  }
};

const watchedPipkin = (registers: Registry[]): Watch['pipkin'] => {
  const messages = new Counter({
    name: 'pipkin_messages_total',
    help: 'Messages by the topic that took them and what came of it: answered, or the code of the error.',
    labelNames: ['topic', 'outcome'],
    registers,
  });
  const answering = new Histogram({
    name: 'pipkin_answer_seconds',
    help: 'Time from hearing a message to its answer, without sending it.',
    buckets,
    registers,
  });
  const suggesting = new Histogram({
    name: 'pipkin_suggestions_seconds',
    help: 'Time to find the names that complete what is being typed.',
    buckets,
    registers,
  });
  return (pipkin: Pipkin): Pipkin => ({
    ...pipkin,
    async hear(heard) {
      const reply = await timed(
        () => pipkin.hear(heard),
        (seconds) => answering.observe(seconds),
      );
      messages.inc({ topic: reply.topic ?? 'none', outcome: outcomeOf(reply) });
      return reply;
    },
    complete: (...asked) =>
      timed(
        () => pipkin.complete(...asked),
        (seconds) => suggesting.observe(seconds),
      ),
  });
};

const watchedStore = (registers: Registry[]): Watch['store'] => {
  const appending = new Histogram({
    name: 'pipkin_store_append_seconds',
    help: 'Time of one atomic write, until it is on disk or has failed.',
    labelNames: ['outcome'],
    buckets,
    registers,
  });
  return (store: Store): Store => ({
    ...store,
    writeAll: (...changes) =>
      timed(
        () => store.writeAll(...changes),
        (seconds, done) => appending.observe({ outcome: done ? 'written' : 'failed' }, seconds),
      ),
  });
};

const watchedSender = (registers: Registry[]): Watch['sender'] => {
  const reminders = new Counter({
    name: 'pipkin_reminders_total',
    help: 'Daily messages by what came of posting them.',
    labelNames: ['outcome'],
    registers,
  });
  return (sender: Sender): Sender => ({
    ...sender,
    async send(...message) {
      let outcome = 'failed';
      try {
        const sent = await sender.send(...message);
        outcome = sent;
        return sent;
      } finally {
        reminders.inc({ outcome });
      }
    },
  });
};

/** A figure that is asked for when somebody looks; not there while nobody can tell it. */
const asked = (
  registers: Registry[],
  name: string,
  help: string,
  value: () => number | undefined,
): Gauge<string> =>
  new Gauge({
    name,
    help,
    registers,
    collect() {
      const now = value();
      if (now === undefined) this.remove();
      else this.set(now);
    },
  });

export interface Meters extends Watch {
  /** All figures in the Prometheus text format, and its content type. */
  text(): Promise<string>;
  readonly contentType: string;
  /** Why no messages are taken at the moment; undefined when they are. */
  notReady(): string | undefined;
}

/** Figures of this process, in a registry of their own. */
export const meters = (): Meters => {
  const registry = new Registry();
  const registers = [registry];
  let books: (() => number) | undefined;
  let chat: (() => Standing) | undefined;
  collectDefaultMetrics({ register: registry });
  const figure = (name: string, help: string, value: () => number | undefined) =>
    asked(registers, name, help, value);
  figure('pipkin_open_books', 'Books of groups in memory.', () => books?.());
  figure('pipkin_gateway_connected', '1 while the chat platform is connected, else 0.', () =>
    chat ? Number(chat().connected) : undefined,
  );
  figure('pipkin_gateway_ping_seconds', 'Round trip of the last heartbeat.', () => {
    const ms = chat?.().pingMs;
    return ms === undefined ? undefined : ms / 1000;
  });
  figure('pipkin_guilds', 'Servers this process is in.', () => chat?.().guilds);
  return {
    pipkin: watchedPipkin(registers),
    store: watchedStore(registers),
    sender: watchedSender(registers),
    books: (count) => {
      books = count;
    },
    chat: (standing) => {
      chat = standing;
    },
    text: () => registry.metrics(),
    contentType: registry.contentType,
    notReady: () => {
      if (!chat) return 'not in the chat yet';
      return chat().connected ? undefined : 'the connection to the chat is down';
    },
  };
};
