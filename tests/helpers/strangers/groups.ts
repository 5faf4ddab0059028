import { PermissionFlagsBits } from 'discord-api-types/v10';
import type { Place } from '../chat-stand-in/asked.ts';
import { benchRoleId, type Person } from '../chat-stand-in/people.ts';
import { type Dice, dice } from '../dice.ts';

/** What only one group knows. */
export interface Secrets {
  /** Names strangers have heard of and ask for: a recipe, a lot, with what is behind them unknown. */
  readonly rumoured: { readonly recipe: string; readonly lot: string };
  /** What nobody outside ever says: each of them is looked for in everything that others are shown. */
  readonly kept: Readonly<Record<Kept, string>>;
}

export const keptKinds = [
  'recipe',
  'lot',
  'supplier',
  'price',
  'perKg',
  'contact',
  'note',
  'shop',
  'signs',
  'manager',
  'member',
] as const;
export type Kept = (typeof keptKinds)[number];

export interface Group {
  readonly id: string;
  readonly people: readonly [Person, Person];
  readonly secrets: Secrets;
  /** In it everything is tried that was shown elsewhere, secrets included; in the others only what strangers can know. */
  readonly nosy: boolean;
  placeOf(person: Person): Place;
}

const syllables = [...'bdfgjklmrvz'].flatMap((consonant) => [...'aeiou'].map((vowel) => consonant + vowel));

/** A word nobody uses, the same for the same seed: nine to ten letters, so that it turns up nowhere by chance. */
const word = (chance: Dice): string => {
  const letters = Array.from({ length: 4 }, () => chance.pick(syllables)).join('');
  return `Q${letters}x`;
};

const amount = (chance: Dice): string => `${7000 + chance.below(2000)}.${11 + chance.below(88)}`;

const secretsFrom = (chance: Dice, at: number): Secrets => ({
  rumoured: { recipe: `${word(chance)} salve`, lot: `R${at}${100 + chance.below(900)}` },
  kept: {
    recipe: word(chance),
    lot: `ZX${at}${1000 + chance.below(9000)}`,
    supplier: word(chance),
    price: amount(chance),
    perKg: amount(chance),
    contact: word(chance),
    note: word(chance),
    shop: word(chance),
    signs: word(chance),
    manager: word(chance),
    member: word(chance),
  },
});

const personId = (at: number): string => `9100000000000${String(at).padStart(5, '0')}`;

/** Three servers and two people with books of their own; the last of them is nosy. */
export const groupsFrom = (seed: number): readonly Group[] => {
  const chance = dice(seed);
  return [0, 1, 2, 3, 4].map((at): Group => {
    const secrets = secretsFrom(chance, at);
    const direct = at >= 3;
    const manager: Person = {
      id: personId(2 * at),
      name: secrets.kept.manager,
      permissions: PermissionFlagsBits.ManageGuild,
    };
    const member: Person = direct
      ? manager
      : { id: personId(2 * at + 1), name: secrets.kept.member, roles: [benchRoleId] };
    const server = { guild: `92000000000000${at}00`, channel: `92000000000000${at}01` };
    return {
      id: direct ? `dm:${manager.id}` : `guild:${server.guild}`,
      people: [manager, member],
      secrets,
      nosy: at === 4,
      placeOf: (person) => (direct ? { member: person, direct: true } : { member: person, server }),
    };
  });
};

/** What is said in a group at the beginning, so that its book holds all of its secrets. `{batch}` is the code of its pour. */
export const planted = ({ secrets: { rumoured, kept } }: Group): readonly string[] => [
  `save recipe ${kept.recipe} balm: 37.3 g beeswax, 62.7 g olive oil`,
  `save recipe ${rumoured.recipe}: 25 g beeswax, 25 g shea butter, 50 g sunflower oil`,
  `save recipe Plain balm: 20 g beeswax, 80 g olive oil`,
  `bought 500 g beeswax lot ${kept.lot} from ${kept.supplier} Supplies, best before 2027-03, ${kept.price}`,
  `bought 900 g olive oil lot ${rumoured.lot} from ${kept.supplier} Supplies, best before 2027-05`,
  `shea costs ${kept.perKg} per kg`,
  `poured 24 tins of 15 g of ${rumoured.recipe} today`,
  `note on {batch}: ${kept.note} smelt odd`,
  `gave 6 tins of {batch} to ${kept.shop}`,
  `report: ${kept.signs} rash after {batch}; contact: ${kept.contact} at the gate`,
];
