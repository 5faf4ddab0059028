import {
  type APIApplicationCommand,
  type APIApplicationCommandBasicOption,
  ApplicationCommandOptionType,
  ApplicationCommandType,
} from 'discord-api-types/v10';
import { commandFilledIn, type Place, type SentOption, typedSoFar } from '../chat-stand-in/asked.ts';
import type { Exchange } from '../chat-stand-in/exchange.ts';
import type { ShownForm } from '../chat-stand-in/forms.ts';
import type { StandIn } from '../chat-stand-in/stand-in.ts';
import type { Dice } from '../dice.ts';
import { listed, valueFor } from './values.ts';

// Drives whatever bot is connected to the stand-in. It knows nothing but what was registered and what messages hold.

type Option = APIApplicationCommandBasicOption;

/** One thing to do. `depth` counts the buttons and forms that led to it. */
export type Task = { readonly place: Place; readonly depth: number } & (
  | {
      readonly kind: 'command';
      readonly command: APIApplicationCommand;
      readonly with: readonly Option[] | 'any';
    }
  | {
      readonly kind: 'choice';
      readonly command: APIApplicationCommand;
      readonly option: Option;
      readonly value: SentOption['value'];
    }
  | { readonly kind: 'typing'; readonly command: APIApplicationCommand; readonly option: Option }
  | { readonly kind: 'menu-command'; readonly name: string }
  | { readonly kind: 'button'; readonly id: string }
  | { readonly kind: 'option'; readonly id: string; readonly menu: string }
  | { readonly kind: 'form'; readonly form: ShownForm }
  | { readonly kind: 'message'; readonly text: string }
);

export interface Limits {
  /** How many buttons and forms after one another are followed. */
  readonly deepest: number;
  /** How long an answer may take, in milliseconds. */
  readonly answerWithinMs: number;
}

