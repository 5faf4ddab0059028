// A stand-in for the chat platform, written from its published pages alone: one port that speaks the HTTP API, version 10, and
// the gateway. It knows nothing of the bot it serves.

import { createServer, type Server } from 'node:http';
import type { AddressInfo, Socket } from 'node:net';
import type { Wire } from './check.ts';
import { Gateway } from './gateway.ts';
import { Ledger } from './ledger.ts';
import { Messages } from './messages.ts';
import { Rest } from './rest.ts';
import type { Desk } from './rest-desk.ts';
import { Trouble } from './trouble.ts';
import { World } from './world.ts';

export class StandIn {
  readonly token = 'c3RhbmQtaW4.b3V0c2lkZQ.not-a-secret-of-anybody';
  readonly world = new World();
  readonly ledger = new Ledger();
  readonly messages: Messages;
  readonly gateway: Gateway;
  readonly trouble: Trouble;
  readonly #server: Server;
  readonly #sockets = new Set<Socket>();
  readonly #desk: Desk;
  #port = 0;

  constructor() {
    this.messages = new Messages(this.world, () => `http://127.0.0.1:${this.#port}`);
    this.gateway = new Gateway(this.world, this.ledger, this.token, () => `ws://127.0.0.1:${this.#port}`);
    this.trouble = new Trouble(this.ledger);
    this.#desk = {
      world: this.world,
      ledger: this.ledger,
      messages: this.messages,
      dispatch: (t, d) => void this.gateway.dispatch(t, d),
      url: () => `ws://127.0.0.1:${this.#port}`,
      registered: [],
    };
    const rest = new Rest(this.#desk, this.trouble, this.token);
    this.#server = createServer((request, response) => {
      rest.handle(request, response).catch((error: unknown) => {
        this.ledger.fault('stand-in', String(error));
        response.writeHead(500).end();
      });
    });
    this.#server.on('connection', (socket) => {
      this.#sockets.add(socket);
      socket.on('close', () => this.#sockets.delete(socket));
    });
    this.#server.on('upgrade', (request, socket, head) => this.gateway.upgrade(request, socket, head));
  }

  get registered(): readonly Wire[] {
    return this.#desk.registered;
  }

  get apiUrl(): string {
    return `http://127.0.0.1:${this.#port}/api`;
  }

  async listen(): Promise<void> {
    await new Promise<void>((resolve) => this.#server.listen(0, '127.0.0.1', resolve));
    this.#port = (this.#server.address() as AddressInfo).port;
  }

  async close(): Promise<void> {
    this.ledger.stalls.stop();
    this.gateway.close();
    for (const socket of this.#sockets) socket.destroy();
    await new Promise<void>((resolve) => this.#server.close(() => resolve()));
  }
}
