// What the routes of the HTTP API share.

import type { Wire } from './check.ts';
import type { Ledger } from './ledger.ts';
import type { Messages, Upload } from './messages.ts';
import type { Family } from './trouble.ts';
import type { World } from './world.ts';

export type Answer = { readonly status: number; readonly body?: unknown };

export type Request = {
  readonly params: readonly string[];
  readonly query: URLSearchParams;
  readonly body: Wire;
  readonly uploads: readonly Upload[];
};

export type Route = {
  readonly method: string;
  readonly path: RegExp;
  readonly family: Family;
  readonly open?: true;
  readonly handle: (request: Request) => Answer;
};

/** What the routes work on. */
export type Desk = {
  readonly world: World;
  readonly ledger: Ledger;
  readonly messages: Messages;
  readonly dispatch: (t: string, d: unknown) => void;
  readonly url: () => string;
  registered: Wire[];
};

export const refused = (status: number, code: number, message: string, errors?: unknown): Answer => ({
  status,
  body: { code, message, ...(errors ? { errors } : {}) },
});

export const invalid = (faults: readonly string[]): Answer =>
  refused(400, 50035, 'Invalid Form Body', { faults });
