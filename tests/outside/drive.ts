// The driver: members who use everything the bot registered and everything they find in its answers, first things first, while
// the weather is bad. It knows the platform, the README's examples, and nothing of how the bot is made.

import type { Wire } from './check.ts';
import type { Asked, Message, Said } from './ledger.ts';
import {
  type Filling,
  fillings,
  forgedIds,
  kindOf,
  modalData,
  optionCount,
  type Part,
  partsOf,
  pressData,
} from './parts.ts';
import {
  choicesOf,
  type Filled,
  Filler,
  type Leaf,
  leaves,
  memberData,
  menuData,
  nameOf,
  selections,
  slashData,
} from './slash.ts';
import type { StandIn } from './stand-in.ts';
import { type Hand, Talk, until } from './talk.ts';
import { type Chance, files, partials, phrases, recipes } from './values.ts';
import { guildObject } from './world.ts';

export type Bounds = {
  /** Things done at least. */
  readonly steps: number;
  /** How often each kind of button, menu and modal is used. */
  readonly each: number;
  /** Commands sent with options at random, for each command. */
  readonly more: number;
};

type Step = (hand: Hand) => Promise<void>;

export class Drive {
  readonly talk: Talk;
  readonly #standIn: StandIn;
  readonly #chance: Chance;
  readonly #bounds: Bounds;
  readonly #filler: Filler;
  readonly #queue: Step[] = [];
  /** What has to be done by one member, because only they see it. */
  readonly #own = new Map<string, Step[]>();
  readonly #used = new Map<string, number>();
  /** Real parts, to forge from and to replay. */
  readonly #seen: Part[] = [];
  readonly #targets: Message[] = [];
  readonly #phrases = new Set<string>();
  #written = 0;
  /** Codes of lots that the bot said it had written down. */
  readonly confirmed = new Set<string>();
  steps = 0;
  #busy = 0;
  #isHeld = false;

  constructor(standIn: StandIn, chance: Chance, bounds: Bounds) {
    this.#standIn = standIn;
    this.#chance = chance;
    this.#bounds = bounds;
    this.talk = new Talk(standIn);
    this.#filler = new Filler(chance, standIn.world, standIn.messages);
  }

  hands(): Hand[] {
    const { world } = this.#standIn;
    const [first, second] = world.groups;
    if (!first || !second) throw new Error('no servers');
    const at = (index: number): string => first.channels[index % 2]?.id ?? '';
    const inFirst = first.people.slice(0, 4).map((person, i) => ({ person, group: first, channel: at(i) }));
    const inSecond = second.people.map((person) => ({
      person,
      group: second,
      channel: second.channels[0]?.id ?? '',
    }));
    const alone = first.people
      .slice(4)
      .map((person) => ({ person, group: undefined, channel: world.direct(person) }));
    return [...inFirst, ...inSecond.slice(0, 1), ...alone];
  }

