// The messages there are, as the platform keeps them: what was sent becomes a message object, an edit changes it.

import { isAbsent, isThing, type Wire } from './check.ts';
import type { Message } from './ledger.ts';
import { type Person, snowflake, userObject, type World } from './world.ts';

export type Upload = {
  readonly field: string;
  readonly name: string;
  readonly bytes: number;
  readonly data: Buffer;
};

const numbered = (components: unknown): unknown => {
  let next = 0;
  const walk = (one: unknown): unknown => {
    if (Array.isArray(one)) return one.map(walk);
    if (!isThing(one)) return one;
    next += 1;
    const inner = ['components', 'accessory', 'component'].filter((key) => !isAbsent(one[key]));
    return { id: next, ...one, ...Object.fromEntries(inner.map((key) => [key, walk(one[key])])) };
  };
  return walk(components ?? []);
};

export class Messages {
  readonly #world: World;
  readonly #all = new Map<string, Message>();
  readonly #files = new Map<string, Upload>();
  readonly #url: () => string;

  constructor(world: World, url: () => string) {
    this.#world = world;
    this.#url = url;
  }

  get(id: string): Message | undefined {
    return this.#all.get(id);
  }

  delete(id: string): void {
    this.#all.delete(id);
  }

  file(attachment: string): Upload | undefined {
    return this.#files.get(attachment);
  }

  /** Keeps a file and gives what the platform says of it. */
  attach(upload: Upload, channel: string): Wire {
    const id = snowflake();
    this.#files.set(id, upload);
    const url = `${this.#url()}/attachments/${channel}/${id}/${encodeURIComponent(upload.name)}`;
    const textual = /\.(txt|csv|json|md)$/.test(upload.name);
    return {
      id,
      filename: upload.name,
      size: upload.bytes,
      url,
      proxy_url: url,
      ...(textual ? { content_type: 'text/plain; charset=utf-8' } : {}),
    };
  }

  #kept(old: Message | undefined, body: Wire): readonly Wire[] {
    const before = (old?.attachments as Wire[] | undefined) ?? [];
    if (!Array.isArray(body.attachments)) return before;
    const ids = new Set((body.attachments as Wire[]).map((one) => String(one.id)));
    return before.filter((one) => ids.has(String(one.id)));
  }

  #blank(channel: string, author: Person): Message {
    const guild = this.#world.place(channel)?.group?.id;
    return {
      id: snowflake(),
      channel_id: channel,
      ...(guild ? { guild_id: guild } : {}),
      type: 0,
      author: userObject(author, author.id === this.#world.bot.id),
      content: '',
      timestamp: new Date().toISOString(),
      edited_timestamp: null,
      tts: false,
      mention_everyone: false,
      mentions: [],
      mention_roles: [],
      attachments: [],
      embeds: [],
      components: [],
      pinned: false,
      flags: 0,
    };
  }

  /** A new message of the bot, or an old one changed by an edit. */
  put(channel: string, body: Wire, uploads: readonly Upload[], old?: Message, extra: Wire = {}): Message {
    const base = old ?? this.#blank(channel, this.#world.bot);
    const made: Message = {
      ...base,
      ...(isAbsent(body.content) ? {} : { content: String(body.content) }),
      ...(Array.isArray(body.embeds) ? { embeds: body.embeds } : {}),
      ...(Array.isArray(body.components) ? { components: numbered(body.components) } : {}),
      attachments: [...this.#kept(old, body), ...uploads.map((one) => this.attach(one, channel))],
      flags: Number(base.flags) | Number(body.flags ?? 0),
      ...(old ? { edited_timestamp: new Date().toISOString() } : {}),
      ...(isThing(body.message_reference) ? { type: 19, message_reference: body.message_reference } : {}),
      ...(isAbsent(body.nonce) ? {} : { nonce: body.nonce }),
      ...extra,
    };
    this.#all.set(made.id, made);
    return made;
  }

  /** A message somebody else wrote. */
  wrote(author: Person, channel: string, content: string, extra: Wire = {}): Message {
    const mentions = content.includes(`<@${this.#world.bot.id}>`) ? [userObject(this.#world.bot, true)] : [];
    const made = { ...this.#blank(channel, author), content, mentions, ...extra };
    this.#all.set(made.id, made);
    return made;
  }
}
