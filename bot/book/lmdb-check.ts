import { broken, headerBytes, type LmdbFile, openLmdbFile, type Tree, wide } from './lmdb-file.ts';
import { checkFree, freeRuns, type Run } from './lmdb-free.ts';
import { sealHolds } from './seal.ts';

const branchFlag = 0x01;
const leafFlag = 0x02;
const overflowFlag = 0x04;
const bigDataFlag = 0x01;
const nodeHeader = 8;
// A long value's place: first page, transaction, number of pages.
const bigBytes = 24;

/**
 * Pages looked at in one check (32 MB, about 0.1 s), so that opening does not take longer and longer with the
 * store.
 */
export const pageBudget = 8_000;

interface Walk {
  readonly file: LmdbFile;
  readonly used: Uint8Array;
  readonly budget: { left: number };
  readonly tree: Tree;
  readonly seen: {
    branches: number;
    leaves: number;
    overflows: number;
    entries: number;
    skipped: boolean;
  };
  /** Called with each value's bytes. */
  readonly value: (bytes: Buffer) => void;
}

interface Node {
  readonly at: number;
  readonly keyBytes: number;
}

const use = (walk: Walk, page: number, count = 1): void => {
  for (let each = page; each < page + count; each++) {
    if (walk.used[each]) broken('a page is in use twice');
    walk.used[each] = 1;
  }
};

/** The nodes of one page, each lying inside it, in order of their keys. */
const nodesOf = (page: Buffer, isBranch: boolean): Node[] => {
  const lower = page.readUInt16LE(20);
  const upper = page.readUInt16LE(22);
  if (lower % 2 !== 0 || upper < lower || upper > page.length - headerBytes)
    broken('a page has a wrong fill mark');
  const nodes: Node[] = [];
  for (let slot = headerBytes; slot < headerBytes + lower; slot += 2) {
    const at = headerBytes + page.readUInt16LE(slot);
    if (at < headerBytes + upper || at + nodeHeader > page.length) broken('a page points outside itself');
    const keyBytes = page.readUInt16LE(at + 6);
    if (at + nodeHeader + keyBytes > page.length) broken('a key does not fit its page');
    nodes.push({ at, keyBytes });
  }
  if (nodes.length < (isBranch ? 2 : 1)) broken('a page is empty');
  return nodes;
};

const keyOf = (page: Buffer, node: Node): Buffer =>
  page.subarray(node.at + nodeHeader, node.at + nodeHeader + node.keyBytes);

// The free list's keys are transaction numbers; the others compare byte by byte.
const inOrder = (walk: Walk, a: Buffer, b: Buffer): boolean =>
  walk.tree.flags === 0
    ? Buffer.compare(a, b) < 0
    : a.length === 8 && b.length === 8 && wide(a, 0) < wide(b, 0);

const checkOrder = (walk: Walk, page: Buffer, nodes: readonly Node[], from: number): void => {
  for (let at = from + 1; at < nodes.length; at++) {
    const [before, here] = [nodes[at - 1], nodes[at]];
    if (before && here && !inOrder(walk, keyOf(page, before), keyOf(page, here)))
      broken('keys are out of order');
  }
};

const checkHeader = (walk: Walk, bytes: Buffer, page: number, flag: number): void => {
  if (wide(bytes, 0) !== page || bytes.readUInt16LE(18) !== flag) broken('a page is not what it should be');
  const writtenBy = wide(bytes, 8);
  if (writtenBy < 1 || writtenBy > walk.file.meta.transaction) broken('a page is from no known time');
};

interface Big {
  readonly page: number;
  readonly bytes: number;
}

const checkBig = (walk: Walk, { page, bytes }: Big): void => {
  const count = Math.floor((headerBytes - 1 + bytes) / walk.file.meta.pageSize) + 1;
  const run = walk.file.read(page, count);
  checkHeader(walk, run, page, overflowFlag);
  if (run.readUInt32LE(20) !== count) broken('a long value has a wrong length');
  use(walk, page, count);
  walk.seen.overflows += count;
  walk.budget.left -= count;
  walk.value(run.subarray(headerBytes, headerBytes + bytes));
};

