import { type APIApplicationCommandBasicOption, ApplicationCommandOptionType } from 'discord-api-types/v10';
import type { Dice } from '../dice.ts';

/** Texts nobody gave an example of: what people type by mistake, and what programs stumble over. */
const odd = [
  'x',
  'frobnicate',
  '@everyone',
  '**bold** `code`',
  '0',
  '-1',
  '1e309',
  'constructor',
  'шалфей 🌿',
  '20 g beeswax, 80 g olive oil',
  'yes',
] as const;

const fitted = (text: string, least: number, most: number): string => text.slice(0, most).padEnd(least, 'x');

/** What the option's own description gives as examples: "For example 5 oz, 2 tbsp, 150 F". */
const examplesIn = (description: string): readonly string[] => {
  const after = /(?:for example|or) (.+)$/i.exec(description)?.[1] ?? '';
  const parts = after.split(/, | or /).map((part) => part.trim());
  return [...new Set([after, ...parts])].filter((part) => part !== '');
};

const textOf = (
  option: Extract<APIApplicationCommandBasicOption, { type: ApplicationCommandOptionType.String }>,
  offered: readonly string[],
  dice: Dice,
): string => {
  const { description } = option;
  const most = ('max_length' in option ? option.max_length : undefined) ?? 6000;
  const least = ('min_length' in option ? option.min_length : undefined) ?? 0;
  if (offered.length > 0 && dice.chance(0.75)) return dice.pick(offered);
  const examples = examplesIn(description);
  if (examples.length > 0 && dice.chance(0.7)) return fitted(dice.pick(examples), least, most);
  if (dice.chance(0.1)) return 'm'.repeat(Math.min(most, 6000));
  return fitted(dice.pick(odd), Math.max(1, least), most);
};

const numberOf = (
  option: { readonly min_value?: number; readonly max_value?: number },
  whole: boolean,
  dice: Dice,
): number => {
  const { min_value: least = -1000, max_value: most = 100_000 } = option;
  const middle = (least + most) / 2;
  const value = dice.pick([
    least,
    most,
    middle,
    Math.min(most, Math.max(least, 12)),
    Math.min(most, least + 1),
  ]);
  return whole ? Math.floor(value) : value;
};

/** Every choice of an option that has choices, both of yes and no; undefined where there is no such list. */
export const listed = (
  option: APIApplicationCommandBasicOption,
): readonly (string | number | boolean)[] | undefined => {
  if (option.type === ApplicationCommandOptionType.Boolean) return [true, false];
  const choices = 'choices' in option ? (option.choices ?? []) : [];
  return choices.length > 0 ? choices.map(({ value }) => value) : undefined;
};

/** A value the platform would let a member send for this option; `offered` are suggestions that were shown for it. */
export const valueFor = (
  option: APIApplicationCommandBasicOption,
  offered: readonly string[],
  dice: Dice,
): string | number | boolean => {
  const choices = listed(option);
  if (choices) return dice.pick(choices);
  switch (option.type) {
    case ApplicationCommandOptionType.String:
      return textOf(option, offered, dice);
    case ApplicationCommandOptionType.Integer:
      return numberOf(option as { min_value?: number }, true, dice);
    case ApplicationCommandOptionType.Number:
      return numberOf(option as { min_value?: number }, false, dice);
    default:
      throw new Error(`an option of type ${option.type} is not known to the crawler`);
  }
};
