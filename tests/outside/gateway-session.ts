// What the gateway keeps of a session and of a line to it, and the ways a line breaks.

import { randomBytes } from 'node:crypto';
import type { WebSocket } from 'ws';
import type { Wire } from './check.ts';
import type { Reached } from './ledger.ts';
import { type Person, userObject } from './world.ts';

export type Entry = {
  readonly s: number;
  readonly t: string;
  readonly d: unknown;
  readonly reached: Reached | undefined;
};

export class Session {
  readonly id = randomBytes(12).toString('hex');
  seq = 0;
  log: Entry[] = [];
  isAlive = true;
  /** Its next resume is refused. */
  isDoomed = false;
  intents = 0;
}

export type Line = {
  readonly socket: WebSocket;
  session: Session | undefined;
  isMuted: boolean;
  isOpen: boolean;
  received: number[];
  lastBeat: number;
};

export const closes = {
  4000: 'kept',
  4001: 'kept',
  4002: 'kept',
  4003: 'ended',
  4005: 'kept',
  4007: 'ended',
  4008: 'kept',
  4009: 'ended',
} as const;

/** Each way a connection breaks. "fresh" ones end the session, so that the bot has to identify anew. */
export const breaks = [
  '4000',
  'abrupt',
  'op 7',
  '4001',
  'op 9 true',
  '4008',
  'op 9 false',
  'no acks',
  '4002',
  '4007',
  'abrupt',
  '4005',
  'after hello',
  '4009',
  'op 7',
  'resume refused',
  '4003',
] as const;
export type Break = (typeof breaks)[number];

/** What READY says: who the bot is, its servers, not there yet, and where to resume. */
export const readyData = (
  bot: Person,
  session: Session,
  shard: unknown,
  known: readonly string[],
  url: string,
): Wire => ({
  v: 10,
  user: { ...userObject(bot, true), email: null, verified: true, mfa_enabled: true, flags: 0 },
  guilds: known.map((id) => ({ id, unavailable: true })),
  session_id: session.id,
  resume_gateway_url: `${url}/resume`,
  session_type: 'normal',
  private_channels: [],
  relationships: [],
  user_settings: {},
  presences: [],
  guild_join_requests: [],
  geo_ordered_rtc_regions: [],
  auth: {},
  shard: shard ?? [0, 1],
  application: { id: bot.id, flags: 0 },
});
