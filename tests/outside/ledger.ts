// What was asked of the bot and what came of it, kept apart from the bot's own view: each interaction with its answers, each
// written message with its replies, and every fault.

import type { Wire } from './check.ts';

export type Message = Wire & { readonly id: string; readonly channel_id: string; readonly content: string };
export type Reached = { delivered(): void; lost(): void };

const tick = 20;

/** How long this machine kept this process from running: a clock that ticks late. */
class Stalls {
  readonly #late: { readonly at: number; readonly ms: number }[] = [];
  readonly #timer: NodeJS.Timeout;
  #due = Date.now() + tick;

  constructor() {
    this.#timer = setInterval(() => this.#hear(Date.now()), tick).unref();
  }

  #hear(now: number): void {
    if (now - this.#due > tick) this.#late.push({ at: now, ms: now - this.#due });
    if (this.#late.length > 500) this.#late.shift();
    this.#due = now + tick;
  }

  since(at: number): number {
    return this.#late.filter((one) => one.at > at).reduce((sum, { ms }) => sum + ms, 0);
  }

  stop(): void {
    clearInterval(this.#timer);
  }
}

/** One interaction, from its making to the last follow-up. */
export class Asked implements Reached {
  deliveredAt: number | undefined;
  deliveries = 0;
  /** The platform itself lost it: its session ended before it was delivered. */
  isLost = false;
  /** Milliseconds it was told to wait: 429 and slow answers. They are none of the bot's. */
  toldToWait = 0;
  /** What was asked of the platform for it, and what came back. */
  readonly trace: string[] = [];
  /** When its first answer was asked for, each time. */
  readonly attempts: number[] = [];
  ackedAt: number | undefined;
  ackType: number | undefined;
  /** An answer has been promised ("thinking …") and is not there. */
  isLoading = false;
  /** The answer to its first answer was lost on the way: it will be sent again. */
  isForgotten = false;
  /** Its member was told that the answer came too late. */
  isExcused = false;
  choices: readonly Wire[] = [];
  modal: Wire | undefined;
  readonly messages: Message[] = [];
  readonly bodies: string[] = [];
  original: string | undefined;
  source: Message | undefined;
  readonly what: {
    readonly id: string;
    readonly token: string;
    readonly type: number;
    readonly label: string;
    readonly by: string;
    readonly channel: string;
    readonly optionType: number;
    readonly isExpired: boolean;
  };

  constructor(what: Asked['what'], source?: Message) {
    this.what = what;
    this.source = source;
  }

  delivered(): void {
    this.deliveries += 1;
    if (this.ackedAt === undefined) this.deliveredAt = Date.now();
  }

  lost(): void {
    if (this.ackedAt === undefined) this.isLost = true;
  }

  tell(call: string): void {
    this.trace.push(`${new Date().toISOString().slice(14, 23)} ${call}`);
  }

  mayWait(ms: number): void {
    this.toldToWait += ms;
  }

  forget(isFirst: boolean): void {
    this.isForgotten ||= isFirst;
  }

  get isSettled(): boolean {
    return this.isLost || (this.ackedAt !== undefined && !this.isLoading);
  }
}

/** A message somebody wrote to the bot. */
export class Said implements Reached {
  isLost = false;
  /** Where it was written the bot may not answer. */
  isUnanswerable = false;
  repliedAt = 0;
  deliveries = 0;
  readonly replies: Message[] = [];
  readonly bodies: string[] = [];
  readonly id: string;
  readonly by: string;
  readonly channel: string;
  readonly text: string;

  constructor(id: string, by: string, channel: string, text: string) {
    this.id = id;
    this.by = by;
    this.channel = channel;
    this.text = text;
  }

  delivered(): void {
    this.deliveries += 1;
  }

  lost(): void {
    if (this.replies.length === 0) this.isLost = true;
  }
}

const unfit = /\bundefined\b|\bNaN\b|\[object |\bat [\w.<>]+ \(|node:internal/;

export class Ledger {
  readonly stalls = new Stalls();
  /** The platform waits three seconds for the first answer. */
  deadline = 3000;
  readonly asked: Asked[] = [];
  readonly said: Said[] = [];
  readonly faults: string[] = [];
  readonly counts = new Map<string, number>();
  /** Messages by channel and nonce: one that comes again is the same. */
  readonly nonces = new Map<string, Message>();
  /** What the bot sent without being asked. */
  readonly unasked: Message[] = [];

  fault(kind: string, says: string): void {
    this.count(`fault ${kind}`);
    if (this.faults.length < 400) this.faults.push(`${kind}: ${says}`);
  }

  count(what: string, by = 1): void {
    this.counts.set(what, (this.counts.get(what) ?? 0) + by);
  }

  of(what: string): number {
    return this.counts.get(what) ?? 0;
  }

  byToken(token: string): Asked | undefined {
    return this.asked.find(({ what }) => what.token === token);
  }

  /**
   * Whether a first answer comes too late. What the stand-in itself made it wait, and what the machine held everybody up, is not
   * counted.
   */
  isLate({ deliveredAt, toldToWait }: Asked, now: number): boolean {
    if (deliveredAt === undefined) return true;
    return now - deliveredAt > this.deadline + toldToWait + this.stalls.since(deliveredAt);
  }

  /** The words of the program must not show. */
  words(at: string, body: unknown): void {
    const text = JSON.stringify(body) ?? '';
    const found = unfit.exec(text);
    if (found) this.fault('words', `${at}: ${text.slice(Math.max(0, found.index - 80), found.index + 80)}`);
  }

  /** What an ended run shows of each interaction and message: answered once, in time, with nothing twice. */
  audit(): void {
    for (const one of this.asked) this.#auditAsked(one);
    for (const one of this.said) {
      if (one.isLost) this.count('lost by the platform');
      else if (one.replies.length === 0 && !one.isUnanswerable)
        this.fault('lost', `no answer to "${one.text.slice(0, 120)}"`);
      const nonces = one.replies
        .map(({ nonce, timestamp }) => `${String(nonce)} at ${String(timestamp)}`)
        .join(', ');
      this.#twice(
        one.bodies,
        `"${one.text.slice(0, 120)}", delivered ${one.deliveries} times (${nonces}) ${one.bodies.map((body) => body.slice(0, 260)).join(' | ')}`,
      );
    }
  }

  #auditAsked(one: Asked): void {
    const { label, isExpired } = one.what;
    if (one.isLost) {
      this.count('lost by the platform');
      return;
    }
    if (isExpired) {
      if (one.attempts.length > 1)
        this.fault('expired', `${label} was answered ${one.attempts.length} times`);
      undefined;
      return;
    }
    if (one.ackedAt === undefined) this.fault('missing', `no answer to ${label} (${one.trace.join(', ')})`);
    else if (one.isLoading)
      this.fault('lost', `${label} was promised an answer that never came (${one.trace.join(', ')})`);
    this.#twice(one.bodies, label);
    undefined;
    return;
  }

  #twice(bodies: readonly string[], label: string): void {
    if (new Set(bodies).size < bodies.length) this.fault('doubled', `the same answer twice to ${label}`);
  }

  /** Milliseconds from an interaction's delivery to its first answer, sorted. */
  ackTimes(): number[] {
    return this.asked
      .filter(({ ackedAt, deliveredAt }) => ackedAt !== undefined && deliveredAt !== undefined)
      .map(({ ackedAt, deliveredAt }) => Number(ackedAt) - Number(deliveredAt))
      .sort((a, b) => a - b);
  }
}
