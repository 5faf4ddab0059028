// Components in messages and modals, by the platform's published "Component Reference" (developers/components/reference,
// read in the copy of discord/discord-api-docs). What is from memory says so.

import { type Check, isAbsent, type Wire } from './check.ts';

export const kinds = {
  row: 1,
  button: 2,
  select: 3,
  input: 4,
  section: 9,
  text: 10,
  thumbnail: 11,
  gallery: 12,
  file: 13,
  separator: 14,
  container: 17,
  label: 18,
} as const;

const isSelect = (kind: unknown): boolean => [3, 5, 6, 7, 8].includes(Number(kind));

/** Everything in a tree of components, outer before inner. */
export const everyComponent = (components: readonly Wire[]): Wire[] =>
  components.flatMap((one) => [
    one,
    ...everyComponent((one.components as Wire[] | undefined) ?? []),
    ...everyComponent([one.accessory, one.component].filter((inner) => !isAbsent(inner)) as Wire[]),
  ]);

function emoji(check: Check, at: string, value: unknown): void {
  if (isAbsent(value)) return;
  const { id, name } = check.thing(at, value);
  if (isAbsent(id) && (typeof name !== 'string' || name === '')) check.fail(at, 'is no emoji');
}

function button(check: Check, at: string, one: Wire): void {
  check.whole(`${at}.style`, one.style, 1, 6);
  check.optionalText(`${at}.label`, one.label, 1, 80);
  emoji(check, `${at}.emoji`, one.emoji);
  if (one.style === 5) {
    check.text(`${at}.url`, one.url, 1, 512);
    if (!isAbsent(one.custom_id)) check.fail(at, 'a link button with a custom_id');
    return;
  }
  check.text(`${at}.custom_id`, one.custom_id, 1, 100);
  if (!isAbsent(one.url)) check.fail(at, 'a button with a custom_id and a url');
  // From memory: a button with neither a label nor an emoji is refused.
  if (isAbsent(one.label) && isAbsent(one.emoji)) check.fail(at, 'a button without label and emoji');
}

function select(check: Check, at: string, one: Wire): void {
  check.text(`${at}.custom_id`, one.custom_id, 1, 100);
  check.optionalText(`${at}.placeholder`, one.placeholder, 0, 150);
  check.optionalWhole(`${at}.min_values`, one.min_values, 0, 25);
  check.optionalWhole(`${at}.max_values`, one.max_values, 1, 25);
  if (one.type !== kinds.select) return;
  const options = check.things(`${at}.options`, one.options, 1, 25);
  for (const [index, option] of options.entries()) {
    const here = `${at}.options[${index}]`;
    check.text(`${here}.label`, option.label, 1, 100);
    check.text(`${here}.value`, option.value, 1, 100);
    check.optionalText(`${here}.description`, option.description, 1, 100);
    emoji(check, `${here}.emoji`, option.emoji);
  }
  // From memory: two options of one value are refused, and so are more defaults or values than options.
  check.unique(
    `${at}.options`,
    options.map(({ value }) => value),
  );
  const most = Number(one.max_values ?? 1);
  if (most > options.length) check.fail(at, `max_values ${most} of ${options.length} options`);
  if (Number(one.min_values ?? 1) > most) check.fail(at, 'min_values above max_values');
  if (options.filter((option) => option.default === true).length > most) check.fail(at, 'too many defaults');
}

function row(check: Check, at: string, one: Wire): void {
  const parts = check.things(`${at}.components`, one.components, 1, 5);
  const selects = parts.filter(({ type }) => isSelect(type)).length;
  if (selects > 0 && parts.length > 1) check.fail(at, 'a menu beside something else');
  for (const [index, part] of parts.entries()) {
    const here = `${at}.components[${index}]`;
    if (part.type === kinds.button) button(check, here, part);
    else if (isSelect(part.type)) select(check, here, part);
    else check.fail(here, `type ${String(part.type)} in a row of a message`);
  }
}

function media(check: Check, at: string, value: unknown): void {
  check.text(`${at}.url`, check.thing(at, value).url, 1, 2048);
}

function section(check: Check, at: string, one: Wire): void {
  for (const [index, part] of check.things(`${at}.components`, one.components, 1, 3).entries()) {
    if (part.type !== kinds.text) check.fail(`${at}.components[${index}]`, 'no text in a section');
    check.text(`${at}.components[${index}].content`, part.content, 1, 4000);
  }
  const accessory = check.thing(`${at}.accessory`, one.accessory);
  if (accessory.type === kinds.button) {
    button(check, `${at}.accessory`, accessory);
    return;
  }
  if (accessory.type !== kinds.thumbnail) {
    check.fail(`${at}.accessory`, 'neither button nor picture');
    return;
  }
  media(check, `${at}.accessory.media`, accessory.media);
  check.optionalText(`${at}.accessory.description`, accessory.description, 0, 1024);
}

