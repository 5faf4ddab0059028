// The driver: members who use everything the bot registered and everything they find in its answers, first things first, while
// the weather is bad. It knows the platform, the README's examples, and nothing of how the bot is made.

import type { Wire } from './check.ts';
import type { Message } from './ledger.ts';
import { fillings, isMenu, kindOf, optionCount, type Part, partsOf } from './parts.ts';
import { choicesOf, type Leaf, leaves, selections } from './slash.ts';
import type { StandIn } from './stand-in.ts';
import { type Found, mustOf, Steps } from './steps.ts';
import { type Hand, until } from './talk.ts';
import { type Chance, files, partials, phrases, recipes } from './values.ts';

export type Bounds = {
  /** Things done at least. */
  readonly steps: number;
  /** How often each kind of button, menu and modal is used. */
  readonly each: number;
  /** Commands sent with options at random, for each command. */
  readonly more: number;
};

type Step = (hand: Hand) => Promise<void>;

const targets = [
  'Winter stick\n25 g beeswax\n25 g shea butter\n50 g almond oil',
  'good morning everybody',
  '```\nwax | 20 %\noil | 80 %\n```',
  'x'.repeat(1900),
];

export class Drive {
  readonly steps: Steps;
  readonly #standIn: StandIn;
  readonly #chance: Chance;
  readonly #bounds: Bounds;
  readonly #queue: Step[] = [];
  /** What has to be done by one member, because perhaps only they see it. */
  readonly #own = new Map<string, Step[]>();
  readonly #used = new Map<string, number>();
  /** Real parts, to forge from and to press again. */
  readonly #seen: Part[] = [];
  readonly #phrases = new Set<string>();
  done = 0;
  #busy = 0;
  #isHeld = false;

  constructor(standIn: StandIn, chance: Chance, bounds: Bounds) {
    this.#standIn = standIn;
    this.#chance = chance;
    this.#bounds = bounds;
    this.steps = new Steps(standIn, chance);
    this.steps.onFound = (hand, found) => this.#found(hand, found);
  }

  /** Four members of one server, one of another, and one who writes directly. */
  hands(): Hand[] {
    const { world } = this.#standIn;
    const [first, second] = world.groups;
    if (!first || !second) throw new Error('no servers');
    const within = (group: typeof first) => (person: Hand['person'], index: number) => ({
      person,
      group,
      channel: group.channels[index % 2]?.id ?? '',
    });
    const alone = first.people.slice(4).map((person) => ({
      person,
      group: undefined,
      channel: world.direct(person),
    }));
    return [
      ...first.people.slice(0, 4).map(within(first)),
      ...second.people.slice(0, 1).map(within(second)),
      ...alone,
    ];
  }

