// The long tests, one after the other: `npm run nightly`. Each step is told with its time, a step that fails does not stop
// the next, and any failure ends with 1. `npm run nightly -- zones model` runs those alone. What a step sets can be set
// from outside: `KILL_ROUNDS=20 npm run nightly`. Plain JavaScript, because Node 20 does not run TypeScript.

import { spawn } from 'node:child_process';
import { readdirSync } from 'node:fs';
import { fileURLToPath } from 'node:url';

const root = fileURLToPath(new URL('..', import.meta.url));

/**
 * What runs for each name. Several parts of a step run at the same time.
 * @type {Record<string, { files?: string[], script?: string[], env?: Record<string, string> }[]>}
 */
const steps = {
  // Every IANA zone by its name, every local day of three years.
  zones: ['1/2', '2/2'].map((part) => ({ files: ['tests/core/remind/zones'], env: { EVERY_ZONE: part } })),
  // kill -9 while pours, stock, gifts, reminders, recipes and imports are written.
  kill: [{ files: ['tests/end/kill'], env: { KILL_ROUNDS: '200' } }],
  // Random commands against a plain list of what was done.
  model: [{ files: ['tests/bot/book/model'], env: { MODEL_RUNS: '1000' } }],
  // Random inputs that no run before this one has seen, in every test that draws them.
  chance: [{ files: ['tests/core', 'tests/bot'], env: { CHANCE_SEED: String(Date.now() % 2 ** 31) } }],
  // Strangers who say anything.
  fuzz: [{ files: ['tests/bot/security/strangers'], env: { FUZZ_ROUNDS: '100000' } }],
  // Everything that is registered, through a hundred broken connections.
  crawl: [{ files: ['tests/end/crawl'], env: { CRAWL_STEPS: '3000', CRAWL_BREAKS: '100' } }],
  // A stranger to the code, who uses everything there is through a hundred broken connections.
  outside: [{ files: ['tests/outside'], env: { OUTSIDE_STEPS: '5000', OUTSIDE_BREAKS: '100' } }],
  // Half an hour of steady load on the bot as it is started: its memory must stay flat.
  soak: [{ script: ['soak', '30'] }],
};

const tests = readdirSync(`${root}tests`, { recursive: true }).filter((path) => path.endsWith('.test.ts'));
const isThere = ({ files, script }) =>
  script !== undefined || files.some((file) => tests.some((path) => `tests/${path}`.includes(file)));

const run = ({ files, script, env }) =>
  new Promise((resolve) => {
    const [command, ...args] = script
      ? ['npm', 'run', ...script]
      : ['npx', 'vitest', 'run', '--config', 'tests/vitest.config.ts', ...files];
    const child = spawn(command, args, { cwd: root, env: { ...env, ...process.env }, stdio: 'inherit' });
    child.once('error', () => resolve(false));
    child.once('exit', (code) => resolve(code === 0));
  });

const wanted = process.argv.slice(2);
const unknown = wanted.filter((name) => !Object.hasOwn(steps, name));
if (unknown.length > 0) {
  process.stderr.write(`no such step: ${unknown.join(', ')}; there are ${Object.keys(steps).join(', ')}\n`);
  process.exit(2);
}

const told = [];
for (const name of wanted.length > 0 ? wanted : Object.keys(steps)) {
  if (!steps[name].every(isThere)) {
    told.push(`absent  ${name}: there is no such test`);
    continue;
  }
  const start = Date.now();
  const passed = await Promise.all(steps[name].map(run));
  const good = passed.every(Boolean);
  told.push(`${good ? 'passed' : 'FAILED'}  ${name}  ${Math.round((Date.now() - start) / 1000)} s`);
  if (!good) process.exitCode = 1;
}
process.stdout.write(`\n${told.join('\n')}\n`);
