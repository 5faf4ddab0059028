import {
  ActionRowBuilder,
  ButtonStyle,
  ComponentType,
  DiscordAPIError,
  type InteractionReplyOptions,
  type Message,
  MessageFlags,
  RESTJSONErrorCodes,
  type RepliableInteraction,
} from 'discord.js';
import type { ChatMessage, ChatReply } from '../render/discord.ts';
import type { NextButton, NextMenu } from './buttons.ts';

// The only place that builds what is sent, so that nothing goes out that mentions anybody.

const row = (buttons: readonly NextButton[]) => ({
  type: ComponentType.ActionRow as const,
  components: buttons.map(({ label, id }) => ({
    type: ComponentType.Button as const,
    style: ButtonStyle.Secondary as const,
    label,
    customId: id,
  })),
});

/**
 * A message nobody asked for, as the HTTP API takes it. The platform posts the same nonce once, for as long as it remembers
 * it: some minutes.
 */
export const unaskedBody = (text: string, rows: readonly (readonly NextButton[])[], nonce: string) => ({
  content: text,
  components: rows.map((buttons) => new ActionRowBuilder(row(buttons)).toJSON()),
  allowed_mentions: { parse: [] },
  flags: MessageFlags.SuppressEmbeds,
  nonce,
  enforce_nonce: true,
});

const menuRow = ({ label, options }: NextMenu) => ({
  type: ComponentType.ActionRow as const,
  components: [
    {
      type: ComponentType.StringSelect as const,
      customId: 'pick1',
      placeholder: label,
      options: options.map((option) => ({ label: option.label, value: option.id })),
    },
  ],
});

export const payload = ({ text, buttons, menu, files }: ChatMessage) => ({
  content: text,
  components: [...(menu ? [menuRow(menu)] : []), ...(buttons.length > 0 ? [row(buttons)] : [])],
  files: files.map(({ name, bytes }) => ({
    name,
    attachment: Buffer.from(bytes),
  })),
  allowedMentions: { parse: [], repliedUser: false },
});

/** Addresses among the sources stay links, but do not unfold into previews. */
const flagsOf = (aside: boolean): NonNullable<InteractionReplyOptions['flags']> & number =>
  aside ? MessageFlags.SuppressEmbeds | MessageFlags.Ephemeral : MessageFlags.SuppressEmbeds;

const sendFirst = async (interaction: RepliableInteraction, message: ChatMessage, aside: boolean) => {
  const flags = flagsOf(aside);
  if (!interaction.deferred) {
    await interaction.reply({ ...payload(message), flags });
    return;
  }
  if (!aside) {
    await interaction.editReply({
      ...payload(message),
      flags: MessageFlags.SuppressEmbeds,
    });
    return;
  }
  // "Thinking" was shown to all, and that cannot be turned into a message for one: take it back, then answer aside.
  await interaction.deleteReply();
  await interaction.followUp({ ...payload(message), flags });
};

/** Answers an interaction, deferred or not; only the first message may come late. Rejects as the platform refuses. */
export const sendToInteraction = async (
  interaction: RepliableInteraction,
  reply: ChatReply,
): Promise<void> => {
  const [first, ...more] = reply.messages;
  await sendFirst(interaction, first, reply.aside);
  for (const message of more) {
    await interaction.followUp({
      ...payload(message),
      flags: flagsOf(reply.aside),
    });
  }
};

const mayNotReply = (fault: unknown): boolean =>
  fault instanceof DiscordAPIError &&
  fault.code === RESTJSONErrorCodes.CannotReplyWithoutPermissionToReadMessageHistory;

/** Answers a message in its channel, as a reply to it that does not ring. Rejects as the platform refuses. */
export const sendToMessage = async (asked: Message, reply: ChatReply): Promise<void> => {
  const flags = MessageFlags.SuppressEmbeds;
  const { channel } = asked;
  const [first, ...more] = reply.messages;
  try {
    await asked.reply({ ...payload(first), flags });
  } catch (fault) {
    // A reply needs the right to read older messages, an answer below does not.
    if (!mayNotReply(fault) || !channel.isSendable()) throw fault;
    await channel.send({ ...payload(first), flags });
  }
  if (!channel.isSendable()) return;
  for (const message of more) await channel.send({ ...payload(message), flags });
};
