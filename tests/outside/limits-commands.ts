// Application commands by the platform's published "Application Commands" (developers/interactions/application-commands).
// The sum of 8,000 characters to a command is from the same page, as are the counts of commands.

import { type Check, isAbsent, isThing, type Wire } from './check.ts';

const slashName = /^[-_'\p{L}\p{N}\p{sc=Deva}\p{sc=Thai}]{1,32}$/u;

function name(check: Check, at: string, value: unknown): void {
  if (typeof value !== 'string' || !slashName.test(value))
    check.fail(at, `no name of a command: ${String(value)}`);
  else if (value !== value.toLowerCase()) check.fail(at, `not in small letters: ${value}`);
}

function translations(
  check: Check,
  at: string,
  value: unknown,
  each: (at: string, text: unknown) => void,
): void {
  if (isAbsent(value)) return;
  for (const [locale, text] of Object.entries(check.thing(at, value))) {
    if (!/^[a-z]{2}(-[A-Z]{2}|-419)?$/.test(locale)) check.fail(at, `no locale: ${locale}`);
    each(`${at}.${locale}`, text);
  }
}

function named(check: Check, at: string, one: Wire): void {
  name(check, `${at}.name`, one.name);
  check.text(`${at}.description`, one.description, 1, 100);
  translations(check, `${at}.name_localizations`, one.name_localizations, (here, text) =>
    name(check, here, text),
  );
  translations(check, `${at}.description_localizations`, one.description_localizations, (here, text) =>
    check.text(here, text, 1, 100),
  );
}

function choiceValue(check: Check, at: string, type: unknown, value: unknown): void {
  if (type === 3) {
    check.text(at, value, 0, 100);
    return;
  }
  if (typeof value !== 'number' || Math.abs(value) > 2 ** 53) {
    check.fail(at, 'is no number the platform takes');
    return;
  }
  if (type === 4 && !Number.isSafeInteger(value)) check.fail(at, 'is no whole number');
}

/** Choices of an option, as registered and as suggested: 25, names of 100, values of the option's type. */
export function choices(check: Check, at: string, value: unknown, type: unknown): void {
  const all = check.things(at, value, 0, 25);
  for (const [index, choice] of all.entries()) {
    check.text(`${at}[${index}].name`, choice.name, 1, 100);
    choiceValue(check, `${at}[${index}].value`, type, choice.value);
  }
  // From memory: two choices of one name are refused.
  check.unique(
    `${at} name`,
    all.map((choice) => choice.name),
  );
}

function range(
  check: Check,
  at: string,
  one: Wire,
  least: string,
  most: string,
  from: number,
  to: number,
): void {
  check.optionalWhole(`${at}.${least}`, one[least], from === 1 ? 0 : from, to);
  check.optionalWhole(`${at}.${most}`, one[most], from, to);
  if (!isAbsent(one[least]) && !isAbsent(one[most]) && Number(one[least]) > Number(one[most])) {
    check.fail(at, `${least} above ${most}`);
  }
}

function value(check: Check, at: string, one: Wire): void {
  choices(check, `${at}.choices`, one.choices, one.type);
  if (one.autocomplete === true && Array.isArray(one.choices) && one.choices.length > 0) {
    check.fail(at, 'choices beside autocomplete');
  }
  if (one.autocomplete === true && ![3, 4, 10].includes(Number(one.type)))
    check.fail(at, 'no type to complete');
  if (one.type === 3) range(check, at, one, 'min_length', 'max_length', 1, 6000);
  if (one.type === 4) range(check, at, one, 'min_value', 'max_value', -(2 ** 53), 2 ** 53);
  if (!isAbsent(one.options)) check.fail(at, 'options under a value');
}

function options(check: Check, at: string, list: unknown, depth: number): void {
  const all = check.things(at, list, 0, 25);
  let optional = false;
  for (const [index, one] of all.entries()) {
    const here = `${at}[${index}]`;
    named(check, here, one);
    check.whole(`${here}.type`, one.type, 1, 11);
    if (Number(one.type) > 2) value(check, here, one);
    else nested(check, here, one, depth);
    if (one.required === true && optional) check.fail(here, 'required after optional');
    optional ||= one.required !== true;
  }
  check.unique(
    `${at} name`,
    all.map((one) => one.name),
  );
  if (all.some(({ type }) => Number(type) < 3) && all.some(({ type }) => Number(type) > 2)) {
    check.fail(at, 'subcommands beside values');
  }
}

function nested(check: Check, at: string, one: Wire, depth: number): void {
  if (depth + (one.type === 2 ? 1 : 0) > 1) check.fail(at, 'nested too deep');
  options(check, `${at}.options`, one.options, depth + 1);
}

const longest = (text: unknown, others: unknown): number =>
  Math.max(
    ...[text, ...(isThing(others) ? Object.values(others) : [])].map((one) =>
      typeof one === 'string' ? one.length : 0,
    ),
  );

/** Characters that count against 8,000: names, descriptions and values of choices, each by its longest translation. */
export const commandLength = (one: Wire): number =>
  longest(one.name, one.name_localizations) +
  longest(one.description, one.description_localizations) +
  (typeof one.value === 'string' ? one.value.length : 0) +
  [one.options, one.choices]
    .flatMap((list) => (Array.isArray(list) ? (list as Wire[]) : []))
    .reduce((sum, inner) => sum + commandLength(inner), 0);

function command(check: Check, at: string, one: Wire): void {
  check.optionalWhole(`${at}.type`, one.type, 1, 3);
  if ((one.type ?? 1) === 1) {
    named(check, at, one);
    options(check, `${at}.options`, one.options, 0);
  } else {
    check.text(`${at}.name`, one.name, 1, 32);
    if (!isAbsent(one.description) && one.description !== '')
      check.fail(at, 'a description in a context menu');
    if (Array.isArray(one.options) && one.options.length > 0) check.fail(at, 'options in a context menu');
  }
  const length = commandLength(one);
  if (length > 8000) check.fail(at, `${length} characters in all, allowed are 8000`);
  for (const [index, context] of check.list(`${at}.contexts`, one.contexts, 0, 3).entries()) {
    check.whole(`${at}.contexts[${index}]`, context, 0, 2);
  }
  for (const [index, kind] of check.list(`${at}.integration_types`, one.integration_types, 0, 2).entries()) {
    check.whole(`${at}.integration_types[${index}]`, kind, 0, 1);
  }
}

/** All commands of one scope. */
export function commands(check: Check, list: unknown): void {
  const all = check.things('commands', list, 0, 130);
  for (const [index, one] of all.entries()) command(check, `commands[${index}] ${String(one.name)}`, one);
  check.unique(
    'commands',
    all.map((one) => `${String(one.type ?? 1)} ${String(one.name)}`),
  );
  for (const [type, most] of [
    [1, 100],
    [2, 15],
    [3, 15],
  ] as const) {
    const count = all.filter((one) => (one.type ?? 1) === type).length;
    if (count > most) check.fail('commands', `${count} of type ${type}, allowed are ${most}`);
  }
}
