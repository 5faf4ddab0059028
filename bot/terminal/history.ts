import { mkdir, readFile, writeFile } from 'node:fs/promises';
import { dirname } from 'node:path';

/** Lines kept for the arrow keys. */
export const mostHistory = 200;
const longest = 1000;

/** Earlier lines, newest first. None when there is no such file or it cannot be read: a chat goes without. */
export const loadHistory = async (file: string | undefined): Promise<string[]> => {
  if (file === undefined) return [];
  try {
    const lines = (await readFile(file, 'utf8'))
      .split('\n')
      .filter((line) => line !== '' && line.length <= longest);
    return lines.slice(0, mostHistory);
  } catch {
    return [];
  }
};

/** Writes the lines for the next time, readable by their owner only. Not being able to is no reason to complain. */
export const saveHistory = async (file: string | undefined, lines: readonly string[]): Promise<void> => {
  if (file === undefined || lines.length === 0) return;
  try {
    await mkdir(dirname(file), { recursive: true });
    const kept = lines.filter((line) => line.length <= longest).slice(0, mostHistory);
    await writeFile(file, `${kept.join('\n')}\n`, { mode: 0o600 });
  } catch {
    // The next chat starts without a history.
  }
};
