import type pg from 'pg';
import { StoreTrouble } from './trouble.ts';

// One row for each key; `fence` is the token of the lease under which it was last written, so that it can be seen
// afterwards who wrote it. Keys compare by their bytes, whatever the database's language.
const tables = `
  create table if not exists pipkin_store (one int primary key check (one = 1), v int not null);
  insert into pipkin_store values (1, 1) on conflict do nothing;
  create sequence if not exists pipkin_fence;
  create table if not exists pipkin_book (
    key text collate "C" primary key, value text not null, fence bigint not null);
  create table if not exists pipkin_lease (
    name text primary key, shards int not null, holder uuid not null, token bigint not null, until timestamptz not null,
    pid int not null, since timestamptz not null);
`;

// Two processes that start at once must not make the tables at the same time. The numbers are only ours to know.
const makingLock = 'select pg_advisory_xact_lock(7477, 1)';

const refuse = (shown: string, why: string): never => {
  throw new StoreTrouble('not-a-store', `The database of the store "${shown}" ${why}`);
};

/** Sees to it that the database can keep what it is given. Throws StoreTrouble `not-a-store`. */
const checkServer = async (client: pg.Client, shown: string): Promise<void> => {
  const { rows } = await client.query(
    `select current_setting('server_encoding') as encoding, current_setting('fsync') as fsync,
            current_setting('server_version_num')::int as version`,
  );
  const { encoding, fsync, version } = rows[0];
  if (encoding !== 'UTF8') refuse(shown, `keeps text as ${encoding}. Make one with the encoding UTF8.`);
  if (fsync !== 'on') refuse(shown, 'runs with "fsync" off and may lose what it said it kept. Turn it on.');
  if (version < 120_000) refuse(shown, 'is older than PostgreSQL 12. Use a newer one.');
};

/** Makes the tables where they are missing, and sees that they are of this version. */
export const prepare = async (client: pg.Client, shown: string): Promise<void> => {
  await checkServer(client, shown);
  const { rows } = await client.query(`select to_regclass('pipkin_lease') is not null as there`);
  if (!rows[0].there) await client.query(`begin; ${makingLock}; ${tables} commit;`);
  const version = await client.query('select v from pipkin_store');
  if (version.rows[0]?.v !== 1) refuse(shown, 'holds tables of another version of this program.');
};
