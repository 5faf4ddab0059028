import {
  type APIChannel,
  type APIGuild,
  type APIMessage,
  type Client,
  DiscordAPIError,
  RESTJSONErrorCodes,
  Routes,
} from 'discord.js';
import { faultFields } from '../log.ts';
import type { DailyMessage, Place, Sender, Sent } from '../remind/sender.ts';
import { chatReply, plainMessage } from '../render/discord.ts';
import { buttonRows } from './buttons.ts';
import type { ChatLog } from './front.ts';
import { unaskedBody } from './send.ts';

/** The platform counts milliseconds from the beginning of 2015 in the upper bits of its ids. */
const epochMs = 1_420_070_400_000;
const idAt = (atMs: number): string => String(BigInt(Math.max(0, atMs - epochMs)) << 22n);

/** How far the platform's clock may be from this one. */
const skewMs = 60_000;
/** Messages looked through for one that may have gone out; it is among the first since it was begun. */
const lookedThrough = 100;

const gone: readonly (string | number)[] = [
  RESTJSONErrorCodes.UnknownChannel,
  RESTJSONErrorCodes.UnknownGuild,
];

/** What a refusal means: wait and try again, or somebody has to change something. */
const refusal = (fault: unknown): Exclude<Sent, 'sent'> => {
  if (!(fault instanceof DiscordAPIError)) return 'later';
  const { code, status } = fault;
  if (gone.includes(code) || status === 404) return 'no-channel';
  if (status === 403 || code === RESTJSONErrorCodes.ThreadLocked) return 'no-permission';
  return status === 401 || status === 429 || status >= 500 ? 'later' : 'other';
};

const textOf = ({ answer }: DailyMessage): string =>
  chatReply({ topic: 'expiry', request: {}, answer }).messages[0].text;

const firstLine = (text: string): string => text.split('\n', 1)[0] ?? '';

const guildOf = (group: string): string | undefined => /^guild:(\d+)$/.exec(group)?.[1];

/** Groups of this platform: servers and direct messages. The book of the terminal is none. */
export const isChatGroup = (group: string): boolean => /^(?:guild|dm):/.test(group);

type Body = ReturnType<typeof unaskedBody>;

/** Does what the HTTP API is asked, or logs under `event` why not. */
const tried = async <T>(log: ChatLog, event: string, ask: () => Promise<T>): Promise<T | undefined> => {
  try {
    return await ask();
  } catch (fault) {
    log.error(event, faultFields(fault, 'info'));
    return undefined;
  }
};

/** Tells a server's owner by direct message or, failing that, in the channel the server keeps for notices. */
const ownerTeller = ({ rest }: Client<true>, log: ChatLog): Sender['tellOwner'] => {
  const posted = async (
    channel: string | null | undefined,
    text: string,
    nonce: string,
  ): Promise<boolean> => {
    if (!channel) return false;
    const body = unaskedBody(plainMessage(text), [], nonce);
    const post = () => rest.post(Routes.channelMessages(channel), { body });
    return (await tried(log, 'reminder.owner-not-told', post)) !== undefined;
  };
  const directTo = async (user: string): Promise<string | undefined> => {
    const open = () => rest.post(Routes.userChannels(), { body: { recipient_id: user } });
    const channel = (await tried(log, 'reminder.owner-not-reached', open)) as APIChannel | undefined;
    return channel?.id;
  };
  return async (group, text, nonce) => {
    const id = guildOf(group);
    if (id === undefined) return false;
    const look = () => rest.get(Routes.guild(id));
    const guild = (await tried(log, 'reminder.owner-not-known', look)) as APIGuild | undefined;
    if (!guild) return false;
    if (await posted(await directTo(guild.owner_id), text, nonce)) return true;
    return posted(guild.system_channel_id, text, nonce);
  };
};

/** Posts daily messages into channels, with buttons and without mentioning anybody. */
export const dailySender = (client: Client<true>, log: ChatLog): Sender => {
  const post = (channel: string, body: Body): Promise<unknown> =>
    client.rest.post(Routes.channelMessages(channel), { body });

  const send = async ({ channel }: Place, message: DailyMessage, nonce: string): Promise<Sent> => {
    try {
      await post(channel, unaskedBody(textOf(message), buttonRows(message.rows), nonce));
      return 'sent';
    } catch (fault) {
      const outcome = refusal(fault);
      log.error('reminder.not-posted', { outcome, ...faultFields(fault, 'info') });
      return outcome;
    }
  };

  const wasSent: Sender['wasSent'] = async ({ channel }, message, nonce, sinceMs) => {
    const query = new URLSearchParams({ after: idAt(sinceMs - skewMs), limit: String(lookedThrough) });
    const look = () => client.rest.get(Routes.channelMessages(channel), { query });
    const there = (await tried(log, 'reminder.not-looked-up', look)) as APIMessage[] | undefined;
    const title = firstLine(textOf(message));
    return there?.some(
      ({ author, content, nonce: own }) =>
        author.id === client.user.id && (own === nonce || firstLine(content) === title),
    );
  };

  return { send, wasSent, tellOwner: ownerTeller(client, log) };
};
