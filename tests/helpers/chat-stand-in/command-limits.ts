import {
  type APIApplicationCommandBasicOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
  type RESTPostAPIApplicationCommandsJSONBody,
  type RESTPostAPIChatInputApplicationCommandsJSONBody,
  type RESTPostAPIContextMenuApplicationCommandsJSONBody,
} from 'discord-api-types/v10';

// The platform's limits as its developer documentation gives them (interactions/application-commands: 1-32 and 1-100
// characters, 25 options, 25 choices, 8,000 characters a command, required options first; read in the documentation's
// repository, commit c98d64b. Lengths of choices and of typed text, and what a command on a message may be: from memory).

type Command = RESTPostAPIChatInputApplicationCommandsJSONBody;

const namePattern = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;

const between = (what: string, length: number, least: number, most: number): string[] =>
  length < least || length > most ? [`${what}: ${length} characters, not ${least} to ${most}`] : [];

const named = (what: string, name: string, description: string): string[] => [
  ...(namePattern.test(name) && name === name.toLowerCase() ? [] : [`${what}: name "${name}" not allowed`]),
  ...between(`${what} description`, description.length, 1, 100),
];

interface Choice {
  readonly name: string;
  readonly value: string | number;
}

const choicesOf = (option: APIApplicationCommandBasicOption): readonly Choice[] =>
  'choices' in option ? (option.choices ?? []) : [];

const choiceProblems = (what: string, option: APIApplicationCommandBasicOption): string[] => {
  const choices = choicesOf(option);
  return [
    ...(choices.length > 25 ? [`${what}: ${choices.length} choices, more than 25`] : []),
    ...(new Set(choices.map(({ name }) => name)).size < choices.length
      ? [`${what}: two choices of one name`]
      : []),
    ...choices.flatMap(({ name, value }) => [
      ...between(`${what} choice name`, name.length, 1, 100),
      ...between(`${what} choice value`, String(value).length, 1, 100),
    ]),
    ...('autocomplete' in option && option.autocomplete && choices.length > 0
      ? [`${what}: choices and autocomplete together`]
      : []),
  ];
};

const lengthProblems = (what: string, option: APIApplicationCommandBasicOption): string[] => {
  if (option.type !== ApplicationCommandOptionType.String) return [];
  const { min_length: least = 0, max_length: most = 6000 } = option;
  const sound = least >= 0 && least <= 6000 && most >= 1 && most <= 6000 && least <= most;
  return sound ? [] : [`${what}: length ${least} to ${most}`];
};

const optionProblems = (command: Command, option: APIApplicationCommandBasicOption): string[] => {
  const what = `/${command.name} ${option.name}`;
  return [
    ...named(what, option.name, option.description),
    ...choiceProblems(what, option),
    ...lengthProblems(what, option),
  ];
};

const basic = (command: Command): readonly APIApplicationCommandBasicOption[] =>
  (command.options ?? []).flatMap((option) =>
    option.type === ApplicationCommandOptionType.Subcommand ||
    option.type === ApplicationCommandOptionType.SubcommandGroup
      ? []
      : [option],
  );

const weight = (command: Command): number =>
  [command, ...basic(command)]
    .flatMap((part) => [part.name, part.description])
    .concat(basic(command).flatMap((option) => choicesOf(option).map(({ value }) => String(value))))
    .reduce((all, text) => all + text.length, 0);

const slashProblems = (command: Command): string[] => {
  const options = basic(command);
  const firstOptional = options.findIndex(({ required }) => required !== true);
  const lastRequired = options.findLastIndex(({ required }) => required === true);
  return [
    ...named(`/${command.name}`, command.name, command.description),
    ...(options.length > 25 ? [`/${command.name}: more than 25 options`] : []),
    ...(new Set(options.map(({ name }) => name)).size < options.length
      ? [`/${command.name}: two options of one name`]
      : []),
    ...(firstOptional >= 0 && firstOptional < lastRequired
      ? [`/${command.name}: optional before required`]
      : []),
    ...(weight(command) > 8000 ? [`/${command.name}: more than 8000 characters`] : []),
    ...options.flatMap((option) => optionProblems(command, option)),
  ];
};

type MenuCommand = RESTPostAPIContextMenuApplicationCommandsJSONBody;
type AnyCommand = RESTPostAPIApplicationCommandsJSONBody;

/** Blanks and capitals are fine in the name of a command on a message; a description or options are not. */
const menuProblems = (command: MenuCommand): string[] => [
  ...between(`"${command.name}" name`, command.name.length, 1, 32),
  ...('description' in command && command.description ? [`"${command.name}": has a description`] : []),
  ...('options' in command && command.options ? [`"${command.name}": has options`] : []),
];

const isSlash = (command: AnyCommand): command is Command =>
  command.type === undefined || command.type === ApplicationCommandType.ChatInput;

const isMenu = (command: AnyCommand): command is MenuCommand =>
  command.type === ApplicationCommandType.Message || command.type === ApplicationCommandType.User;

/** What the platform would refuse in these commands; empty when nothing. */
export const commandProblems = (commands: readonly AnyCommand[]): string[] => {
  const slash = commands.filter(isSlash);
  const menus = commands.filter(isMenu);
  const names = commands.map(({ type, name }) => `${type ?? ApplicationCommandType.ChatInput} ${name}`);
  return [
    ...(slash.length > 100 ? ['more than 100 commands'] : []),
    ...(menus.length > 5 ? ['more than 5 commands on a message'] : []),
    ...(new Set(names).size < names.length ? ['two commands of one name'] : []),
    ...(slash.length + menus.length < commands.length ? ['a command of another type'] : []),
    ...slash.flatMap(slashProblems),
    ...menus.flatMap(menuProblems),
  ];
};
