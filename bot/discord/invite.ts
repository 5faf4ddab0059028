import { OAuth2Scopes, PermissionFlagsBits } from 'discord.js';

/** All the bot ever does in a server's channels; older messages are read to reply, and to see whether a reminder is there. */
export const neededPermissions: bigint =
  PermissionFlagsBits.ViewChannel |
  PermissionFlagsBits.SendMessages |
  PermissionFlagsBits.SendMessagesInThreads |
  PermissionFlagsBits.AttachFiles |
  PermissionFlagsBits.ReadMessageHistory;

/** Where somebody who manages a server takes the bot in, with no more rights than it uses. */
export const inviteLink = (applicationId: string): string => {
  const link = new URL('https://discord.com/oauth2/authorize');
  link.searchParams.set('client_id', applicationId);
  link.searchParams.set('scope', `${OAuth2Scopes.Bot} ${OAuth2Scopes.ApplicationsCommands}`);
  link.searchParams.set('permissions', String(neededPermissions));
  return link.href;
};
