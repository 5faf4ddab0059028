import { mkdir, open } from 'node:fs/promises';
import { join, resolve } from 'node:path';
import type { AnswerFile } from '../answer.ts';

export interface SavedFile {
  readonly name: string;
  /** Absolute path of the file as written. */
  readonly path: string;
}

const longestName = 100;
/** Tries at a free name before giving up; a thousand labels of one name on one bench is a fault. */
const mostTries = 1000;

/** A file name without path, control characters or a leading dot. */
export const safeName = (name: string): string => {
  const bare = name
    .replace(/[\p{Control}\p{Format}\p{Surrogate}<>:"/\\|?*]+/gu, '-')
    .replace(/^[.\s-]+|[.\s-]+$/g, '');
  const dot = bare.lastIndexOf('.');
  const ending = dot > 0 && bare.length - dot <= 10 ? bare.slice(dot) : '';
  const stem = ending === '' ? bare : bare.slice(0, dot);
  return (stem.slice(0, longestName - ending.length) || 'file') + ending;
};

const numbered = (name: string, count: number): string => {
  if (count === 1) return name;
  const dot = name.lastIndexOf('.');
  return dot > 0 ? `${name.slice(0, dot)}-${count}${name.slice(dot)}` : `${name}-${count}`;
};

const isTaken = (fault: unknown): boolean =>
  fault instanceof Error && 'code' in fault && fault.code === 'EEXIST';

const saveOne = async (folder: string, file: AnswerFile): Promise<SavedFile> => {
  const wanted = safeName(file.name);
  for (let count = 1; count <= mostTries; count++) {
    const path = join(folder, numbered(wanted, count));
    try {
      const handle = await open(path, 'wx', 0o600);
      try {
        await handle.writeFile(file.bytes);
      } finally {
        await handle.close();
      }
      return { name: file.name, path };
    } catch (fault) {
      if (!isTaken(fault)) throw fault;
    }
  }
  throw new Error('no free file name');
};

/**
 * Writes an answer's files into `folder` (made if need be), readable by its owner only. A name already taken gets a
 * number; nothing is overwritten. Rejects with the file system's error when a file cannot be written.
 */
export const saveFiles = async (
  folder: string,
  files: readonly AnswerFile[],
): Promise<readonly SavedFile[]> => {
  if (files.length === 0) return [];
  const into = resolve(folder);
  await mkdir(into, { recursive: true });
  const saved: SavedFile[] = [];
  for (const file of files) saved.push(await saveOne(into, file));
  return saved;
};