function gallery(check: Check, at: string, one: Wire): void {
  for (const [index, item] of check.things(`${at}.items`, one.items, 1, 10).entries()) {
    media(check, `${at}.items[${index}].media`, item.media);
    check.optionalText(`${at}.items[${index}].description`, item.description, 0, 1024);
  }
}

function container(check: Check, at: string, one: Wire): void {
  check.optionalWhole(`${at}.accent_color`, one.accent_color, 0, 0xffffff);
  for (const [index, part] of check.things(`${at}.components`, one.components, 1, 40).entries()) {
    if (part.type === kinds.container) check.fail(`${at}.components[${index}]`, 'a container in a container');
    else layoutPart(check, `${at}.components[${index}]`, part);
  }
}

const layoutParts: { readonly [kind: number]: (check: Check, at: string, one: Wire) => void } = {
  [kinds.row]: row,
  [kinds.section]: section,
  [kinds.text]: (check, at, one) => check.text(`${at}.content`, one.content, 1, 4000),
  [kinds.gallery]: gallery,
  [kinds.file]: (check, at, one) => media(check, `${at}.file`, one.file),
  [kinds.separator]: (check, at, one) => check.optionalWhole(`${at}.spacing`, one.spacing, 1, 2),
  [kinds.container]: container,
};

function layoutPart(check: Check, at: string, one: Wire): void {
  const checkPart = layoutParts[Number(one.type)];
  if (checkPart) checkPart(check, at, one);
  else check.fail(at, `type ${String(one.type)} in a message`);
}

function uniqueIds(check: Check, at: string, all: readonly Wire[]): void {
  check.unique(
    `${at} custom_id`,
    all.map((one) => one.custom_id).filter((id) => !isAbsent(id)),
  );
  check.unique(
    `${at} id`,
    all.map((one) => one.id).filter((id) => !isAbsent(id) && id !== 0),
  );
}

/** The components of a message: five rows, or with the newer flag forty parts and 4,000 characters of text. */
export function messageComponents(check: Check, value: unknown, newer: boolean): void {
  const parts = check.things('components', value, 0, newer ? 40 : 5);
  for (const [index, part] of parts.entries()) {
    const at = `components[${index}]`;
    if (newer) layoutPart(check, at, part);
    else if (part.type === kinds.row) row(check, at, part);
    else check.fail(at, `type ${String(part.type)} outside a row`);
  }
  const all = everyComponent(parts);
  uniqueIds(check, 'components', all);
  if (!newer) return;
  if (all.length > 40) check.fail('components', `${all.length} parts in all, allowed are 40`);
  const text = all.reduce((sum, one) => sum + (typeof one.content === 'string' ? one.content.length : 0), 0);
  if (text > 4000) check.fail('components', `${text} characters of text in all, allowed are 4000`);
}

function input(check: Check, at: string, one: Wire, labelled: boolean): void {
  check.text(`${at}.custom_id`, one.custom_id, 1, 100);
  check.whole(`${at}.style`, one.style, 1, 2);
  if (!labelled) check.text(`${at}.label`, one.label, 1, 45);
  check.optionalText(`${at}.placeholder`, one.placeholder, 0, 100);
  check.optionalText(`${at}.value`, one.value, 0, 4000);
  check.optionalWhole(`${at}.min_length`, one.min_length, 0, 4000);
  check.optionalWhole(`${at}.max_length`, one.max_length, 1, 4000);
  const most = Number(one.max_length ?? 4000);
  if (Number(one.min_length ?? 0) > most) check.fail(at, 'min_length above max_length');
  if (typeof one.value === 'string' && one.value.length > most)
    check.fail(at, 'filled in with more than fits');
}

function modalPart(check: Check, at: string, one: Wire): void {
  if (one.type === kinds.text) {
    check.text(`${at}.content`, one.content, 1, 4000);
    return;
  }
  if (one.type === kinds.row) {
    const [first] = check.things(`${at}.components`, one.components, 1, 1);
    if (first?.type !== kinds.input) {
      check.fail(at, 'a row of a modal without a text input');
      return;
    }
    input(check, `${at}.components[0]`, first, false);
    return;
  }
  if (one.type !== kinds.label) {
    check.fail(at, `type ${String(one.type)} in a modal`);
    return;
  }
  check.text(`${at}.label`, one.label, 1, 45);
  check.optionalText(`${at}.description`, one.description, 0, 100);
  const inner = check.thing(`${at}.component`, one.component);
  if (inner.type === kinds.input) input(check, `${at}.component`, inner, true);
  else if (isSelect(inner.type)) select(check, `${at}.component`, inner);
  else check.text(`${at}.component.custom_id`, inner.custom_id, 1, 100);
}

/** A modal: a title of 45, one to five parts. */
export function modal(check: Check, value: unknown): void {
  const data = check.thing('data', value);
  check.text('data.custom_id', data.custom_id, 1, 100);
  check.text('data.title', data.title, 1, 45);
  const parts = check.things('data.components', data.components, 1, 5);
  for (const [index, part] of parts.entries()) modalPart(check, `data.components[${index}]`, part);
  uniqueIds(check, 'data.components', everyComponent(parts));
}
