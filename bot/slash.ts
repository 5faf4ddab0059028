import {
  type APIApplicationCommandBasicOption,
  type APIApplicationCommandOptionChoice,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  ApplicationIntegrationType,
  InteractionContextType,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
} from 'discord.js';
import { z } from 'zod';
import type { Topic } from './topic.ts';

/** One slash command, as the platform's HTTP API takes it. */
export type SlashCommand = RESTPostAPIChatInputApplicationCommandsJSONBody & {
  readonly options: APIApplicationCommandBasicOption[];
};

/** The part of a topic that makes a slash command. */
export type SlashTopic = Pick<Topic, 'name' | 'summary' | 'slash'>;

/** The JSON Schema of one field, as far as a slash option can express it. Anything else is refused at start. */
const fieldSchema = z.object({
  type: z.enum(['string', 'number', 'integer', 'boolean']).optional(),
  description: z.string(),
  enum: z.array(z.union([z.string(), z.number()])).optional(),
  anyOf: z.array(z.object({ const: z.union([z.string(), z.number()]) })).optional(),
  minimum: z.number().optional(),
  maximum: z.number().optional(),
  minLength: z.int().optional(),
  maxLength: z.int().optional(),
  // `.positive()` and `.negative()` end up here; the platform knows inclusive bounds only, so use `.min()`.
  exclusiveMinimum: z.never().optional(),
  exclusiveMaximum: z.never().optional(),
});
type Field = z.output<typeof fieldSchema>;

const objectSchema = z.object({
  properties: z.record(z.string(), z.unknown()),
  required: z.array(z.string()).default([]),
});

// zod writes the safe-integer range for every `z.int()`: not a bound anybody asked for.
const asked = (bound: number | undefined): bound is number =>
  bound !== undefined && Math.abs(bound) < Number.MAX_SAFE_INTEGER;

const values = (field: Field): readonly (string | number)[] | undefined =>
  field.enum ?? field.anyOf?.map((option) => option.const);

const choices = <V extends string | number>(of: readonly V[]): APIApplicationCommandOptionChoice<V>[] =>
  of.map((value) => ({ name: String(value), value }));

interface Head {
  name: string;
  description: string;
  required: boolean;
}

const textOption = (head: Head, field: Field, completes: boolean): APIApplicationCommandBasicOption => {
  const base = { ...head, type: ApplicationCommandOptionType.String } as const;
  const listed = values(field)?.map(String);
  if (listed) return { ...base, choices: choices(listed) };
  return {
    ...base,
    ...(completes ? { autocomplete: true as const } : {}),
    ...(asked(field.minLength) ? { min_length: field.minLength } : {}),
    ...(asked(field.maxLength) ? { max_length: field.maxLength } : {}),
  };
};

const numberOption = (head: Head, field: Field): APIApplicationCommandBasicOption => {
  const listed = values(field);
  const limits = listed
    ? { choices: choices(listed.map(Number)) }
    : {
        ...(asked(field.minimum) ? { min_value: field.minimum } : {}),
        ...(asked(field.maximum) ? { max_value: field.maximum } : {}),
      };
  return field.type === 'integer'
    ? { ...head, type: ApplicationCommandOptionType.Integer, ...limits }
    : { ...head, type: ApplicationCommandOptionType.Number, ...limits };
};

const option = (head: Head, field: Field, completes: boolean): APIApplicationCommandBasicOption => {
  if (field.type === 'boolean') return { ...head, type: ApplicationCommandOptionType.Boolean };
  const textual = values(field)?.some((value) => typeof value === 'string') ?? field.type === 'string';
  return textual ? textOption(head, field, completes) : numberOption(head, field);
};

/**
 * The slash command of one topic, derived from its option schema: a flat object of text, number, whole number,
 * yes/no and choice fields, each described. Required options come first, as the platform wants them.
 * @throws {TypeError} for a schema no slash command can express; a mistake in the topic, seen at start and in tests.
 */
export const slashCommand = (topic: SlashTopic): SlashCommand => {
  const { properties, required } = objectSchema.parse(z.toJSONSchema(topic.slash.options, { io: 'input' }));
  const options = Object.entries(properties).map(([name, schema]) => {
    const field = fieldSchema.safeParse(schema);
    if (!field.success) {
      throw new TypeError(`/${topic.name}: option "${name}" cannot be a slash option`, {
        cause: field.error,
      });
    }
    const head = {
      name,
      description: field.data.description,
      required: required.includes(name),
    };
    return option(head, field.data, topic.slash.complete?.[name] !== undefined);
  });
  return {
    type: ApplicationCommandType.ChatInput,
    name: topic.name,
    description: topic.summary,
    options: options.toSorted((a, b) => Number(b.required ?? false) - Number(a.required ?? false)),
    // Offered in servers that installed the bot and in its direct messages. Not in private group conversations:
    // those belong to no group, so there is no book to open.
    contexts: [InteractionContextType.Guild, InteractionContextType.BotDM],
    integration_types: [ApplicationIntegrationType.GuildInstall],
  };
};

/** The slash commands of all topics, in the order of the list. */
export const slashCommands = (topics: readonly SlashTopic[]): readonly SlashCommand[] =>
  topics.map(slashCommand);
