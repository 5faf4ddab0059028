// The bot as its users start it: a process of its own, with its settings in the environment.

import { type ChildProcess, spawn } from 'node:child_process';
import { mkdtempSync, rmSync } from 'node:fs';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fileURLToPath } from 'node:url';

const program = fileURLToPath(new URL('../../.build/bot/main.js', import.meta.url));

export class Bot {
  readonly #home = mkdtempSync(join(tmpdir(), 'outside-'));
  readonly #settings: { readonly [name: string]: string };
  #child: ChildProcess | undefined;
  /** What it wrote on standard error: a JSON line each. */
  readonly log: string[] = [];

  constructor(token: string, apiUrl: string, perMinute = '6000') {
    this.#settings = {
      PATH: process.env.PATH ?? '',
      HOME: this.#home,
      DISCORD_TOKEN: token,
      DISCORD_API_URL: apiUrl,
      STORE_URL: join(this.#home, 'book'),
      BACKUP_DIR: 'none',
      LOG_LEVEL: 'debug',
      MEMBER_PER_MINUTE: perMinute,
    };
  }

  start(): void {
    const child = spawn(process.execPath, ['--max-semi-space-size=4', program], {
      cwd: this.#home,
      env: this.#settings,
      stdio: ['ignore', 'pipe', 'pipe'],
    });
    this.#child = child;
    child.stdout?.on('data', () => undefined);
    child.stderr?.on('data', (data) => this.log.push(...String(data).split('\n').filter(Boolean)));
  }

  get isRunning(): boolean {
    return this.#child !== undefined && this.#child.exitCode === null && this.#child.signalCode === null;
  }

  /** Asks it to end. Gives its exit code and the milliseconds it took; after twelve seconds it is killed. */
  async stop(): Promise<{ readonly code: number | null; readonly ms: number }> {
    const child = this.#child;
    if (!child || !this.isRunning) return { code: child?.exitCode ?? null, ms: 0 };
    const start = Date.now();
    const ended = new Promise<number | null>((resolve) => child.once('exit', (code) => resolve(code)));
    child.kill('SIGTERM');
    const late = setTimeout(() => child.kill('SIGKILL'), 12_000);
    const code = await ended;
    clearTimeout(late);
    return { code, ms: Date.now() - start };
  }

  remove(): void {
    rmSync(this.#home, { recursive: true, force: true });
  }

  /** Lines of the log at level error or worse, but for refusals that are meant: a token that ran out, a closed channel or member. */
  errors(): string[] {
    const isMeant = (line: string): boolean => /"code":"(10062|50013|50007)"/.test(line);
    return this.log.filter((line) => /"level":"(error|fatal)"/.test(line) && !isMeant(line));
  }
}
