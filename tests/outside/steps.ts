// What a member can do, one thing at a time. What comes of it is handed on, so that it leads to the next things.

import type { Wire } from './check.ts';
import type { Asked, Message } from './ledger.ts';
import { type Filling, forgedIds, kindOf, modalData, type Part, pressData } from './parts.ts';
import { type Filled, Filler, type Leaf, leaves, memberData, menuData, nameOf, slashData } from './slash.ts';
import type { StandIn } from './stand-in.ts';
import { type Hand, Talk } from './talk.ts';
import type { Chance } from './values.ts';
import { guildObject } from './world.ts';

export type Found = { readonly messages: readonly Message[]; readonly modal?: Wire; readonly from?: Message };

export const mustOf = ({ options }: Leaf): Wire[] => options.filter(({ required }) => required === true);

export class Steps {
  readonly talk: Talk;
  readonly #standIn: StandIn;
  readonly #chance: Chance;
  readonly #filler: Filler;
  #written = 0;
  /** Codes of lots that the bot said it had written down, each after its place. */
  readonly confirmed = new Set<string>();
  onFound: (hand: Hand, found: Found) => void = () => undefined;

  constructor(standIn: StandIn, chance: Chance) {
    this.#standIn = standIn;
    this.#chance = chance;
    this.talk = new Talk(standIn);
    this.#filler = new Filler(chance, standIn.world, standIn.messages);
  }

