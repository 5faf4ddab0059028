import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtemp, rm } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { createInterface } from 'node:readline';
import { fileURLToPath } from 'node:url';
import { onTestFinished } from 'vitest';
import type { BookEvent } from '../../core/book.ts';

export const childScript = fileURLToPath(new URL('./book-child.mjs', import.meta.url));

/** A folder of its own that goes away with the test. */
export const freshFolder = async (): Promise<string> => {
  const folder = await mkdtemp(join(tmpdir(), 'book-'));
  onTestFinished(() => rm(folder, { recursive: true, force: true }));
  return folder;
};

export const by = { who: 'me', at: Date.UTC(2026, 10, 25, 9) };

export const saved = (recipe: string, name: string, lines = 3): BookEvent => ({
  kind: 'recipe-saved',
  recipe,
  name,
  lines: Array.from({ length: lines }, (_, at) => ({
    ingredient: `herb-${at}`,
    amount: at + 1,
    unit: 'g',
  })),
});

export interface Said {
  readonly open?: boolean;
  readonly start?: number;
  readonly saved?: number;
  readonly name?: string;
  readonly lines?: number;
  readonly seq?: number;
  readonly last?: number;
  readonly same?: boolean;
  readonly names?: readonly string[];
  readonly code?: string;
  readonly reason?: string;
  readonly problem?: string;
  readonly message?: string;
}

export interface Ended {
  readonly said: readonly Said[];
  readonly signal: NodeJS.Signals | null;
  readonly exit: number | null;
  readonly errors: string;
}

export interface Child {
  readonly process: ChildProcess;
  /** The next line it says, or undefined when it has ended. */
  next(): Promise<Said | undefined>;
  readonly ended: Promise<Ended>;
}

/** Runs a command line and reads the JSON lines it prints. A half-written last line is no line. */
export const run = (command: string, args: readonly string[]): Child => {
  const child = spawn(command, args, { stdio: ['pipe', 'pipe', 'pipe'] });
  onTestFinished(() => {
    child.kill('SIGKILL');
  });
  const said: Said[] = [];
  const waiting: ((line: Said | undefined) => void)[] = [];
  let told = 0;
  let over = false;
  let errors = '';
  child.stderr.on('data', (text) => {
    errors += text;
  });
  const hear = (line: string): void => {
    if (!line.endsWith('}')) return;
    const heard: Said = JSON.parse(line);
    said.push(heard);
    if (waiting.length > 0) {
      told = said.length;
      waiting.shift()?.(heard);
    }
  };
  const lines = createInterface({ input: child.stdout });
  lines.on('line', hear);
  const ended = new Promise<Ended>((resolve) => {
    child.on('close', (exit, signal) => {
      over = true;
      for (const each of waiting) each(undefined);
      resolve({ said, signal, exit, errors });
    });
  });
  const next = (): Promise<Said | undefined> => {
    if (told < said.length) return Promise.resolve(said[told++]);
    if (over) return Promise.resolve(undefined);
    return new Promise((resolve) => waiting.push(resolve));
  };
  return { process: child, next, ended };
};

export const runChild = (...args: readonly string[]): Child => run(process.execPath, [childScript, ...args]);
