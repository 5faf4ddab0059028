import type { ChatInputCommandInteraction, ModalSubmitInteraction, RepliableInteraction } from 'discord.js';
import { type Filled, type FormSpec, filledFrom, filledIn } from '../forms/form.ts';
import { readForm } from '../forms/recipe-form.ts';
import type { Command } from '../heard.ts';
import type { Topic } from '../topic.ts';
import { readName } from './context-menu.ts';
import type { Front } from './front.ts';
import { meaningOf } from './ids.ts';
import type { Asker } from './members.ts';
import { recipeIn } from './read-message.ts';
import { sentBack } from './show-form.ts';

/** What an interaction stands for: words (sent back with a form, perhaps), a form to be shown, or neither and why. */
export type Meaning =
  | {
      readonly words: string;
      readonly command?: Command;
      readonly from?: { readonly form: FormSpec; readonly filled: Filled };
      /** How many options of a menu are passed over. */
      readonly after?: number;
    }
  | { readonly form: FormSpec; readonly filled: Filled }
  | { readonly sorry: string };

const unknownCommand =
  'I do not know that command any more. Type /help, or ask in plain words: mention me or write to me.';
const oldButton = 'That button is no longer of use. Please type what you need instead, for example "help".';
const oldForm =
  'That form is no longer of use. Please type what you need instead, for example "help". What you had typed is not lost if you copy it now.';
const noRecipe =
  'There are no words in that message that I could read. Try it on one with a recipe in it, or paste the recipe: /recipe.';

/** The filled-in options by name. All options are flat values; there are no subcommands. */
const optionsOf = ({ options }: ChatInputCommandInteraction) =>
  Object.fromEntries(options.data.map(({ name, value }) => [name, value]));

const ofCommand = (front: Front, interaction: ChatInputCommandInteraction): Meaning => {
  const topic = front.topics.get(interaction.commandName);
  if (!topic) return { sorry: unknownCommand };
  const options = optionsOf(interaction);
  const { form } = topic.slash;
  if (form?.opens?.(options)) return { form, filled: filledFrom(form, options) };
  return { words: topic.slash.say(options), command: { topic: topic.name, options } };
};

const formsOf = (topics: ReadonlyMap<string, Topic>): readonly FormSpec[] => [
  ...[...topics.values()].flatMap(({ slash }) => slash.form ?? []),
  readForm,
];

const formNamed = (front: Front, name: string): FormSpec | undefined =>
  formsOf(front.topics).find((form) => form.name === name);

/** A button pressed or an option picked. */
const ofId = async (front: Front, id: string, { group, at }: Asker): Promise<Meaning> => {
  const whole = await front.longIds.whole(id, group, at);
  const meaning = whole === undefined ? undefined : meaningOf(whole);
  if (!meaning) return { sorry: oldButton };
  if ('words' in meaning) return meaning;
  const form = formNamed(front, meaning.form);
  return form ? { form, filled: filledIn(form, meaning.filled) } : { sorry: oldButton };
};

const ofForm = (front: Front, interaction: ModalSubmitInteraction): Meaning => {
  const meaning = meaningOf(interaction.customId);
  const form = meaning && 'form' in meaning ? formNamed(front, meaning.form) : undefined;
  if (!form) return { sorry: oldForm };
  const filled = filledIn(form, sentBack(interaction));
  return { words: form.say(filled), from: { form, filled } };
};

/** What a member meant by a command, a button, a menu, a form or the command on a message. */
export const meaningOfInteraction = async (
  front: Front,
  interaction: RepliableInteraction,
  asker: Asker,
): Promise<Meaning> => {
  if (interaction.isChatInputCommand()) return ofCommand(front, interaction);
  if (interaction.isButton()) return ofId(front, interaction.customId, asker);
  if (interaction.isStringSelectMenu()) return ofId(front, interaction.values[0] ?? '', asker);
  if (interaction.isModalSubmit()) return ofForm(front, interaction);
  if (!interaction.isMessageContextMenuCommand() || interaction.commandName !== readName)
    return { sorry: unknownCommand };
  const lines = await recipeIn(interaction.targetMessage, front.apiUrl);
  return lines === ''
    ? { sorry: noRecipe }
    : { form: readForm, filled: filledIn(readForm, new Map([['lines', lines]])) };
};
