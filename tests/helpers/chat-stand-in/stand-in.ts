import { createServer } from 'node:http';
import type { AddressInfo } from 'node:net';
import {
  type APIAttachment,
  GatewayDispatchEvents,
  type GatewayInteractionCreateDispatchData,
} from 'discord-api-types/v10';
import { respond } from './api.ts';
import {
  buttonPressed,
  commandFilledIn,
  type Filled,
  formSent,
  messageCommand,
  messageCreated,
  type OnMessage,
  optionPicked,
  type Place,
  sentOptions,
  typedSoFar,
  type Written,
} from './asked.ts';
import { Exchange, type Shown } from './exchange.ts';
import type { ShownForm } from './forms.ts';
import { Gateway } from './gateway.ts';
import { bareInteraction, type Manner } from './manner.ts';
import { botId, channelId, directChannelId, freshId, hazel, type Person } from './people.ts';
import { type ApiState, freshState } from './state.ts';

export interface StandInSetup {
  readonly token?: string;
  /**
   * Milliseconds an interaction may wait for its acknowledgement. Three times the platform's 3,000 and more when left out:
   * a busy machine is no fault of the bot, and discord-pace holds it to a far shorter time.
   */
  readonly acknowledgeWithinMs?: number;
  readonly heartbeatMs?: number;
  /** Milliseconds that answers are waited for: twenty seconds when left out. */
  readonly patienceMs?: number;
  /** How many shards the bot runs in; one when left out. */
  readonly shards?: number;
  /** The servers are away when the bot enters. */
  readonly serversAway?: boolean;
  /** How many servers of the crowd (crowd.ts) the bot is in besides. */
  readonly crowd?: number;
  readonly manner?: Manner;
}

const channelOf = ({ member = hazel, direct = false, server }: Place): string =>
  direct ? directChannelId(member) : (server?.channel ?? channelId);

/**
 * The chat platform's HTTP API and gateway on this machine's loopback, as far as its documentation and the client
 * need them: one bot, one server, one channel, direct messages. It checks what the bot sends; whatever is wrong is in
 * `problems`, which a test expects to be empty.
 */
export class StandIn {
  readonly problems: string[] = [];
  readonly token: string;
  readonly #state: ApiState;
  readonly #patienceMs: number;
  readonly #http = createServer();
  readonly #attached = new Map<string, Uint8Array>();
  #gateway: Gateway;

