import { createHash, randomBytes } from 'node:crypto';
import { link, lstat, mkdir, mkdtemp, readdir, realpath, rm, symlink } from 'node:fs/promises';
import { connect, createServer, type Server } from 'node:net';
import { tmpdir } from 'node:os';
import { join } from 'node:path';

/** Holds a folder for this process until released; the system releases it when the process ends in any way. */
export interface Claim {
  release(): Promise<void>;
}

// A socket's address has room for 104 bytes on some systems, 108 on others, with the closing zero.
const maxSocketPath = 100;

/** Files that claims leave in a folder. */
export const isClaimFile = (name: string): boolean => /^owner-(\d+|new-[0-9a-f]+)$/.test(name);

const numberOf = (name: string): number => Number(/^owner-(\d+)$/.exec(name)?.[1] ?? 0);

const claimsIn = async (folder: string): Promise<number[]> =>
  (await readdir(folder)).map(numberOf).filter((number) => number > 0);

const listen = (path: string): Promise<Server> =>
  new Promise((resolve, reject) => {
    const server = createServer((socket) => socket.destroy());
    server.once('error', reject);
    server.listen(path, () => resolve(server));
    server.unref();
  });

/** Whether a living process listens. Only a refused connection or a missing file means that none does. */
const answers = (path: string): Promise<boolean> =>
  new Promise((resolve) => {
    const socket = connect(path);
    socket.once('connect', () => {
      socket.destroy();
      resolve(true);
    });
    socket.once('error', (fault: NodeJS.ErrnoException) => {
      resolve(fault.code !== 'ECONNREFUSED' && fault.code !== 'ENOENT');
    });
  });

const shortName = async (folder: string): Promise<{ folder: string; done: () => Promise<void> }> => {
  if (Buffer.byteLength(join(folder, `owner-new-${'0'.repeat(16)}`)) <= maxSocketPath) {
    return { folder, done: async () => {} };
  }
  const aside = await mkdtemp(join(tmpdir(), 'pipkin-'));
  await symlink(folder, join(aside, 's'), 'dir');
  return {
    folder: join(aside, 's'),
    done: () => rm(aside, { recursive: true, force: true }),
  };
};

const closeServer = (server: Server): Promise<void> =>
  new Promise((resolve) => server.close(() => resolve()));

const tryLink = async (from: string, to: string): Promise<boolean> => {
  try {
    await link(from, to);
    return true;
  } catch (fault) {
    if ((fault as NodeJS.ErrnoException).code === 'EEXIST') return false;
    throw fault;
  }
};

// A newcomer that was killed half-way leaves its socket behind; one that has just begun must keep it.
const isLeftover = async (path: string): Promise<boolean> => {
  const about = await lstat(path).catch(() => undefined);
  return about !== undefined && Date.now() - about.mtimeMs > 60_000 && !(await answers(path));
};

const removeOlder = async (folder: string, own: number): Promise<void> => {
  for (const name of (await readdir(folder)).filter(isClaimFile)) {
    const number = numberOf(name);
    const old = number > 0 ? number < own : await isLeftover(join(folder, name));
    if (old) await rm(join(folder, name), { force: true });
  }
};

const takeTurn = async (folder: string, socket: string): Promise<'in-use' | 'again' | 'mine'> => {
  const newest = Math.max(0, ...(await claimsIn(folder)));
  if (newest > 0 && (await answers(join(folder, `owner-${newest}`)))) return 'in-use';
  const own = newest + 1;
  if (!(await tryLink(socket, join(folder, `owner-${own}`)))) return 'again';
  if (Math.max(...(await claimsIn(folder))) > own) {
    await rm(join(folder, `owner-${own}`), { force: true });
    return 'again';
  }
  await removeOlder(folder, own);
  return 'mine';
};

/**
 * Claims `folder` for this process, or answers undefined when a living process (this one too) already holds it.
 *
 * The owner listens on a socket file `owner-N`. A killed owner stops listening at once, so there is no stale lock
 * and no process number that could be somebody else's by now. A newcomer who finds `owner-N` dead links its own
 * listening socket as `owner-N+1`, which only one can do; the newest file is never removed but by its successor,
 * so numbers only grow, and who finds a higher one after linking has lost. Works between containers that share the
 * folder.
 */
export const claimFolder = async (folder: string): Promise<Claim | undefined> => {
  const short = await shortName(folder);
  const socket = join(short.folder, `owner-new-${randomBytes(8).toString('hex')}`);
  try {
    const server = await listen(socket);
    let turn = await takeTurn(short.folder, socket);
    while (turn === 'again') turn = await takeTurn(short.folder, socket);
    await rm(socket, { force: true });
    if (turn === 'mine') return { release: () => closeServer(server) };
    await closeServer(server);
    return undefined;
  } finally {
    await short.done();
  }
};

const noSocketsHere = new Set([
  'EROFS',
  'EACCES',
  'EPERM',
  'ENOTSUP',
  'EOPNOTSUPP',
  'EINVAL',
  'ENOSPC',
  'EDQUOT',
]);

const claimAside = async (folder: string): Promise<Claim | undefined> => {
  const newest = Math.max(0, ...(await claimsIn(folder)));
  if (newest > 0 && (await answers(join(folder, `owner-${newest}`)))) return undefined;
  const name = createHash('sha256')
    .update(await realpath(folder))
    .digest('hex')
    .slice(0, 16);
  const aside = join(tmpdir(), `pipkin-${name}`);
  await mkdir(aside, { recursive: true, mode: 0o700 });
  return claimFolder(aside);
};

/**
 * Claims the store in `folder`: in the folder itself, or, where that is read-only or on a file system without
 * sockets, in a folder of the system's temporary directory named after it (that one does not reach other machines
 * or containers).
 */
export const claimStore = async (folder: string): Promise<Claim | undefined> => {
  try {
    return await claimFolder(folder);
  } catch (fault) {
    if (!noSocketsHere.has((fault as NodeJS.ErrnoException).code ?? '')) throw fault;
    return claimAside(folder);
  }
};
