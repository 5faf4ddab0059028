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
import { serverOf, toldOf } from './crowd.ts';
import { annexe, applicationId, botUser, guild } from './people.ts';
import { type Dispatched, Session } from './session.ts';

export type { Dispatched } from './session.ts';

export interface GatewaySetup {
  readonly token: string;
  readonly address: () => string;
  readonly heartbeatMs: number;
  /** Into how many shards the servers are divided. */
  readonly shards: number;
  readonly serversAway: boolean;
  /** Servers are told of without their roles and members. */
  readonly bare: boolean;
  readonly crowd: number;
  readonly problem: (what: string) => void;
}

const privileged =
  GatewayIntentBits.MessageContent | GatewayIntentBits.GuildMembers | GatewayIntentBits.GuildPresences;

type Identified = Extract<GatewaySendPayload, { op: GatewayOpcodes.Identify }>['d'];
type Resuming = Extract<GatewaySendPayload, { op: GatewayOpcodes.Resume }>['d'];

/** The gateway's side of one bot: a session for each shard. */
export class Gateway {
  readonly #setup: GatewaySetup;
  readonly #server: WebSocketServer;
  readonly #sessions: readonly Session[];
  /** Set: heartbeats are not answered. */
  deaf = false;
  /** What was counted, for a test to look at. */
  readonly seen = { identifies: 0, resumes: 0, heartbeats: 0, intents: 0 };

  constructor(setup: GatewaySetup, http: Server) {
    this.#setup = setup;
    this.#sessions = Array.from({ length: setup.shards }, (_, shard) => new Session(shard));
    this.#server = new WebSocketServer({ server: http });
    this.#server.on('connection', (socket) => this.#greet(socket));
  }

  /** Resolves when the session of a shard is live (again). */
  live(shard = 0): Promise<void> {
    return this.#session(shard).live();
  }

  /** Sends an event to the shard it belongs to, or keeps it for the resume when nobody is connected. */
  dispatch(event: Dispatched): void {
    const { guild_id: guildId } = (event.d ?? {}) as { guild_id?: string };
    this.#session(this.#shardOf(guildId)).dispatch(event);
  }

  /** Breaks the connection off, or (`ask`) asks the client to reconnect. `resumable` false makes the session void. */
  drop({ resumable, ask }: { resumable: boolean; ask: boolean }): void {
    const session = this.#session(0);
    const socket = session.sleep();
    session.resumable = resumable;
    if (ask) send(socket, { op: GatewayOpcodes.Reconnect, d: null });
    else socket?.terminate();
  }

  /** Closes the connection with a code of the platform's, of which some mean: do not come back. */
  shut(code: GatewayCloseCodes, shard = 0): void {
    this.#session(shard).sleep()?.close(code);
  }

  async close(): Promise<void> {
    for (const socket of this.#server.clients) socket.terminate();
    await new Promise((resolve) => this.#server.close(resolve));
  }

  #session(shard: number): Session {
    const session = this.#sessions[shard];
    if (!session) throw new Error(`there is no shard ${shard}`);
    return session;
  }

  /** The platform's rule: (guild_id >> 22) % num_shards; whatever is of no server goes to shard 0. */
  #shardOf(guildId: string | undefined): number {
    return guildId === undefined ? 0 : Number((BigInt(guildId) >> 22n) % BigInt(this.#setup.shards));
  }

  #greet(socket: WebSocket): void {
    socket.on('message', (data) => this.#hear(socket, JSON.parse(String(data)) as GatewaySendPayload));
    send(socket, { op: GatewayOpcodes.Hello, d: { heartbeat_interval: this.#setup.heartbeatMs } });
  }

  #hear(socket: WebSocket, payload: GatewaySendPayload): void {
    if (payload.op === GatewayOpcodes.Heartbeat) {
      this.seen.heartbeats += 1;
      if (this.deaf) return;
      send(socket, { op: GatewayOpcodes.HeartbeatAck });
      return;
    }
    if (payload.op === GatewayOpcodes.Identify) this.#identify(socket, payload.d);
    else if (payload.op === GatewayOpcodes.Resume) this.#resume(socket, payload.d);
    else this.#setup.problem(`gateway message ${payload.op} not expected`);
  }

  #identify(socket: WebSocket, { token, intents: asked, shard: [shard, count] = [0, 1] }: Identified): void {
    const intents = Number(asked);
    this.seen.identifies += 1;
    this.seen.intents = intents;
    if (token !== this.#setup.token) {
      socket.close(GatewayCloseCodes.AuthenticationFailed);
      return;
    }
    if (count !== this.#setup.shards || shard >= count) {
      this.#setup.problem(`identified as shard ${shard} of ${count}`);
      socket.close(GatewayCloseCodes.InvalidShard);
      return;
    }
    if (intents & privileged) this.#setup.problem('asked for a privileged intent');
    const session = this.#session(shard);
    session.begin(socket);
    this.#welcome(session);
  }

  #welcome(session: Session): void {
    const servers = this.#setup.shards > 1 ? [guild, annexe] : [guild];
    const crowd = Array.from({ length: this.#setup.crowd }, (_, at) => at);
    const own = servers.filter(({ id }) => this.#shardOf(id) === session.shard);
    session.dispatch({
      t: GatewayDispatchEvents.Ready,
      d: {
        v: 10,
        user: botUser,
        guilds: [...own.map(({ id }) => id), ...crowd.map((at) => serverOf(at).guild)].map((id) => ({
          id,
          unavailable: true,
        })),
        session_id: session.id,
        resume_gateway_url: this.#setup.address(),
        shard: [session.shard, this.#setup.shards],
        application: {
          id: applicationId,
          flags: ApplicationFlags.ApplicationCommandBadge,
          flags_new: '0',
        },
      },
    });
    if (this.#setup.serversAway) return;
    for (const server of own)
      session.dispatch({
        t: GatewayDispatchEvents.GuildCreate,
        d: this.#setup.bare ? { ...server, roles: [], members: [] } : server,
      });
    for (const at of crowd) session.dispatch({ t: GatewayDispatchEvents.GuildCreate, d: toldOf(at) });
  }

  #resume(socket: WebSocket, { token, session_id: id, seq }: Resuming): void {
    this.seen.resumes += 1;
    const session = this.#sessions.find((each) => each.id === id);
    if (token === this.#setup.token && session?.resume(socket, id, seq)) return;
    send(socket, { op: GatewayOpcodes.InvalidSession, d: false });
  }
}

const send = (
  socket: WebSocket | undefined,
  payload: Exclude<GatewayReceivePayload, GatewayDispatchPayload> | Record<string, unknown>,
): void => {
  socket?.send(JSON.stringify(payload));
};
