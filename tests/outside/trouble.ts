// Troubles of the API, by the platform's published page "Rate Limits": 429 for a route or for everything, with how long
// to wait; servers that fail; answers that are slow, or lost on their way back.

import type { Ledger } from './ledger.ts';

export type Family = 'callback' | 'webhook' | 'messages' | 'other';
export type Burst =
  | 'callback'
  | 'webhook'
  | 'messages'
  | 'global'
  | 'fails'
  | 'slow'
  | 'forgets'
  | 'down'
  | 'cut';
export const bursts: readonly Burst[] = [
  'callback',
  'down',
  'messages',
  'global',
  'cut',
  'fails',
  'webhook',
  'slow',
  'forgets',
];

export type Refusal = {
  readonly status: number;
  readonly headers: { [name: string]: string };
  readonly body: unknown;
};

/** `bucket` is the route with its top-level ids: what the platform counts apart. */
export type Call = { readonly family: Family; readonly bucket: string };

export class Trouble {
  readonly #ledger: Ledger;
  readonly #until = new Map<Burst, number>();
  readonly #fails = new Map<string, number>();
  /** From when to when nothing may come again, for each bucket that was told to wait. */
  readonly #told = new Map<string, { readonly from: number; readonly to: number; early: number }>();
  readonly #window = new Map<string, { start: number; used: number }>();

  constructor(ledger: Ledger) {
    this.#ledger = ledger;
  }

  burst(kind: Burst, ms: number): void {
    this.#ledger.count('bursts');
    this.#ledger.count(`burst ${kind}`);
    this.#until.set(kind, Date.now() + ms);
  }

  #left(kind: Burst): number {
    return Math.max(0, (this.#until.get(kind) ?? 0) - Date.now());
  }

  #tooEarly(key: string): void {
    const told = this.#told.get(key);
    const now = Date.now();
    if (!told || now < told.from + 60 || now > told.to - 10) return;
    // What was on its way when it was told to wait, or was made again after a failure, is no fault; to go on is.
    told.early += 1;
    this.#ledger.count('calls before they may');
    if (told.early > 3)
      this.#ledger.fault('too early', `${key}: ${Math.round(told.to - now)} ms before it may`);
  }

  #wait(key: string, ms: number, scope: 'user' | 'global', bucket: string): Refusal {
    const now = Date.now();
    const before = this.#told.get(key);
    const isSame = before !== undefined && now < before.to;
    this.#told.set(key, isSame ? { ...before, to: now + ms } : { from: now, to: now + ms, early: 0 });
    this.#ledger.count('429');
    this.#ledger.count(`429 ${scope === 'global' ? 'global' : 'route'}`);
    const seconds = Math.ceil(ms) / 1000;
    const route = {
      'x-ratelimit-limit': '5',
      'x-ratelimit-remaining': '0',
      'x-ratelimit-reset': String((now + ms) / 1000),
      'x-ratelimit-reset-after': String(seconds),
      'x-ratelimit-bucket': bucketName(bucket),
    };
    return {
      status: 429,
      headers: {
        'retry-after': String(seconds),
        'x-ratelimit-scope': scope,
        ...(scope === 'global' ? { 'x-ratelimit-global': 'true' } : route),
      },
      body: { message: 'You are being rate limited.', retry_after: seconds, global: scope === 'global' },
    };
  }

  /** How a call is refused before anything is done, if it is. */
  before({ family, bucket }: Call): Refusal | undefined {
    this.#tooEarly(bucket);
    const interactive = family === 'callback' || family === 'webhook';
    if (!interactive) {
      this.#tooEarly('everything');
      const left = this.#left('global');
      if (left > 0) return this.#wait('everything', left + 5, 'global', bucket);
    }
    const left = family === 'other' ? 0 : this.#left(family);
    if (left > 0) return this.#wait(bucket, left + 5, 'user', bucket);
    if (this.#left('down') > 0) return this.#broken();
    return this.#left('fails') > 0 ? this.#fail(bucket) : undefined;
  }

  /** Whether the line is cut before anything is done. */
  cuts(): boolean {
    if (this.#left('cut') === 0) return false;
    this.#ledger.count('lines cut');
    return true;
  }

  /** A server that fails: each call twice at most, as a server that comes back would. */
  #fail(bucket: string): Refusal | undefined {
    const failed = this.#fails.get(bucket) ?? 0;
    if (failed >= 2) {
      this.#fails.delete(bucket);
      return undefined;
    }
    this.#fails.set(bucket, failed + 1);
    return this.#broken();
  }

  #broken(): Refusal {
    this.#ledger.count('5xx');
    const status = [500, 502, 503][this.#ledger.of('5xx') % 3] ?? 500;
    return {
      status,
      headers: {},
      body: status === 500 ? { message: '500: Internal Server Error', code: 0 } : '',
    };
  }

  /** Whether the answer to what was done is lost on its way back. */
  forgets(): boolean {
    if (this.#left('forgets') === 0 || this.#ledger.of('answers asked for') % 2 === 0) return false;
    this.#ledger.count('answers lost on the way');
    return true;
  }

  delay(): number {
    if (this.#left('slow') === 0) return 0;
    this.#ledger.count('calls slowed');
    return 250;
  }

  /** The headers of an ordinary answer; a bucket that is used up is refused. */
  counted({ family, bucket }: Call): Refusal | { readonly [name: string]: string } {
    if (family === 'other' || family === 'callback') return {};
    const limit = family === 'webhook' ? 5 : 10;
    const length = family === 'webhook' ? 2000 : 1000;
    const now = Date.now();
    let window = this.#window.get(bucket);
    if (!window || now > window.start + length) window = { start: now, used: 0 };
    this.#window.set(bucket, window);
    const left = window.start + length - now;
    if (window.used >= limit) {
      this.#ledger.count('429 for more than was announced');
      return this.#wait(bucket, left + 5, 'user', bucket);
    }
    window.used += 1;
    return {
      'x-ratelimit-limit': String(limit),
      'x-ratelimit-remaining': String(limit - window.used),
      'x-ratelimit-reset': String((now + left) / 1000),
      'x-ratelimit-reset-after': String(left / 1000),
      'x-ratelimit-bucket': bucketName(bucket),
    };
  }
}

/** The name of a bucket tells routes apart, not their top-level ids. */
function bucketName(bucket: string): string {
  const route = bucket.replace(/\d{15,}|[0-9a-f]{32,}/g, '');
  return Buffer.from(route).toString('hex').slice(0, 32);
}

export const isRefusal = (value: object): value is Refusal => 'status' in value && 'headers' in value;
