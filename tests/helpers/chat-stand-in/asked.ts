import {
  type APIApplicationCommandAutocompleteInteraction,
  type APIApplicationCommandInteraction,
  type APIAttachment,
  type APIInteractionDataOptionBase,
  type APIMessageApplicationCommandInteraction,
  type APIMessageComponentButtonInteraction,
  type APIMessageComponentSelectMenuInteraction,
  type APIModalSubmitInteraction,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  ChannelType,
  ComponentType,
  GatewayDispatchEvents,
  type GatewayMessageCreateDispatchData,
  InteractionContextType,
  InteractionType,
  Locale,
  MessageType,
} from 'discord-api-types/v10';
import { asMessage } from './exchange.ts';
import type { Dispatched } from './gateway.ts';
import {
  annexChannelId,
  annexId,
  applicationId,
  botId,
  botUser,
  channelId,
  directChannel,
  directChannelId,
  freshId,
  guildId,
  hazel,
  memberOf,
  type Person,
  permissionsOf,
  textChannel,
  userOf,
} from './people.ts';

/** Where something is asked, and by whom: by a member in the server's channel unless said otherwise. */
export interface Place {
  readonly member?: Person;
  readonly direct?: boolean;
  /** In the annexe instead of the hall; the bot must run in shards for it to be there. */
  readonly annexe?: boolean;
  /** In another server of these ids; it must be known to the bot for plain messages. */
  readonly server?: { readonly guild: string; readonly channel: string };
  /** In a group conversation outside any server. */
  readonly privateGroup?: boolean;
}

/** A slash command's options by name. */
export type Filled = Readonly<Record<string, string | number | boolean>>;

/** A message written by somebody; fields of the platform's own may be overridden. */
export interface Written extends Place {
  readonly text: string;
  readonly as?: Partial<GatewayMessageCreateDispatchData>;
}

const surroundings = (
  id: string,
  token: string,
  { member = hazel, direct = false, privateGroup = false, annexe = false, server: other }: Place,
) => {
  const here = annexe ? { guild: annexId, channel: annexChannelId } : { guild: guildId, channel: channelId };
  const server = other ?? here;
  const common = {
    id,
    token,
    application_id: applicationId,
    version: 1 as const,
    app_permissions: permissionsOf(member),
    locale: Locale.EnglishGB,
    entitlements: [],
    authorizing_integration_owners: {
      [ApplicationIntegrationType.GuildInstall]: server.guild,
    },
    attachment_size_limit: 10 * 1024 * 1024,
  };
  if (direct || privateGroup) {
    return {
      ...common,
      user: userOf(member),
      channel: directChannel(member),
      channel_id: directChannelId(member),
      context: privateGroup ? InteractionContextType.PrivateChannel : InteractionContextType.BotDM,
    };
  }
  return {
    ...common,
    guild_id: server.guild,
    guild_locale: Locale.EnglishGB,
    member: {
      user: userOf(member),
      ...memberOf(member),
      permissions: permissionsOf(member),
    },
    channel: {
      ...textChannel,
      id: server.channel,
      guild_id: server.guild,
      permissions: permissionsOf(member),
    },
    channel_id: server.channel,
    context: InteractionContextType.Guild,
  };
};

/** An option as it is sent: with the type it was registered with. */
export interface SentOption {
  readonly name: string;
  readonly type: number;
  readonly value: string | number | boolean;
}

const optionType = (value: string | number | boolean): number => {
  if (typeof value === 'string') return ApplicationCommandOptionType.String;
  if (typeof value === 'boolean') return ApplicationCommandOptionType.Boolean;
  return Number.isInteger(value) ? ApplicationCommandOptionType.Integer : ApplicationCommandOptionType.Number;
};

export const sentOptions = (options: Filled): readonly SentOption[] =>
  Object.entries(options).map(([name, value]) => ({ name, type: optionType(value), value }));

/** A command on a message, and the message it is used on. */
export interface OnMessage {
  readonly name: string;
  readonly text: string;
  readonly attachments?: readonly APIAttachment[];
}

const commandId = '900000000000000900';

export const commandFilledIn = (
  id: string,
  token: string,
  name: string,
  options: readonly SentOption[],
  place: Place,
): APIApplicationCommandInteraction => ({
  ...surroundings(id, token, place),
  type: InteractionType.ApplicationCommand,
  data: {
    id: commandId,
    name,
    type: ApplicationCommandType.ChatInput,
    options: options as unknown as APIInteractionDataOptionBase<
      ApplicationCommandOptionType.String,
      string
    >[],
  },
});

