import {
  type APIMessage,
  ComponentType,
  MessageFlags,
  MessageType,
  type RESTPostAPIChannelMessageJSONBody,
} from 'discord-api-types/v10';
import type { ShownForm } from './forms.ts';
import { botUser, freshId } from './people.ts';

/** One message the bot sent, as a person or a test looks at it. */
export interface Shown {
  readonly id: string;
  readonly content: string;
  /** Shown to the asking member alone. */
  readonly aside: boolean;
  readonly buttons: readonly { readonly label: string; readonly id: string }[];
  /** Options of the menus below it, each with the id of its menu. */
  readonly options: readonly { readonly label: string; readonly id: string; readonly menu: string }[];
  readonly files: readonly { readonly name: string; readonly text: string }[];
  readonly flags: number;
  /** The message it replies to, if any. */
  readonly replyTo: string | null;
}

type Body = RESTPostAPIChannelMessageJSONBody;

const buttonsOf = (body: Body): Shown['buttons'] =>
  (body.components ?? []).flatMap((row) =>
    row.type === ComponentType.ActionRow
      ? row.components.flatMap((button) =>
          button.type === ComponentType.Button && 'custom_id' in button
            ? [
                {
                  label: ('label' in button ? button.label : undefined) ?? '',
                  id: button.custom_id,
                },
              ]
            : [],
        )
      : [],
  );

const optionsOf = (body: Body): Shown['options'] =>
  (body.components ?? []).flatMap((row) =>
    row.type === ComponentType.ActionRow
      ? row.components.flatMap((part) =>
          part.type === ComponentType.StringSelect
            ? part.options.map(({ label, value }) => ({ label, id: value, menu: part.custom_id }))
            : [],
        )
      : [],
  );

export const shownFrom = async (body: Body, files: readonly File[], id = freshId()): Promise<Shown> => ({
  id,
  content: body.content ?? '',
  aside: ((body.flags ?? 0) & MessageFlags.Ephemeral) !== 0,
  buttons: buttonsOf(body),
  options: optionsOf(body),
  files: await Promise.all(files.map(async (file) => ({ name: file.name, text: await file.text() }))),
  flags: body.flags ?? 0,
  replyTo: body.message_reference?.message_id ?? null,
});

/** The platform's answer to a message sent: the message as it now stands in the channel. */
export const asMessage = ({ id, content, flags }: Shown, channel: string): APIMessage => ({
  id,
  channel_id: channel,
  author: botUser,
  content,
  timestamp: new Date().toISOString(),
  edited_timestamp: null,
  tts: false,
  mention_everyone: false,
  mentions: [],
  mention_roles: [],
  attachments: [],
  embeds: [],
  pinned: false,
  type: MessageType.Default,
  flags,
});

/** One thing asked and what came of it. */
export class Exchange {
  readonly id: string;
  readonly channel: string;
  readonly startedAt = performance.now();
  /** Messages in the order they came; those taken back are gone. */
  shown: readonly Shown[] = [];
  /** Completions offered, once they are. */
  offered: readonly string[] | undefined;
  /** Milliseconds until an interaction was acknowledged, by an answer or by "thinking". */
  acknowledgedMs: number | undefined;
  deferred = false;
  typing = 0;
  /** The form that was shown in answer, if one was. */
  form: ShownForm | undefined;
  /** False for a form sent back: the platform shows no form in answer to one. */
  mayShowForm = true;
  /** True for a plain message, which needs no acknowledgement. */
  isMessage = false;
  /** How long is waited for whatever is waited for, unless said otherwise. */
  patienceMs = 20_000;
  #waiting: { readonly enough: () => boolean; readonly resolve: () => void }[] = [];

  constructor(channel: string, id = freshId()) {
    this.channel = channel;
    this.id = id;
  }

  get first(): Shown {
    const [first] = this.shown;
    if (!first) throw new Error('nothing was shown');
    return first;
  }

  /** Everything shown, one message after the other. */
  get text(): string {
    return this.shown.map(({ content }) => content).join('\n');
  }

  show(message: Shown): void {
    this.shown = [...this.shown.filter(({ id }) => id !== message.id), message];
    this.changed();
  }

  changed(): void {
    const ready = this.#waiting.filter(({ enough }) => enough());
    this.#waiting = this.#waiting.filter((one) => !ready.includes(one));
    for (const { resolve } of ready) resolve();
  }

  /** Waits until there are `count` messages; rejects when that takes longer than `ms`. */
  async until(count: number, ms = this.patienceMs): Promise<this> {
    return this.#settled(() => this.shown.length >= count, `${count} messages`, ms);
  }

  /** Waits until completions were offered. */
  async completed(ms = this.patienceMs): Promise<readonly string[]> {
    await this.#settled(() => this.offered !== undefined, 'completions', ms);
    return this.offered ?? [];
  }

  /** Waits until there is a message or a form. */
  async answered(ms = this.patienceMs): Promise<this> {
    return this.#settled(() => this.form !== undefined || this.shown.length > 0, 'answer', ms);
  }

  /** Waits until a form was shown. */
  async formed(ms = this.patienceMs): Promise<ShownForm> {
    await this.#settled(() => this.form !== undefined, 'form', ms);
    if (!this.form) throw new Error('no form was shown');
    return this.form;
  }

  async #settled(enough: () => boolean, what: string, ms: number): Promise<this> {
    if (enough()) return this;
    let timer: NodeJS.Timeout | undefined;
    const late = new Promise<never>((_, reject) => {
      timer = setTimeout(() => reject(new Error(`no ${what} within ${ms} ms`)), ms);
    });
    const there = new Promise<void>((resolve) => this.#waiting.push({ enough, resolve }));
    try {
      await Promise.race([there, late]);
    } finally {
      clearTimeout(timer);
    }
    return this;
  }
}
