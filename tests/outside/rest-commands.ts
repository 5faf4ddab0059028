// Who the bot is, and its commands.

import type { Wire } from './check.ts';
import { commandFaults } from './limits.ts';
import { type Answer, type Desk, invalid, type Route, refused } from './rest-desk.ts';
import { channelObject, guildObject, memberObject, snowflake, userObject } from './world.ts';

const registeredAs = (desk: Desk, one: Wire): Wire => ({
  type: 1,
  default_member_permissions: null,
  nsfw: false,
  description: '',
  integration_types: [0],
  contexts: null,
  ...one,
  id: String(
    desk.registered.find((old) => old.name === one.name && old.type === (one.type ?? 1))?.id ?? snowflake(),
  ),
  application_id: desk.world.bot.id,
  version: snowflake(),
});

function overwrite(desk: Desk, list: unknown): Answer {
  const faults = commandFaults(list);
  for (const fault of faults) desk.ledger.fault('limit', fault);
  desk.ledger.count('commands registered');
  if (faults.length > 0) return invalid(faults);
  desk.registered = (list as Wire[]).map((one) => registeredAs(desk, one));
  return { status: 200, body: desk.registered };
}

function application(desk: Desk): Wire {
  const { bot, groups } = desk.world;
  return {
    id: bot.id,
    name: bot.name,
    icon: null,
    description: '',
    bot_public: true,
    bot_require_code_grant: false,
    verify_key: '0'.repeat(64),
    owner: userObject(groups[0]?.owner ?? bot),
    team: null,
    flags: 0,
    bot: userObject(bot, true),
  };
}

function guild(desk: Desk, id: string): Answer {
  const found = desk.world.all.find((one) => one.id === id);
  return found
    ? { status: 200, body: guildObject(found, desk.world.bot) }
    : refused(404, 10004, 'Unknown Guild');
}

function member(desk: Desk, guildId: string, id: string): Answer {
  const within = desk.world.all.find((one) => one.id === guildId);
  if (within && (id === '@me' || id === desk.world.bot.id)) {
    return { status: 200, body: memberObject(desk.world.bot, within, true) };
  }
  const found = within?.people.find((one) => one.id === id);
  return within && found
    ? { status: 200, body: memberObject(found, within) }
    : refused(404, 10007, 'Unknown Member');
}

function user(desk: Desk, id: string): Answer {
  const found = desk.world.everyPerson().find((one) => one.id === id);
  return found ? { status: 200, body: userObject(found) } : refused(404, 10013, 'Unknown User');
}

export function commandRoutes(desk: Desk): readonly Route[] {
  const other = 'other' as const;
  const commandsPath = /^\/applications\/(\d+)\/commands$/;
  const limit = { total: 1000, remaining: 900, reset_after: 14_400_000, max_concurrency: 1 };
  return [
    {
      method: 'GET',
      path: /^\/gateway\/bot$/,
      family: other,
      handle: () => ({ status: 200, body: { url: desk.url(), shards: 1, session_start_limit: limit } }),
    },
    {
      method: 'GET',
      path: /^\/users\/@me$/,
      family: other,
      handle: () => ({ status: 200, body: userObject(desk.world.bot, true) }),
    },
    {
      method: 'GET',
      path: /^\/(?:oauth2\/)?applications\/@me$/,
      family: other,
      handle: () => ({ status: 200, body: application(desk) }),
    },
    {
      method: 'GET',
      path: commandsPath,
      family: other,
      handle: () => ({ status: 200, body: desk.registered }),
    },
    { method: 'PUT', path: commandsPath, family: other, handle: ({ body }) => overwrite(desk, body.list) },
    {
      method: 'POST',
      path: commandsPath,
      family: other,
      handle: ({ body }) =>
        overwrite(desk, [...desk.registered.filter(({ name }) => name !== body.name), body]),
    },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)$/,
      family: other,
      handle: ({ params }) => guild(desk, String(params[0])),
    },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)\/channels$/,
      family: other,
      handle: ({ params }) => {
        const found = desk.world.all.find(({ id }) => id === params[0]);
        return { status: 200, body: found?.channels.map((one) => channelObject(found, one)) ?? [] };
      },
    },
    {
      method: 'GET',
      path: /^\/guilds\/(\d+)\/members\/([@\w]+)$/,
      family: other,
      handle: ({ params }) => member(desk, String(params[0]), String(params[1])),
    },
    {
      method: 'GET',
      path: /^\/users\/(\d+)$/,
      family: other,
      handle: ({ params }) => user(desk, String(params[0])),
    },
  ];
}
