import { randomUUID } from 'node:crypto';
import { faultFields } from '../log.ts';
import type { ChatLog } from './front.ts';

/** So many faults that nobody held, within so long, mean that going on helps nobody. */
const tooMany = 20;
const withinMs = 60_000;

const strays = ['unhandledRejection', 'uncaughtException'] as const;

/**
 * Keeps the process up when a fault is held by nobody (a malformed event leads to one inside the library): it is logged
 * under an id. Where they come in a flood `giveUp` is called, so that whoever supervises the process starts it afresh.
 *
 * @returns ends that
 */
export const holdStray = (log: ChatLog, giveUp: () => void): (() => void) => {
  let recent: readonly number[] = [];
  const hold = (fault: unknown): void => {
    const now = performance.now();
    recent = [...recent.filter((at) => now - at < withinMs), now];
    log.error('chat.stray-fault', { id: randomUUID().slice(0, 8), ...faultFields(fault, 'info') });
    if (recent.length > tooMany) giveUp();
  };
  for (const stray of strays) process.on(stray, hold);
  return () => {
    for (const stray of strays) process.off(stray, hold);
  };
};
