import { execFileSync } from 'node:child_process';
import { describe, expect, it } from 'vitest';
import { reasonOf } from '../../../bot/book/disk.ts';
import { childScript, freshFolder, run, runChild } from '../../helpers/book.ts';

// Mounting needs rights that a container or an ordinary account may not have; a mount namespace of our own ends with the test.
const canMount = (() => {
  try {
    execFileSync('unshare', ['-m', 'sh', '-c', 'mount -t tmpfs none /mnt'], {
      stdio: 'ignore',
    });
    return true;
  } catch {
    console.warn('SKIPPED: the checks on a really full and a really read-only disk need the right to mount.');
    return false;
  }
})();

const inMounts = (commands: string) => run('unshare', ['-m', 'sh', '-c', commands]);
const node = `"${process.execPath}" "${childScript}"`;

describe('a disk that is full', () => {
  // bash counts in blocks of 1024 bytes. Works without any rights: the system refuses to let the file grow.
  it('should be told apart when the file may not grow, and lose nothing', async () => {
    const folder = await freshFolder();
    const full = await run('bash', ['-c', `ulimit -f 900; exec ${node} fill "${folder}"`]).ended;
    expect(full).toMatchObject({ signal: null, exit: 0, errors: '' });
    expect(full.said).toMatchObject([{ code: 'not-recorded', reason: 'disk-full', same: true }]);
    const { seq = 0, last } = full.said[0] ?? {};
    expect(seq).toBeGreaterThan(10);
    expect(last).toBe(seq);
    expect((await runChild('read', folder).ended).said).toMatchObject([{ seq }]);
  });

  it.runIf(canMount)('should be said when a store cannot even begin', async () => {
    const full = await inMounts(
      `mount -t tmpfs -o size=64k none /mnt && { head -c 60000 /dev/zero > /mnt/.filler; ${node} fill /mnt/store; }`,
    ).ended;
    expect(full).toMatchObject({
      signal: null,
      exit: 3,
      errors: '',
      said: [{ problem: 'no-access' }],
    });
    expect(full.said[0]?.message).toContain('the disk is full');
  });

  it.runIf(canMount)('should be told apart when it is really full', async () => {
    const full = await inMounts(
      `mount -t tmpfs -o size=1m none /mnt && ${node} fill /mnt/store && head -c 999999 /dev/zero > /mnt/rest 2> /dev/null; ${node} read /mnt/store; ${node} fill /mnt/store`,
    ).ended;
    expect(full).toMatchObject({ signal: null, exit: 0, errors: '' });
    const [filled, read, again] = full.said;
    expect(filled).toMatchObject({
      code: 'not-recorded',
      reason: 'disk-full',
      same: true,
    });
    expect(filled?.seq).toBeGreaterThan(10);
    expect(read).toMatchObject({ seq: filled?.seq });
    expect(again).toMatchObject({
      code: 'not-recorded',
      reason: 'disk-full',
      same: true,
      seq: filled?.seq,
    });
  });
});

describe('a disk that can only be read', () => {
  it.runIf(canMount)('should open for reading and record nothing', async () => {
    const folder = await freshFolder();
    const child = runChild('save', folder);
    for (let at = 0; at < 6; at++) await child.next();
    child.process.kill('SIGKILL');
    await child.ended;
    const before = (await runChild('read', folder).ended).said[0];
    const only = await inMounts(
      `mount --bind "${folder}" /mnt && mount -o remount,ro,bind /mnt && ${node} read /mnt && ${node} fill /mnt`,
    ).ended;
    expect(only).toMatchObject({ signal: null, exit: 0, errors: '' });
    expect(only.said[0]).toEqual(before);
    expect(only.said[1]).toMatchObject({
      code: 'not-recorded',
      reason: 'read-only',
      same: true,
      seq: before?.seq,
    });
  });

  it.runIf(canMount)('should refuse to make a new store', async () => {
    const folder = await freshFolder();
    const only = await inMounts(
      `mount --bind "${folder}" /mnt && mount -o remount,ro,bind /mnt && { ${node} read /mnt; ${node} read /mnt/new; }`,
    ).ended;
    expect(only.said).toMatchObject([{ problem: 'no-access' }, { problem: 'no-access' }]);
  });
});

describe('why a write failed', () => {
  it.each([
    [28, 'disk-full'],
    [27, 'disk-full'],
    [30, 'read-only'],
    [13, 'read-only'],
    ['ENOSPC', 'disk-full'],
    ['EROFS', 'read-only'],
  ])('should be read from the error number %j', (code, reason) => {
    expect(reasonOf(Object.assign(new Error(), { code }))).toBe(reason);
  });

  it.each([Object.assign(new Error('Input/output error'), { code: 5 }), undefined, 'text'])(
    'should be "failed" when %s says nothing more',
    (fault) => {
      expect(reasonOf(fault)).toBe('failed');
    },
  );
});
