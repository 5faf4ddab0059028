import { closeSync, fdatasyncSync, openSync, writeSync } from 'node:fs';
import { headerBytes, type LmdbFile, openLmdbFile, type Tree } from './lmdb-file.ts';
import { freeRuns } from './lmdb-free.ts';

// The library does not wipe what it deletes: old values stay in pages that are free by now, and in the gap between the
// two ends of a page in use. Neither is ever read, so both may be overwritten between two transactions.

const branchFlag = 0x01;
const leafFlag = 0x02;
const bigDataFlag = 0x01;
const nodeHeader = 8;

interface Scrub {
  readonly file: LmdbFile;
  readonly fd: number;
  /** Wipes `bytes` bytes from `at` on in the file. */
  wipe(at: number, bytes: number): void;
}

const wiper = (fd: number) => {
  const zeros = Buffer.alloc(64 * 1024);
  return (at: number, bytes: number): void => {
    for (let done = 0; done < bytes; )
      done += writeSync(fd, zeros, 0, Math.min(zeros.length, bytes - done), at + done);
  };
};

/** Wipes the gap of one page, and behind the end of a long value. */
const scrubGap = ({ file, wipe }: Scrub, page: number, bytes: Buffer): void => {
  const lower = bytes.readUInt16LE(20);
  const upper = bytes.readUInt16LE(22);
  wipe(page * file.meta.pageSize + headerBytes + lower, upper - lower);
};

const nodesAt = (bytes: Buffer): number[] => {
  const lower = bytes.readUInt16LE(20);
  return Array.from(
    { length: lower / 2 },
    (_, slot) => headerBytes + bytes.readUInt16LE(headerBytes + slot * 2),
  );
};

/** Where a long value lies, for each node that has one. */
const bigIn = (bytes: Buffer, node: number): { page: number; size: number }[] => {
  if ((bytes.readUInt16LE(node + 4) & bigDataFlag) === 0) return [];
  const data = node + nodeHeader + bytes.readUInt16LE(node + 6);
  return [{ page: Number(bytes.readBigUInt64LE(data)), size: bytes.readUInt32LE(node) }];
};

const scrubBig = ({ file, wipe }: Scrub, { page, size }: { page: number; size: number }): void => {
  const { pageSize } = file.meta;
  const pages = Math.floor((headerBytes - 1 + size) / pageSize) + 1;
  const end = headerBytes + size;
  wipe(page * pageSize + end, pages * pageSize - end);
};

const scrubPages = (scrub: Scrub, page: number, value: (bytes: Buffer) => void): void => {
  const bytes = Buffer.from(scrub.file.read(page));
  const flags = bytes.readUInt16LE(18);
  scrubGap(scrub, page, bytes);
  const nodes = nodesAt(bytes);
  if (flags & branchFlag) {
    for (const node of nodes) scrubPages(scrub, bytes.readUIntLE(node, 6), value);
    return;
  }
  if (!(flags & leafFlag)) return;
  for (const node of nodes) {
    const big = bigIn(bytes, node);
    for (const each of big) scrubBig(scrub, each);
    value(valueAt(scrub.file, bytes, node, big[0]));
  }
};

const valueAt = (
  file: LmdbFile,
  bytes: Buffer,
  node: number,
  big: { page: number; size: number } | undefined,
): Buffer => {
  const size = bytes.readUInt32LE(node);
  const data = node + nodeHeader + bytes.readUInt16LE(node + 6);
  if (!big) return bytes.subarray(data, data + size);
  const pages = Math.floor((headerBytes - 1 + size) / file.meta.pageSize) + 1;
  return Buffer.from(file.read(big.page, pages).subarray(headerBytes, headerBytes + size));
};

const scrubTree = (scrub: Scrub, tree: Tree, value: (bytes: Buffer) => void): void => {
  if (tree.root !== -1) scrubPages(scrub, tree.root, value);
};

/**
 * Overwrites everything in the data file at `path` that is not in use any more, and flushes it. The file must have
 * passed its check, and nobody may read or write it meanwhile; the library may have it open. A crash on the way harms
 * nothing: only unused bytes are touched.
 */
export const scrubLmdbFile = (path: string): void => {
  const file = openLmdbFile(path);
  const fd = openSync(path, 'r+');
  try {
    const wipe = wiper(fd);
    const scrub = { file, fd, wipe };
    const { pageSize, free, main } = file.meta;
    scrubTree(scrub, free, (bytes) => {
      for (const { page, count } of freeRuns(bytes)) {
        const there = Math.min(count, file.pages - page);
        if (there > 0) wipe(page * pageSize, there * pageSize);
      }
    });
    scrubTree(scrub, main, () => {});
    fdatasyncSync(fd);
  } finally {
    closeSync(fd);
    file.close();
  }
};
