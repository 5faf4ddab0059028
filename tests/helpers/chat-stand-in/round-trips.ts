import type { Filled, Place } from './asked.ts';
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
  readonly command: {
    readonly name: string;
    readonly options?: Filled;
    readonly place?: Place;
  };
}

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
      const start = performance.now();
      await standIn.slash(command.name, command.options, command.place);
      latencies.push(performance.now() - start);
    }
  };
  const start = performance.now();
  await Promise.all(Array.from({ length: concurrency }, worker));
  return { latencies, elapsedMs: performance.now() - start };
};
