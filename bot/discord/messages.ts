import { type Message, MessageType } from 'discord.js';
import { asideReply, chatReply } from '../render/discord.ts';
import { attachedFiles } from './attachments.ts';
import { guarded } from './faults.ts';
import type { Front } from './front.ts';
import { askerOfMessage } from './members.ts';
import { sendPrivately } from './private.ts';
import { mayNotWrite } from './refusals.ts';
import { sendToMessage, tellShutUp } from './send.ts';

/** Somebody wrote it themselves: no bot, no webhook, no notice of the platform's. */
const byPerson = (message: Message): boolean =>
  !message.author.bot &&
  message.webhookId === null &&
  (message.type === MessageType.Default || message.type === MessageType.Reply);

/** In a direct message everything is for the bot; elsewhere what mentions it, or replies to it with a ring. */
const addressed = (message: Message): boolean =>
  message.guildId === null || message.mentions.users.has(message.client.user.id);

const withoutMention = (message: Message): string =>
  message.content.replaceAll(new RegExp(`<@!?${message.client.user.id}>`, 'g'), ' ').trim();

/** Shows the typing sign while the answer takes a while; not being able to is no reason not to answer. */
const typingMeanwhile = ({ pace }: Front, { channel }: Message): (() => void) => {
  const show = (): void => {
    if (channel.isSendable()) channel.sendTyping().catch(() => undefined);
    timer = setTimeout(show, pace.typingAgainMs);
  };
  let timer = setTimeout(show, pace.typingAfterMs);
  return () => clearTimeout(timer);
};

const answer = async (front: Front, message: Message, text: string): Promise<void> => {
  const asker = askerOfMessage(message, front.clock());
  const admission = front.gate.admit(asker, front.clock());
  if (admission !== 'in') {
    if (admission.tell) await sendToMessage(message, asideReply(admission.sorry));
    return;
  }
  const stopTyping = typingMeanwhile(front, message);
  try {
    const files = attachedFiles(message, front.apiUrl);
    const openly = message.guildId !== null;
    const heard = await front.pipkin.hear({ text, files, openly, ...asker });
    const reply = chatReply(heard, { words: text, after: 0 });
    if (openly && reply.personal !== undefined) await sendPrivately(message, reply);
    else await sendToMessage(message, await front.longIds.fitted(reply, asker.group, asker.at));
  } finally {
    stopTyping();
  }
};

/** A message in a channel or a direct message; those not meant for the bot are passed over. Never rejects. */
export const onMessage = async (front: Front, message: Message): Promise<void> => {
  await guarded(
    front.log,
    'message',
    async () => {
      if (!byPerson(message) || !addressed(message)) return;
      const text = withoutMention(message);
      if (text !== '' || attachedFiles(message, front.apiUrl).attached.length > 0)
        await answer(front, message, text);
    },
    (apology, fault) => (mayNotWrite(fault) ? tellShutUp(message) : sendToMessage(message, apology)),
  );
};
