import {
  type APIApplicationCommand,
  ApplicationCommandType,
  type RESTPostAPIApplicationCommandsJSONBody,
} from 'discord-api-types/v10';
import { commandProblems } from './command-limits.ts';
import { applicationId, freshId } from './people.ts';

/** Registered commands, and how often they were read and written. */
export interface Commands {
  list: APIApplicationCommand[];
  reads: number;
  writes: number;
}

type Command = RESTPostAPIApplicationCommandsJSONBody;

/** As the platform keeps a command: with an id, a version and its defaults, and without what is a default. */
const kept = (command: Command): APIApplicationCommand =>
  ({
    ...command,
    id: freshId(),
    application_id: applicationId,
    version: freshId(),
    type: command.type ?? ApplicationCommandType.ChatInput,
    default_member_permissions: null,
    nsfw: false,
    ...('description' in command ? {} : { description: '' }),
    options: ('options' in command ? (command.options ?? []) : []).map((option) => {
      const { required, ...rest } = option as { required?: boolean };
      return required ? { ...rest, required } : rest;
    }),
  }) as APIApplicationCommand;

/** The commands of a bulk overwrite, checked, as they are read back later. */
export const keptCommands = (body: unknown, problem: (what: string) => void): APIApplicationCommand[] => {
  const wanted = body as Command[];
  for (const one of commandProblems(wanted)) problem(one);
  return wanted.map(kept);
};
