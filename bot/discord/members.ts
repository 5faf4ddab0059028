import {
  type APIInteractionGuildMember,
  type BaseInteraction,
  GuildMember,
  InteractionContextType,
  type Message,
  PermissionFlagsBits,
  type Role,
  type User,
} from 'discord.js';
import type { Heard, Member } from '../heard.ts';

/** Whose book an event belongs to, where it happened, who is asking and when. */
export type Asker = Pick<Heard, 'group' | 'channel' | 'member' | 'at'>;

type AnyMember = GuildMember | APIInteractionGuildMember | null;

// A setting may name a role by its name or its id, so both are handed on. The server gives a member's roles as ids;
// names are known for servers the bot has joined.
const rolesOf = (member: AnyMember): readonly string[] => {
  if (!member) return [];
  if (member instanceof GuildMember)
    return [...member.roles.cache.values()].flatMap((role: Role | undefined) =>
      // The role everybody has is put in unseen, also where the server never told of it.
      role ? [role.name, role.id] : [],
    );
  return member.roles;
};

const displayName = (user: User, member: AnyMember): string => {
  if (member instanceof GuildMember) return member.displayName;
  return member?.nick ?? user.displayName;
};

const asMember = (user: User, member: AnyMember, manages: boolean): Member => ({
  id: user.id,
  name: displayName(user, member),
  roles: rolesOf(member),
  manages,
});

const dayMs = 86_400_000;

/** When it was written, by its own id, unless that lies far from now: then the id was not made from a clock. */
const writtenAt = (
  thing: { readonly id: string; readonly createdTimestamp: number },
  nowMs: number,
): number => {
  const at = /^\d{1,20}$/.test(thing.id) ? thing.createdTimestamp : Number.NaN;
  return Math.abs(at - nowMs) < dayMs ? at : nowMs;
};

const privateBook = (user: User): string => `dm:${user.id}`;

/** Everybody manages the book of their own direct messages. */
export const askerOfMessage = (message: Message, nowMs: number): Asker => ({
  group: message.guildId ? `guild:${message.guildId}` : privateBook(message.author),
  channel: message.channelId,
  member: asMember(
    message.author,
    message.member,
    message.guildId === null || (message.member?.permissions.has(PermissionFlagsBits.ManageGuild) ?? false),
  ),
  at: writtenAt(message, nowMs),
});

/** Undefined in a group conversation outside any server: its people share no book, and nobody's own may be shown. */
export const askerOfInteraction = (interaction: BaseInteraction, nowMs: number): Asker | undefined => {
  if (interaction.context === InteractionContextType.PrivateChannel) return undefined;
  const { user, member, guildId, memberPermissions } = interaction;
  return {
    group: guildId ? `guild:${guildId}` : privateBook(user),
    channel: interaction.channelId ?? guildId ?? user.id,
    member: asMember(
      user,
      member,
      guildId === null || (memberPermissions?.has(PermissionFlagsBits.ManageGuild) ?? false),
    ),
    at: writtenAt(interaction, nowMs),
  };
};
