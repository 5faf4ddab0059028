// The HTTP API, version 10, as far as a bot of this kind may use it. What it does not know is refused and told as a fault, so
// that nothing passes unseen.

import type { IncomingMessage, ServerResponse } from 'node:http';
import type { Wire } from './check.ts';
import type { Asked } from './ledger.ts';
import { readBody } from './rest-body.ts';
import { channels } from './rest-channels.ts';
import { commandRoutes } from './rest-commands.ts';
import { type Answer, type Desk, type Request, type Route, refused } from './rest-desk.ts';
import { interactions } from './rest-interactions.ts';
import { isRefusal, type Trouble } from './trouble.ts';

const wait = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

export class Rest {
  readonly #desk: Desk;
  readonly #trouble: Trouble;
  readonly #token: string;
  readonly #routes: readonly Route[];

  constructor(desk: Desk, trouble: Trouble, token: string) {
    this.#desk = desk;
    this.#trouble = trouble;
    this.#token = token;
    this.#routes = [...interactions(desk), ...channels(desk), ...commandRoutes(desk)];
  }

  async handle(request: IncomingMessage, response: ServerResponse): Promise<void> {
    const url = new URL(request.url ?? '/', 'http://localhost');
    if (url.pathname.startsWith('/attachments/')) return this.#file(url.pathname, response);
    const path = decodeURIComponent(/^\/api\/v10(\/.*)$/.exec(url.pathname)?.[1] ?? '');
    const route = this.#routes.find((one) => one.method === request.method && one.path.test(path));
    const { body, uploads, problem } = await readBody(request);
    if (problem) this.#desk.ledger.fault('request', `${request.method} ${path}: ${problem}`);
    if (!route) {
      this.#desk.ledger.fault('unknown route', `${request.method} ${url.pathname}`);
      return this.#send(response, refused(404, 0, '404: Not Found'), {});
    }
    this.#desk.ledger.count(`calls ${route.family}`);
    this.#manners(request, route, path);
    return this.#serve(route, path, { query: url.searchParams, body, uploads }, response);
  }

  #manners(request: IncomingMessage, route: Route, path: string): void {
    if (!/^DiscordBot \(.+, .+\)/.test(String(request.headers['user-agent']))) {
      this.#desk.ledger.fault('request', `${path} from ${request.headers['user-agent']}`);
    }
    if (!route.open && request.headers.authorization !== `Bot ${this.#token}`) {
      this.#desk.ledger.fault('request', `${path} without the token`);
    }
  }

  async #serve(
    route: Route,
    path: string,
    rest: Omit<Request, 'params'>,
    response: ServerResponse,
  ): Promise<void> {
    const params = route.path.exec(path)?.slice(1) ?? [];
    const call = { family: route.family, bucket: `${route.method} ${bucketOf(route, path)}` };
    const asked = this.#askedBy(route, params);
    const trace = (says: number | string): void => asked?.tell(`${route.method} ${params[2] ?? ''} ${says}`);
    if (this.#trouble.cuts()) {
      trace('cut');
      response.destroy();
      return;
    }
    const refusal = this.#trouble.before(call) ?? this.#trouble.counted(call);
    if (isRefusal(refusal)) {
      trace(refusal.status);
      asked?.mayWait(Number(refusal.headers['retry-after'] ?? 0) * 1000);
      this.#send(response, refusal, refusal.headers);
      return;
    }
    const delay = this.#trouble.delay();
    asked?.mayWait(delay);
    await wait(delay);
    const answer = route.handle({ ...rest, params });
    trace(answer.status);
    this.#desk.ledger.count('answers asked for');
    if (answer.status < 300 && isRepeatable(route, rest.body) && this.#trouble.forgets()) {
      asked?.forget(route.family === 'callback');
      this.#send(response, { status: 502, body: '' }, {});
      return;
    }
    this.#send(response, answer, refusal);
  }

  #askedBy({ family }: Route, params: readonly string[]): Asked | undefined {
    if (family !== 'callback' && family !== 'webhook') return undefined;
    return this.#desk.ledger.byToken(String(params[1]));
  }

  #send(
    response: ServerResponse,
    { status, body }: Answer,
    headers: { readonly [name: string]: string },
  ): void {
    if ([401, 403, 429].includes(status)) this.#desk.ledger.count('invalid requests');
    const text = body === undefined ? '' : typeof body === 'string' ? body : JSON.stringify(body);
    response.writeHead(status, { ...(text ? { 'content-type': 'application/json' } : {}), ...headers });
    response.end(text);
  }

  #file(path: string, response: ServerResponse): void {
    const upload = this.#desk.messages.file(path.split('/')[3] ?? '');
    response.writeHead(upload ? 200 : 404).end(upload?.data ?? '');
  }
}

/** Calls that do no more when they are made twice: those whose answer may be lost on its way. */
const isRepeatable = ({ method, family }: Route, { enforce_nonce: enforced }: Wire): boolean =>
  method === 'PATCH' || family === 'callback' || enforced === true;

/** A route with its top-level ids kept (channels, servers, webhooks with their tokens) and the others left out. */
function bucketOf(route: Route, path: string): string {
  if (route.family === 'callback') return path;
  const [, first = '', second = '', third = '', ...others] = path.split('/');
  const top = first === 'webhooks' ? `${first}/${second}/${third}` : `${first}/${second}`;
  const below = (first === 'webhooks' ? others : [third, ...others]).map((part) =>
    part.replace(/^\d{15,}$/, ':id'),
  );
  return `${top}/${below.join('/')}`;
}