  /** Fills the books, so that there is something to ask about. */
  async furnish(): Promise<void> {
    for (const hand of this.hands().filter(
      (one, i, all) => all.findIndex((o) => o.group === one.group) === i,
    )) {
      for (const { name, lines } of recipes) await this.#say(hand, `save recipe ${name}: ${lines}`);
      await this.#say(hand, 'bought 500 g beeswax lot K12, best before 2027-03, 14.50');
      await this.#say(hand, 'bought 1 kg olive oil lot G7, best before 2027-06, 12');
      await this.#say(hand, 'poured 24 tins of 15 ml of Fernlea hand balm today');
    }
    for (const at of Array(8).keys())
      await this.#say(this.hands()[0] as Hand, `bought ${at + 1}00 g shea butter lot M${at}`);
    for (const text of ['stock', 'list recipes', 'list batches', 'what is out of date']) this.#phrase(text);
    for (const command of this.#standIn.registered) if (command.type !== 1) this.#menus(command);
    for (const leaf of leaves(this.#standIn.registered)) this.#plan(leaf);
    for (const text of phrases()) this.#phrase(text);
    for (let round = 0; round < this.#bounds.each; round += 1) this.#oddities();
    this.#mix();
  }

  /** Different things side by side: the same in each run of one seed. */
  #mix(): void {
    const all = this.#queue.splice(0);
    while (all.length > 0) this.#queue.push(...all.splice(this.#chance.below(all.length), 1));
  }

  #plan(leaf: Leaf): void {
    for (const options of selections(this.#chance, leaf, this.#bounds.more)) {
      this.#queue.push((hand) => this.#slash(hand, leaf, options));
    }
    for (const { option, value } of choicesOf(leaf)) {
      this.#queue.push((hand) =>
        this.#slash(hand, leaf, [...this.#must(leaf), option], new Map([[option, value]])),
      );
    }
    for (const option of leaf.options.filter(({ autocomplete }) => autocomplete === true)) {
      const texts = this.#bounds.each > 4 ? partials : partials.slice(0, 4);
      for (const text of texts) this.#queue.push((hand) => this.#suggest(hand, leaf, option, text));
    }
    this.#queue.push((hand) => this.#slash(hand, leaf, leaf.options, new Map(), true));
    this.#queue.push((hand) => this.#expired(hand, leaf));
  }

  /** What happens now and then in any server. */
  #oddities(): void {
    this.#queue.push(
      async (hand) => {
        this.#count('messages taken back', 'text');
        await this.talk.say(hand, 'scale Fernlea hand balm to 500 g', {}, 'is taken back');
      },
      async (hand) => {
        const closed = hand.group?.channels.find(({ isClosed }) => isClosed);
        if (!closed) return;
        const there = { ...hand, channel: closed.id };
        const isReached = !this.#standIn.world.closed.has(hand.person.id);
        const [leaf] = leaves(this.#standIn.registered);
        if (leaf) await this.#slash(there, leaf, leaf.options);
        this.#count('messages where it may not write', 'text');
        await this.talk.say(
          there,
          'what is candelilla wax',
          {},
          isReached ? undefined : 'cannot be answered',
        );
      },
      ...files.map(
        ({ name, text }) =>
          (hand: Hand) =>
            this.#attach(hand, name, text),
      ),
      (hand) => this.#outage(hand),
    );
  }

  async #attach(hand: Hand, name: string, text: string): Promise<void> {
    const data = Buffer.from(text);
    const file = this.#standIn.messages.attach(
      { field: 'files[0]', name, bytes: data.length, data },
      hand.channel,
    );
    const say = name.endsWith('.json') ? 'import' : 'scale this to 24 tins of 15 ml';
    this.#count('messages with a file', name);
    this.#found(hand, (await this.talk.say(hand, say, { attachments: [file] })).replies);
  }

  /** A server goes away for a while and is asked in all the same. */
  async #outage(hand: Hand): Promise<void> {
    if (!hand.group) return;
    this.#count('outages', 'server');
    this.#standIn.gateway.dispatch('GUILD_DELETE', { id: hand.group.id, unavailable: true });
    await this.talk.say(hand, 'density of castor oil');
    const leaf = this.#chance.pick(leaves(this.#standIn.registered));
    if (leaf) await this.#slash(hand, leaf, this.#must(leaf));
    this.#standIn.gateway.dispatch('GUILD_CREATE', guildObject(hand.group, this.#standIn.world.bot));
  }

  #must = ({ options }: Leaf): Wire[] => options.filter(({ required }) => required === true);

  #fill(
    hand: Hand,
    options: readonly Wire[],
    given: ReadonlyMap<Wire, unknown>,
    isHostile: boolean,
    to: Wire,
  ): Filled[] {
    const all = [...new Set(options)];
    return all.map((option) => ({
      option,
      value: given.has(option)
        ? given.get(option)
        : this.#filler.value(hand, option, to as { [k: string]: unknown }, isHostile),
    }));
  }

  async #slash(
    hand: Hand,
    leaf: Leaf,
    options: readonly Wire[],
    given: ReadonlyMap<Wire, unknown> = new Map(),
    isHostile = false,
  ): Promise<void> {
    const resolved = {};
    const filled = this.#fill(hand, options, given, isHostile, resolved);
    const data = slashData(leaf, filled, resolved);
    const label = `${nameOf(leaf)} ${JSON.stringify(filled.map(({ option, value }) => [option.name, value])).slice(0, 300)}`;
    this.#count('slash commands', nameOf(leaf));
    await this.#harvest(hand, await this.talk.ask(hand, { type: 2, data, label }));
  }

  async #suggest(hand: Hand, leaf: Leaf, option: Wire, text: string): Promise<void> {
    const others = this.#fill(
      hand,
      this.#must(leaf).filter((one) => one !== option),
      new Map(),
      false,
      {},
    );
    const filled: Filled[] = [...others, { option, value: text, focused: true }];
    const label = `${nameOf(leaf)}, suggestions for ${String(option.name)} "${text.slice(0, 20)}"`;
    this.#count('autocompletes', `${nameOf(leaf)} ${String(option.name)}`);
    const optionType = Number(option.type);
    const asked = await this.talk.ask(hand, {
      type: 4,
      data: slashData(leaf, filled, {}),
      label,
      optionType,
    });
    const values = asked.choices.map(({ value }) => String(value));
    this.#filler.suggested.set(String(option.name), values.length > 0 ? values : ['beeswax']);
    const first = values[0];
    if (first !== undefined && text === '')
      await this.#slash(hand, leaf, [...this.#must(leaf), option], new Map([[option, first]]));
  }

  /** An interaction whose token has run out before the bot got it. */
  async #expired(hand: Hand, leaf: Leaf): Promise<void> {
    const data = slashData(leaf, this.#fill(hand, this.#must(leaf), new Map(), false, {}), {});
    this.#count('expired', nameOf(leaf));
    await this.talk.ask(hand, { type: 2, data, label: `expired ${nameOf(leaf)}`, isExpired: true });
  }

  #menus(command: Wire): void {
    const texts = [
      'Winter stick\n25 g beeswax\n25 g shea butter\n50 g almond oil',
      'good morning everybody',
      '```\nwax | 20 %\noil | 80 %\n```',
      'x'.repeat(1900),
    ];
    for (const text of texts) {
      this.#queue.push(async (hand) => {
        const target = await this.talk.chat(hand, text);
        this.#targets.push(target);
        await this.#menu(hand, command, target);
      });
    }
    this.#queue.push(async (hand) => {
      const target = this.#targets.findLast(({ channel_id: at }) => at === hand.channel);
      await this.#menu(hand, command, target ?? (await this.talk.chat(hand, 'wax')));
    });
  }

  async #menu(hand: Hand, command: Wire, target: Message): Promise<void> {
    this.#count('context menus', String(command.name));
    const data = command.type === 3 ? menuData(command, target) : memberData(command, hand);
    const label = `${String(command.name)} on "${target.content.slice(0, 40)}"`;
    await this.#harvest(hand, await this.talk.ask(hand, { type: 2, data, label }));
  }

  #phrase(text: string): void {
    if (this.#phrases.has(text) || text.length > 1800) return;
    this.#phrases.add(text);
    this.#queue.push((hand) => this.#say(hand, text));
  }

  async #say(hand: Hand, text: string): Promise<void> {
    this.#count('texts', hand.group ? 'mention' : 'direct');
    this.#found(hand, (await this.talk.say(hand, text)).replies);
  }

  /** A purchase under a code of its own: in the end each that was confirmed has to be in the book, once. */
  async #write(hand: Hand): Promise<void> {
    this.#written += 1;
    const code = `QZ${1000 + this.#written}`;
    this.#count('writes', 'text');
    const said: Said = await this.talk.say(hand, `bought 100 g beeswax lot ${code}`);
    const text = said.replies.map(({ content }) => content).join('\n');
    if (/bought/i.test(text) && text.includes(code))
      this.confirmed.add(`${hand.group?.id ?? hand.person.id} ${code}`);
  }

  async #harvest(hand: Hand, asked: Asked): Promise<void> {
    this.#found(hand, asked.messages);
    if (!asked.modal) return;
    const modal = asked.modal;
    const kind = `modal ${String(modal.title)} ${(modal.components as Wire[]).length}`;
    for (const how of fillings)
      this.#once(hand, `${kind} ${how}`, () => this.#submit(hand, modal, how, asked.source));
  }

  async #submit(hand: Hand, modal: Wire, how: Filling, message: Message | undefined): Promise<void> {
    const label = `"${String(modal.title)}" filled in ${how}`;
    this.#count('modals', `${String(modal.title)} ${how}`);
    const data = modalData(this.#chance, modal, how);
    await this.#harvest(
      hand,
      await this.talk.ask(hand, { type: 5, data, label, ...(message ? { message } : {}) }),
    );
  }

  #found(hand: Hand, found: readonly Message[]): void {
    for (const { id } of found) {
      const message = this.#standIn.messages.get(id);
      if (!message) continue;
      this.#targets.push(message);
      for (const part of partsOf(message)) this.#offer(hand, part);
      for (const [, text] of message.content.matchAll(/`([^`\n]{4,120})`/g))
        if (this.#phrases.size < 500) this.#phrase(String(text));
    }
  }

  #offer(hand: Hand, part: Part): void {
    this.#seen.push(part);
    if (this.#seen.length > 400) this.#seen.splice(this.#chance.below(300), 1);
    const most = Math.min(optionCount(part), this.#bounds.each);
    for (let index = 0; index < most; index += 1) {
      this.#once(hand, `${kindOf(part)}`, () => this.#press(hand, part, index));
    }
  }

  /** Puts a step in the line of the member who found it, unless its kind has been used often enough. */
  #once(hand: Hand, kind: string, step: Step): void {
    const used = this.#used.get(kind) ?? 0;
    if (used >= this.#bounds.each) return;
    this.#used.set(kind, used + 1);
    const line = this.#own.get(hand.person.id) ?? [];
    line.push(step);
    this.#own.set(hand.person.id, line);
  }

  async #press(hand: Hand, part: Part, index?: number): Promise<void> {
    const isMenu = Number(part.component.type) !== 2;
    this.#count(isMenu ? 'menus' : 'buttons', kindOf(part));
    const label = `${isMenu ? 'menu' : 'button'} ${kindOf(part)} ${String(part.component.custom_id)}`;
    const data = pressData(this.#chance, part, index);
    const asked = await this.talk.ask(hand, { type: 3, data, label, message: part.message });
    await this.#harvest(hand, asked);
  }

  /** An id nobody was given, an option nobody was shown, a part of another server or of long ago. */
  async #forge(hand: Hand): Promise<void> {
    const part = this.#chance.pick(this.#seen);
    if (!part) return;
    const id = this.#chance.pick(forgedIds(String(part.component.custom_id))) ?? 'x';
    const isReplay = this.#chance.below(3) === 0;
    const component = isReplay ? part.component : { ...part.component, custom_id: id };
    const data = pressData(this.#chance, { component, message: part.message });
    const values = component.type === 3 && this.#chance.below(2) === 0 ? { values: ['__proto__'] } : {};
    const message = {
      ...part.message,
      channel_id: hand.channel,
      timestamp: '2025-03-01T10:00:00.000000+00:00',
    };
    this.#count(isReplay ? 'replayed' : 'forged', String(component.type));
    const label = `${isReplay ? 'replayed' : 'forged'} ${JSON.stringify({ ...data, ...values }).slice(0, 200)}`;
    const asked = await this.talk.ask(hand, { type: 3, data: { ...data, ...values }, label, message });
    if (asked.modal) await this.#submit(hand, { ...asked.modal, custom_id: id }, 'sensible', message);
  }

  #count(what: string, kind: string): void {
    this.#standIn.ledger.count(what);
    this.#standIn.ledger.count(`kind ${what} ${kind}`);
  }

  #random(hand: Hand): Promise<void> {
    const roll = this.#chance.below(10);
    const leaf = this.#chance.pick(leaves(this.#standIn.registered));
    if (roll < 2 || !leaf) return this.#forge(hand);
    const part = this.#chance.pick(
      this.#seen.filter(
        ({ message }) => message.channel_id === hand.channel && (Number(message.flags) & 64) === 0,
      ),
    );
    if (roll < 5 && part) return this.#press(hand, part);
    const options = selections(this.#chance, leaf, 1).at(-1) ?? [];
    return this.#slash(hand, leaf, options, new Map(), roll === 9);
  }

  #next(hand: Hand, round: number): Step {
    if (round % 12 === 0) return (one) => this.#write(one);
    if (round % 9 === 0) return (one) => this.#forge(one);
    const line = this.#own.get(hand.person.id);
    const own = round % 2 === 0 ? line?.shift() : undefined;
    return own ?? this.#queue.shift() ?? line?.shift() ?? ((one) => this.#random(one));
  }

  get isExhausted(): boolean {
    return this.#queue.length === 0 && [...this.#own.values()].every((line) => line.length === 0);
  }

  /** Everybody waits, with nothing under way, for as long as something runs. */
  async hold<T>(during: () => Promise<T>): Promise<T> {
    this.#isHeld = true;
    await until(() => this.#busy === 0, 60_000);
    try {
      return await during();
    } finally {
      this.#isHeld = false;
    }
  }

  /** Everybody at once, until the steps are done and the weather says so. */
  async run(isDone: () => boolean): Promise<void> {
    await Promise.all(this.hands().map((hand) => this.#work(hand, isDone)));
  }

  async #work(hand: Hand, isDone: () => boolean): Promise<void> {
    for (let round = 1; !(this.steps >= this.#bounds.steps && isDone()); round += 1) {
      await until(() => !this.#isHeld, 120_000);
      this.#busy += 1;
      await this.#next(hand, round)(hand);
      this.#busy -= 1;
      this.steps += 1;
    }
  }
}
