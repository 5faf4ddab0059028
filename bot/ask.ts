import { runAsk } from './ask/run.ts';
import { type Config, loadEnvFile, readConfig, secretsOf } from './config.ts';
import { logTo } from './log.ts';

/** The one-shot command: one message or a stream of them in, answers out. */
const ask = (config: Config): Promise<0 | 1 | 2> => {
  const level = config.logLevel ?? 'error';
  const log = logTo((line) => process.stderr.write(line), level, Date.now, secretsOf(config));
  return runAsk({
    argv: process.argv.slice(2),
    env: process.env,
    stdin: process.stdin,
    stdout: process.stdout,
    stderr: process.stderr,
    clock: Date.now,
    storeUrl: config.storeUrl,
    // Loaded only now, so that a slip in the options is told at once.
    open: async (storeUrl) => (await import('./house.ts')).openHouseHere(storeUrl, log, level),
  });
};

loadEnvFile();
const config = readConfig(process.env);
if (config.ok) process.exitCode = await ask(config.value);
else {
  process.stderr.write(`${config.problem.join('\n')}\n`);
  process.exitCode = 2;
}
