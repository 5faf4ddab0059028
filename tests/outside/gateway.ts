// The gateway by the platform's published pages "Gateway" and "Gateway Events": hello, heartbeats and their acks, identify,
// resume with replay, invalid sessions, and each way a connection can break.

import type { IncomingMessage } from 'node:http';
import { type WebSocket, WebSocketServer } from 'ws';
import { isThing, type Wire } from './check.ts';
import { type Break, closes, type Entry, type Line, readyData, Session } from './gateway-session.ts';
import type { Ledger, Reached } from './ledger.ts';
import { guildObject, type World } from './world.ts';

const heartbeat = 1500;
/** One identify in five seconds, by the platform's "max_concurrency" of one. */
const identifyEvery = 5000;
const privileged = (1 << 1) | (1 << 8) | (1 << 15);

export class Gateway {
  readonly #server = new WebSocketServer({ noServer: true });
  readonly #world: World;
  readonly #ledger: Ledger;
  readonly #token: string;
  readonly #url: () => string;
  #line: Line | undefined;
  #session: Session | undefined;
  #lastIdentify = 0;
  #dropNext = false;
  /** Servers the bot has been told of; the late one is added while it runs. */
  known: string[];

  constructor(world: World, ledger: Ledger, token: string, url: () => string) {
    this.#world = world;
    this.#ledger = ledger;
    this.#token = token;
    this.#url = url;
    this.known = world.groups.map(({ id }) => id);
    this.#server.on('connection', (socket, request) => this.#open(socket, request));
  }

