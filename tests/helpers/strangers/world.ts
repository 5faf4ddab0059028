import { everyIndex } from '../../../bot/alongside.ts';
import type { Reply } from '../../../bot/answer.ts';
import { memoryStore } from '../../../bot/book/keeper-memory.ts';
import { type CountedKeeper, openKeeper } from '../../../bot/book/keeper-open.ts';
import { groupOfKey } from '../../../bot/book/names.ts';
import { notesIn } from '../../../bot/book/notes.ts';
import type { Store } from '../../../bot/book/store.ts';
import { NotRecorded } from '../../../bot/book/trouble.ts';
import { gate } from '../../../bot/discord/gate.ts';
import { longIds } from '../../../bot/discord/long-ids.ts';
import type { Files, GivenFile } from '../../../bot/files/given.ts';
import { type Pipkin, pipkin } from '../../../bot/handle.ts';
import { faultFields, logTo } from '../../../bot/log.ts';
import { textOf } from '../../../bot/render/text.ts';
import { topics } from '../../../bot/topics.ts';
import type { Exchange } from '../chat-stand-in/exchange.ts';
import { botId, directChannelId, type Person } from '../chat-stand-in/people.ts';
import type { Action, GivenText } from './actions.ts';
import { eventOf } from './clicks.ts';
import { type DirectChat, directChat } from './direct-chat.ts';
import type { Group } from './groups.ts';

/** What a member was shown for one action. */
export interface Shown {
  /** Everything that can be read, one string after the other. */
  readonly texts: readonly string[];
  /** Pictures and papers, byte for byte. */
  readonly blobs: readonly string[];
  /** Ids of buttons, menu options and forms. */
  readonly ids: readonly string[];
  readonly files: readonly GivenText[];
}

const unlimited = { burst: 1e9, perMinute: 1e9 };
/** The platform counts from here: an id carries the time it was made at. */
const epochMs = 1_420_070_400_000;

const isText = ({ name }: { readonly name: string }): boolean => /\.(?:json|csv|txt)$/.test(name);

const latin = (bytes: Uint8Array): string => Buffer.from(bytes).toString('latin1');

/** A store whose writes fail for the groups of `failing`. */
const failingStore = (failing: ReadonlySet<string>): Store => {
  const store = memoryStore();
  return {
    ...store,
    writeAll: async (changes) => {
      if (changes.some(({ key }) => failing.has(groupOfKey(key) ?? ''))) throw new NotRecorded('disk-full');
      await store.writeAll(changes);
    },
  };
};

const given = ({ name, text }: GivenText): GivenFile => ({
  name,
  said: name,
  read: async (mostBytes) => {
    const value = new TextEncoder().encode(text);
    return value.byteLength > mostBytes ? { ok: false, problem: 'too-big' } : { ok: true, value };
  },
});

/** Files as they were sent: what can be read, and the others. */
const parted = (files: readonly GivenText[]): Pick<Shown, 'texts' | 'blobs' | 'files'> => {
  const texts = files.filter(isText);
  return {
    texts: [...files.map(({ name }) => name), ...texts.map(({ text }) => text)],
    blobs: files.filter((file) => !isText(file)).map(({ text }) => text),
    files: texts,
  };
};

const shownIn = (reply: Reply): Shown => {
  const files = 'answer' in reply ? (reply.answer.files ?? []) : [];
  const {
    texts,
    blobs,
    files: kept,
  } = parted(files.map(({ name, bytes }) => ({ name, text: latin(bytes) })));
  const plain = 'answer' in reply ? { ...reply, answer: { ...reply.answer, files: [] } } : reply;
  return {
    texts: [JSON.stringify(plain), textOf(reply, { width: 80, next: true }), ...texts],
    blobs,
    ids: [],
    files: kept,
  };
};

const shownOf = ({ shown, form, offered }: Exchange, direct: readonly string[]): Shown => {
  const parts = shown.flatMap(({ buttons, options }) => [...buttons, ...options]);
  const { texts, blobs, files } = parted(shown.flatMap((each) => each.files));
  return {
    texts: [
      ...shown.map(({ content }) => content),
      ...parts.flatMap(({ label, id }) => [label, id]),
      ...texts,
      ...(form ? [JSON.stringify(form)] : []),
      ...(offered ?? []),
      ...direct,
    ],
    blobs,
    ids: [...parts.map(({ id }) => id), ...(form ? [form.id] : [])],
    files,
  };
};

