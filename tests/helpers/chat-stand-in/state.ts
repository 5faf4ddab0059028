import type { Commands } from './commands.ts';
import type { Exchange, Shown } from './exchange.ts';
import type { Manner } from './manner.ts';
import type { RequestBody } from './read-body.ts';

/** What the HTTP side shares with the rest of the stand-in. */
export interface ApiState {
  readonly token: string;
  readonly acknowledgeWithinMs: number;
  readonly gateway: () => string;
  /** What it advises a bot to run in. */
  readonly shards: number;
  readonly problem: (what: string) => void;
  readonly manner: Manner;
  /** Interactions by token; messages by their own id and, the last of each, by channel. */
  readonly interactions: Map<string, Exchange>;
  readonly asked: Map<string, Exchange>;
  /** What the bot is not allowed in the channel; the channels that were deleted, or in which it may not write. */
  readonly withheld: { replies: boolean; gone: Set<string>; silent: Set<string>; directs: boolean };
  /** What the bot posted without being asked. */
  readonly unasked: Unasked[];
  /** What the bot wrote to somebody directly without being asked there, by channel. */
  readonly directs: Map<string, Shown[]>;
  readonly commands: Commands;
  /** What is wrong with the platform at the moment, by request; a test may change it. */
  trouble: (call: Call) => Trouble | undefined;
  /** What was posted under a nonce that is enforced, by channel and nonce. */
  readonly nonces: Map<string, Shown>;
  /** Requests that had their effect though their answer broke off. */
  readonly brokenOff: Set<string>;
}

/** How a request goes wrong. */
export interface Trouble {
  readonly delayMs?: number;
  /** Answered instead; with `after`, the request has its effect all the same. */
  readonly result?: Result;
  readonly after?: boolean;
}

/** A message nobody asked for, in the rows of buttons it was sent with. */
export interface Unasked {
  readonly channel: string;
  readonly nonce: string;
  readonly shown: Shown;
  readonly rows: readonly number[];
}

/** One request of the client. */
export interface Call extends RequestBody {
  readonly method: string;
  readonly parts: readonly string[];
}

/** What it is answered. */
export interface Result {
  readonly status: number;
  readonly body?: unknown;
  readonly headers?: Readonly<Record<string, string>>;
}

export const nothing: Result = { status: 204 };
export const missing = (code: number, message: string): Result => ({
  status: 404,
  body: { code, message },
});

export const refused = (status: number, code: number, text: string): Result => ({
  status,
  body: { code, message: text },
});

/** A platform on which nothing has happened yet. */
export const freshState = (
  about: Pick<ApiState, 'token' | 'acknowledgeWithinMs' | 'gateway' | 'shards' | 'problem' | 'manner'>,
): ApiState => ({
  ...about,
  interactions: new Map(),
  asked: new Map(),
  withheld: { replies: false, gone: new Set(), silent: new Set(), directs: false },
  unasked: [],
  directs: new Map(),
  commands: { list: [], reads: 0, writes: 0 },
  trouble: () => undefined,
  nonces: new Map(),
  brokenOff: new Set(),
});