/** Words that no answer may hold: a program shows through. */
const amiss = /\bundefined\b|\bNaN\b|\[object |\bat .+\.[jt]s:\d+|Something went wrong|\(fault /i;

const optionsOf = ({ options = [] }: APIApplicationCommand): readonly Option[] =>
  options as readonly Option[];
const isSlash = ({ type }: APIApplicationCommand): boolean => type === ApplicationCommandType.ChatInput;
const completes = (option: Option): boolean => 'autocomplete' in option && option.autocomplete === true;

export class Crawler {
  /** How often each kind of thing was done. */
  readonly done = new Map<string, number>();
  /** What was wrong with answers; the stand-in has its own list of what was wrong with requests. */
  readonly wrong: string[] = [];
  /** What has been used: each command, option, choice, button, option of a menu, form. */
  readonly used = new Set<string>();
  readonly exchanges: Exchange[] = [];
  readonly #standIn: StandIn;
  readonly #dice: Dice;
  readonly #limits: Limits;
  readonly #places: readonly Place[];
  readonly #found: Task[] = [];
  readonly #seen = new Set<string>();
  #texts: readonly string[] = ['20 g beeswax\n30 g shea butter\n50 g olive oil', '', 'x'.repeat(2000)];

  constructor(standIn: StandIn, dice: Dice, places: readonly Place[], limits: Limits) {
    this.#standIn = standIn;
    this.#dice = dice;
    this.#places = places;
    this.#limits = limits;
  }

  get commands(): readonly APIApplicationCommand[] {
    return this.#standIn.commands.list;
  }

  /** Everything that was registered, once: bare, each option, each choice, all options, each list of suggestions. */
  everything(): readonly Task[] {
    return this.commands.flatMap((command): Task[] => {
      const at = () => ({ place: this.#dice.pick(this.#places), depth: 0 });
      if (!isSlash(command)) return [{ kind: 'menu-command', name: command.name, ...at() }];
      const all = optionsOf(command);
      const optional = all.filter(({ required }) => required !== true);
      return [
        { kind: 'command', command, with: [], ...at() },
        ...optional.map((option): Task => ({ kind: 'command', command, with: [option], ...at() })),
        ...all.flatMap((option) =>
          (listed(option) ?? []).map((value): Task => ({ kind: 'choice', command, option, value, ...at() })),
        ),
        ...all.filter(completes).map((option): Task => ({ kind: 'typing', command, option, ...at() })),
        { kind: 'command', command, with: optional, ...at() },
      ];
    });
  }

  /** What to do next: mostly something that an answer offers, or else any command with any options. */
  next(): Task {
    if (this.#found.length > 0 && this.#dice.chance(0.75)) {
      const [found] = this.#found.splice(this.#dice.below(this.#found.length), 1);
      if (found) return found;
    }
    const place = this.#dice.pick(this.#places);
    const command = this.#dice.pick(this.commands);
    if (!isSlash(command)) return { kind: 'menu-command', name: command.name, place, depth: 0 };
    if (this.#dice.chance(0.1))
      return { kind: 'message', text: this.#dice.pick(this.#texts), place, depth: 0 };
    const typed = optionsOf(command).filter(completes);
    if (typed.length > 0 && this.#dice.chance(0.2))
      return { kind: 'typing', command, option: this.#dice.pick(typed), place, depth: 0 };
    return { kind: 'command', command, with: 'any', place, depth: 0 };
  }

  /** Does it, waits for what comes of it, and remembers what can be done with that. */
  async do(task: Task): Promise<void> {
    this.done.set(task.kind, (this.done.get(task.kind) ?? 0) + 1);
    try {
      const exchange = await this.#sent(task);
      if (!exchange) return;
      this.exchanges.push(exchange);
      await exchange.answered(this.#limits.answerWithinMs);
      this.#look(exchange, task);
    } catch (fault) {
      this.wrong.push(`${this.#name(task)}: ${String(fault)}`);
    }
  }

  #name(task: Task): string {
    if (task.kind === 'command' || task.kind === 'typing' || task.kind === 'choice')
      return `${task.kind} /${task.command.name}`;
    return task.kind === 'form' ? `form ${task.form.id}` : JSON.stringify(task).slice(0, 300);
  }

  async #sent(task: Task): Promise<Exchange | undefined> {
    const { place } = task;
    switch (task.kind) {
      case 'command':
        return this.#command(task.command, await this.#options(task.command, task.with, place), place);
      case 'choice': {
        const chosen = { name: task.option.name, type: task.option.type, value: task.value };
        const others = await this.#options(task.command, [], place);
        const options = [...others.filter(({ name }) => name !== chosen.name), chosen];
        return this.#command(task.command, options, place);
      }
      case 'typing':
        for (const typed of [
          '',
          'a',
          this.#dice.pick(['be', '26', 'K', 'shea b', '🌿', 'm'.repeat(100)]),
          'zzz',
        ])
          await this.#suggestions(task.command, task.option, typed, place);
        return undefined;
      case 'menu-command':
        this.used.add(task.name);
        return this.#standIn.onMessage({ name: task.name, text: this.#dice.pick(this.#texts) }, place);
      case 'button':
        this.used.add(task.id);
        return this.#standIn.pressSent(task.id, place);
      case 'option':
        this.used.add(task.id);
        return this.#standIn.pick(task.id, place, task.menu);
      case 'form':
        this.used.add(task.form.id);
        return this.#standIn.fillIn(task.form, this.#fields(task.form), place);
      case 'message':
        return task.text.trim() === ''
          ? undefined
          : this.#standIn.write({ text: task.text.slice(0, 1900), ...place, direct: true });
    }
  }

  #command(command: APIApplicationCommand, options: readonly SentOption[], place: Place): Exchange {
    this.used.add(command.name);
    for (const { name, value } of options) {
      this.used.add(`${command.name} ${name}`);
      this.used.add(`${command.name} ${name} ${value}`);
    }
    return this.#standIn.interact(place, ({ id }, token) =>
      commandFilledIn(id, token, command.name, options, place),
    );
  }

  /** Required options and these, or some of them, in the order they were registered. */
  async #options(
    command: APIApplicationCommand,
    wanted: readonly Option[] | 'any',
    place: Place,
  ): Promise<readonly SentOption[]> {
    const sent: SentOption[] = [];
    for (const option of optionsOf(command)) {
      const { name, type, required } = option;
      const taken = wanted === 'any' ? this.#dice.chance(0.4) : wanted.includes(option);
      if (required !== true && !taken) continue;
      const offered = completes(option)
        ? await this.#suggestions(command, option, this.#dice.pick(['', '', 'b', 's']), place, sent)
        : [];
      sent.push({ name, type, value: valueFor(option, offered, this.#dice) });
    }
    return sent;
  }

  async #suggestions(
    command: APIApplicationCommand,
    option: Option,
    typed: string,
    place: Place,
    before: readonly SentOption[] = [],
  ): Promise<readonly string[]> {
    this.done.set('suggestions', (this.done.get('suggestions') ?? 0) + 1);
    this.used.add(`${command.name} ${option.name}?`);
    const exchange = this.#standIn.interact(place, ({ id }, token) =>
      typedSoFar(id, token, command.name, { option: option.name, typed, before }, place),
    );
    this.exchanges.push(exchange);
    return exchange.completed(this.#limits.answerWithinMs);
  }

  /** What was in the form stays, mostly; what has to be filled in is, with something a message held. */
  #fields({ fields }: ShownForm): Readonly<Record<string, string>> {
    return Object.fromEntries(
      fields.flatMap(({ name, value, required, most }) => {
        if (value !== '' && this.#dice.chance(0.8)) return [];
        if (!required && this.#dice.chance(0.5)) return [];
        const text = this.#dice.pick([
          '24 tins of 15 ml',
          'beeswax',
          '500 g',
          'today',
          'Hall balm',
          this.#dice.pick(this.#texts),
          'm'.repeat(most),
        ]);
        return [[name, text.slice(0, most) || 'x'] as const];
      }),
    );
  }

  #offer(key: string, task: Task): void {
    if (this.#seen.has(key) || task.depth > this.#limits.deepest) return;
    this.#seen.add(key);
    this.#found.push(task);
  }

  #look({ shown, form }: Exchange, { place, depth: before }: Task): void {
    const where = place.direct ? `direct ${place.member?.id}` : 'hall';
    const depth = before + 1;
    for (const { content, buttons, options } of shown) {
      this.#read(content);
      for (const { id } of buttons) this.#offer(`${where} ${id}`, { kind: 'button', id, place, depth });
      for (const { id, menu } of options)
        this.#offer(`${where} ${id}`, { kind: 'option', id, menu, place, depth });
    }
    if (!form) return;
    this.done.set('forms shown', (this.done.get('forms shown') ?? 0) + 1);
    this.#offer(`${where} ${form.id} ${JSON.stringify(form.fields)}`, { kind: 'form', form, place, depth });
  }

  #read(content: string): void {
    const [found] = amiss.exec(content) ?? [];
    if (found !== undefined) this.wrong.push(`an answer holds "${found}": ${content.slice(0, 400)}`);
    if (content.length > 3 && this.#dice.chance(0.2)) this.#texts = [...this.#texts.slice(-40), content];
  }

  /** Interactions that were never acknowledged, or that were and then got neither an answer nor a form. */
  unanswered(): readonly string[] {
    return this.exchanges.flatMap(({ acknowledgedMs, shown, form, offered, id, isMessage }) => {
      if (isMessage) return shown.length > 0 ? [] : [`message ${id} not answered`];
      if (acknowledgedMs === undefined) return [`interaction ${id} not acknowledged`];
      return shown.length > 0 || form !== undefined || offered !== undefined
        ? []
        : [`interaction ${id} without an answer`];
    });
  }

  /** What was registered and has not been used: commands, options, choices, suggestions. */
  untried(): readonly string[] {
    return this.commands
      .flatMap((command) => [
        command.name,
        ...optionsOf(command).flatMap((option) => [
          `${command.name} ${option.name}`,
          ...(listed(option) ?? []).map((value) => `${command.name} ${option.name} ${value}`),
          ...(completes(option) ? [`${command.name} ${option.name}?`] : []),
        ]),
      ])
      .filter((name) => !this.used.has(name));
  }
}

/** Types of options the crawler can fill in; a bot that registers another one has to be given hands for it. */
export const fillable: readonly number[] = [
  ApplicationCommandOptionType.String,
  ApplicationCommandOptionType.Integer,
  ApplicationCommandOptionType.Number,
  ApplicationCommandOptionType.Boolean,
];
