// When connections break and calls are refused: armed now and then, and set off by the next thing that is sent, a few
// milliseconds later, so that it meets answers under way.

import { type Break, breaks } from './gateway-session.ts';
import type { StandIn } from './stand-in.ts';
import { pause, type Talk, until } from './talk.ts';
import { type Burst, bursts } from './trouble.ts';
import type { Chance } from './values.ts';

export type Plan = { readonly breaks: number; readonly bursts: number; readonly betweenMs: number };

export class Weather {
  readonly #standIn: StandIn;
  readonly #chance: Chance;
  readonly #plan: Plan;
  #armed: (() => void) | undefined;
  #isOver = false;
  #isHeld = false;
  broken = 0;
  burst = 0;

  constructor(standIn: StandIn, talk: Talk, chance: Chance, plan: Plan) {
    this.#standIn = standIn;
    this.#chance = chance;
    this.#plan = plan;
    talk.onSent = () => {
      const set = this.#armed;
      this.#armed = undefined;
      set?.();
    };
  }

  get isDone(): boolean {
    return this.broken >= this.#plan.breaks && this.burst >= this.#plan.bursts;
  }

  stop(): void {
    this.#isOver = true;
  }

  /** Fair weather for as long as something runs. */
  async calm<T>(during: () => Promise<T>): Promise<T> {
    this.#isHeld = true;
    await until(() => this.#standIn.gateway.isConnected, 60_000);
    await pause(1500);
    try {
      return await during();
    } finally {
      this.#isHeld = false;
    }
  }

  async run(): Promise<void> {
    await Promise.all([this.#breaking(), this.#bursting()]);
  }

  async #breaking(): Promise<void> {
    while (!this.#isOver && this.broken < this.#plan.breaks) {
      await pause(this.#chance.between(0.5, 1.5) * this.#plan.betweenMs);
      if (this.#isHeld || !this.#standIn.gateway.isConnected) continue;
      const how = breaks[this.broken % breaks.length] ?? 'abrupt';
      await this.#next();
      if (await this.#break(how)) this.broken += 1;
    }
  }

  /** Waits for something to be sent, and then a moment. */
  async #next(): Promise<void> {
    let isSent = false;
    this.#armed = () => {
      isSent = true;
    };
    await until(() => isSent || this.#isOver, 1000);
    await pause(this.#chance.between(0, 20));
  }

  async #break(how: Break): Promise<boolean> {
    const { gateway, ledger } = this.#standIn;
    const back = (): number => ledger.of('resumed') + ledger.of('identify');
    const before = back();
    if (this.#isHeld || !gateway.break(how)) return false;
    const isBack = await until(() => back() > before && gateway.isConnected, 60_000);
    if (!isBack) ledger.fault('gone', `did not come back after ${how}`);
    return true;
  }

  async #bursting(): Promise<void> {
    while (!this.#isOver && this.burst < this.#plan.bursts) {
      const kind = bursts[this.burst % bursts.length] ?? 'global';
      // One that met nothing is tried again: not every kind of call is made every moment, and further messages are rare.
      const most = kind === 'webhook' ? 2 : 10;
      for (let round = 0; round < most && !(await this.#burst(kind)); round += 1);
      this.burst += 1;
    }
  }

  /** One trouble after the other: several at once would leave nobody the three seconds there are. Whether it met anything. */
  async #burst(kind: Burst): Promise<boolean> {
    const { trouble, ledger } = this.#standIn;
    await pause(this.#chance.between(0.3, 1) * this.#plan.betweenMs);
    // What waits for fair weather to end has not been tried.
    await until(() => this.#isOver || !this.#isHeld, 120_000);
    if (this.#isOver) return true;
    const effects = (): number =>
      ['429', '5xx', 'lines cut', 'answers lost on the way', 'calls slowed'].reduce(
        (sum, what) => sum + ledger.of(what),
        0,
      );
    const before = effects();
    // Where a first answer may have to wait there are three seconds in all.
    const ms =
      this.#chance.between(300, 900) * (['global', 'messages', 'webhook', 'forgets'].includes(kind) ? 2 : 1);
    trouble.burst(kind, ms);
    await pause(ms + 300);
    return effects() > before;
  }
}