  #count(what: string, kind: string): void {
    this.#standIn.ledger.count(what);
    this.#standIn.ledger.count(`kind ${what} ${kind}`);
  }

  #hand(hand: Hand, { messages, modal, source }: Asked): void {
    this.onFound(hand, { messages, ...(modal ? { modal } : {}), ...(source ? { from: source } : {}) });
  }

  #fill(hand: Hand, options: readonly Wire[], given: ReadonlyMap<Wire, unknown>, isHostile: boolean) {
    const resolved: { [kind: string]: unknown } = {};
    const filled: Filled[] = [...new Set(options)].map((option) => ({
      option,
      value: given.has(option) ? given.get(option) : this.#filler.value(hand, option, resolved, isHostile),
    }));
    return { filled, resolved };
  }

  async slash(
    hand: Hand,
    leaf: Leaf,
    options: readonly Wire[],
    given: ReadonlyMap<Wire, unknown> = new Map(),
    isHostile = false,
  ): Promise<void> {
    const { filled, resolved } = this.#fill(hand, options, given, isHostile);
    const said = JSON.stringify(filled.map(({ option, value }) => [option.name, value])).slice(0, 300);
    this.#count('slash commands', nameOf(leaf));
    const data = slashData(leaf, filled, resolved);
    this.#hand(hand, await this.talk.ask(hand, { type: 2, data, label: `${nameOf(leaf)} ${said}` }));
  }

  async suggest(hand: Hand, leaf: Leaf, option: Wire, text: string): Promise<void> {
    const others = mustOf(leaf).filter((one) => one !== option);
    const { filled } = this.#fill(hand, others, new Map(), false);
    const data = slashData(leaf, [...filled, { option, value: text, focused: true }], {});
    const label = `${nameOf(leaf)}, suggestions for ${String(option.name)} "${text.slice(0, 20)}"`;
    this.#count('autocompletes', `${nameOf(leaf)} ${String(option.name)}`);
    const asked = await this.talk.ask(hand, { type: 4, data, label, optionType: Number(option.type) });
    const values = asked.choices.map(({ value }) => String(value));
    this.#filler.suggested.set(String(option.name), values.length > 0 ? values : ['beeswax']);
    const [first] = values;
    if (first === undefined || text !== '') return;
    await this.slash(hand, leaf, [...mustOf(leaf), option], new Map([[option, first]]));
  }

  /** An interaction whose token has run out before the bot got it. */
  async expired(hand: Hand, leaf: Leaf): Promise<void> {
    const { filled } = this.#fill(hand, mustOf(leaf), new Map(), false);
    this.#count('expired', nameOf(leaf));
    const data = slashData(leaf, filled, {});
    await this.talk.ask(hand, { type: 2, data, label: `expired ${nameOf(leaf)}`, isExpired: true });
  }

  async menu(hand: Hand, command: Wire, target: Message): Promise<void> {
    this.#count('context menus', String(command.name));
    const data = command.type === 3 ? menuData(command, target) : memberData(command, hand);
    const label = `${String(command.name)} on "${target.content.slice(0, 40)}"`;
    this.#hand(hand, await this.talk.ask(hand, { type: 2, data, label }));
  }

  async press(hand: Hand, part: Part, index?: number): Promise<void> {
    const isMenu = Number(part.component.type) !== 2;
    this.#count(isMenu ? 'menus' : 'buttons', kindOf(part));
    const label = `${isMenu ? 'menu' : 'button'} ${kindOf(part)} ${String(part.component.custom_id)}`;
    const data = pressData(this.#chance, part, index);
    this.#hand(hand, await this.talk.ask(hand, { type: 3, data, label, message: part.message }));
  }

  async submit(hand: Hand, modal: Wire, how: Filling, message: Message | undefined): Promise<void> {
    const label = `"${String(modal.title)}" filled in ${how}`;
    this.#count('modals', `${String(modal.title)} ${how}`);
    const data = modalData(this.#chance, modal, how);
    this.#hand(hand, await this.talk.ask(hand, { type: 5, data, label, ...(message ? { message } : {}) }));
  }

  /** An id nobody was given, an option nobody was shown, a part of another server or of long ago. */
  async forge(hand: Hand, part: Part): Promise<void> {
    const id = this.#chance.pick(forgedIds(String(part.component.custom_id))) ?? 'x';
    const isReplay = this.#chance.below(3) === 0;
    const component = isReplay ? part.component : { ...part.component, custom_id: id };
    const unseen = component.type === 3 && this.#chance.below(2) === 0 ? { values: ['__proto__'] } : {};
    const data = { ...pressData(this.#chance, { component, message: part.message }), ...unseen };
    const timestamp = '2025-03-01T10:00:00.000000+00:00';
    const message = { ...part.message, channel_id: hand.channel, timestamp };
    this.#count(isReplay ? 'replayed' : 'forged', String(component.type));
    const label = `${isReplay ? 'replayed' : 'forged'} ${JSON.stringify(data).slice(0, 200)}`;
    const asked = await this.talk.ask(hand, { type: 3, data, label, message });
    if (asked.modal) await this.submit(hand, { ...asked.modal, custom_id: id }, 'sensible', message);
  }

  async say(hand: Hand, text: string): Promise<void> {
    this.#count('texts', hand.group ? 'mention' : 'direct');
    this.onFound(hand, { messages: (await this.talk.say(hand, text)).replies });
  }

  async takeBack(hand: Hand, text: string): Promise<void> {
    this.#count('messages taken back', 'text');
    await this.talk.say(hand, text, {}, 'is taken back');
  }

  /** A purchase under a code of its own: in the end each that was confirmed has to be in the book, once. */
  async write(hand: Hand): Promise<void> {
    this.#written += 1;
    const code = `QZ${1000 + this.#written}`;
    this.#count('writes', 'text');
    const { replies } = await this.talk.say(hand, `bought 100 g beeswax lot ${code}`);
    const text = replies.map(({ content }) => content).join('\n');
    const place = hand.group?.id ?? hand.person.id;
    if (/bought/i.test(text) && text.includes(code)) this.confirmed.add(`${place} ${code}`);
  }

  async attach(hand: Hand, name: string, text: string): Promise<void> {
    const data = Buffer.from(text);
    const upload = { field: 'files[0]', name, bytes: data.length, data };
    const file = this.#standIn.messages.attach(upload, hand.channel);
    const words = name.endsWith('.json') ? 'import' : 'scale this to 24 tins of 15 ml';
    this.#count('messages with a file', name);
    this.onFound(hand, { messages: (await this.talk.say(hand, words, { attachments: [file] })).replies });
  }

  /** In a channel where the bot may not write: a command is answered there, a message directly where that can be. */
  async whereItMayNotWrite(hand: Hand): Promise<void> {
    const closed = hand.group?.channels.find(({ isClosed }) => isClosed);
    if (!closed) return;
    const there = { ...hand, channel: closed.id };
    const [leaf] = leaves(this.#standIn.registered);
    if (leaf) await this.slash(there, leaf, leaf.options);
    const isReached = !this.#standIn.world.closed.has(hand.person.id);
    this.#count('messages where it may not write', 'text');
    await this.talk.say(there, 'what is candelilla wax', {}, isReached ? undefined : 'cannot be answered');
  }

  /** A server goes away for a while and is asked in all the same. */
  async outage(hand: Hand): Promise<void> {
    const { group } = hand;
    if (!group) return;
    this.#count('outages', 'server');
    this.#standIn.gateway.dispatch('GUILD_DELETE', { id: group.id, unavailable: true });
    await this.talk.say(hand, 'density of castor oil');
    const leaf = this.#chance.pick(leaves(this.#standIn.registered));
    if (leaf) await this.slash(hand, leaf, mustOf(leaf));
    this.#standIn.gateway.dispatch('GUILD_CREATE', guildObject(group, this.#standIn.world.bot));
  }
}
