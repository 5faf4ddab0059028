import {
  type APIActionRowComponent,
  type APIComponentInMessageActionRow,
  ButtonStyle,
  ComponentType,
  type InteractionReplyOptions,
  type Message,
  MessageFlags,
  type RepliableInteraction,
} from 'discord.js';
import type { ChatMessage, ChatReply } from '../render/discord.ts';
import type { NextButton, NextMenu } from './buttons.ts';
import { isAcknowledged, isGone, mayNotReply, mayNotWrite } from './refusals.ts';

// The only place that builds what is sent, so that nothing goes out that mentions anybody.

type Row = APIActionRowComponent<APIComponentInMessageActionRow>;

const row = (buttons: readonly NextButton[]): Row => ({
  type: ComponentType.ActionRow,
  components: buttons.map(({ label, id }) => ({
    type: ComponentType.Button,
    style: ButtonStyle.Secondary,
    label,
    custom_id: id,
  })),
});

/**
 * A message nobody asked for, as the HTTP API takes it. The platform posts the same nonce once, for as long as it remembers
 * it: some minutes.
 */
export const unaskedBody = (text: string, rows: readonly (readonly NextButton[])[], nonce: string) => ({
  content: text,
  components: rows.map(row),
  allowed_mentions: { parse: [] },
  flags: MessageFlags.SuppressEmbeds,
  nonce,
  enforce_nonce: true,
});

const menuRow = ({ label, options }: NextMenu): Row => ({
  type: ComponentType.ActionRow,
  components: [
    {
      type: ComponentType.StringSelect,
      custom_id: 'pick1',
      placeholder: label,
      options: options.map((option) => ({ label: option.label, value: option.id })),
    },
  ],
});

/** The client takes it over as it stands, instead of looking at every name in it: a fifth of an answer's sending. */
const asItStands = (json: Row) => ({ toJSON: () => json });

export const payload = <F>({ text, buttons, menu, files }: ChatMessage, flags: F) => ({
  content: text,
  components: [...(menu ? [menuRow(menu)] : []), ...(buttons.length > 0 ? [row(buttons)] : [])].map(
    asItStands,
  ),
  files: files.map(({ name, bytes }) => ({
    name,
    attachment: Buffer.from(bytes),
  })),
  allowedMentions: { parse: [], repliedUser: false },
  flags,
});

/** Addresses among the sources stay links, but do not unfold into previews. */
const flagsOf = (aside: boolean): NonNullable<InteractionReplyOptions['flags']> & number =>
  aside ? MessageFlags.SuppressEmbeds | MessageFlags.Ephemeral : MessageFlags.SuppressEmbeds;

/** Acknowledges by `work`; that the platform has it already is as good. */
export const acknowledge = async (work: () => Promise<unknown>): Promise<void> => {
  try {
    await work();
  } catch (fault) {
    if (!isAcknowledged(fault)) throw fault;
  }
};

/** Shows that an answer is on its way. Rejects as the platform refuses. */
export const deferReply = async (interaction: RepliableInteraction): Promise<void> => {
  await acknowledge(() => interaction.deferReply());
  interaction.deferred = true;
};

const sendFirst = async (interaction: RepliableInteraction, message: ChatMessage, aside: boolean) => {
  const flags = flagsOf(aside);
  if (interaction.replied) {
    await interaction.followUp(payload(message, flags));
    return;
  }
  if (!interaction.deferred) {
    await acknowledge(() => interaction.reply(payload(message, flags)));
    interaction.replied = true;
    return;
  }
  if (!aside) {
    await interaction.editReply(payload(message, MessageFlags.SuppressEmbeds as const));
    return;
  }
  // "Thinking" was shown to all, and that cannot be turned into a message for one: take it back, then answer aside.
  await interaction.deleteReply();
  await interaction.followUp(payload(message, flags));
};

/** Answers an interaction, deferred or not; only the first message may come late. Rejects as the platform refuses. */
export const sendToInteraction = async (
  interaction: RepliableInteraction,
  reply: ChatReply,
): Promise<void> => {
  const [first, ...more] = reply.messages;
  await sendFirst(interaction, first, reply.aside);
  for (const message of more) {
    await interaction.followUp(payload(message, flagsOf(reply.aside)));
  }
};

const tooLate =
  'The answer to a command came too late, so the chat did not take it. What it was to record is recorded. Please ask again, for example "history" to see what stands.';

/** Says in the channel, or else directly, that an answer was lost; not what was in it, which may be for one alone. */
export const tellLate = async (interaction: RepliableInteraction): Promise<void> => {
  const message = { content: tooLate, flags: MessageFlags.SuppressEmbeds } as const;
  const { channel } = interaction;
  if (channel?.isSendable()) await channel.send(message);
  else await interaction.user.send(message);
};

const shutUp =
  'I may not write in the channel you asked in, so here only this much: ask whoever manages the server to let me see that channel, write in it and attach files, then ask again.';

/** Tells somebody directly why nothing came in the channel. */
export const tellShutUp = async ({ author }: Message): Promise<void> => {
  await author.send({ content: shutUp, flags: MessageFlags.SuppressEmbeds });
};

const noFiles = '(I may not attach files in this channel, so the files are missing.)';

/** Longest text of a message. */
const maxText = 2000;

const withoutFiles = (message: ChatMessage): ChatMessage => ({
  ...message,
  files: [],
  text: message.text.length + noFiles.length + 2 <= maxText ? `${message.text}\n\n${noFiles}` : message.text,
});

/** What is sent for `asked`. The platform posts the same nonce once: what is sent again after a broken answer is no second one. */
const bodyFor = (asked: Message, message: ChatMessage, place: number) => ({
  ...payload(message, MessageFlags.SuppressEmbeds as const),
  nonce: `${asked.id}${place}`,
  enforceNonce: true,
});

/** By `send` as it is or, where files may not be attached, without them. */
const sendWhole = async (message: ChatMessage, send: (message: ChatMessage) => Promise<unknown>) => {
  try {
    await send(message);
  } catch (fault) {
    if (!mayNotWrite(fault) || message.files.length === 0) throw fault;
    await send(withoutFiles(message));
  }
};

const replyOnce = async (asked: Message, message: ChatMessage): Promise<void> => {
  const body = bodyFor(asked, message, 0);
  try {
    await asked.reply(body);
  } catch (fault) {
    // An answer below needs no right to read older messages, and no message to refer to.
    if (!(mayNotReply(fault) || isGone(fault)) || !asked.channel.isSendable()) throw fault;
    await asked.channel.send(body);
  }
};

/** Answers a message in its channel, as a reply to it that does not ring. Rejects as the platform refuses. */
export const sendToMessage = async (asked: Message, reply: ChatReply): Promise<void> => {
  const { channel } = asked;
  const [first, ...more] = reply.messages;
  await sendWhole(first, (message) => replyOnce(asked, message));
  if (!channel.isSendable()) return;
  for (const [at, message] of more.entries())
    await sendWhole(message, (whole) => channel.send(bodyFor(asked, whole, at + 1)));
};