  /** Fills the books, so that there is something to ask about, and plans what is to be done. */
  async furnish(): Promise<void> {
    const hands = this.hands();
    const owners = hands.filter((one, at) => hands.findIndex(({ group }) => group === one.group) === at);
    for (const hand of owners) await this.#stockUp(hand);
    for (const hand of owners.slice(0, 1)) {
      for (let at = 1; at < 9; at += 1) await this.steps.say(hand, `bought ${at}00 g shea butter lot M${at}`);
      // Long lists bring menus: here somebody who has one asks for it.
      await this.steps.say(hand, 'stock');
    }
    const registered = leaves(this.#standIn.registered);
    const first = registered.flatMap((leaf) => this.#once(leaf));
    const menus = this.#standIn.registered
      .filter(({ type }) => type !== 1)
      .flatMap((one) => this.#menus(one));
    const lists = ['stock', 'list recipes', 'list batches', 'what is out of date'].map((text) =>
      this.#phrase(text),
    );
    this.#queue.push(...this.#mixed([...first, ...menus, ...lists.flat(), ...this.#oddities()]));
    const rest = [
      ...registered.flatMap((leaf) => this.#again(leaf)),
      ...phrases().flatMap((text) => this.#phrase(text)),
    ];
    for (let round = 1; round < this.#bounds.each; round += 1) rest.push(...this.#oddities());
    this.#queue.push(...this.#mixed(rest));
  }

  async #stockUp(hand: Hand): Promise<void> {
    for (const { name, lines } of recipes) await this.steps.say(hand, `save recipe ${name}: ${lines}`);
    await this.steps.say(hand, 'bought 500 g beeswax lot K12, best before 2027-03, 14.50');
    await this.steps.say(hand, 'bought 1 kg olive oil lot G7, best before 2027-06, 12');
    await this.steps.say(hand, 'poured 24 tins of 15 ml of Fernlea hand balm today');
  }

  /** Different things side by side: the same in each run of one seed. */
  #mixed(all: readonly Step[]): Step[] {
    const left = [...all];
    return all.flatMap(() => left.splice(this.#chance.below(left.length), 1));
  }

  /** What has to be done of each command in the shortest run. */
  #once(leaf: Leaf): Step[] {
    const completed = leaf.options.filter(({ autocomplete }) => autocomplete === true);
    return [
      (hand) => this.steps.slash(hand, leaf, mustOf(leaf)),
      (hand) => this.steps.slash(hand, leaf, leaf.options, new Map(), true),
      (hand) => this.steps.expired(hand, leaf),
      ...completed.map((option) => (hand: Hand) => this.steps.suggest(hand, leaf, option, '')),
    ];
  }

  #again(leaf: Leaf): Step[] {
    const completed = leaf.options.filter(({ autocomplete }) => autocomplete === true);
    const texts = partials.slice(1, this.#bounds.each > 4 ? undefined : 4);
    return [
      ...selections(this.#chance, leaf, this.#bounds.more).map(
        (options) => (hand: Hand) => this.steps.slash(hand, leaf, options),
      ),
      ...choicesOf(leaf).map(
        ({ option, value }) =>
          (hand: Hand) =>
            this.steps.slash(hand, leaf, [...mustOf(leaf), option], new Map([[option, value]])),
      ),
      ...completed.flatMap((option) =>
        texts.map((text) => (hand: Hand) => this.steps.suggest(hand, leaf, option, text)),
      ),
    ];
  }

  #menus(command: Wire): Step[] {
    return targets.map(
      (text) => async (hand) => this.steps.menu(hand, command, await this.steps.talk.chat(hand, text)),
    );
  }

  #phrase(text: string): Step[] {
    if (this.#phrases.has(text) || text.length > 1800) return [];
    this.#phrases.add(text);
    return [(hand) => this.steps.say(hand, text)];
  }

  /** What happens now and then in any server. */
  #oddities(): Step[] {
    return [
      (hand) => this.steps.takeBack(hand, 'scale Fernlea hand balm to 500 g'),
      (hand) => this.steps.whereItMayNotWrite(hand),
      (hand) => this.steps.outage(hand),
      ...files.map(
        ({ name, text }) =>
          (hand: Hand) =>
            this.steps.attach(hand, name, text),
      ),
    ];
  }

  #found(hand: Hand, { messages, modal, from }: Found): void {
    for (const { id } of messages) {
      const message = this.#standIn.messages.get(id);
      if (message) this.#look(hand, message);
    }
    if (!modal) return;
    const kind = `modal ${String(modal.title)} ${(modal.components as Wire[]).length}`;
    for (const how of fillings)
      this.#offer(hand, `${kind} ${how}`, () => this.steps.submit(hand, modal, how, from));
  }

  /** What a message leads to: its parts, what its menus of this kind can do with it, and the examples it names. */
  #look(hand: Hand, message: Message): void {
    for (const part of partsOf(message)) {
      this.#seen.push(part);
      if (this.#seen.length > 400) this.#seen.splice(this.#chance.below(300), 1);
      const most = Math.min(optionCount(part), this.#bounds.each);
      for (let at = 0; at < most; at += 1)
        this.#offer(hand, kindOf(part), () => this.steps.press(hand, part, at), isMenu(part));
    }
    for (const command of this.#standIn.registered.filter(({ type }) => type !== 1)) {
      this.#offer(hand, `on the bot's own ${String(command.name)}`, () =>
        this.steps.menu(hand, command, message),
      );
    }
    if (this.#phrases.size > 500) return;
    const named = [...message.content.matchAll(/`([^`\n]{4,120})`/g)].map(([, text]) => String(text));
    this.#queue.push(...named.flatMap((text) => this.#phrase(text)));
  }

  /**
   * Puts a step in the line of the member who found it, unless its kind has been used often enough.
   * @param isRare - to go to the head of the line: a short run would end before its turn
   */
  #offer(hand: Hand, kind: string, step: Step, isRare = false): void {
    const used = this.#used.get(kind) ?? 0;
    if (used >= this.#bounds.each) return;
    this.#used.set(kind, used + 1);
    const line = this.#own.get(hand.person.id) ?? [];
    if (isRare) line.unshift(step);
    else line.push(step);
    this.#own.set(hand.person.id, line);
  }

  async #random(hand: Hand): Promise<void> {
    const roll = this.#chance.below(10);
    const isOpen = ({ message }: Part): boolean =>
      message.channel_id === hand.channel && (Number(message.flags) & 64) === 0;
    const part = this.#chance.pick(roll < 2 ? this.#seen : this.#seen.filter(isOpen));
    if (roll < 2 && part) return this.steps.forge(hand, part);
    if (roll < 5 && part) return this.steps.press(hand, part);
    const leaf = this.#chance.pick(leaves(this.#standIn.registered));
    const options = leaf && selections(this.#chance, leaf, 1).at(-1);
    return leaf && options && this.steps.slash(hand, leaf, options, new Map(), roll === 9);
  }

  #next(hand: Hand, round: number): Step {
    const part = round % 9 === 0 ? this.#chance.pick(this.#seen) : undefined;
    if (round % 12 === 0) return (one) => this.steps.write(one);
    if (part) return (one) => this.steps.forge(one, part);
    const line = this.#own.get(hand.person.id);
    const own = round % 2 === 0 ? line?.shift() : undefined;
    return own ?? this.#queue.shift() ?? line?.shift() ?? ((one) => this.#random(one));
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

  /** Everybody at once, until enough is done and the weather says so. */
  async run(isDone: () => boolean): Promise<void> {
    await Promise.all(this.hands().map((hand) => this.#work(hand, isDone)));
  }

  async #work(hand: Hand, isDone: () => boolean): Promise<void> {
    for (let round = 1; !(this.done >= this.#bounds.steps && isDone()); round += 1) {
      await until(() => !this.#isHeld, 120_000);
      this.#busy += 1;
      await this.#next(hand, round)(hand);
      this.#busy -= 1;
      this.done += 1;
    }
  }
}
