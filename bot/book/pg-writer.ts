import type pg from 'pg';
import { connectTo, drop, patiently } from './pg-connect.ts';
import { isConnectionFault, notRecorded } from './pg-faults.ts';
import { type Lease, takenOver } from './pg-lease.ts';
import { maxChanges, type SealedChange } from './store-over.ts';
import { NotRecorded } from './trouble.ts';

interface Write {
  readonly changes: readonly SealedChange[];
  readonly resolve: (existed: readonly boolean[]) => void;
  readonly reject: (problem: Error) => void;
}

// One statement is one transaction. The lease's row is locked first: a process that takes the shard over changes that
// row, so it waits for a write that has begun, and a write that comes later finds another token and does nothing.
const writeSql = `
  with held as materialized (select 1 from pipkin_lease where name = $1 and token = $2 for share),
  gone as (
    delete from pipkin_book where key = any($3::text[]) and exists (select 1 from held) returning key),
  put as (
    insert into pipkin_book (key, value, fence)
    select k, v, $2 from unnest($4::text[], $5::text[]) as t(k, v) where exists (select 1 from held)
    on conflict (key) do update set value = excluded.value, fence = excluded.fence)
  select exists (select 1 from held) as held, array(select key from gone) as gone`;

/** The last word on each key: a statement may touch a row only once. */
const lastOf = (changes: readonly SealedChange[]): Map<string, string | undefined> =>
  new Map(changes.map(({ key, text }) => [key, text]));

const parametersOf = (changes: readonly SealedChange[]): unknown[] => {
  const last = [...lastOf(changes)];
  const gone = last.filter(([, text]) => text === undefined).map(([key]) => key);
  const put = last.filter(([, text]) => text !== undefined);
  return [gone, put.map(([key]) => key), put.map(([, text]) => text)];
};

/**
 * Writes to the database, one transaction after the other; what is asked for while one is under way goes into the
 * next one together. So writes land in the order they were asked for, and many at once cost few flushes.
 *
 * When the connection breaks it cannot be known whether the last transaction was committed. It is sent again over a
 * new connection: the same keys with the same values do no harm if it was, and the new token sees to it that the old
 * one cannot arrive later. Only when the database stays away is the write given up, as `uncertain` if it may have been
 * committed.
 */
export class PgWriter {
  readonly #url: string;
  readonly #lease: Lease;
  readonly #waitMs: number;
  #client: pg.Client | undefined;
  #queue: Write[] = [];
  #draining: Promise<void> | undefined;
  #closed = false;

  constructor(url: string, lease: Lease, waitMs: number) {
    this.#url = url;
    this.#lease = lease;
    this.#waitMs = waitMs;
  }

  write(changes: readonly SealedChange[]): Promise<readonly boolean[]> {
    if (this.#closed)
      return Promise.reject(new NotRecorded('failed', { cause: new Error('the store is closed') }));
    const written = new Promise<readonly boolean[]>((resolve, reject) => {
      this.#queue.push({ changes, resolve, reject });
    });
    this.#draining ??= this.#drain();
    return written;
  }

  /** Waits for what is being written. */
  async close(): Promise<void> {
    this.#closed = true;
    await this.#draining;
    await this.#client?.end().catch(() => {});
  }

  async #drain(): Promise<void> {
    // Whatever is asked for in this turn of the event loop goes together.
    await new Promise((resolve) => setImmediate(resolve));
    while (this.#queue.length > 0) await this.#commit(this.#nextBatch());
    this.#draining = undefined;
  }

  #nextBatch(): Write[] {
    let count = 0;
    const end = this.#queue.findIndex(({ changes }, at) => {
      count += changes.length;
      return at > 0 && count > maxChanges;
    });
    return this.#queue.splice(0, end === -1 ? this.#queue.length : end);
  }

  async #commit(batch: readonly Write[]): Promise<void> {
    const changes = batch.flatMap((write) => write.changes);
    try {
      const gone = await this.#send(parametersOf(changes));
      for (const write of batch)
        write.resolve(write.changes.map(({ key, text }) => text !== undefined || gone.has(key)));
    } catch (fault) {
      const problem = fault instanceof NotRecorded ? fault : notRecorded(fault);
      for (const write of batch) write.reject(problem);
    }
  }

  async #send(parameters: readonly unknown[]): Promise<ReadonlySet<string>> {
    let broken = false;
    try {
      return await patiently(async () => {
        const client = await this.#connected();
        return this.#ask(client, parameters).catch((fault) => {
          broken ||= isConnectionFault(fault);
          throw fault;
        });
      }, this.#waitMs);
    } catch (fault) {
      throw broken ? new NotRecorded('uncertain', { cause: fault }) : fault;
    }
  }

  async #connected(): Promise<pg.Client> {
    if (this.#client) return this.#client;
    const client = await connectTo(this.#url);
    try {
      await this.#lease.renewToken(client);
    } catch (fault) {
      drop(client);
      throw fault;
    }
    // A connection that ends while nothing is being written is known to be gone before the next write is sent over it.
    client.once('end', () => {
      if (this.#client === client) this.#client = undefined;
    });
    this.#client = client;
    return client;
  }

  async #ask(client: pg.Client, parameters: readonly unknown[]): Promise<ReadonlySet<string>> {
    try {
      const { rows } = await client.query(writeSql, [this.#lease.name, this.#lease.token, ...parameters]);
      if (rows[0].held) return new Set(rows[0].gone);
    } catch (fault) {
      if (isConnectionFault(fault)) {
        drop(client);
        this.#client = undefined;
      }
      throw fault;
    }
    this.#lease.lose();
    throw takenOver();
  }
}
