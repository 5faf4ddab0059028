import {
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord.js';

/** The command on a message, as it stands in the message's own menu. */
export const readName = 'Read as a recipe';

/** Commands on a message. Offered where the slash commands are. */
export const messageCommands: readonly RESTPostAPIContextMenuApplicationCommandsJSONBody[] = [
  {
    type: ApplicationCommandType.Message,
    name: readName,
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
    integration_types: [ApplicationIntegrationType.GuildInstall],
  },
];