  private constructor({
    token,
    acknowledgeWithinMs = 10_000,
    heartbeatMs = 45_000,
    patienceMs = 20_000,
    shards = 1,
    serversAway = false,
    crowd = 0,
    manner = {},
  }: StandInSetup) {
    this.#patienceMs = patienceMs;
    this.token = token ?? 'a-token-of-no-worth';
    const problem = (what: string): void => {
      this.problems.push(what);
    };
    const gateway = (): string => `ws://${this.#host}`;
    this.#state = freshState({
      token: this.token,
      acknowledgeWithinMs,
      gateway,
      shards,
      problem,
      manner,
    });
    this.#gateway = new Gateway(
      {
        token: this.token,
        address: gateway,
        heartbeatMs,
        shards,
        serversAway,
        crowd,
        bare: manner.bare ?? false,
        problem,
      },
      this.#http,
    );
    this.#http.on('request', (request, response) => {
      const attached = this.#attached.get(request.url ?? '');
      if (attached) {
        response.writeHead(200, { 'content-type': 'application/octet-stream' }).end(attached);
        return;
      }
      respond(this.#state, request, response).catch((fault: unknown) => {
        problem(`stand-in: ${String(fault)}`);
        response.destroy();
      });
    });
  }

  static async start(setup: StandInSetup = {}): Promise<StandIn> {
    const standIn = new StandIn(setup);
    await new Promise<void>((resolve) => standIn.#http.listen(0, '127.0.0.1', resolve));
    return standIn;
  }

  get #host(): string {
    return `127.0.0.1:${(this.#http.address() as AddressInfo).port}`;
  }

  /** What DISCORD_API_URL would be. */
  get apiUrl(): string {
    return `http://${this.#host}/api`;
  }

  get gateway(): Gateway {
    return this.#gateway;
  }

  /** From now on requests go wrong as `trouble` says. */
  set trouble(trouble: ApiState['trouble']) {
    this.#state.trouble = trouble;
  }

  /** Registered commands, and how often they were read and written. */
  get commands(): ApiState['commands'] {
    return this.#state.commands;
  }

  /** What the bot is not allowed; a test may change it. */
  get withheld(): ApiState['withheld'] {
    return this.#state.withheld;
  }

  /** What the bot posted without being asked, oldest first. */
  get unasked(): ApiState['unasked'] {
    return this.#state.unasked;
  }

  /** A filled-in slash command; resolves with the first message of the answer. */
  slash(name: string, options: Filled = {}, place: Place = {}): Promise<Exchange> {
    return this.slashSent(name, options, place).until(1);
  }

  slashSent(name: string, options: Filled = {}, place: Place = {}): Exchange {
    return this.interact(place, (exchange, token) =>
      commandFilledIn(exchange.id, token, name, sentOptions(options), place),
    );
  }

  /** Completions for `typed` in the option `option`. */
  autocomplete(name: string, option: string, typed: string, place: Place = {}): Promise<readonly string[]> {
    return this.interact(place, (exchange, token) =>
      typedSoFar(exchange.id, token, name, { option, typed }, place),
    ).completed();
  }

  /** Presses a button of this id, whether such a button was shown or not. */
  press(customId: string, place: Place = {}): Promise<Exchange> {
    return this.interact(place, (exchange, token) =>
      buttonPressed(exchange.id, token, customId, place),
    ).until(1);
  }

  pressSent(customId: string, place: Place = {}): Exchange {
    return this.interact(place, (exchange, token) => buttonPressed(exchange.id, token, customId, place));
  }

  /** Picks an option of a menu, by its value; resolves with the answer, or the form that is shown. */
  pick(value: string, place: Place = {}, menu = 'pick1'): Promise<Exchange> {
    const picked = this.interact(place, (exchange, token) =>
      optionPicked(exchange.id, token, { value, menu }, place),
    );
    return picked.answered();
  }

  /** Sends a form back; what was filled in already stays unless `fields` says otherwise. */
  fillIn(form: ShownForm, fields: Readonly<Record<string, string>>, place: Place = {}): Promise<Exchange> {
    const before = Object.fromEntries(form.fields.map(({ name, value }) => [name, value]));
    return this.sendForm(form.id, { ...before, ...fields }, place);
  }

  /** Sends back a form of this id, whether such a form was shown or not. */
  sendForm(form: string, fields: Readonly<Record<string, string>>, place: Place = {}): Promise<Exchange> {
    const exchange = this.interact(place, (one, token) => {
      one.mayShowForm = false;
      return formSent(one.id, token, { form, fields }, place);
    });
    return exchange.until(1);
  }

  /** Uses a command on a message. */
  onMessage(about: OnMessage, place: Place = {}): Exchange {
    return this.interact(place, (exchange, token) => messageCommand(exchange.id, token, about, place));
  }

  /** What the bot wrote to somebody directly who asked nothing there. */
  writtenTo(person: Person): readonly Shown[] {
    return this.#state.directs.get(directChannelId(person)) ?? [];
  }

  /** A message in the server's channel that mentions the bot. */
  mention(text: string, place: Place = {}): Promise<Exchange> {
    return this.write({ text: `<@${botId}> ${text}`, ...place }).until(1);
  }

  /** A direct message to the bot. */
  direct(text: string, place: Place = {}): Promise<Exchange> {
    return this.write({ text, ...place, direct: true }).until(1);
  }

  /** Any message, without waiting for an answer. */
  write(written: Written): Exchange {
    const exchange = new Exchange(channelOf(written));
    exchange.isMessage = true;
    exchange.patienceMs = this.#patienceMs;
    this.#state.asked.set(exchange.id, exchange);
    this.#state.asked.set(exchange.channel, exchange);
    this.#gateway.dispatch(messageCreated(exchange.id, written));
    return exchange;
  }

  /** A file somebody attaches, kept at an address of the platform's. `as` may say otherwise what it is. */
  attach(filename: string, bytes: Uint8Array, as: Partial<APIAttachment> = {}): APIAttachment {
    const id = freshId();
    const path = `/attachments/${id}/${filename}`;
    this.#attached.set(path, bytes);
    const url = `http://${this.#host}${path}`;
    return { id, filename, size: bytes.byteLength, url, proxy_url: url, ...as };
  }

  /** Breaks the connection (or asks the client to reconnect) and resolves when it is back. */
  async dropConnection({ resume, ask = false }: { resume: boolean; ask?: boolean }): Promise<void> {
    this.#gateway.drop({ resumable: resume, ask });
    await this.#gateway.live();
  }

  /** Sends the bot an event as it stands, sound or not. */
  raw(event: { readonly t: string; readonly d: unknown }): void {
    this.#gateway.dispatch(event as Parameters<Gateway['dispatch']>[0]);
  }

  /** Forgets what was asked and answered so far, which otherwise grows without end; nothing of it may be under way. */
  letGo(): void {
    this.#state.interactions.clear();
    this.#state.asked.clear();
    this.#state.nonces.clear();
  }

  async close(): Promise<void> {
    await this.#gateway.close();
    this.#http.closeAllConnections();
    await new Promise((resolve) => this.#http.close(resolve));
  }

  /** Sends an interaction that `event` builds for an exchange and its token. */
  interact(
    place: Place,
    event: (exchange: Exchange, token: string) => GatewayInteractionCreateDispatchData,
  ): Exchange {
    const exchange = new Exchange(channelOf(place));
    exchange.patienceMs = this.#patienceMs;
    const token = `interaction-${freshId()}`;
    this.#state.interactions.set(token, exchange);
    const d = event(exchange, token);
    this.#gateway.dispatch({
      t: GatewayDispatchEvents.InteractionCreate,
      d: this.#state.manner.bare ? bareInteraction(d) : d,
    });
    return exchange;
  }
}
