// Who and what there is in the stand-in: an invented server or three, their members, channels, and the objects of the
// platform's pages "Guild", "Channel", "User" for them.

import type { Wire } from './check.ts';

const epoch = 1420070400000n;
let drawn = 0n;

/** A new id: milliseconds since 2015 in its upper bits, a count in the lower 22. */
export function snowflake(at = Date.now()): string {
  drawn += 1n;
  return String(((BigInt(at) - epoch) << 22n) | (drawn & 0x3fffffn));
}

export type Person = { readonly id: string; readonly name: string };
export type Place = {
  readonly id: string;
  readonly group: Group | undefined;
  readonly person: Person | undefined;
};
/** In a closed channel the bot may read and not write. */
export type Channel = { readonly id: string; readonly name: string; readonly isClosed: boolean };
export type Group = {
  readonly id: string;
  readonly name: string;
  readonly owner: Person;
  readonly people: readonly Person[];
  readonly channels: readonly Channel[];
};

const bit = (...bits: number[]): bigint => bits.reduce((all, one) => all | (1n << BigInt(one)), 0n);
/** See channels, write, embed links, attach, read older messages, commands, write in threads. */
const everyone = bit(10, 11, 14, 15, 16, 31, 38);
/** The same, with "administrator" and "manage server". */
const manager = everyone | bit(3, 5);

const person = (name: string): Person => ({ id: snowflake(), name });

function group(name: string, names: readonly string[]): Group {
  const people = names.map(person);
  const [owner] = people;
  if (!owner) throw new Error('a server needs an owner');
  const channels = ['general', 'bench', 'notices'].map((title) => ({
    id: snowflake(),
    name: title,
    isClosed: title === 'notices',
  }));
  return { id: snowflake(), name, owner, people, channels };
}

export class World {
  readonly bot: Person = person('stillroom');
  readonly groups = [
    group('Fernlea Makers', ['ida', 'tomas', 'wren', 'oskar', 'lin']),
    group('Upper Mill Salves', ['mabel', 'jory']),
  ];
  /** Joined in mid-run. */
  readonly late = group('Saltmarsh Balms', ['petra']);
  /** Those who take no direct messages. */
  readonly closed = new Set([this.groups[0]?.people[3]?.id]);
  readonly #direct = new Map<string, string>();

  get all(): readonly Group[] {
    return [...this.groups, this.late];
  }

  readonly everyPerson = (): Person[] => this.all.flatMap(({ people }) => people);

  /** The direct channel with somebody; the same each time. */
  direct(of: Person): string {
    const known = this.#direct.get(of.id) ?? snowflake();
    this.#direct.set(of.id, known);
    return known;
  }

  place(channel: string): Place | undefined {
    const found = this.all.find(({ channels }) => channels.some(({ id }) => id === channel));
    if (found) return { id: channel, group: found, person: undefined };
    const personal = this.everyPerson().find(({ id }) => this.#direct.get(id) === channel);
    return personal && { id: channel, group: undefined, person: personal };
  }
}

export const userObject = (of: Person, bot = false): Wire => ({
  id: of.id,
  username: of.name,
  global_name: bot ? null : of.name,
  discriminator: bot ? '4821' : '0',
  avatar: null,
  bot,
  public_flags: 0,
});

export const memberObject = (of: Person, within: Group, bot = false): Wire => ({
  nick: null,
  avatar: null,
  roles: [],
  joined_at: '2025-02-03T10:00:00.000000+00:00',
  premium_since: null,
  deaf: false,
  mute: false,
  flags: 0,
  pending: false,
  communication_disabled_until: null,
  user: userObject(of, bot),
  permissions: String(within.owner.id === of.id ? manager : everyone),
});

export const permissionsIn = (at: Channel | undefined): string =>
  String(at?.isClosed ? everyone & ~bit(11) : everyone);

export function channelObject(within: Group, at: Channel): Wire {
  return {
    id: at.id,
    type: 0,
    guild_id: within.id,
    name: at.name,
    topic: null,
    nsfw: false,
    position: 0,
    parent_id: null,
    permission_overwrites: at.isClosed ? [{ id: within.id, type: 0, allow: '0', deny: String(bit(11)) }] : [],
    rate_limit_per_user: 0,
    last_message_id: null,
    flags: 0,
  };
}

export const directObject = (id: string, recipient: Person): Wire => ({
  id,
  type: 1,
  flags: 0,
  last_message_id: null,
  recipients: [userObject(recipient)],
});

const roleObject = (of: Group): Wire => ({
  id: of.id,
  name: '@everyone',
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  icon: null,
  unicode_emoji: null,
  position: 0,
  permissions: String(everyone),
  managed: false,
  mentionable: false,
  flags: 0,
});

/** A server as in GUILD_CREATE. Without the privileged intents only the bot itself is among its members. */
export function guildObject(of: Group, bot: Person): Wire {
  return {
    id: of.id,
    name: of.name,
    icon: null,
    splash: null,
    discovery_splash: null,
    owner_id: of.owner.id,
    afk_channel_id: null,
    afk_timeout: 300,
    verification_level: 1,
    default_message_notifications: 0,
    explicit_content_filter: 0,
    roles: [roleObject(of)],
    emojis: [],
    features: [],
    mfa_level: 0,
    application_id: null,
    system_channel_id: of.channels[0]?.id ?? null,
    system_channel_flags: 0,
    rules_channel_id: null,
    public_updates_channel_id: null,
    safety_alerts_channel_id: null,
    vanity_url_code: null,
    description: null,
    banner: null,
    premium_tier: 0,
    preferred_locale: 'en-GB',
    nsfw_level: 0,
    premium_progress_bar_enabled: false,
    stickers: [],
    joined_at: '2025-02-03T10:00:00.000000+00:00',
    large: false,
    unavailable: false,
    member_count: of.people.length + 1,
    voice_states: [],
    members: [memberObject(bot, of, true)],
    channels: of.channels.map((one) => channelObject(of, one)),
    threads: [],
    presences: [],
    stage_instances: [],
    guild_scheduled_events: [],
    soundboard_sounds: [],
  };
}
