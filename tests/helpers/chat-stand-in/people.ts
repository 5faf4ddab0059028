import {
  type APIDMChannel,
  type APIGuildMember,
  type APIRole,
  type APITextChannel,
  type APIUser,
  ChannelType,
  type GatewayGuildCreateDispatchData,
  GuildDefaultMessageNotifications,
  GuildExplicitContentFilter,
  GuildMemberFlags,
  GuildMFALevel,
  GuildNSFWLevel,
  GuildPremiumTier,
  GuildSystemChannelFlags,
  GuildVerificationLevel,
  Locale,
  PermissionFlagsBits,
  RoleFlags,
} from 'discord-api-types/v10';

// The Fernlea Makers' Circle, a village-hall group we made up, with just what a message or a command needs.

export const applicationId = '900000000000000001';
export const botId = applicationId;
export const guildId = '900000000000000100';
export const channelId = '900000000000000101';
export const benchRoleId = '900000000000000102';

/** Somebody who writes. Without `permissions` they may do what everybody may: read and write. */
export interface Person {
  readonly id: string;
  readonly name: string;
  readonly roles?: readonly string[];
  readonly permissions?: bigint;
  readonly bot?: boolean;
}

export const wren: Person = {
  id: '900000000000000201',
  name: 'wren',
  roles: [benchRoleId],
};
export const hazel: Person = { id: '900000000000000202', name: 'hazel' };
export const warden: Person = {
  id: '900000000000000203',
  name: 'warden',
  permissions: PermissionFlagsBits.ManageGuild,
};
export const otherBot: Person = {
  id: '900000000000000204',
  name: 'tally-bot',
  bot: true,
};

const usual =
  PermissionFlagsBits.ViewChannel | PermissionFlagsBits.SendMessages | PermissionFlagsBits.AttachFiles;

export const permissionsOf = (person: Person): string => String(usual | (person.permissions ?? 0n));

export const userOf = ({ id, name, bot }: Person): APIUser => ({
  id,
  username: name,
  discriminator: '0',
  global_name: null,
  avatar: null,
  ...(bot ? { bot: true } : {}),
});

export const botUser: APIUser = {
  ...userOf({ id: botId, name: 'pipkin', bot: true }),
};

export const memberOf = ({ roles = [] }: Person): Omit<APIGuildMember, 'user'> => ({
  roles: [...roles],
  joined_at: '2026-01-05T09:00:00.000000+00:00',
  deaf: false,
  mute: false,
  flags: GuildMemberFlags.CompletedOnboarding,
});

export const role = (id: string, name: string, permissions: bigint): APIRole => ({
  id,
  name,
  color: 0,
  colors: { primary_color: 0, secondary_color: null, tertiary_color: null },
  hoist: false,
  position: 0,
  permissions: String(permissions),
  managed: false,
  mentionable: false,
  flags: RoleFlags.InPrompt,
});

export const textChannel: APITextChannel = {
  id: channelId,
  type: ChannelType.GuildText,
  guild_id: guildId,
  name: 'workbench',
  position: 0,
  permission_overwrites: [],
  nsfw: false,
  parent_id: null,
};

export const directChannelId = ({ id }: Person): string => `8${id.slice(1)}`;

/** Direct channels are numbered from 8 on here, everything else from 9. */
export const isDirect = (channel: string): boolean => channel.startsWith('8');

export const directChannel = (person: Person): APIDMChannel => ({
  id: directChannelId(person),
  type: ChannelType.DM,
  name: null,
  last_message_id: null,
  recipients: [userOf(person)],
});

export const guild: GatewayGuildCreateDispatchData = {
  id: guildId,
  name: "Fernlea Makers' Circle",
  icon: null,
  splash: null,
  discovery_splash: null,
  owner_id: '900000000000000299',
  region: '',
  afk_channel_id: null,
  afk_timeout: 300,
  verification_level: GuildVerificationLevel.Low,
  default_message_notifications: GuildDefaultMessageNotifications.OnlyMentions,
  explicit_content_filter: GuildExplicitContentFilter.Disabled,
  roles: [role(guildId, '@everyone', usual), role(benchRoleId, 'Bench', 0n)],
  emojis: [],
  features: [],
  mfa_level: GuildMFALevel.None,
  application_id: null,
  system_channel_id: null,
  system_channel_flags: GuildSystemChannelFlags.SuppressJoinNotifications,
  rules_channel_id: null,
  vanity_url_code: null,
  description: null,
  banner: null,
  premium_tier: GuildPremiumTier.None,
  preferred_locale: Locale.EnglishGB,
  public_updates_channel_id: null,
  nsfw_level: GuildNSFWLevel.Default,
  stickers: [],
  premium_progress_bar_enabled: false,
  hub_type: null,
  safety_alerts_channel_id: null,
  incidents_data: null,
  joined_at: '2026-01-05T09:00:00.000000+00:00',
  large: false,
  unavailable: false,
  member_count: 4,
  voice_states: [],
  members: [{ user: botUser, ...memberOf({ id: botId, name: 'pipkin' }) }],
  channels: [textChannel],
  threads: [],
  presences: [],
  stage_instances: [],
  guild_scheduled_events: [],
  soundboard_sounds: [],
};

/** A second server, whose id makes it belong to shard 0 of 2; the first one belongs to shard 1. */
export const annexId = '900000000004194404';
export const annexChannelId = '900000000004194405';

/** The hall's annexe: another group with a book of its own. It is there only when the bot runs in shards. */
export const annexe: GatewayGuildCreateDispatchData = {
  ...guild,
  id: annexId,
  name: 'Fernlea Annexe',
  roles: [role(annexId, '@everyone', usual)],
  channels: [{ ...textChannel, id: annexChannelId, guild_id: annexId }],
};

let counted = 0n;

/** A fresh id: like the platform's, it carries the time it was made at (milliseconds since 2015). */
export const freshId = (): string => {
  counted = (counted + 1n) % 4096n;
  return String(((BigInt(Date.now()) - 1_420_070_400_000n) << 22n) | counted);
};
