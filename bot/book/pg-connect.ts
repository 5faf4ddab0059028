import pg from 'pg';
import { isConnectionFault } from './pg-faults.ts';

/** Where the database is, as pg takes it. */
export interface PgAddress {
  readonly url: string;
}

/** The address without its password and options, for messages; undefined when it is no address. */
export const shownAddress = (url: string): string | undefined => {
  if (!URL.canParse(url)) return undefined;
  const { protocol, username, host, pathname } = new URL(url);
  if (!/^\/./.test(pathname)) return undefined;
  return `${protocol}//${username ? `${username}@` : ''}${host}${pathname}`;
};

const connectMs = 5_000;
const queryMs = 15_000;

const settings = (url: string): pg.ClientConfig => ({
  connectionString: url,
  application_name: 'pipkin',
  connectionTimeoutMillis: connectMs,
  query_timeout: queryMs,
  keepAlive: true,
});

// "Recorded" means on disk: a server or account that is set to answer before that is overruled for our sessions. A
// stricter setting (waiting for a standby) stays.
const onDisk = `select set_config('synchronous_commit', 'on', false) where current_setting('synchronous_commit') = 'off'`;

/** A connection of its own. A broken one reports itself at the next use, not as an event nobody hears. */
export const connectTo = async (url: string): Promise<pg.Client> => {
  const client = new pg.Client(settings(url));
  client.on('error', () => {});
  try {
    await client.connect();
    await client.query(onDisk);
    return client;
  } catch (fault) {
    client.end().catch(() => {});
    throw fault;
  }
};

/** Lets go of a connection without waiting for what hangs in it. */
export const drop = (client: pg.Client | undefined): void => {
  client?.end().catch(() => {});
};

/** Connections for reading, opened as needed. */
export const readingPool = (url: string): pg.Pool => {
  const pool = new pg.Pool({ ...settings(url), max: 4, idleTimeoutMillis: 30_000 });
  // An idle connection that the server closes: the next reading opens another.
  pool.on('error', () => {});
  return pool;
};

const pauseMs = 100;

const pause = (): Promise<void> => new Promise((resolve) => setTimeout(resolve, pauseMs));

/** Does `work`, again and again while the connection fails and there is patience left; then throws the last fault. */
export const patiently = async <T>(work: () => Promise<T>, waitMs: number): Promise<T> => {
  const end = performance.now() + waitMs;
  for (;;) {
    try {
      return await work();
    } catch (fault) {
      if (!isConnectionFault(fault) || performance.now() > end) throw fault;
      await pause();
    }
  }
};
