import {
  ApplicationCommandType,
  ChannelType,
  type Client,
  Events,
  InteractionType,
  MessageType,
} from 'discord.js';

type Fields = Record<string, unknown>;

const isFields = (value: unknown): value is Fields =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

const put = (fields: Fields, missing: Fields): void => {
  for (const [name, value] of Object.entries(missing)) fields[name] ??= value;
};

/** Where it was asked, if all that came is the channel's id. */
const channelOf = ({ channel_id: id, guild_id: guild }: Fields): Fields =>
  typeof id === 'string'
    ? {
        channel: {
          id,
          type: guild ? ChannelType.GuildText : ChannelType.DM,
          ...(guild ? { guild_id: guild } : {}),
        },
      }
    : {};

const interaction = (event: Fields): void => {
  const { id, type, channel_id: channel, member, data } = event;
  put(event, { entitlements: [], authorizing_integration_owners: {}, ...channelOf(event) });
  if (type === InteractionType.MessageComponent) put(event, { message: { id, channel_id: channel } });
  if (isFields(member)) put(member, { roles: [] });
  if (isFields(data)) put(data, { type: ApplicationCommandType.ChatInput, components: [] });
};

/** Members' rights are reckoned from the role that everybody has. It has the server's own id, and by itself allows nothing here. */
const guild = (event: Fields): void => {
  const roles: readonly unknown[] = Array.isArray(event.roles) ? event.roles : [];
  if (roles.some((role) => isFields(role) && role.id === event.id)) return;
  event.roles = [...roles, { id: event.id, name: '@everyone', permissions: '0' }];
};

const fill: Readonly<Record<string, (event: Fields) => void>> = {
  READY: (event) => put(event, { application: { id: (event.user as Fields | undefined)?.id } }),
  GUILD_CREATE: guild,
  INTERACTION_CREATE: interaction,
  MESSAGE_CREATE: (event) => put(event, { type: MessageType.Default }),
};

/**
 * Puts into events what the library takes for granted and fails without, before it looks at them: a proxy, or a newer
 * version of the platform, may leave out what nobody here needs. An interaction that fails in the library is never answered.
 */
export const makeWhole = (client: Client): void => {
  client.on(Events.Raw, ({ t, d }: { readonly t?: unknown; readonly d?: unknown }) => {
    if (typeof t === 'string' && Object.hasOwn(fill, t) && isFields(d)) fill[t]?.(d);
  });
};
