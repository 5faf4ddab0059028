import { closeSync, fdatasyncSync, fstatSync, ftruncateSync, openSync, statfsSync, writeSync } from 'node:fs';

const stepBytes = 256 * 1024;
const maxStepBytes = 4 * 1024 * 1024;

/** Keeps free room at the end of one file, so that whoever writes into it does not meet a full disk half-way. */
export interface Room {
  /**
   * Makes the file at least `bytes` long. Throws the system's error, and leaves the file as long as it was, when
   * it cannot.
   */
  reach(bytes: number): void;
  /** Gives back what lies beyond `bytes`, and lets go of the file. */
  close(bytes: number): void;
}

// A disk that copies on write (btrfs, ZFS) needs new space even inside the file. Disks without a size say 0 blocks.
const checkSpace = (folder: string, bytes: number): void => {
  const { blocks, bavail, bsize } = statfsSync(folder);
  if (blocks > 0 && bavail * bsize < bytes)
    throw Object.assign(new Error('no space left'), { code: 'ENOSPC' });
};

/** Writes zeros from the file's end on; a hole would take its space only later, when it is too late. */
const extend = (file: number, from: number, to: number): void => {
  try {
    const zeros = Buffer.alloc(Math.min(stepBytes, to - from));
    for (let at = from; at < to; ) at += writeSync(file, zeros, 0, Math.min(zeros.length, to - at), at);
    fdatasyncSync(file);
  } catch (fault) {
    ftruncateSync(file, from);
    throw fault;
  }
};

/**
 * Room in the file at `path` inside `folder`; the file must exist. It grows in steps of 256 KB, or a sixteenth of
 * its length, at most 4 MB, so that it is seldom.
 */
export const roomIn = (folder: string, path: string): Room => {
  const file = openSync(path, 'r+');
  let length = fstatSync(file).size;
  const reach = (bytes: number): void => {
    checkSpace(folder, stepBytes);
    if (bytes <= length) return;
    length = fstatSync(file).size;
    const step = Math.min(maxStepBytes, Math.max(stepBytes, length / 16));
    const wanted = Math.ceil(Math.max(bytes, length + step) / stepBytes) * stepBytes;
    if (bytes <= length) return;
    checkSpace(folder, wanted - length + stepBytes);
    extend(file, length, wanted);
    length = wanted;
  };
  const close = (bytes: number): void => {
    if (fstatSync(file).size > bytes) ftruncateSync(file, bytes);
    closeSync(file);
  };
  return { reach, close };
};
