import { DiscordAPIError, type Message, MessageFlags, RESTJSONErrorCodes } from 'discord.js';
import { asideReply, type ChatReply } from '../render/discord.ts';
import { payload, sendToMessage } from './send.ts';

const sentDirectly = asideReply('That answer is for you alone, so I have sent it to you directly.');

const notSent = (topic: string): ChatReply =>
  asideReply(
    `That answer is for you alone, and I may not write to you directly. Ask with /${topic}: then only you see it.`,
  );

const shutOut = (fault: unknown): boolean =>
  fault instanceof DiscordAPIError && fault.code === RESTJSONErrorCodes.CannotSendMessagesToThisUser;

/**
 * Answers a message in a server by a direct message, and says so in the channel: what is for the asking member alone
 * must not stand where all can read it. Without buttons: there they would be for the member's own book.
 */
export const sendPrivately = async (asked: Message, reply: ChatReply): Promise<void> => {
  const flags = MessageFlags.SuppressEmbeds as const;
  try {
    for (const message of reply.messages)
      await asked.author.send(payload({ ...message, buttons: [], menu: undefined }, flags));
  } catch (fault) {
    if (!shutOut(fault)) throw fault;
    await sendToMessage(asked, notSent(reply.personal ?? 'help'));
    return;
  }
  await sendToMessage(asked, sentDirectly);
};