export const typedSoFar = (
  id: string,
  token: string,
  name: string,
  typed: { readonly option: string; readonly typed: string; readonly before?: readonly SentOption[] },
  place: Place,
): APIApplicationCommandAutocompleteInteraction => ({
  ...surroundings(id, token, place),
  type: InteractionType.ApplicationCommandAutocomplete,
  data: {
    id: commandId,
    name,
    type: ApplicationCommandType.ChatInput,
    options: [
      ...((typed.before ?? []) as []),
      {
        name: typed.option,
        type: ApplicationCommandOptionType.String,
        value: typed.typed,
        focused: true,
      },
    ],
  },
});

const pressedMessage = (channel: string) =>
  asMessage(
    {
      id: freshId(),
      content: '',
      aside: false,
      buttons: [],
      options: [],
      files: [],
      flags: 0,
      replyTo: null,
    },
    channel,
  );

export const buttonPressed = (
  id: string,
  token: string,
  customId: string,
  place: Place,
): APIMessageComponentButtonInteraction => {
  const around = surroundings(id, token, place);
  return {
    ...around,
    type: InteractionType.MessageComponent,
    message: pressedMessage(around.channel_id),
    data: { component_type: ComponentType.Button, custom_id: customId },
  };
};

/** An option of a menu picked, by its value. */
export const optionPicked = (
  id: string,
  token: string,
  { value, menu }: { readonly value: string; readonly menu: string },
  place: Place,
): APIMessageComponentSelectMenuInteraction => {
  const around = surroundings(id, token, place);
  return {
    ...around,
    type: InteractionType.MessageComponent,
    message: pressedMessage(around.channel_id),
    data: { component_type: ComponentType.StringSelect, custom_id: menu, values: [value] },
  };
};

/** A form sent back with these values, whether such a form was shown or not. */
export const formSent = (
  id: string,
  token: string,
  { form, fields }: { readonly form: string; readonly fields: Readonly<Record<string, string>> },
  place: Place,
): APIModalSubmitInteraction => ({
  ...surroundings(id, token, place),
  type: InteractionType.ModalSubmit,
  data: {
    custom_id: form,
    components: Object.entries(fields).map(([name, value], at) => ({
      id: 2 * at,
      type: ComponentType.ActionRow,
      components: [{ id: 2 * at + 1, type: ComponentType.TextInput, custom_id: name, value }],
    })),
  },
});

/** A command used on somebody's message. */
export const messageCommand = (
  id: string,
  token: string,
  { name, text, attachments = [] }: OnMessage,
  place: Place,
): APIMessageApplicationCommandInteraction => {
  const around = surroundings(id, token, place);
  const target = { ...pressedMessage(around.channel_id), content: text, attachments: [...attachments] };
  return {
    ...around,
    type: InteractionType.ApplicationCommand,
    data: {
      id: commandId,
      name,
      type: ApplicationCommandType.Message,
      target_id: target.id,
      resolved: { messages: { [target.id]: target } },
    },
  };
};

/**
 * A message as the gateway tells it. Without the message-content intent its text comes only in direct messages and
 * where the bot is mentioned, so it is left out elsewhere.
 */
export const messageCreated = (id: string, written: Written): Dispatched => {
  const { text, member = hazel, direct = false, as = {}, server } = written;
  const mentioned = text.includes(`<@${botId}>`) || text.includes(`<@!${botId}>`);
  const { roles, joined_at, deaf, mute, flags } = memberOf(member);
  return {
    t: GatewayDispatchEvents.MessageCreate,
    d: {
      ...asMessage(
        {
          id,
          content: direct || mentioned ? text : '',
          aside: false,
          buttons: [],
          options: [],
          files: [],
          flags: 0,
          replyTo: null,
        },
        direct ? directChannelId(member) : (server?.channel ?? channelId),
      ),
      author: userOf(member),
      type: MessageType.Default,
      channel_type: direct ? ChannelType.DM : ChannelType.GuildText,
      mentions: mentioned ? [{ ...botUser, member: memberOf({ id: botId, name: 'pipkin' }) }] : [],
      ...(direct
        ? {}
        : {
            guild_id: server?.guild ?? guildId,
            member: { roles, joined_at, deaf, mute, flags },
          }),
      ...as,
    },
  };
};
