import { existsSync } from 'node:fs';
import { mkdir, readdir } from 'node:fs/promises';
import { join } from 'node:path';
import { describe, expect, it } from 'vitest';
import { claimFolder } from '../../../bot/book/claim.ts';
import { openStore } from '../../../bot/book/store.ts';
import { freshFolder, runChild } from '../../helpers/book.ts';

describe('one owner at a time', () => {
  it('should refuse a second opening in the same process, and allow it after closing', async () => {
    const folder = await freshFolder();
    const store = await openStore(folder);
    await expect(openStore(folder)).rejects.toMatchObject({
      name: 'StoreTrouble',
      code: 'in-use',
    });
    await store.close();
    await (await openStore(folder)).close();
  });

  it('should give the folder to exactly one of many who ask at once', async () => {
    const folder = await freshFolder();
    for (let round = 0; round < 5; round++) {
      const claims = await Promise.all(Array.from({ length: 12 }, () => claimFolder(folder)));
      const won = claims.filter((claim) => claim !== undefined);
      expect(won).toHaveLength(1);
      await won[0]?.release();
    }
    expect(await readdir(folder)).toHaveLength(1);
  });

  it('should name the store as its owner wrote it', async () => {
    const folder = await freshFolder();
    const store = await openStore(`lmdb:${folder}`);
    await expect(openStore(`lmdb:${folder}`)).rejects.toThrow(`"lmdb:${folder}" is in use`);
    await store.close();
  });

  it('should work where the path is too long for a socket address', async () => {
    const folder = join(await freshFolder(), 'f'.repeat(120), 'g'.repeat(120));
    await mkdir(folder, { recursive: true });
    const store = await openStore(folder);
    await expect(openStore(folder)).rejects.toMatchObject({ code: 'in-use' });
    await store.close();
    await (await openStore(folder)).close();
  });

  it('should refuse a second process, and open at once after the first was killed', async () => {
    const folder = await freshFolder();
    const first = runChild('hold', folder);
    expect(await first.next()).toEqual({ open: true });
    const second = await runChild('hold', folder).ended;
    expect(second.said).toMatchObject([{ problem: 'in-use' }]);
    await expect(openStore(folder)).rejects.toMatchObject({ code: 'in-use' });
    first.process.kill('SIGKILL');
    await first.ended;
    const store = await openStore(folder);
    await store.close();
  });

  it('should let a process end by itself while it owns a store', async () => {
    const folder = await freshFolder();
    const child = runChild('hold', folder);
    await child.next();
    child.process.stdin?.end();
    expect((await child.ended).exit).toBe(0);
    expect(existsSync(join(folder, 'data.mdb'))).toBe(true);
  });

  it('should give a store left by a killed process to exactly one of several processes', async () => {
    const folder = await freshFolder();
    const first = runChild('hold', folder);
    await first.next();
    first.process.kill('SIGKILL');
    await first.ended;
    const others = Array.from({ length: 5 }, () => runChild('hold', folder));
    const heard = await Promise.all(others.map((child) => child.next()));
    expect(heard.filter((line) => line?.open)).toHaveLength(1);
    expect(heard.filter((line) => line?.problem === 'in-use')).toHaveLength(4);
  });
});
