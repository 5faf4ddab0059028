import type { ChatInputCommandInteraction, Interaction, RepliableInteraction } from 'discord.js';
import { asideReply, type ChatReply, chatReply } from '../render/discord.ts';
import { wordsOfButton } from './buttons.ts';
import { guarded } from './faults.ts';
import { type Front, within } from './front.ts';
import { askerOfInteraction } from './members.ts';
import { sendToInteraction } from './send.ts';
import { suggest } from './suggest.ts';

/** The words an interaction stands for, or why there are none. */
type Meant = { readonly words: string } | { readonly sorry: string };

const noBook = 'I answer in servers and in direct messages to me, not in group conversations.';
const unknownCommand =
  'I do not know that command any more. Type /help, or ask in plain words: mention me or write to me.';
const oldButton = 'That button is no longer of use. Please type what you need instead, for example "help".';

/** The filled-in options by name. All options are flat values; there are no subcommands. */
const optionsOf = ({ options }: ChatInputCommandInteraction) =>
  Object.fromEntries(options.data.map(({ name, value }) => [name, value]));

const meantByCommand = (front: Front, interaction: ChatInputCommandInteraction): Meant => {
  const topic = front.topics.get(interaction.commandName);
  return topic ? { words: topic.slash.say(optionsOf(interaction)) } : { sorry: unknownCommand };
};

const meant = (front: Front, interaction: RepliableInteraction): Meant => {
  if (interaction.isChatInputCommand()) return meantByCommand(front, interaction);
  const words = interaction.isButton() ? wordsOfButton(interaction.customId) : undefined;
  return words === undefined ? { sorry: oldButton } : { words };
};

const replyTo = async (front: Front, interaction: RepliableInteraction): Promise<ChatReply> => {
  const asker = askerOfInteraction(interaction);
  if (!asker) return asideReply(noBook);
  const sense = meant(front, interaction);
  if ('sorry' in sense) return asideReply(sense.sorry);
  return chatReply(await front.pipkin.hear({ text: sense.words, ...asker }));
};

/** An answer that takes long is acknowledged first: an interaction not acknowledged within 3 s is dropped. */
const answer = async (front: Front, interaction: RepliableInteraction): Promise<void> => {
  const coming = replyTo(front, interaction);
  const early = await within(coming, front.pace.deferAfterMs, undefined);
  if (early === undefined) await interaction.deferReply();
  await sendToInteraction(interaction, early ?? (await coming));
};

/** A command, a button or a request for suggestions. Never rejects. */
export const onInteraction = async (front: Front, interaction: Interaction): Promise<void> => {
  if (interaction.isAutocomplete()) {
    await guarded(front.log, 'suggestions', () => suggest(front, interaction));
    return;
  }
  if (!interaction.isRepliable()) return;
  await guarded(
    front.log,
    'interaction',
    () => answer(front, interaction),
    (apology) => sendToInteraction(interaction, apology),
  );
};
