import { parseArgs } from 'node:util';
import { everyIndex } from './alongside.ts';
import { BackupTrouble } from './book/backup-file.ts';
import { restore } from './book/restore.ts';
import { openStore } from './book/store.ts';
import { NotRecorded, StoreTrouble } from './book/trouble.ts';
import { loadEnvFile, readConfig } from './config.ts';

const usage = `Put a backup file into a new, empty store.

  npm run --silent restore -- FILE --store FOLDER

The store is named by --store, or by STORE_URL. Nothing is written over: where something is in it, nothing is done.
`;

const fail = (code: number, sentence: string): void => {
  process.stderr.write(`${sentence}\n`);
  process.exitCode = code;
};

const run = async (path: string, storeUrl: string): Promise<void> => {
  const store = await openStore(storeUrl);
  try {
    const { groups, entries } = await restore(store, path, everyIndex());
    process.stdout.write(
      `Restored ${entries} entries of ${groups} ${groups === 1 ? 'group' : 'groups'} into "${store.shown}", each read back and compared.\n`,
    );
  } finally {
    await store.close();
  }
};

/** What went wrong, for the person at the keyboard: our own sentences, and the system's code for a file. */
const said = (fault: unknown, path: string): string => {
  if (fault instanceof BackupTrouble || fault instanceof StoreTrouble || fault instanceof NotRecorded)
    return fault.message;
  const code = (fault as NodeJS.ErrnoException).code;
  return code === 'ENOENT'
    ? `There is no file "${path}".`
    : `The restore did not work (${code ?? String(fault)}).`;
};

const start = async (): Promise<void> => {
  const { values, positionals } = parseArgs({
    allowPositionals: true,
    options: { store: { type: 'string' }, help: { type: 'boolean', short: 'h' } },
  });
  const [path] = positionals;
  if (values.help) return void process.stdout.write(usage);
  if (path === undefined || positionals.length > 1) return fail(2, usage);
  const config = readConfig(process.env);
  if (!config.ok) return fail(2, config.problem.join('\n'));
  await run(path, values.store ?? config.value.storeUrl).catch((fault: unknown) =>
    fail(1, said(fault, path)),
  );
};

loadEnvFile();
await start().catch((fault: unknown) =>
  fail(2, `${fault instanceof Error ? fault.message : String(fault)}\n\n${usage}`),
);