  upgrade(
    ...args: Parameters<WebSocketServer['handleUpgrade']> extends [infer A, infer B, infer C, ...unknown[]]
      ? [A, B, C]
      : never
  ): void {
    this.#server.handleUpgrade(...args, (socket, request) =>
      this.#server.emit('connection', socket, request),
    );
  }

  /** Milliseconds until the bot may identify again. */
  get untilIdentify(): number {
    return Math.max(0, this.#lastIdentify + identifyEvery - Date.now());
  }

  get isConnected(): boolean {
    return this.#line?.isOpen === true && this.#session?.isAlive === true;
  }

  /** Sends an event, or keeps it for the resume. False when there is no session to send it in. */
  dispatch(t: string, d: unknown, reached?: Reached): boolean {
    const session = this.#session;
    if (!session?.isAlive) return false;
    session.seq += 1;
    const entry = { s: session.seq, t, d, reached };
    session.log.push(entry);
    if (session.log.length > 3000) session.log.splice(0, 1000);
    if (this.#line?.isOpen && this.#line.session === session) this.#write(this.#line, entry);
    return true;
  }

  #write(line: Line, entry: Entry): void {
    line.socket.send(JSON.stringify({ op: 0, s: entry.s, t: entry.t, d: entry.d }));
    entry.reached?.delivered();
  }

  #open(socket: WebSocket, request: IncomingMessage): void {
    const query = new URL(request.url ?? '/', 'ws://localhost').searchParams;
    if (query.get('v') !== '10' || query.get('encoding') !== 'json' || query.has('compress')) {
      this.#ledger.fault('gateway', `asked for ${request.url}`);
    }
    const line: Line = {
      socket,
      session: undefined,
      isMuted: false,
      isOpen: true,
      received: [],
      lastBeat: Date.now(),
    };
    this.#line = line;
    socket.on('message', (data) => this.#hear(line, String(data)));
    socket.on('error', () => undefined);
    socket.on('close', (code) => this.#closed(line, code));
    socket.send(JSON.stringify({ op: 10, d: { heartbeat_interval: heartbeat } }));
    if (this.#dropNext) {
      this.#dropNext = false;
      this.#detach(line);
      socket.terminate();
    }
  }

  #closed(line: Line, code: number): void {
    line.isOpen = false;
    // A client that says goodbye with 1000 or 1001 ends its session.
    if ((code === 1000 || code === 1001) && line.session) this.#end(line.session);
  }

  #detach(line: Line): void {
    line.isOpen = false;
  }

  #end(session: Session, deliveredUpTo = Number.POSITIVE_INFINITY): void {
    if (!session.isAlive) return;
    session.isAlive = false;
    for (const entry of session.log) {
      const never = isThing(entry.reached) && (entry.reached as { deliveries?: number }).deliveries === 0;
      if (never || entry.s > deliveredUpTo) entry.reached?.lost();
    }
  }

  #hear(line: Line, text: string): void {
    const now = Date.now();
    line.received = [...line.received.filter((at) => at > now - 60_000), now];
    if (line.received.length > 120) this.#ledger.fault('gateway', 'more than 120 events in a minute');
    if (text.length > 4096) this.#ledger.fault('gateway', `an event of ${text.length} bytes`);
    const { op, d } = JSON.parse(text) as { op: number; d: unknown };
    if (op === 1) this.#beat(line, d);
    else if (op === 2) this.#identify(line, d as Wire);
    else if (op === 6) this.#resume(line, d as Wire);
    else if (!line.session && line.isOpen) this.#ledger.fault('gateway', `op ${op} before identify`);
  }

  #beat(line: Line, d: unknown): void {
    this.#ledger.count('heartbeats');
    const now = Date.now();
    if (now - line.lastBeat > heartbeat * 3) this.#ledger.count('heartbeats late');
    line.lastBeat = now;
    if (d !== null && line.session && Number(d) > line.session.seq)
      this.#ledger.fault('gateway', `a beat of ${d}`);
    if (!line.isMuted && line.isOpen) line.socket.send(JSON.stringify({ op: 11 }));
  }

  #identify(line: Line, d: Wire): void {
    this.#ledger.count('identify');
    const since = Date.now() - this.#lastIdentify;
    if (since < identifyEvery - 50) this.#ledger.fault('gateway', `identified again after ${since} ms`);
    this.#lastIdentify = Date.now();
    if (line.session) this.#ledger.fault('gateway', 'identified twice on one connection');
    if (d.token !== this.#token) this.#ledger.fault('gateway', 'a wrong token');
    if (!isThing(d.properties)) this.#ledger.fault('gateway', 'no properties');
    if ((Number(d.intents) & privileged) !== 0)
      this.#ledger.fault('gateway', `privileged intents ${d.intents}`);
    if (this.#session) this.#end(this.#session);
    const session = new Session();
    session.intents = Number(d.intents);
    this.#session = session;
    line.session = session;
    this.dispatch('READY', readyData(this.#world.bot, session, d.shard, this.known, this.#url()));
    for (const [index, id] of this.known.entries()) {
      setTimeout(() => session === this.#session && this.#tellGuild(id), 5 + index * 60);
    }
  }

  #tellGuild(id: string): void {
    const group = this.#world.all.find((one) => one.id === id);
    if (group) this.dispatch('GUILD_CREATE', guildObject(group, this.#world.bot));
  }

  /** Takes the bot into one more server. */
  join(id: string): void {
    this.known.push(id);
    this.#tellGuild(id);
  }

  #resume(line: Line, d: Wire): void {
    this.#ledger.count('resume');
    const session = this.#session;
    const seq = Number(d.seq);
    if (d.token !== this.#token) this.#ledger.fault('gateway', 'resumed with a wrong token');
    if (!session?.isAlive || session.id !== d.session_id || session.isDoomed) {
      if (session?.isDoomed) this.#end(session, seq);
      this.#ledger.count('resumes refused');
      this.#detach(line);
      line.socket.send(JSON.stringify({ op: 9, d: false }));
    } else if (seq > session.seq) {
      this.#ledger.fault('gateway', `resumed at ${seq} of ${session.seq}`);
      line.socket.close(4007);
    } else {
      line.session = session;
      this.#replay(line, session, seq);
      this.dispatch('RESUMED', {});
      this.#ledger.count('resumed');
    }
  }

  /** What was missed; sometimes with a few events the bot had already: it must know them again. */
  #replay(line: Line, session: Session, seq: number): void {
    const overlap = this.#ledger.of('resume') % 3 === 0 ? 3 : 0;
    for (const entry of session.log.filter(({ s, t }) => s > seq - overlap && t !== 'READY')) {
      this.#ledger.count(entry.s > seq ? 'events replayed' : 'events sent twice');
      this.#write(line, entry);
    }
  }

  /** Breaks the connection. False when there is none, or none that has a session yet. */
  break(how: Break): boolean {
    const line = this.#line;
    if (!line?.isOpen || !line.session?.isAlive) return false;
    this.#ledger.count('disconnects');
    this.#ledger.count(`disconnect ${how}`);
    if (/^\d+$/.test(how)) this.#closeWith(line, line.session, Number(how) as keyof typeof closes);
    else this.#breakOtherwise(line, line.session, how);
    return true;
  }

  #closeWith(line: Line, session: Session, code: keyof typeof closes): void {
    this.#detach(line);
    line.socket.close(code);
    if (closes[code] === 'ended') this.#end(session);
  }

  #breakOtherwise(line: Line, session: Session, how: Break): void {
    if (how === 'no acks') {
      line.isMuted = true;
      return;
    }
    if (how === 'op 7') {
      line.socket.send(JSON.stringify({ op: 7, d: null }));
      this.#detach(line);
      return;
    }
    if (how === 'abrupt' || how === 'after hello') {
      this.#dropNext = how === 'after hello';
      this.#detach(line);
      line.socket.terminate();
      return;
    }
    this.#detach(line);
    if (how === 'op 9 true') line.socket.send(JSON.stringify({ op: 9, d: true }));
    if (how === 'op 9 false') {
      this.#end(session);
      line.socket.send(JSON.stringify({ op: 9, d: false }));
    }
    if (how === 'resume refused') {
      session.isDoomed = true;
      line.socket.close(4000);
    }
  }

  close(): void {
    for (const client of this.#server.clients) client.terminate();
    this.#server.close();
  }
}
