import { randomUUID } from 'node:crypto';
import type pg from 'pg';
import { connectTo, drop } from './pg-connect.ts';
import { type Shard, shardName } from './shard.ts';
import { NotRecorded, StoreTrouble } from './trouble.ts';

/**
 * The right to write the groups of one shard. Every write names its token and is refused by the database itself when
 * another process has taken the shard over since, however late it comes.
 */
export interface Lease {
  readonly name: string;
  /** What a write must name now. */
  readonly token: string;
  /**
   * Takes a new token by way of `client`. Waits for a write that is still under way in the database, and one that
   * comes late from a connection that was given up finds its token gone. Rejects when the lease is lost.
   */
  renewToken(client: pg.Client): Promise<void>;
  /** Resolves when another process has taken the shard over. Never otherwise. */
  readonly lost: Promise<void>;
  /** Says so from outside: a write was refused. */
  lose(): void;
  release(): Promise<void>;
}

/** Without a sign of life for this long, another process may take over. */
export const leaseMs = 10_000;
const renewEveryMs = 3_000;
const askAgainMs = 250;

const until = `clock_timestamp() + make_interval(secs => ${leaseMs / 1000})`;
const session = 'select pid, backend_start from pg_stat_activity where pid = pg_backend_pid()';

// A holder is alive while its time runs and its session is there. The session of a killed process ends with it, so
// its shard is free at once; one that is only stopped, or cut off, keeps its session and is waited out.
const living = `until > clock_timestamp() and exists
  (select 1 from pg_stat_activity a where a.pid = l.pid and a.backend_start = l.since)`;

const takeSql = `
  with me as (${session})
  insert into pipkin_lease (name, shards, holder, token, until, pid, since)
  select $1, $2, $3, nextval('pipkin_fence'), ${until}, me.pid, me.backend_start from me
  on conflict (name) do update set shards = excluded.shards, holder = excluded.holder, token = excluded.token,
    until = excluded.until, pid = excluded.pid, since = excluded.since
  returning token`;

const tokenSql = `
  update pipkin_lease set token = nextval('pipkin_fence') where name = $1 and holder = $2 returning token`;

const renewSql = `
  with me as (${session})
  update pipkin_lease set until = ${until}, pid = me.pid, since = me.backend_start from me
  where name = $1 and holder = $2`;

/** The token, or the name of the living holder in the way. */
type Taking = { readonly token: string } | { readonly held: string };

const tryTake = async (client: pg.Client, shard: Shard, holder: string): Promise<Taking> => {
  const name = shardName(shard);
  await client.query('begin');
  try {
    // One at a time, or two processes could both find the shard free.
    await client.query('select pg_advisory_xact_lock(7477, 2)');
    const held = await client.query(
      `select name from pipkin_lease l where (name = $1 or shards <> $2) and ${living} limit 1`,
      [name, shard.count],
    );
    if (held.rows[0]) {
      await client.query('rollback');
      return { held: held.rows[0].name };
    }
    // Groups are shared out anew with another number of shards: no token of the old sharing may write any more.
    await client.query('delete from pipkin_lease where shards <> $1', [shard.count]);
    const taken = await client.query(takeSql, [name, shard.count, holder]);
    await client.query('commit');
    return { token: taken.rows[0].token };
  } catch (fault) {
    await client.query('rollback').catch(() => {});
    throw fault;
  }
};

interface Wanted {
  readonly shown: string;
  readonly shard: Shard;
  readonly waitMs: number;
}

const inUse = (shown: string, held: string): StoreTrouble =>
  new StoreTrouble(
    'in-use',
    `The store "${shown}" is in use by another running copy of the program (${held}). Stop that one first.`,
  );

const take = async (client: pg.Client, holder: string, { shown, shard, waitMs }: Wanted): Promise<string> => {
  const end = performance.now() + waitMs;
  for (;;) {
    const taken = await tryTake(client, shard, holder);
    if ('token' in taken) return taken.token;
    if (performance.now() >= end) throw inUse(shown, taken.held);
    await new Promise((resolve) => setTimeout(resolve, askAgainMs));
  }
};

/** Why a write was refused by the database: another process has the shard now. */
export const takenOver = (): NotRecorded =>
  new NotRecorded('failed', { cause: new Error('another process has taken this shard over') });

/** Renews the lease until it is lost or released; a database that is away is asked again and again. */
class HeldLease implements Lease {
  readonly name: string;
  readonly lost: Promise<void>;
  lose: () => void = () => {};
  readonly #holder: string;
  #token: string;
  readonly #url: string;
  #client: pg.Client | undefined;
  #timer: NodeJS.Timeout | undefined;
  #over = false;

  constructor(url: string, client: pg.Client, held: { name: string; holder: string; token: string }) {
    this.#url = url;
    this.#client = client;
    this.name = held.name;
    this.#holder = held.holder;
    this.#token = held.token;
    this.lost = new Promise((resolve) => {
      this.lose = () => {
        this.#over = true;
        clearTimeout(this.#timer);
        resolve();
      };
    });
    this.#renewLater();
  }

  get token(): string {
    return this.#token;
  }

  async renewToken(client: pg.Client): Promise<void> {
    const { rows } = await client.query(tokenSql, [this.name, this.#holder]);
    if (rows[0]) this.#token = rows[0].token;
    else {
      this.lose();
      throw takenOver();
    }
  }

  #renewLater(): void {
    this.#timer = setTimeout(() => void this.#renew(), renewEveryMs);
    this.#timer.unref();
  }

  async #renew(): Promise<void> {
    try {
      this.#client ??= await connectTo(this.#url);
      const { rowCount } = await this.#client.query(renewSql, [this.name, this.#holder]);
      if (rowCount === 0) this.lose();
    } catch {
      drop(this.#client);
      this.#client = undefined;
    }
    if (!this.#over) this.#renewLater();
  }

  async release(): Promise<void> {
    this.#over = true;
    clearTimeout(this.#timer);
    try {
      await this.#client?.query('delete from pipkin_lease where name = $1 and holder = $2', [
        this.name,
        this.#holder,
      ]);
    } catch {
      // It runs out by itself.
    }
    await this.#client?.end().catch(() => {});
  }
}

/**
 * Takes the lease of `shard`, waiting up to `waitMs` for a holder that may have gone; `client` becomes the lease's
 * own. Throws StoreTrouble `in-use`.
 */
export const takeLease = async (url: string, client: pg.Client, wanted: Wanted): Promise<Lease> => {
  const holder = randomUUID();
  const token = await take(client, holder, wanted);
  return new HeldLease(url, client, { name: shardName(wanted.shard), holder, token });
};
