import { fork } from 'node:child_process';
import { once } from 'node:events';
import { readFile } from 'node:fs/promises';
import { join } from 'node:path';
import { pathToFileURL } from 'node:url';
import type { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import type { Probed } from './probe.ts';

export interface Held {
  /** All of it, and the most it ever was. */
  readonly resident: number;
  readonly peak: number;
  /** What it holds itself. */
  readonly own: number;
  /** Pages of files, the store's above all, which the system shares and takes back when it needs them. */
  readonly files: number;
  /** Of these, pages of the store's own file. */
  readonly store: number;
}

/** The bot as `npm start` runs it, in a process of its own, over a store in a folder. */
export interface Served {
  probe(how?: 'as it is' | 'collected'): Promise<Probed>;
  /** Its memory as the system tells it, in bytes; zeros where it does not. */
  memory(): Promise<Held>;
  /** Lines of its log, which is for errors only. */
  readonly complaints: readonly string[];
  /** Ends it as a supervisor would; resolves with its exit code. */
  stop(): Promise<number | null>;
}

const built = join(import.meta.dirname, '../../bot/main.js');
const probe = pathToFileURL(join(import.meta.dirname, 'probe.js')).href;

/** Resident pages of the store's file: each mapping is headed by its path and followed by lines of figures. */
const storePages = (maps: string): number => {
  let inStore = false;
  let bytes = 0;
  for (const line of maps.split('\n')) {
    if (/^[0-9a-f]+-[0-9a-f]+ /.test(line)) inStore = line.endsWith('/data.mdb');
    const [, kilobytes] = /^Rss:\s+(\d+) kB/.exec(line) ?? [];
    if (inStore && kilobytes !== undefined) bytes += Number(kilobytes) * 1024;
  }
  return bytes;
};

const heldBy = async (pid: number | undefined): Promise<Held> => {
  const status = await readFile(`/proc/${pid}/status`, 'utf8').catch(() => '');
  const bytes = (name: string): number =>
    Number(new RegExp(`^${name}:\\s+(\\d+) kB`, 'm').exec(status)?.[1] ?? 0) * 1024;
  const store = storePages(await readFile(`/proc/${pid}/smaps`, 'utf8').catch(() => ''));
  return {
    resident: bytes('VmRSS'),
    peak: bytes('VmHWM'),
    own: bytes('RssAnon'),
    files: bytes('RssFile'),
    store,
  };
};

/** Starts it against `standIn` with the store in `folder`; resolves when it is in the chat. */
export const serve = async (folder: string, standIn: StandIn, memberPerMinute = 60): Promise<Served> => {
  const child = fork(built, {
    cwd: folder,
    // The young generation as package.json has it for `npm start`.
    execArgv: ['--expose-gc', '--max-semi-space-size=4', '--import', probe],
    env: {
      PATH: process.env.PATH ?? '',
      DISCORD_TOKEN: standIn.token,
      DISCORD_API_URL: standIn.apiUrl,
      STORE_URL: join(folder, 'store'),
      BACKUP_DIR: 'none',
      LOG_LEVEL: 'error',
      MEMBER_PER_MINUTE: String(memberPerMinute),
    },
    stdio: ['ignore', 'pipe', 'pipe', 'ipc'],
  });
  const complaints: string[] = [];
  child.stderr?.setEncoding('utf8').on('data', (text: string) => complaints.push(text));
  const ended = once(child, 'exit');
  await new Promise<void>((resolve, reject) => {
    child.stdout?.setEncoding('utf8').on('data', (text: string) => {
      if (text.includes('ready')) resolve();
    });
    void ended.then(() => reject(new Error(`the bot ended: ${complaints.join('')}`)));
  });
  return {
    async probe(how = 'as it is') {
      child.send(how);
      const [probed] = await once(child, 'message');
      return probed as Probed;
    },
    memory: () => heldBy(child.pid),
    complaints,
    async stop() {
      child.kill('SIGTERM');
      await ended;
      return child.exitCode;
    },
  };
};
