import {
  type APIApplicationCommand,
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOption,
  DiscordAPIError,
  type REST,
  type RESTGetAPIApplicationCommandsResult,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody,
  Routes,
} from 'discord.js';
import type { SlashCommand } from '../slash.ts';

type AnyOption = APIApplicationCommandOption | APIApplicationCommandBasicOption;

/** What we say of an option, with the platform's defaults written out, in a fixed order of keys. */
const plainOption = (option: AnyOption): readonly unknown[] => {
  const said: Readonly<Record<string, unknown>> = { ...option };
  const choices = 'choices' in option ? (option.choices ?? []) : [];
  return [
    said.type,
    said.name,
    said.description,
    said.required ?? false,
    choices.map(({ name, value }) => [name, value]),
    said.autocomplete ?? false,
    said.min_value ?? null,
    said.max_value ?? null,
    said.min_length ?? null,
    said.max_length ?? null,
  ];
};

/** A command to be registered: a slash command, or one on a message. */
export type AnyCommand = SlashCommand | RESTPostAPIContextMenuApplicationCommandsJSONBody;

type Known = AnyCommand | APIApplicationCommand;

/** A command as text that is equal for equal commands, whichever fields the platform adds of its own. */
const plainCommand = (command: Known): string =>
  JSON.stringify([
    command.type,
    command.name,
    'description' in command ? command.description : '',
    ('options' in command ? (command.options ?? []) : []).map(plainOption),
    (command.contexts ?? []).toSorted(),
    (command.integration_types ?? []).toSorted(),
  ]);

const plainList = (commands: readonly Known[]): string => commands.map(plainCommand).toSorted().join('\n');

const knownCommands = async (
  rest: REST,
  route: ReturnType<typeof Routes.applicationCommands>,
): Promise<RESTGetAPIApplicationCommandsResult | undefined> => {
  try {
    const known = await rest.get(route);
    return Array.isArray(known) ? known : undefined;
  } catch (fault) {
    if (fault instanceof DiscordAPIError) return undefined;
    throw fault;
  }
};

/**
 * Makes the bot's global commands those of `commands`, writing only when they differ: the platform allows few writes
 * a day. Returns whether they were written; rejects with the HTTP client's error. Where they cannot be read they are
 * written: without them nobody finds anything.
 */
export const registerCommands = async (
  rest: REST,
  applicationId: string,
  commands: readonly AnyCommand[],
): Promise<boolean> => {
  const route = Routes.applicationCommands(applicationId);
  const known = await knownCommands(rest, route);
  if (known && plainList(known) === plainList(commands)) return false;
  await rest.put(route, { body: commands });
  return true;
};
