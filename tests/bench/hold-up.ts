import { readFileSync } from 'node:fs';
import { setTimeout as sleep } from 'node:timers/promises';

/** How long a process was held up at a stretch, in ms: by the clock, and of that on a processor. */
export interface HoldUp {
  readonly clock: number;
  readonly processor: number;
}

/**
 * Time the main thread has spent on a processor, in ms, where the system tells (Linux; to a few ms, as it counts by
 * ticks); the clock elsewhere.
 */
const mainThreadMs = (): number => {
  try {
    return Number(readFileSync('/proc/self/schedstat', 'utf8').split(' ')[0]) / 1e6;
  } catch {
    return performance.now();
  }
};

const settleMs = 40;

/**
 * Does `work` while a timer of 1 ms runs, and gives the longest stretch in which the timer was not heard: nothing else
 * would have been answered meanwhile.
 */
export const longestHoldUp = async (work: () => Promise<unknown>): Promise<HoldUp> => {
  await sleep(settleMs);
  let longest: HoldUp = { clock: 0, processor: 0 };
  let last = { clock: performance.now(), processor: mainThreadMs() };
  const heard = (): void => {
    const now = { clock: performance.now(), processor: mainThreadMs() };
    const clock = now.clock - last.clock;
    const processor = Math.min(clock, now.processor - last.processor);
    longest = {
      clock: Math.max(longest.clock, clock),
      processor: Math.max(longest.processor, processor),
    };
    last = now;
  };
  const timer = setInterval(heard, 1);
  await sleep(settleMs);
  longest = { clock: 0, processor: 0 };
  await work();
  await sleep(settleMs);
  clearInterval(timer);
  return longest;
};
