import type { Filled, Place } from './asked.ts';
import type { Exchange } from './exchange.ts';
import type { StandIn } from './stand-in.ts';

export interface RoundTrips {
  /** Milliseconds from sending the interaction to the answer's arrival, one for each, in the order answered. */
  readonly latencies: readonly number[];
  /** Milliseconds for all of them together. */
  readonly elapsedMs: number;
}

export interface RoundTripSetup {
  readonly n: number;
  /** How many are under way at a time. */
  readonly concurrency: number;
  readonly command: Asked;
}

/** A command to ask again and again; `options` may say what to fill in the nth time, from 0. */
export interface Asked {
  readonly name: string;
  readonly options?: Filled | ((at: number) => Filled);
  readonly place?: Place;
}

const filled = ({ options = {} }: Asked, at: number): Filled =>
  typeof options === 'function' ? options(at) : options;

/** Asks one slash command `n` times of whatever bot is connected to the stand-in. Rejects when one is not answered. */
export const roundTrips = async (
  standIn: StandIn,
  { n, concurrency, command }: RoundTripSetup,
): Promise<RoundTrips> => {
  const latencies: number[] = [];
  let left = n;
  const worker = async (): Promise<void> => {
    while (left > 0) {
      left -= 1;
      const options = filled(command, n - 1 - left);
      const start = performance.now();
      await standIn.slash(command.name, options, command.place);
      latencies.push(performance.now() - start);
    }
  };
  const start = performance.now();
  await Promise.all(Array.from({ length: concurrency }, worker));
  return { latencies, elapsedMs: performance.now() - start };
};

export interface ArrivalsSetup {
  readonly n: number;
  readonly perSecond: number;
  readonly command: Asked;
}

/**
 * Asks `n` times at a fixed rate, whether answers come or not. Times in milliseconds until the platform had the
 * acknowledgement, each from the instant it was due to be asked: whatever held up the asking counts too, so that a bot that
 * stands still cannot hide behind questions that were never put.
 */
export const arrivals = async (
  standIn: StandIn,
  { n, perSecond, command }: ArrivalsSetup,
): Promise<readonly number[]> => {
  const start = performance.now();
  const asked: { readonly due: number; readonly exchange: Exchange }[] = [];
  for (let at = 0; at < n; at += 1) {
    const due = start + (1000 * at) / perSecond;
    const early = due - performance.now();
    if (early > 0) await new Promise((resolve) => setTimeout(resolve, early));
    asked.push({ due, exchange: standIn.slashSent(command.name, filled(command, at), command.place) });
  }
  await Promise.all(asked.map(({ exchange }) => exchange.until(1)));
  return asked.map(({ due, exchange }) => exchange.startedAt + (exchange.acknowledgedMs ?? 0) - due);
};
