// How the platform tells the bot of things: interactions of each type and written messages, with all the fields the published
// pages name, and the waiting for what comes of them.

import { randomBytes } from 'node:crypto';
import type { Wire } from './check.ts';
import { Asked, type Message, Said } from './ledger.ts';
import type { StandIn } from './stand-in.ts';
import {
  channelObject,
  directObject,
  type Group,
  memberObject,
  type Person,
  permissionsIn,
  snowflake,
  userObject,
} from './world.ts';

/** Somebody in a place: a channel of a server, or their own direct channel. */
export type Hand = { readonly person: Person; readonly group: Group | undefined; readonly channel: string };

type How = 'is taken back' | 'cannot be answered';

type Question = {
  readonly type: number;
  readonly data: Wire;
  readonly label: string;
  readonly message?: Message;
  readonly optionType?: number;
  readonly isExpired?: boolean;
};

export const pause = (ms: number): Promise<void> => new Promise((resolve) => setTimeout(resolve, ms));

/** Waits until something holds. False when it did not within the time. */
export async function until(holds: () => boolean, ms: number): Promise<boolean> {
  const end = Date.now() + ms;
  while (!holds()) {
    if (Date.now() > end) return false;
    await pause(4);
  }
  return true;
}

export class Talk {
  readonly standIn: StandIn;
  /** Called with each thing that was sent: here the troubles begin. */
  onSent: () => void = () => undefined;

  constructor(standIn: StandIn) {
    this.standIn = standIn;
  }

  #where({ person, group, channel }: Hand): Wire {
    const at = group?.channels.find(({ id }) => id === channel);
    if (!group || !at) {
      return {
        channel_id: channel,
        channel: directObject(channel, person),
        user: userObject(person),
        context: 1,
        authorizing_integration_owners: { '0': '0' },
      };
    }
    return {
      guild_id: group.id,
      guild: { id: group.id, locale: 'en-GB', features: [] },
      guild_locale: 'en-GB',
      channel_id: channel,
      channel: channelObject(group, at),
      member: memberObject(person, group),
      context: 0,
      authorizing_integration_owners: { '0': group.id },
    };
  }

  #payload(hand: Hand, question: Question, id: string, token: string): Wire {
    return {
      id,
      application_id: this.standIn.world.bot.id,
      type: question.type,
      token,
      version: 1,
      data: question.data,
      ...this.#where(hand),
      ...(question.message ? { message: question.message } : {}),
      app_permissions: permissionsIn(hand.group?.channels.find(({ id }) => id === hand.channel)),
      locale: 'en-GB',
      entitlements: [],
      attachment_size_limit: 10_485_760,
    };
  }

  async #send(t: string, d: unknown, reached: Asked | Said): Promise<void> {
    const { gateway } = this.standIn;
    await until(() => gateway.dispatch(t, d, reached), 60_000);
    this.onSent();
  }

  /** Asks once. What the platform itself lost is asked again, as a member would. */
  async ask(hand: Hand, question: Question): Promise<Asked> {
    for (let round = 0; ; round += 1) {
      const id = snowflake();
      const token = randomBytes(48).toString('hex');
      const asked = new Asked(
        {
          id,
          token,
          type: question.type,
          label: question.label,
          by: hand.person.id,
          channel: hand.channel,
          optionType: question.optionType ?? 3,
          isExpired: question.isExpired === true,
        },
        question.message,
      );
      this.standIn.ledger.asked.push(asked);
      await this.#send('INTERACTION_CREATE', this.#payload(hand, question, id, token), asked);
      await this.#answered(asked);
      if (!asked.isLost || round === 5) return asked;
    }
  }

  async #answered(asked: Asked): Promise<void> {
    if (asked.what.isExpired) {
      await until(() => asked.isLost || asked.attempts.length > 0, 5000);
      return;
    }
    await until(() => asked.isLost || asked.ackedAt !== undefined || this.#isOver(asked), 60_000);
    await until(() => asked.isSettled || asked.ackedAt === undefined, 60_000);
  }

  #isOver(asked: Asked): boolean {
    return asked.deliveredAt !== undefined && this.standIn.ledger.isLate(asked, Date.now() - 500);
  }

  /** Writes a message that the bot may see: directly to it, or with a mention of it. */
  async say(hand: Hand, text: string, extra: Wire = {}, how?: How): Promise<Said> {
    const { world, ledger, messages } = this.standIn;
    for (let round = 0; ; round += 1) {
      const content = hand.group ? `<@${world.bot.id}> ${text}` : text;
      const written = messages.wrote(hand.person, hand.channel, content, extra);
      const said = new Said(written.id, hand.person.id, hand.channel, text);
      said.isUnanswerable = how === 'cannot be answered';
      ledger.said.push(said);
      ledger.count('messages written');
      await this.#send('MESSAGE_CREATE', this.#asSeen(hand, written), said);
      if (how === 'is taken back') this.#takeBack(hand, written);
      await until(() => said.isLost || said.replies.length > 0, said.isUnanswerable ? 600 : 30_000);
      await pause(30);
      if (!said.isLost || round === 5) return said;
    }
  }

  #takeBack(hand: Hand, { id }: Message): void {
    this.standIn.messages.delete(id);
    const guild = hand.group ? { guild_id: hand.group.id } : {};
    this.standIn.gateway.dispatch('MESSAGE_DELETE', { id, channel_id: hand.channel, ...guild });
  }

  /** A message nobody addressed to the bot: without the privileged intent its words do not come. */
  async chat(hand: Hand, text: string): Promise<Message> {
    const written = this.standIn.messages.wrote(hand.person, hand.channel, text);
    this.standIn.gateway.dispatch('MESSAGE_CREATE', {
      ...this.#asSeen(hand, written),
      content: '',
      attachments: [],
    });
    return written;
  }

  #asSeen(hand: Hand, written: Message): Wire {
    // The newer pages name the kind of channel, the older ones do not: half of the messages have it.
    const isNamed = this.standIn.ledger.of('messages written') % 2 === 0;
    const kind = isNamed ? { channel_type: hand.group ? 0 : 1 } : {};
    if (!hand.group) return { ...written, ...kind };
    const { user: _user, ...member } = memberObject(hand.person, hand.group);
    return { ...written, ...kind, guild_id: hand.group.id, member };
  }
}
