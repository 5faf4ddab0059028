import type { APIApplicationCommandBasicOption } from 'discord-api-types/v10';
import { readName } from '../../../bot/discord/context-menu.ts';
import type { SlashCommand } from '../../../bot/slash.ts';
import type { Completion } from '../../../bot/topic.ts';
import type { SentOption } from '../chat-stand-in/asked.ts';
import type { Person } from '../chat-stand-in/people.ts';
import { valueFor } from '../crawl/values.ts';
import type { Dice } from '../dice.ts';
import type { Group } from './groups.ts';

/** Something that goes wrong meanwhile: nothing can be written, or the platform refuses the first request. */
export type Mishap = 'store' | 'refused';

/** One thing a member does, as data, so that it can be done again elsewhere. */
export type Action = { readonly person: Person; readonly at: number; readonly mishap?: Mishap } & (
  | {
      readonly kind: 'hear' | 'message' | 'on-message';
      readonly text: string;
      readonly files?: readonly GivenText[];
    }
  | { readonly kind: 'complete'; readonly completion: Completion; readonly typed: string }
  | { readonly kind: 'command'; readonly name: string; readonly options: readonly SentOption[] }
  | { readonly kind: 'typing'; readonly name: string; readonly option: string; readonly typed: string }
  | { readonly kind: 'button' | 'option'; readonly id: string }
  | { readonly kind: 'form'; readonly id: string; readonly fields: Readonly<Record<string, string>> }
);

export interface GivenText {
  readonly name: string;
  readonly text: string;
}

/** What can be tried: what people say, what is registered, and the ids and files that were shown so far, by group. */
export interface Stock {
  readonly phrases: readonly string[];
  readonly slips: readonly string[];
  readonly commands: readonly SlashCommand[];
  readonly ids: ReadonlyMap<Group, readonly string[]>;
  readonly files: ReadonlyMap<Group, readonly GivenText[]>;
}

const questions = [
  'show {R}',
  'scale {R} to 24 tins of 15 ml',
  'scale {R} to 500 g',
  'versions of {R}',
  'rename {R} to {R} two',
  'delete {R}',
  'cost of {R} for 24 tins of 15 ml',
  'check {R}',
  'swap beeswax for candelilla in {R}',
  'when does {R} melt',
  'which recipes have {W}',
  'lot {L}',
  'done with lot {L}',
  'threw away 5 g of {L}',
  'which batches used lot {L}',
  'where did {B} go',
  'batch {B}',
  'note on {B}: {W}',
  'gave 1 tin of {B} to {W}',
  'recall {L}',
  'reactions for {B}',
  'report: itch after {B}',
  'list recipes',
  'stock',
  'stock of beeswax',
  'running low',
  'prices',
  'list batches',
  'list reactions',
  'what expires this month',
  'what is due',
  'history',
  'history of {R}',
  'export',
  'export as csv',
  'undo',
  'settings',
  'help',
  'save recipe {W} balm: 30 g beeswax, 70 g olive oil',
  'save recipe {R}: 21 g beeswax, 79 g olive oil',
  'bought 100 g beeswax lot {L}',
  'bought 100 g shea butter from {W}, 4.50',
  'poured 6 tins of 15 g of {R} today',
  'poured 6 tins of 15 g of {R} today with lots {L}',
  'and for 40 tins?',
  'the second one',
  'it',
  'import',
  'forget everything',
  'keep everything',
  'only role Bench may write',
  'everyone may write',
  'remind us daily at 9 in Lisbon, 30 days ahead',
  'region us',
  'who wrote {R}',
  'what did {W} do',
  '{W}',
] as const;

const completions: readonly Completion[] = [
  'recipe',
  'ingredient',
  'recipe-or-ingredient',
  'topic',
  'batch',
  'lot',
  'lots',
  'lot-or-batch',
];

const flipped = (id: string, chance: Dice): string => {
  const at = chance.below(id.length + 1);
  return (
    id.slice(0, at) +
    chance.pick(['', 'x', ':', '%00', '🌿', '__proto__', '0']) +
    id.slice(at + chance.below(3))
  );
};

/** Makes up what the members of one group do next. */
export class Maker {
  readonly #group: Group;
  readonly #all: readonly Group[];
  readonly #chance: Dice;

  constructor(group: Group, all: readonly Group[], chance: Dice) {
    this.#group = group;
    this.#all = all;
    this.#chance = chance;
  }

