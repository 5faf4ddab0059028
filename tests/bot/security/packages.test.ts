import { readFileSync } from 'node:fs';
import { describe, expect, it } from 'vitest';

// What is shipped with the bot: its packages come whole from the registry, under licences that allow it, and without
// running anything at installation that has to be run.

const root = new URL('../../../', import.meta.url);
const json = (path: string) => JSON.parse(readFileSync(new URL(path, root), 'utf8'));

interface Locked {
  readonly resolved?: string;
  readonly integrity?: string;
  readonly dev?: boolean;
  readonly devOptional?: boolean;
  readonly optional?: boolean;
  readonly hasInstallScript?: boolean;
}

const locked = Object.entries(json('package-lock.json').packages as Record<string, Locked>).filter(
  ([path]) => path !== '',
);
const shipped = locked.filter(([, { dev, devOptional }]) => !dev && !devOptional);

/** Names of the SPDX list (from memory). MPL-2.0: the files as published, unchanged. */
const allowed: ReadonlySet<string> = new Set([
  'MIT',
  'ISC',
  '0BSD',
  'BSD-2-Clause',
  'BSD-3-Clause',
  'Apache-2.0',
  'MPL-2.0',
]);

/** Packages whose licence stands in a file only, and how that file begins. */
const inFile: Readonly<Record<string, string>> = {
  'png-js': 'MIT License',
  'dejavu-fonts-ttf': 'Fonts are (c) Bitstream (see below). DejaVu changes are in public domain.',
};

const isHere = (path: string): boolean => {
  try {
    json(`${path}/package.json`);
    return true;
  } catch {
    return false;
  }
};

describe('the packages that are shipped', () => {
  it('should all be there, but for what is for other machines', () => {
    expect(shipped.length).toBeGreaterThan(50);
    expect(
      shipped.filter(([path, { optional }]) => !optional && !isHere(path)).map(([path]) => path),
    ).toEqual([]);
  });

  it.each(shipped.filter(([path]) => isHere(path)).map(([path]) => [path]))(
    'should be free to ship: %s',
    (path) => {
      const { name, license } = json(`${path}/package.json`) as { name: string; license?: string };
      const begins = inFile[name];
      if (begins === undefined) expect(allowed).toContain(license);
      else expect(readFileSync(new URL(`${path}/LICENSE`, root), 'utf8').startsWith(begins)).toBe(true);
    },
  );

  // Where no address is written, npm asks the registry it is set up for.
  it('should come from the registry, each with a checksum, development ones too', () => {
    const odd = locked.filter(
      ([, { resolved, integrity = '' }]) =>
        (resolved !== undefined && !resolved.startsWith('https://registry.npmjs.org/')) ||
        !/^sha512-[\w+/]{86}==$/.test(integrity),
    );
    expect(odd).toEqual([]);
  });

  it('should run nothing at installation but the look for a prebuilt binary', () => {
    const scripted = shipped.filter(([, { hasInstallScript }]) => hasInstallScript).map(([path]) => path);
    expect(scripted.sort()).toEqual(['node_modules/lmdb', 'node_modules/msgpackr-extract']);
  });
});