/** A whole bot over a memory store, with the group chat in front of it and no network. */
export class World {
  readonly log: string[] = [];
  readonly faults: unknown[] = [];
  readonly pipkin: Pipkin;
  readonly chat: DirectChat;
  readonly keeper: CountedKeeper;
  readonly #failing = new Set<string>();
  readonly #refusing = new Set<string>();
  #now = 0;

  constructor(groups: readonly Group[]) {
    const store = failingStore(this.#failing);
    this.keeper = openKeeper(store, { alongside: everyIndex(() => undefined) });
    const log = logTo(
      (line) => void this.log.push(line),
      'info',
      () => this.#now,
    );
    const onFault = (id: string, fault: unknown): void => {
      this.faults.push(fault);
      log.error('fault', { id, ...faultFields(fault, 'info') });
    };
    this.pipkin = pipkin({ keeper: this.keeper, onFault });
    const servers = groups.flatMap((group) => group.placeOf(group.people[0]).server ?? []);
    const limits = { member: unlimited, group: unlimited, typing: unlimited, told: unlimited, underWay: 1e9 };
    this.chat = directChat(
      {
        pipkin: this.pipkin,
        topics: new Map(topics.map((topic) => [topic.name, topic])),
        log,
        pace: {
          deferAfterMs: 60_000,
          suggestWithinMs: 60_000,
          typingAfterMs: 60_000,
          typingAgainMs: 60_000,
          finishWithinMs: 1,
        },
        gate: gate(limits, () => 0),
        longIds: longIds(notesIn(store), () => undefined),
        clock: () => this.#now,
      },
      servers,
    );
    this.chat.state.trouble = ({ parts }) => {
      const [hit] = [...this.#refusing].filter((key) => parts.some((part) => part.includes(key)));
      if (hit === undefined) return undefined;
      this.#refusing.delete(hit);
      const unknown = parts[0] === 'interactions';
      return {
        result: unknown
          ? { status: 404, body: { code: 10062, message: 'Unknown interaction' } }
          : { status: 403, body: { code: 50013, message: 'Missing Permissions' } },
      };
    };
  }

  /** Does one thing in a group; what its member was shown. */
  async do(group: Group, action: Action): Promise<Shown> {
    this.#now = Math.max(this.#now, action.at);
    if (action.mishap === 'store') this.#failing.add(group.id);
    try {
      return await this.#done(group, action);
    } finally {
      this.#failing.delete(group.id);
    }
  }

  /** Says something in a group, as its own programme would; for what is there at the beginning. */
  hear(group: Group, person: Person, text: string, at: number, files?: readonly GivenText[]): Promise<Reply> {
    const place = group.placeOf(person);
    const manages = place.direct === true || person.permissions !== undefined;
    const member = { id: person.id, name: person.name, roles: [...(person.roles ?? [])], manages };
    const attached: Files = { attached: (files ?? []).map(given) };
    const channel = place.server?.channel ?? person.id;
    return this.pipkin.hear({
      text,
      group: group.id,
      channel,
      member,
      at,
      files: attached,
      openly: !place.direct,
    });
  }

  async #done(group: Group, action: Action): Promise<Shown> {
    const { person, at } = action;
    if (action.kind === 'hear') return shownIn(await this.hear(group, person, action.text, at, action.files));
    if (action.kind === 'complete') {
      const offered = await this.pipkin.complete(group.id, action.completion, action.typed);
      return { texts: offered, blobs: [], ids: [], files: [] };
    }
    // No two things are done at the same instant.
    const id = String(BigInt(at - epochMs) << 22n);
    const refused = action.kind === 'message' ? this.#channelOf(group, person) : id;
    if (action.mishap === 'refused') this.#refusing.add(refused);
    const exchange = await this.#asked(group, id, action);
    this.#refusing.delete(refused);
    const { directs } = this.chat.state;
    const own = directChannelId(person);
    const direct = (directs.get(own) ?? []).map(({ content }) => content);
    directs.delete(own);
    return shownOf(exchange, direct);
  }

  #channelOf(group: Group, person: Person): string {
    return group.placeOf(person).server?.channel ?? directChannelId(person);
  }

  #asked(
    group: Group,
    id: string,
    action: Exclude<Action, { kind: 'hear' | 'complete' }>,
  ): Promise<Exchange> {
    const place = group.placeOf(action.person);
    if (action.kind === 'message')
      return this.chat.write(id, {
        text: place.direct ? action.text : `<@${botId}> ${action.text}`,
        ...place,
      });
    return this.chat.interact(place, id, (token) => eventOf(action, id, token, place));
  }

  async close(): Promise<void> {
    await this.chat.close();
    await this.keeper.close();
  }
}
