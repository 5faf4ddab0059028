/** How often something may be done: so many at once, and so many a minute on the long run. */
export interface Rate {
  readonly burst: number;
  readonly perMinute: number;
}

/** What a group chat may ask of the bot. All the numbers of this kind stand here; README tells members of them. */
export interface Limits {
  /** Commands, buttons, forms and messages of one member in one group. */
  readonly member: Rate;
  /** The same of all members of a group together. */
  readonly group: Rate;
  /** Suggestions while one member is typing: several a second when somebody types fast. */
  readonly typing: Rate;
  /** How often one member's messages are told to wait; the others are passed over. Commands are always told. */
  readonly told: Rate;
  /** Answers under way in the process. More wait for nothing: they are told to try again. */
  readonly underWay: number;
}

export const defaultLimits: Limits = {
  member: { burst: 20, perMinute: 60 },
  group: { burst: 200, perMinute: 1200 },
  typing: { burst: 60, perMinute: 600 },
  told: { burst: 1, perMinute: 2 },
  underWay: 300,
};

/** The limits where whoever runs the bot says how much one member may ask in a minute; a group may ask twenty times that. */
export const limitsFor = (memberPerMinute = defaultLimits.member.perMinute): Limits => {
  const burst = Math.ceil(memberPerMinute / 3);
  return {
    ...defaultLimits,
    member: { burst, perMinute: memberPerMinute },
    group: { burst: burst * 10, perMinute: memberPerMinute * 20 },
  };
};

/** Buckets kept at once; those not used for longest are dropped, so that memory stays flat. */
const mostBuckets = 20_000;

const minuteMs = 60_000;

/** A token, but for what adding up fractions loses. */
const whole = 1 - 1e-9;

interface Bucket {
  readonly tokens: number;
  readonly at: number;
}

/**
 * Token buckets by key: each holds at most `burst` tokens and gains `perMinute` of them a minute. Reads no clock: every
 * call is given the instant in epoch milliseconds. A clock that goes back gives nothing and takes nothing.
 */
export class Buckets {
  readonly #rate: Rate;
  readonly #kept = new Map<string, Bucket>();

  constructor(rate: Rate) {
    this.#rate = rate;
  }

  get size(): number {
    return this.#kept.size;
  }

  /** Takes one token if there is one. Returns 0 then, or else the milliseconds until there will be one. */
  take(key: string, atMs: number): number {
    const waitMs = this.waitMs(key, atMs);
    if (waitMs > 0) return waitMs;
    const { tokens, at } = this.#now(key, atMs);
    this.#kept.delete(key);
    this.#kept.set(key, { tokens: tokens - 1, at });
    const oldest = this.#kept.keys().next();
    if (this.#kept.size > mostBuckets && !oldest.done) this.#kept.delete(oldest.value);
    return 0;
  }

  /** How long until there is a token, in milliseconds; takes none. */
  waitMs(key: string, atMs: number): number {
    const { tokens } = this.#now(key, atMs);
    return tokens >= whole ? 0 : Math.ceil(((1 - tokens) * minuteMs) / this.#rate.perMinute);
  }

  #now(key: string, atMs: number): Bucket {
    const { burst, perMinute } = this.#rate;
    const before = this.#kept.get(key);
    if (!before) return { tokens: burst, at: atMs };
    const gained = (Math.max(0, atMs - before.at) * perMinute) / minuteMs;
    return { tokens: Math.min(burst, before.tokens + gained), at: Math.max(before.at, atMs) };
  }
}
