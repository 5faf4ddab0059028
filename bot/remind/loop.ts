import type { Keeper } from '../book/keeper.ts';
import { StoreTrouble } from '../book/trouble.ts';
import type { Agenda } from './agenda.ts';
import { type Delivering, deliver, type Unwritten } from './deliver.ts';

export interface LoopParts extends Delivering {
  readonly keeper: Keeper;
  readonly agenda: Agenda;
  /** Which groups are this process's to tell: a terminal tells its own book, a shard its own servers. */
  readonly owns: (group: string) => boolean;
  /** A fault that was met: ids and codes only, no member's words. */
  readonly onFault: (fault: unknown) => void;
}

/** Longest sleep: a computer that slept, or a clock put right, is noticed after as much. */
const longestSleepMs = 30_000;
/** Messages under way at a time. */
const atOnce = 4;
/** Whatever a plan says, a group is not looked at again sooner than this. */
const leastMs = 1000;
const firstRetryMs = 60_000;
const lastRetryMs = 30 * 60_000;

/** Groups that could not be told for now: when each is tried again. */
const retries = () => {
  const tries = new Map<string, number>();
  return {
    again(group: string, now: number): number {
      const count = tries.get(group) ?? 0;
      tries.set(group, count + 1);
      return now + Math.min(lastRetryMs, firstRetryMs * 2 ** count);
    },
    forget: (group: string): void => void tries.delete(group),
  };
};

/** Tells groups what is due when their hour comes. What others write into the agenda meanwhile counts at once. */
export class ReminderLoop {
  readonly #parts: LoopParts;
  readonly #unwritten: Unwritten = new Map();
  readonly #retry = retries();
  #stopped = false;
  #timer: NodeJS.Timeout | undefined;
  #sweeping: Promise<number> | undefined;

  constructor(parts: LoopParts) {
    this.#parts = parts;
  }

  /** Sweeps from now on, until stopped. */
  start(): void {
    if (this.#stopped) return;
    const { agenda, clock } = this.#parts;
    const next = (agenda.next() ?? Number.POSITIVE_INFINITY) - clock();
    const wait = Math.min(longestSleepMs, Math.max(0, next));
    this.#timer = setTimeout(() => void this.sweep().finally(() => this.start()), wait);
    this.#timer.unref();
  }

  /** Looks once at every group whose time has come. Resolves with how many were told something. Never rejects. */
  sweep(): Promise<number> {
    this.#sweeping ??= this.#tellAll().finally(() => {
      this.#sweeping = undefined;
    });
    return this.#sweeping;
  }

  /** Lets what is being sent finish, then ends. */
  async stop(): Promise<void> {
    this.#stopped = true;
    clearTimeout(this.#timer);
    await this.#sweeping;
  }

  async #tellAll(): Promise<number> {
    const { agenda, clock, owns } = this.#parts;
    let told = 0;
    const worker = async (): Promise<void> => {
      while (!this.#stopped) {
        const group = agenda.take(clock());
        if (group === undefined) return;
        if (owns(group) && (await this.#tell(group))) told += 1;
      }
    };
    await Promise.all(Array.from({ length: atOnce }, worker));
    return told;
  }

  async #tell(group: string): Promise<boolean> {
    const { keeper, clock, onFault } = this.#parts;
    try {
      const { did, nextMs } = await deliver(this.#parts, await keeper.open(group), this.#unwritten);
      if (did === 'later') this.#lookAgain(group, this.#retry.again(group, clock()));
      else {
        this.#retry.forget(group);
        this.#lookAgain(group, nextMs);
      }
      return did === 'sent';
    } catch (fault) {
      onFault(fault);
      const closed = fault instanceof StoreTrouble && fault.code === 'closed';
      if (!closed) this.#lookAgain(group, this.#retry.again(group, clock()));
      return false;
    }
  }

  /** A change of the book may have set the group anew meanwhile: the sooner of the two counts, and a needless look costs little. */
  #lookAgain(group: string, at: number | undefined): void {
    const { agenda, clock } = this.#parts;
    const soonest = Math.min(at ?? Number.POSITIVE_INFINITY, agenda.at(group) ?? Number.POSITIVE_INFINITY);
    agenda.set(group, Number.isFinite(soonest) ? Math.max(soonest, clock() + leastMs) : undefined);
  }
}
