import { spawn } from 'node:child_process';
import { tmpdir } from 'node:os';

export interface Ran {
  readonly code: number | null;
  readonly signal: NodeJS.Signals | null;
  readonly out: string;
  readonly err: string;
}

/** Starts a Node program of this repository (a path from its root); `done` gives what it said and how it ended. */
export const startProcess = (
  program: string,
  args: readonly string[] = [],
  env: Record<string, string> = {},
) => {
  const root = new URL('../..', import.meta.url).pathname;
  const child = spawn(process.execPath, [`${root}${program}`, ...args], {
    env: { PATH: process.env.PATH ?? '', ...env },
    // Not in the repository, where a developer's own .env would be read.
    cwd: tmpdir(),
    stdio: 'pipe',
  });
  let out = '';
  let err = '';
  child.stdout.setEncoding('utf8').on('data', (text: string) => {
    out += text;
  });
  child.stderr.setEncoding('utf8').on('data', (text: string) => {
    err += text;
  });
  // Writing to a program that has already left is part of some tests.
  child.stdin.on('error', () => undefined);
  const done = new Promise<Ran>((resolve, reject) => {
    child.on('error', reject);
    child.on('close', (code, signal) => resolve({ code, signal, out, err }));
  });
  return { child, done, out: () => out, err: () => err };
};

/** Runs it to its end with `input` on its standard input. */
export const runProcess = async (
  program: string,
  args: readonly string[],
  input: string | Uint8Array = '',
  env: Record<string, string> = {},
): Promise<Ran> => {
  const { child, done } = startProcess(program, args, env);
  child.stdin.end(input);
  return done;
};

/** Waits until `holds`, or fails with what was waited for. */
export const until = async (holds: () => boolean, what: string, withinMs = 5000): Promise<void> => {
  const end = Date.now() + withinMs;
  while (!holds()) {
    if (Date.now() > end) throw new Error(`waited in vain for ${what}`);
    await new Promise((resolve) => setTimeout(resolve, 5));
  }
};