  next(stock: Stock, at: number): Action {
    const chance = this.#chance;
    const mishap = chance.chance(0.02) ? { mishap: chance.pick(['store', 'refused'] as const) } : {};
    return { person: chance.pick(this.#group.people), at, ...mishap, ...this.#what(stock) };
  }

  #what(stock: Stock) {
    const chance = this.#chance;
    const thrown = chance.below(100);
    if (thrown < 30) return { kind: 'hear' as const, text: this.#words(stock), ...this.#files(stock) };
    if (thrown < 42) return { kind: 'message' as const, text: this.#words(stock) };
    if (thrown < 45) return { kind: 'on-message' as const, text: this.#words(stock), name: readName };
    if (thrown < 50)
      return { kind: 'complete' as const, completion: chance.pick(completions), typed: this.#typed() };
    if (thrown < 58) return this.#typing(stock);
    if (thrown < 75) return this.#command(stock);
    if (thrown < 92) return { kind: chance.pick(['button', 'option'] as const), id: this.#id(stock) };
    return this.#form(stock);
  }

  /** Names the group may say: its own, and those of others that strangers have heard of. */
  #recipe(): string {
    const { rumoured, kept } = this.#group.secrets;
    const chance = this.#chance;
    if (chance.chance(0.4)) return chance.pick(this.#all).secrets.rumoured.recipe;
    return chance.pick([`${kept.recipe} balm`, rumoured.recipe, 'Plain balm', kept.recipe.slice(0, 6)]);
  }

  #lot(): string {
    const { rumoured, kept } = this.#group.secrets;
    const chance = this.#chance;
    return chance.chance(0.4)
      ? chance.pick(this.#all).secrets.rumoured.lot
      : chance.pick([kept.lot, rumoured.lot]);
  }

  #word(): string {
    const chance = this.#chance;
    const near = chance.pick(this.#all).secrets.rumoured.recipe;
    return chance.pick([
      'Hall',
      'fair',
      'Q',
      near.slice(0, 4),
      near.toLowerCase(),
      ...Object.values(this.#group.secrets.kept),
    ]);
  }

  #batch(): string {
    return this.#chance.pick(['26-BAFO', '26-KIVO', '26-ZURA', '26-', 'the last batch']);
  }

  #words({ phrases, slips }: Stock): string {
    const chance = this.#chance;
    const said = chance.chance(0.55)
      ? chance.pick(questions)
      : chance.pick(chance.chance(0.25) ? slips : phrases);
    return said
      .replaceAll('{R}', () => this.#recipe())
      .replaceAll('{L}', () => this.#lot())
      .replaceAll('{B}', () => this.#batch())
      .replaceAll('{W}', () => this.#word())
      .replaceAll(/Fernlea (?:hand balm|mint lip balm)/g, () => this.#recipe());
  }

  #typed(): string {
    const chance = this.#chance;
    return chance.pick([
      '',
      'q',
      'z',
      '26',
      'r',
      'zx',
      this.#recipe().slice(0, 1 + chance.below(8)),
      `${this.#lot()}, `,
    ]);
  }

  #typing({ commands }: Stock) {
    const offering = commands.flatMap(({ name, options }) =>
      options
        .filter((option) => 'autocomplete' in option && option.autocomplete)
        .map((option) => ({ name, option: option.name })),
    );
    return { kind: 'typing' as const, ...this.#chance.pick(offering), typed: this.#typed() };
  }

  #command({ commands }: Stock) {
    const { name, options } = this.#chance.pick(commands);
    const filled = options.flatMap((option: APIApplicationCommandBasicOption): SentOption[] => {
      if (option.required !== true && !this.#chance.chance(0.45)) return [];
      const names = [this.#recipe(), this.#lot(), this.#batch()];
      return [{ name: option.name, type: option.type, value: valueFor(option, names, this.#chance) }];
    });
    return { kind: 'command' as const, name, options: filled };
  }

  /** An id that was shown in this group or another one, as it was or damaged, or words made into one. */
  #id(stock: Stock): string {
    const chance = this.#chance;
    const own = stock.ids.get(this.#group) ?? [];
    const others = chance.chance(0.5) ? this.#elsewhere(stock) : [];
    const pool = others.length > 0 ? others : own;
    const made = `${chance.pick(['say1:', 'more1:24:', 'say1:', 'long1:'])}${this.#words(stock)}`.slice(
      0,
      100,
    );
    const id = pool.length === 0 || chance.chance(0.15) ? made : chance.pick(pool);
    return (chance.chance(0.15) ? flipped(id, chance) : id).slice(0, 100);
  }

  /** Ids that were shown in some group: to those who are not nosy only what holds no secret. */
  #elsewhere(stock: Stock): readonly string[] {
    const from = this.#chance.pick(this.#all);
    const ids = stock.ids.get(from) ?? [];
    if (this.#group.nosy || from === this.#group) return ids;
    const secrets = Object.values(from.secrets.kept);
    return ids.filter((id) => !secrets.some((secret) => id.includes(secret)));
  }

  #form(stock: Stock) {
    const chance = this.#chance;
    const id = chance.chance(0.8)
      ? `form1:${chance.pick(['recipe', 'read', 'batch', 'stock'])}:`
      : this.#id(stock);
    const field = (): string =>
      chance.pick([this.#words(stock), this.#recipe(), this.#lot(), '', '24 tins of 15 g', '500 g']);
    const names = [
      'name',
      'lines',
      'recipe',
      'make',
      'lots',
      'on',
      'say',
      'ingredient',
      'amount',
      'lot',
      'price',
      '__proto__',
    ];
    return {
      kind: 'form' as const,
      id,
      fields: Object.fromEntries(names.filter(() => chance.chance(0.6)).map((name) => [name, field()])),
    };
  }

  #files({ files }: Stock): { readonly files?: readonly GivenText[] } {
    const chance = this.#chance;
    if (!chance.chance(0.06)) return {};
    const from = this.#group.nosy ? chance.pick(this.#all) : this.#group;
    const shown = files.get(from) ?? [];
    const odd: readonly GivenText[] = [
      { name: 'recipe.txt', text: '20 g beeswax\n80 g olive oil' },
      { name: 'book.json', text: '{"kind": "pipkin-book", "v": 1, "entries": [' },
      { name: 'book.json', text: `${'['.repeat(5000)}` },
      { name: 'stock.csv', text: '=1+1,"\n' },
      { name: '../../etc/passwd.json', text: '{"__proto__": {"manages": true}}' },
    ];
    const file = shown.length > 0 && chance.chance(0.7) ? chance.pick(shown) : chance.pick(odd);
    const cut = chance.chance(0.3) ? file.text.slice(0, chance.below(file.text.length + 1)) : file.text;
    return { files: [{ name: file.name, text: cut }] };
  }
}
