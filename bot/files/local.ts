import { type FileHandle, open } from 'node:fs/promises';
import { basename } from 'node:path';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Files, FileTrouble, GivenFile } from './given.ts';

const piece = 256 * 1024;

/** Reads up to one byte more than allowed, so that a file that grows meanwhile cannot fill the memory. */
const allOf = async (file: FileHandle, mostBytes: number): Promise<Result<Uint8Array, FileTrouble>> => {
  const parts: Buffer[] = [];
  let length = 0;
  while (length <= mostBytes) {
    const { bytesRead, buffer } = await file.read(Buffer.alloc(piece), 0, piece);
    if (bytesRead === 0) return ok(Buffer.concat(parts));
    parts.push(buffer.subarray(0, bytesRead));
    length += bytesRead;
  }
  return fail('too-big');
};

const readAt = async (path: string, mostBytes: number): Promise<Result<Uint8Array, FileTrouble>> => {
  let file: FileHandle | undefined;
  try {
    file = await open(path, 'r');
    const about = await file.stat();
    if (!about.isFile()) return fail('not-a-file');
    return about.size > mostBytes ? fail('too-big') : await allOf(file, mostBytes);
  } catch (fault) {
    const code = (fault as NodeJS.ErrnoException).code;
    if (code === 'EISDIR') return fail('not-a-file');
    return fail(code === 'ENOENT' || code === 'ENOTDIR' ? 'not-there' : 'unreadable');
  } finally {
    await file?.close();
  }
};

const fileAt = (path: string): GivenFile => ({
  name: basename(path),
  said: path,
  read: (mostBytes) => readAt(path, mostBytes),
});

/** Files for whoever sits at this machine: those they name, read with their own rights. */
export const localFiles: Files = { attached: [], at: fileAt };
