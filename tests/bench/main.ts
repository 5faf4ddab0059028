import { fork } from 'node:child_process';
import { once } from 'node:events';
import { availableParallelism, cpus } from 'node:os';
import type { Found } from './report.ts';

/**
 * Each part runs in a process of its own, so that none warms up or fills the memory of another; for the same reason
 * each process loads only what it needs.
 */
const parts: Readonly<Record<string, () => Promise<Found>>> = {
  reading: async () => (await import('./reading.ts')).reading(),
  heat: async () => (await import('./heat.ts')).heat(),
  first: async () => (await import('./first-answer.ts')).firstAnswer(),
  opening: async () => (await import('./opening.ts')).opening(),
  append: async () => (await import('./append.ts')).append(),
  pours: async () => (await import('./pours.ts')).pours(),
  snapshot: async () => (await import('./snapshot.ts')).snapshot(),
  arrivals: async () => (await import('./arrivals.ts')).arrivals(),
  chat: async () => (await import('./chat.ts')).chat(),
  crowd: async () => (await import('./crowd.ts')).crowd(),
  reminders: async () => (await import('./reminders.ts')).reminders(),
  suggest: async () => (await import('./suggest.ts')).suggest(),
  memory: async () => (await import('./memory.ts')).memory(),
  mutations: async () => (await import('./mutations.ts')).mutations(),
};

/** What a part starts in a further process. */
const helpers: Readonly<Record<string, (...args: string[]) => Promise<void>>> = {
  'answer-once': async (text = '') => (await import('./first-answer.ts')).answerOnce(text),
  bot: async (folder = '', apiUrl = '', token = '') =>
    (await import('./bot-process.ts')).runBot(folder, apiUrl, token),
  soak: async (minutes = '30') => (await import('./soak.ts')).soak(Number(minutes)),
  'open-once': async (folder = '') => (await import('./opening.ts')).openOnce(folder),
  'open-many': async (folder = '') => (await import('./open-many.ts')).openMany(folder),
  'open-none': async () => {
    process.send?.(process.memoryUsage.rss());
  },
};

const runPart = async (name: string): Promise<Found> => {
  const child = fork(process.argv[1] ?? '', ['part', name], { execArgv: ['--expose-gc'] });
  let found: Found | undefined;
  child.on('message', (message) => {
    found = message as Found;
  });
  await once(child, 'exit');
  return found ?? { rows: [], faults: [`${name}: ended without a result`] };
};

const all = async (names: readonly string[]): Promise<void> => {
  const start = performance.now();
  const found: Found[] = [];
  for (const name of names) {
    process.stderr.write(`${name} …\n`);
    found.push(await runPart(name));
  }
  const { report } = await import('./report.ts');
  const faults = found.flatMap((one) => one.faults ?? []);
  const seconds = Math.round((performance.now() - start) / 1000);
  console.log(
    report(
      found.flatMap(({ rows }) => rows),
      132,
    ),
  );
  for (const note of found.flatMap(({ notes = [] }) => notes)) console.log(note);
  console.log(
    `Node ${process.version}, ${availableParallelism()} cores (${cpus()[0]?.model}), ${seconds} s.`,
  );
  for (const fault of faults) console.log(`FAULT ${fault}`);
  if (faults.length > 0) process.exitCode = 1;
};

const [first = '', ...rest] = process.argv.slice(2);
const helper = Object.hasOwn(helpers, first) ? helpers[first] : undefined;
if (helper) await helper(...rest);
else if (first === 'part') process.send?.(await parts[rest[0] ?? '']?.(), () => process.disconnect());
else {
  const wanted = [first, ...rest].filter((name) => Object.hasOwn(parts, name));
  await all(wanted.length > 0 ? wanted : Object.keys(parts));
}
