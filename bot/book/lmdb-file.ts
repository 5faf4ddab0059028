import { closeSync, fstatSync, openSync, readSync } from 'node:fs';

/** What the check found wrong with the file: a short phrase without any recorded text. */
export class BrokenFile extends Error {}

export const broken = (what: string): never => {
  throw new BrokenFile(what);
};

/** One tree of pages: where it starts and how much of what its header says there is. */
export interface Tree {
  readonly flags: number;
  readonly depth: number;
  readonly branches: number;
  readonly leaves: number;
  readonly overflows: number;
  readonly entries: number;
  /** -1 when the tree is empty. */
  readonly root: number;
}

export interface Meta {
  readonly pageSize: number;
  readonly lastPage: number;
  readonly transaction: number;
  readonly free: Tree;
  readonly main: Tree;
}

export interface LmdbFile {
  readonly meta: Meta;
  /** Whole pages in the file. */
  readonly pages: number;
  /** `count` pages from `page` on. The bytes are only good until the next call. Throws BrokenFile past the end. */
  read(page: number, count?: number): Buffer;
  close(): void;
}

// Layout of data version 2 as the library's own source gives it (mdb.c: MDB_page_header, MDB_meta, MDB_db), 64-bit
// little-endian: a page header of 24 bytes, then for a meta page magic, version, address, map size, two trees of 48
// bytes, last page, transaction.
export const headerBytes = 24;
const magic = 0xbeefc0de;
const dataVersion = 2;
const metaFlag = 0x08;
const metaBytes = 168;

/** A 64-bit number; anything above 2^53 is nonsense here and reads as -1, as does the library's "no page". */
export const wide = (bytes: Buffer, at: number): number => {
  const value = bytes.readBigUInt64LE(at);
  return value > BigInt(Number.MAX_SAFE_INTEGER) ? -1 : Number(value);
};

const treeAt = (bytes: Buffer, at: number): Tree => ({
  flags: bytes.readUInt16LE(at + 4),
  depth: bytes.readUInt16LE(at + 6),
  branches: wide(bytes, at + 8),
  leaves: wide(bytes, at + 16),
  overflows: wide(bytes, at + 24),
  entries: wide(bytes, at + 32),
  root: wide(bytes, at + 40),
});

const metaAt = (bytes: Buffer): Meta => {
  const isMeta = (bytes.readUInt16LE(18) & metaFlag) !== 0;
  if (!isMeta || bytes.readUInt32LE(24) !== magic) broken('its header is not one of this kind of store');
  if ((bytes.readUInt32LE(28) & 0xffff) !== dataVersion) broken('its header names an unknown version');
  const meta: Meta = {
    pageSize: bytes.readUInt32LE(48),
    free: treeAt(bytes, 48),
    main: treeAt(bytes, 96),
    lastPage: wide(bytes, 144),
    transaction: wide(bytes, 152),
  };
  const mapBytes = wide(bytes, 40);
  if (meta.lastPage < 1 || mapBytes < meta.lastPage * meta.pageSize)
    broken('the sizes in its header do not fit');
  return meta;
};

const isPageSize = (bytes: number): boolean => bytes >= 512 && bytes <= 65536 && (bytes & (bytes - 1)) === 0;

const readAt = (file: number, into: Buffer, position: number): Buffer => {
  if (readSync(file, into, 0, into.length, position) !== into.length) broken('it has been cut short');
  return into;
};

// Transaction n writes header n mod 2, so the two are always neighbours: a flipped bit in one would make
// the library fall back to an older state of the book without a word.
const newestMeta = (file: number): Meta => {
  const first = metaAt(readAt(file, Buffer.alloc(metaBytes), 0));
  if (!isPageSize(first.pageSize)) broken('the page size in its header cannot be right');
  const second = metaAt(readAt(file, Buffer.alloc(metaBytes), first.pageSize));
  if (second.pageSize !== first.pageSize) broken('its two headers disagree about the page size');
  if (first.transaction === 0 && second.transaction === 0) return first;
  const newer = first.transaction > second.transaction ? first : second;
  const inPlace = newer === first ? newer.transaction % 2 === 0 : newer.transaction % 2 === 1;
  if (!inPlace || Math.abs(first.transaction - second.transaction) !== 1) broken('its two headers disagree');
  if (newer.free.flags !== 8 || newer.main.flags !== 0) broken('the flags in its header cannot be right');
  return newer;
};

/** Opens the data file for reading and checks its headers. Throws BrokenFile, or the system's error. */
export const openLmdbFile = (path: string): LmdbFile => {
  const file = openSync(path, 'r');
  try {
    const meta = newestMeta(file);
    const pages = Math.floor(fstatSync(file).size / meta.pageSize);
    let buffer = Buffer.allocUnsafe(meta.pageSize);
    const read = (page: number, count = 1): Buffer => {
      if (page < 2 || count < 1 || page + count - 1 > meta.lastPage)
        broken('it points to a page outside itself');
      if (page + count > pages) broken('it has been cut short');
      const bytes = count * meta.pageSize;
      if (buffer.length < bytes) buffer = Buffer.allocUnsafe(bytes);
      return readAt(file, buffer.subarray(0, bytes), page * meta.pageSize);
    };
    return { meta, pages, read, close: () => closeSync(file) };
  } catch (fault) {
    closeSync(file);
    throw fault;
  }
};
