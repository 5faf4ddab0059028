import { setTimeout as sleep } from 'node:timers/promises';
import { GatewayCloseCodes } from 'discord-api-types/v10';
import type { StandIn } from '../chat-stand-in/stand-in.ts';
import type { Call, Trouble } from '../chat-stand-in/state.ts';
import type { Dice } from '../dice.ts';

/**
 * The ways a connection ends after which a client is to come back: the platform's documented close codes (from memory),
 * a plain break, the platform's own request to reconnect, and a session that cannot be resumed.
 */
export const breaks = [
  GatewayCloseCodes.UnknownError,
  GatewayCloseCodes.UnknownOpcode,
  GatewayCloseCodes.DecodeError,
  GatewayCloseCodes.NotAuthenticated,
  GatewayCloseCodes.AlreadyAuthenticated,
  GatewayCloseCodes.InvalidSeq,
  GatewayCloseCodes.RateLimited,
  GatewayCloseCodes.SessionTimedOut,
  'cut',
  'reconnect',
  'void',
] as const;
export type Break = (typeof breaks)[number];

/** Breaks the connection this way and resolves when it is back. */
export const breakOff = async ({ gateway }: StandIn, how: Break): Promise<void> => {
  if (how === 'cut') gateway.drop({ resumable: true, ask: false });
  else if (how === 'reconnect') gateway.drop({ resumable: true, ask: true });
  else if (how === 'void') gateway.drop({ resumable: false, ask: false });
  else gateway.shut(how);
  await gateway.live();
};

/** How long after a refusal requests may still arrive that had been sent before it was read, in milliseconds. */
const graceMs = 150;

/** Bursts of refusals for asking too fast, and whether the bot waits as it is told. */
export class RateLimits {
  refused = 0;
  /** Requests that came although the bot had been told to wait. */
  readonly impatient: string[] = [];
  readonly #until = new Map<string, { readonly from: number; readonly to: number }>();
  readonly #dice: Dice;
  #share = 0;

  constructor(dice: Dice) {
    this.#dice = dice;
  }

  /** From now on this share of the requests is refused. */
  set share(share: number) {
    this.#share = share;
  }

  /** For `standIn.trouble`. */
  readonly trouble = (call: Call): Trouble | undefined => {
    const route = `${call.method} ${call.parts.join('/')}`;
    const now = performance.now();
    // Answers to interactions are not bound to the limit of all routes (documentation of rate limits, from memory).
    const bound = ['interactions', 'webhooks'].includes(call.parts[0] ?? '') ? [route] : ['all', route];
    for (const key of bound) {
      const wait = this.#until.get(key);
      if (wait && now > wait.from + graceMs && now < wait.to) this.impatient.push(route);
    }
    if (!this.#dice.chance(this.#share)) return undefined;
    const seconds = this.#dice.pick([0.1, 0.3, 0.6]);
    const scope = this.#dice.pick(['user', 'user', 'shared', 'global'] as const);
    this.refused += 1;
    this.#until.set(scope === 'global' ? 'all' : route, { from: now, to: now + seconds * 1000 - 5 });
    return {
      result: {
        status: 429,
        body: { message: 'You are being rate limited.', retry_after: seconds, global: scope === 'global' },
        headers: {
          'retry-after': String(seconds),
          'x-ratelimit-scope': scope,
          ...(scope === 'global' ? { 'x-ratelimit-global': 'true' } : {}),
        },
      },
    };
  };

  /** Lets the last of the waiting be over. */
  async calm(): Promise<void> {
    this.#share = 0;
    await sleep(650);
  }
}
