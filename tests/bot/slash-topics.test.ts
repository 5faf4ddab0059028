import { ApplicationCommandOptionType } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { type SlashCommand, slashCommands } from '../../bot/slash.ts';
import type { SlashValues } from '../../bot/topic.ts';
import { topics } from '../../bot/topics.ts';
import { commandProblems } from '../helpers/chat-stand-in/command-limits.ts';

type Option = SlashCommand['options'][number];

/** Something a member could fill in. */
const sample = (option: Option): string | number | boolean => {
  const [choice] = 'choices' in option ? (option.choices ?? []) : [];
  if (choice) return choice.value;
  if (option.type === ApplicationCommandOptionType.Boolean) return true;
  if ('min_value' in option) return option.min_value ?? 1;
  return option.type === ApplicationCommandOptionType.String ? 'beeswax' : 1;
};

const optionsOf = (command: SlashCommand | undefined): readonly Option[] => command?.options ?? [];

const filledIn = (options: readonly Option[]): SlashValues =>
  Object.fromEntries(options.map((option) => [option.name, sample(option)]));

describe('the slash commands of all topics', () => {
  const commands = slashCommands(topics);

  it("should be one for each topic, within the platform's limits", () => {
    expect(commands.map(({ name }) => name)).toEqual(topics.map(({ name }) => name));
    expect(commandProblems(commands)).toEqual([]);
  });

  it.each(
    topics.map((topic, at) => ({
      topic,
      name: topic.name,
      options: optionsOf(commands[at]),
    })),
  )('should make whole words of /$name with the required and with all options', ({ topic, options }) => {
    for (const given of [options.filter(({ required }) => required), options]) {
      const words = topic.slash.say(filledIn(given));
      expect(words.trim()).not.toBe('');
      expect(words).not.toMatch(/undefined|null|NaN|\[object/);
    }
    expect(
      Object.keys(topic.slash.complete ?? {}).filter(
        (name) => !options.some((option) => option.name === name),
      ),
    ).toEqual([]);
  });
});
