import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { askedRole, isAmountItem, type Role, type RoleRead, roleOf } from './infuse-amounts.ts';
import { herbByVolume } from './infuse-words.ts';
import type { Item } from './item.ts';
import { type Size, sizeOf } from './target.ts';

/** The fields of an infuse request as far as they are known; the topic's schema checks them in the end. */
export type Fields = Readonly<Record<string, unknown>>;

/** The last request about an infusion, if that is what the member asked last. */
export const lastInfuse = (reading: Reading): Fields | undefined =>
  reading.last?.topic === 'infuse' ? reading.last.request : undefined;

export interface Amounts {
  readonly fields: Fields;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

const roleText: Readonly<Record<Role, string>> = {
  herb: 'the dried herb',
  oilIn: 'the oil that goes in',
  oilOut: 'the strained oil you want',
};

const saidTwice: Trouble = {
  code: 'bad-quantity',
  text: `I read two amounts of the same thing. Say it once each, for example "40 g calendula in 320 g sunflower oil".`,
};

const fieldOf = (role: Role, size: Size): Fields =>
  role === 'herb' ? { herbG: size.amount } : { [role]: size };

/** A lone amount after an infusion stands for the one said before. */
const roleBefore = (before: Fields | undefined): Role | undefined => {
  if (!before) return undefined;
  if (before.herbG !== undefined) return 'herb';
  return before.oilIn === undefined ? 'oilOut' : 'oilIn';
};

interface Given {
  readonly item: Item;
  readonly size: Size;
  readonly read: RoleRead;
}

const isOf = (all: readonly Given[], role: Role): boolean =>
  all.some(({ read }) => !read.inferred && read.role === role);

/** "Fresh lemon balm, 100 g, in 500 g olive oil": beside an amount of oil the one that is of no name is the herb. */
const placedBeside = (all: readonly Given[], items: readonly Item[]): readonly Given[] => {
  const [open, second] = all.filter(({ read }) => read.inferred);
  if (!open || second || all.length !== 2 || askedRole(items)) return all;
  const role: Role | undefined = isOf(all, 'oilIn') ? 'herb' : isOf(all, 'herb') ? 'oilIn' : undefined;
  if (!role || (role === 'herb' && open.size.unit === 'ml')) return all;
  return all.map((each) => (each === open ? { ...each, read: { role, inferred: false } } : each));
};

const givenIn = (reading: Reading, items: readonly Item[]): readonly Given[] =>
  items.flatMap((item, at) => {
    const size = isAmountItem(item) ? sizeOf(item, reading.settings.region) : undefined;
    return size ? [{ item, size, read: roleOf(reading, items, at) }] : [];
  });

interface Told {
  readonly field: Fields;
  readonly assumed?: string;
  readonly trouble?: Trouble;
}

/** One amount with what it is of; a lone one after an infusion stands for the one said before. */
const told = ({ size, read }: Given, before?: Fields): Told => {
  const role = read.inferred ? (roleBefore(before) ?? read.role) : read.role;
  const field = fieldOf(role, size);
  if (role === 'herb' && size.unit === 'ml') return { field, trouble: herbByVolume };
  if (!read.inferred || before) return { field };
  return { field, assumed: `I took ${size.amount} ${size.unit} as ${roleText[role]}.` };
};

const clashes = (fields: Fields, field: Fields): boolean =>
  Object.keys(field).some(
    (key) => fields[key] !== undefined && JSON.stringify(fields[key]) !== JSON.stringify(field[key]),
  );

/** The amounts of a message with what each is of. */
export const amountsOf = (reading: Reading, items: readonly Item[], before?: Fields): Amounts => {
  let fields: Fields = {};
  const assumed: string[] = [];
  for (const each of placedBeside(givenIn(reading, items), items)) {
    const next = told(each, before);
    const trouble = next.trouble ?? (clashes(fields, next.field) ? saidTwice : undefined);
    if (trouble) return { fields, assumed, trouble };
    if (next.assumed) assumed.push(next.assumed);
    fields = { ...fields, ...next.field };
  }
  return { fields, assumed };
};
