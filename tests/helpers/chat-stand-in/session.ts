import { GatewayDispatchEvents, type GatewayDispatchPayload, GatewayOpcodes } from 'discord-api-types/v10';
import type { WebSocket } from 'ws';

type Unnumbered<P> = P extends GatewayDispatchPayload ? Omit<P, 'op' | 's'> : never;
/** An event's type with the data that goes with it; the gateway numbers it. */
export type Dispatched = Unnumbered<GatewayDispatchPayload>;

const mostKept = 500;

/** One shard's side of the gateway: one session at a time, its events numbered and kept for a resume. */
export class Session {
  readonly shard: number;
  #socket: WebSocket | undefined;
  #session = 0;
  #sequence = 0;
  #kept: { readonly s: number; readonly payload: string }[] = [];
  #waiting: (() => void)[] = [];
  #live = false;
  resumable = true;

  constructor(shard: number) {
    this.shard = shard;
  }

  get id(): string {
    return `session-${this.shard}-${this.#session}`;
  }

  /** Resolves when the session is live (again). */
  live(): Promise<void> {
    if (this.#live) return Promise.resolve();
    return new Promise((resolve) => this.#waiting.push(resolve));
  }

  /** Nothing is sent any more until it begins or resumes. */
  sleep(): WebSocket | undefined {
    this.#live = false;
    return this.#socket;
  }

  begin(socket: WebSocket): void {
    this.#session += 1;
    this.#sequence = 0;
    this.#kept = [];
    this.resumable = true;
    this.#wake(socket);
  }

  /** Sends what came after `seq` again, and goes on; false when it cannot. */
  resume(socket: WebSocket, id: string, seq: number): boolean {
    if (id !== this.id || seq > this.#sequence || !this.resumable) return false;
    for (const { s, payload } of this.#kept) if (s > seq) socket.send(payload);
    this.#wake(socket);
    this.dispatch({ t: GatewayDispatchEvents.Resumed, d: undefined });
    return true;
  }

  /** Sends an event, or keeps it for the resume when nobody is connected. */
  dispatch(event: Dispatched): void {
    this.#sequence += 1;
    const payload = JSON.stringify({ op: GatewayOpcodes.Dispatch, s: this.#sequence, ...event });
    this.#kept = [...this.#kept.slice(1 - mostKept), { s: this.#sequence, payload }];
    if (this.#live) this.#socket?.send(payload);
  }

  #wake(socket: WebSocket): void {
    this.#socket = socket;
    this.#live = true;
    socket.once('close', () => {
      if (this.#socket === socket) this.#live = false;
    });
    for (const resolve of this.#waiting.splice(0)) resolve();
  }
}
