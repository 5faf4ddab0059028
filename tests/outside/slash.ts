// Slash commands, made from nothing but what the bot registered: each command and subcommand with the fewest options, each
// option by itself with each of its choices, all of them, some at random, with sensible values and with hostile ones.

import type { Wire } from './check.ts';
import type { Message } from './ledger.ts';
import type { Messages } from './messages.ts';
import type { Hand } from './talk.ts';
import { type Chance, files, hostileFor, numberFor, textFor } from './values.ts';
import { memberObject, userObject, type World } from './world.ts';

export type Leaf = {
  readonly command: Wire;
  readonly path: readonly Wire[];
  readonly options: readonly Wire[];
};

const list = (value: unknown): readonly Wire[] => (Array.isArray(value) ? (value as Wire[]) : []);

/** Each thing that can be sent: a command without subcommands, or one of its subcommands. */
export function leaves(registered: readonly Wire[]): Leaf[] {
  const under = (command: Wire, path: readonly Wire[], options: readonly Wire[]): Leaf[] => {
    const inner = options.filter(({ type }) => Number(type) < 3);
    if (inner.length === 0) return [{ command, path, options }];
    return inner.flatMap((one) => under(command, [...path, one], list(one.options)));
  };
  return registered.filter(({ type }) => type === 1).flatMap((one) => under(one, [], list(one.options)));
}

export const nameOf = ({ command, path }: Leaf): string =>
  `/${[command, ...path].map(({ name }) => String(name)).join(' ')}`;

export type Filled = { readonly option: Wire; readonly value: unknown; readonly focused?: true };

/** The data of a command as the platform sends it. */
export function slashData({ command, path }: Leaf, filled: readonly Filled[], resolved: Wire): Wire {
  const values = filled.map(({ option, value, focused }) => ({
    name: option.name,
    type: option.type,
    value,
    ...(focused ? { focused } : {}),
  }));
  const options = path.reduceRight<readonly Wire[]>(
    (inner, one) => [{ name: one.name, type: one.type, options: inner }],
    values,
  );
  return {
    id: command.id,
    name: command.name,
    type: 1,
    options,
    ...(Object.keys(resolved).length > 0 ? { resolved } : {}),
  };
}

export class Filler {
  readonly #chance: Chance;
  readonly #world: World;
  readonly #messages: Messages;
  /** Suggestions seen for an option, by its name: they are values too. */
  readonly suggested = new Map<string, string[]>();

  constructor(chance: Chance, world: World, messages: Messages) {
    this.#chance = chance;
    this.#world = world;
    this.#messages = messages;
  }

  /** A value for an option; things that are pointed at are put into `resolved`. */
  value(hand: Hand, option: Wire, resolved: { [kind: string]: unknown }, isHostile: boolean): unknown {
    const type = Number(option.type);
    if (type === 3) return this.#text(option, isHostile);
    if (type === 5) return this.#chance.below(2) === 0;
    if (type === 4) return Math.round(numberFor(this.#chance, option));
    if (type === 10) return numberFor(this.#chance, option);
    if (type === 11) return this.#file(hand, resolved);
    return this.#pointed(hand, type, resolved);
  }

  #text(option: Wire, isHostile: boolean): string {
    const choices = list(option.choices);
    if (choices.length > 0) return String(this.#chance.pick(choices)?.value);
    if (isHostile) return hostileFor(this.#chance, option);
    const known = this.suggested.get(String(option.name)) ?? [];
    if (known.length > 0 && this.#chance.below(2) === 0) return this.#chance.pick(known) ?? '';
    return textFor(this.#chance, option);
  }

  #file(hand: Hand, resolved: { [kind: string]: unknown }): string {
    const { name, text } = this.#chance.pick(files) ?? { name: 'a.txt', text: '' };
    const data = Buffer.from(text);
    const file = this.#messages.attach({ field: 'files[0]', name, bytes: data.length, data }, hand.channel);
    resolved.attachments = { [String(file.id)]: file };
    return String(file.id);
  }

  #pointed(hand: Hand, type: number, resolved: { [kind: string]: unknown }): string {
    const other = this.#chance.pick(hand.group?.people ?? this.#world.everyPerson()) ?? hand.person;
    if (type === 7) return hand.channel;
    if (type === 8) return hand.group?.id ?? hand.channel;
    resolved.users = { [other.id]: userObject(other) };
    if (hand.group) resolved.members = { [other.id]: memberObject(other, hand.group) };
    return other.id;
  }
}

/** The data of a context menu, used on a message. */
export const menuData = (command: Wire, target: Message): Wire => ({
  id: command.id,
  name: command.name,
  type: 3,
  target_id: target.id,
  resolved: { messages: { [target.id]: target } },
});

/** The data of a context menu, used on a member. */
export const memberData = (command: Wire, hand: Hand): Wire => ({
  id: command.id,
  name: command.name,
  type: 2,
  target_id: hand.person.id,
  resolved: { users: { [hand.person.id]: userObject(hand.person) } },
});

/** Which options are filled in, one list for each time the command is sent. */
export function selections(chance: Chance, { options }: Leaf, more: number): Wire[][] {
  const must = options.filter(({ required }) => required === true);
  const may = options.filter(({ required }) => required !== true);
  const some = (): Wire[] => may.filter(() => chance.below(3) === 0);
  return [
    must,
    ...may.map((one) => [...must, one]),
    [...must, ...may],
    ...Array.from({ length: more }, () => [...must, ...some()]),
  ];
}

/** Choices that have to be tried one by one: of every option that has some. */
export const choicesOf = ({ options }: Leaf): { readonly option: Wire; readonly value: unknown }[] =>
  options.flatMap((option) => list(option.choices).map(({ value }) => ({ option, value })));
