// What can be pressed, picked and filled in: found in messages and modals, by the platform's published structures alone.

import { isAbsent, type Wire } from './check.ts';
import type { Message } from './ledger.ts';
import { everyComponent, kinds } from './limits-components.ts';
import { type Chance, hostileFor, textFor } from './values.ts';

export type Part = { readonly component: Wire; readonly message: Message };

const isPressed = (one: Wire): boolean => !isAbsent(one.custom_id) && one.disabled !== true;

/** Buttons and menus of a message that send something. */
export const partsOf = (message: Message): Part[] =>
  everyComponent((message.components as Wire[] | undefined) ?? [])
    .filter(isPressed)
    .map((component) => ({ component, message }));

export const isMenu = ({ component }: Part): boolean => component.type === kinds.select;

/** What kind of part this is: the first word of its id, and what it says. Figures in it count for nothing. */
export function kindOf({ component }: Part): string {
  const id = String(component.custom_id).split(/[:|/ ,]/)[0];
  const says = String(component.label ?? component.placeholder ?? '').replace(/[\d.,]+/g, '#');
  return `${String(component.type)} ${id} ${says}`;
}

/** The data of a pressed button, or of a menu with some of its options picked. */
export function pressData(chance: Chance, { component }: Part, index?: number): Wire {
  const base = { custom_id: component.custom_id, component_type: component.type, id: component.id };
  if (component.type !== kinds.select) return base;
  const options = component.options as Wire[];
  const most = Number(component.max_values ?? 1);
  const one = options[index ?? chance.below(options.length)];
  const values = most > 1 ? options.slice(0, most).map(({ value }) => value) : [one?.value];
  return { ...base, values };
}

export const optionCount = ({ component }: Part): number =>
  component.type === kinds.select ? (component.options as Wire[]).length : 1;

export type Filling = 'as it stands' | 'sensible' | 'hostile' | 'empty';
export const fillings: readonly Filling[] = ['as it stands', 'sensible', 'hostile', 'empty'];

function typed(chance: Chance, input: Wire, how: Filling, label: unknown): string {
  const said = { ...input, label: label ?? input.label };
  if (how === 'empty' && input.required === false) return '';
  if (how === 'hostile') return hostileFor(chance, said);
  if (how === 'sensible') return textFor(chance, said);
  const value = String(input.value ?? '');
  return value === '' && input.required !== false ? textFor(chance, said) : value;
}

function answered(chance: Chance, one: Wire, how: Filling, label?: unknown): Wire {
  if (one.type === kinds.input) {
    return { type: 4, id: one.id ?? 0, custom_id: one.custom_id, value: typed(chance, one, how, label) };
  }
  const options = (one.options as Wire[] | undefined) ?? [];
  return { type: one.type, id: one.id ?? 0, custom_id: one.custom_id, values: [chance.pick(options)?.value] };
}

/** The data of a modal as it is sent off. */
export function modalData(chance: Chance, modal: Wire, how: Filling): Wire {
  const rows = (modal.components as Wire[]).filter(({ type }) => type === kinds.row || type === kinds.label);
  const components = rows.map((row, index) => {
    const id = index * 2 + 1;
    if (row.type === kinds.label) {
      return { type: kinds.label, id, component: answered(chance, row.component as Wire, how, row.label) };
    }
    return {
      type: kinds.row,
      id,
      components: (row.components as Wire[]).map((one) => answered(chance, one, how)),
    };
  });
  return { custom_id: modal.custom_id, components };
}

/** Ids as nobody was given them: cut, changed, of another version, very long, of another make. */
export function forgedIds(id: string): string[] {
  return [
    id.slice(0, Math.max(1, Math.floor(id.length / 2))),
    `${id.slice(0, 98)}x`,
    id.replace(/\d/, '9'),
    id.replace(/:/g, ''),
    `${id.split(':')[0]}:`,
    `${id.split(':')[0]}:__proto__`,
    `${id.split(':')[0]}:forget everything`,
    `${id.split(':')[0]}:@everyone <@1>`,
    'x'.repeat(100),
    '💄:\u0000',
  ];
}
