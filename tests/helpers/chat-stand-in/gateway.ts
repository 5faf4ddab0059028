import type { Server } from 'node:http';
import {
  ApplicationFlags,
  GatewayCloseCodes,
  GatewayDispatchEvents,
  type GatewayDispatchPayload,
  GatewayIntentBits,
  GatewayOpcodes,
  type GatewayReceivePayload,
  type GatewaySendPayload,
} from 'discord-api-types/v10';
import { type WebSocket, WebSocketServer } from 'ws';
import { applicationId, botUser, guild, guildId } from './people.ts';

export interface GatewaySetup {
  readonly token: string;
  readonly address: () => string;
  readonly heartbeatMs: number;
  readonly problem: (what: string) => void;
}

type Unnumbered<P> = P extends GatewayDispatchPayload ? Omit<P, 'op' | 's'> : never;
/** An event's type with the data that goes with it; the gateway numbers it. */
export type Dispatched = Unnumbered<GatewayDispatchPayload>;

const privileged =
  GatewayIntentBits.MessageContent | GatewayIntentBits.GuildMembers | GatewayIntentBits.GuildPresences;
const mostKept = 500;

/** The gateway's side of one bot: one session at a time, its events numbered and kept for a resume. */
export class Gateway {
  readonly #setup: GatewaySetup;
  readonly #server: WebSocketServer;
  #socket: WebSocket | undefined;
  #session = 0;
  #sequence = 0;
  #kept: { readonly s: number; readonly payload: string }[] = [];
  #resumable = true;
  #live = false;
  #waiting: (() => void)[] = [];
  /** What was counted, for a test to look at. */
  readonly seen = { identifies: 0, resumes: 0, heartbeats: 0, intents: 0 };

  constructor(setup: GatewaySetup, http: Server) {
    this.#setup = setup;
    this.#server = new WebSocketServer({ server: http });
    this.#server.on('connection', (socket) => this.#greet(socket));
  }

  /** Resolves when a session is live (again). */
  live(): Promise<void> {
    if (this.#live) return Promise.resolve();
    return new Promise((resolve) => this.#waiting.push(resolve));
  }

  /** Sends an event, or keeps it for the resume when nobody is connected. */
  dispatch(event: Dispatched): void {
    this.#sequence += 1;
    const payload = JSON.stringify({
      op: GatewayOpcodes.Dispatch,
      s: this.#sequence,
      ...event,
    });
    this.#kept = [...this.#kept.slice(1 - mostKept), { s: this.#sequence, payload }];
    if (this.#live) this.#socket?.send(payload);
  }

  /** Breaks the connection off, or (`ask`) asks the client to reconnect. `resumable` false makes the session void. */
  drop({ resumable, ask }: { resumable: boolean; ask: boolean }): void {
    this.#live = false;
    this.#resumable = resumable;
    if (ask) this.#send({ op: GatewayOpcodes.Reconnect, d: null });
    else this.#socket?.terminate();
  }

  /** Closes the connection with a code of the platform's, of which some mean: do not come back. */
  shut(code: GatewayCloseCodes): void {
    this.#live = false;
    this.#socket?.close(code);
  }

  async close(): Promise<void> {
    for (const socket of this.#server.clients) socket.terminate();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  #send(payload: Exclude<GatewayReceivePayload, GatewayDispatchPayload> | Record<string, unknown>): void {
    this.#socket?.send(JSON.stringify(payload));
  }

  #greet(socket: WebSocket): void {
    this.#socket = socket;
    this.#live = false;
    socket.on('message', (data) => this.#hear(JSON.parse(String(data)) as GatewaySendPayload));
    socket.on('close', () => {
      if (this.#socket === socket) this.#live = false;
    });
    this.#send({
      op: GatewayOpcodes.Hello,
      d: { heartbeat_interval: this.#setup.heartbeatMs },
    });
  }

  #hear(payload: GatewaySendPayload): void {
    if (payload.op === GatewayOpcodes.Heartbeat) {
      this.seen.heartbeats += 1;
      this.#send({ op: GatewayOpcodes.HeartbeatAck });
      return;
    }
    if (payload.op === GatewayOpcodes.Identify) this.#identify(payload.d.token, Number(payload.d.intents));
    else if (payload.op === GatewayOpcodes.Resume) this.#resume(payload.d);
    else this.#setup.problem(`gateway message ${payload.op} not expected`);
  }

  #identify(token: string, intents: number): void {
    this.seen.identifies += 1;
    this.seen.intents = intents;
    if (token !== this.#setup.token) {
      this.#socket?.close(GatewayCloseCodes.AuthenticationFailed);
      return;
    }
    if (intents & privileged) this.#setup.problem('asked for a privileged intent');
    this.#session += 1;
    this.#sequence = 0;
    this.#kept = [];
    this.#resumable = true;
    this.#becomeLive();
    this.dispatch({
      t: GatewayDispatchEvents.Ready,
      d: {
        v: 10,
        user: botUser,
        guilds: [{ id: guildId, unavailable: true }],
        session_id: this.#sessionId(),
        resume_gateway_url: this.#setup.address(),
        shard: [0, 1],
        application: {
          id: applicationId,
          flags: ApplicationFlags.ApplicationCommandBadge,
          flags_new: '0',
        },
      },
    });
    this.dispatch({ t: GatewayDispatchEvents.GuildCreate, d: guild });
  }

  #resume({ token, session_id, seq }: { token: string; session_id: string; seq: number }): void {
    this.seen.resumes += 1;
    const known = token === this.#setup.token && session_id === this.#sessionId() && seq <= this.#sequence;
    if (!known || !this.#resumable) {
      this.#send({ op: GatewayOpcodes.InvalidSession, d: false });
      return;
    }
    for (const { s, payload } of this.#kept) if (s > seq) this.#socket?.send(payload);
    this.#becomeLive();
    this.dispatch({ t: GatewayDispatchEvents.Resumed, d: undefined });
  }

  #sessionId(): string {
    return `session-${this.#session}`;
  }

  #becomeLive(): void {
    this.#live = true;
    for (const resolve of this.#waiting.splice(0)) resolve();
  }
}