/** Checks a value that lies on its leaf; one with pages of its own is handed back. */
const checkValue = (walk: Walk, page: Buffer, node: Node): Big[] => {
  const size = page.readUInt32LE(node.at);
  const flags = page.readUInt16LE(node.at + 4);
  const data = node.at + nodeHeader + node.keyBytes;
  if (flags !== 0 && flags !== bigDataFlag) broken('a value has wrong flags');
  if (data + (flags === 0 ? size : bigBytes) > page.length) broken('a value does not fit its page');
  if (flags !== 0) return [{ page: wide(page, data), bytes: size }];
  walk.value(page.subarray(data, data + size));
  return [];
};

const checkLeaf = (walk: Walk, page: number): void => {
  const bytes = walk.file.read(page);
  checkHeader(walk, bytes, page, leafFlag);
  const nodes = nodesOf(bytes, false);
  checkOrder(walk, bytes, nodes, 0);
  walk.seen.leaves += 1;
  walk.seen.entries += nodes.length;
  // Long values come last, because reading another page overwrites this one.
  const big = nodes.flatMap((node) => checkValue(walk, bytes, node));
  for (const each of big) checkBig(walk, each);
};

const childrenOf = (walk: Walk, page: number): number[] => {
  const bytes = walk.file.read(page);
  checkHeader(walk, bytes, page, branchFlag);
  const nodes = nodesOf(bytes, true);
  // The first key of a branch stands for "everything smaller" and may be empty.
  checkOrder(walk, bytes, nodes, 1);
  walk.seen.branches += 1;
  return nodes.map(({ at }) => bytes.readUIntLE(at, 6));
};

const checkPages = (walk: Walk, page: number, level: number): void => {
  if (page < 2 || page > walk.file.meta.lastPage) broken('it points to a page outside itself');
  if (page >= walk.file.pages) broken('it has been cut short');
  use(walk, page);
  walk.budget.left -= 1;
  if (level < walk.tree.depth) {
    for (const child of childrenOf(walk, page)) checkPages(walk, child, level + 1);
  } else if (walk.budget.left < 0) walk.seen.skipped = true;
  else checkLeaf(walk, page);
};

const checkTree = (walk: Walk): void => {
  const { tree, seen } = walk;
  if (tree.root === -1) {
    if (tree.depth !== 0 || tree.entries !== 0) broken('its header has lost a page');
    return;
  }
  if (tree.depth < 1 || tree.depth > 20) broken('the depth in its header cannot be right');
  checkPages(walk, tree.root, 1);
  if (seen.skipped) return;
  const same =
    seen.branches === tree.branches && seen.leaves === tree.leaves && seen.overflows === tree.overflows;
  if (!same || seen.entries !== tree.entries) broken('it does not hold as much as its header says');
};

/**
 * Looks through the store's data file at `path` before it is opened. The library itself trusts its file: cut
 * short, it ends the process with a signal, and a flipped bit in a page can make it read anywhere. Checks both
 * headers, the shape of every page, that every value carries its right checksum, and that no page is used twice.
 * In a store of more than `pageBudget` pages the rest is only checked to be there; its values are still checked
 * when they are read. Throws BrokenFile.
 */
export const checkLmdbFile = (path: string): void => {
  const file = openLmdbFile(path);
  try {
    const used = new Uint8Array(file.meta.lastPage + 1);
    const budget = { left: pageBudget };
    const fresh = () => ({
      branches: 0,
      leaves: 0,
      overflows: 0,
      entries: 0,
      skipped: false,
    });
    const runs: Run[] = [];
    const free = (bytes: Buffer) => void runs.push(...freeRuns(bytes));
    checkTree({
      file,
      used,
      budget,
      tree: file.meta.free,
      seen: fresh(),
      value: free,
    });
    const sealed = (bytes: Buffer) => {
      if (!sealHolds(bytes)) broken('a stored value does not match its checksum');
    };
    checkTree({
      file,
      used,
      budget,
      tree: file.meta.main,
      seen: fresh(),
      value: sealed,
    });
    checkFree(file, used, runs);
  } finally {
    file.close();
  }
};
