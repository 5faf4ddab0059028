import { runAsk } from '../../.build/bot/ask/run.js';
import { fakeHouse } from './fake-house.mjs';

process.exitCode = await runAsk({
  argv: process.argv.slice(2),
  env: process.env,
  stdin: process.stdin,
  stdout: process.stdout,
  stderr: process.stderr,
  clock: () => 0,
  storeUrl: 'data/book',
  open: fakeHouse,
});
if (process.env.SHOW_MEMORY) process.stderr.write(`${process.resourceUsage().maxRSS}\n`);
