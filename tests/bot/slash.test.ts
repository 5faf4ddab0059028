import { ApplicationCommandOptionType } from 'discord-api-types/v10';
import { describe, expect, it } from 'vitest';
import { z } from 'zod';
import { slashCommand, slashCommands } from '../../bot/slash.ts';
import type { SlashSpec } from '../../bot/topic.ts';
import { commandProblems } from '../helpers/chat-stand-in/command-limits.ts';
import { echoTopic, scaleSample } from '../helpers/chat-stand-in/samples.ts';

const commandWith = (options: SlashSpec['options'], complete?: SlashSpec['complete']) =>
  slashCommand({
    name: 'sample',
    summary: 'A sample',
    slash: { options, say: () => '', ...(complete ? { complete } : {}) },
  });

describe('slash commands from topics', () => {
  it('should put required options first, in the order written', () => {
    const { options } = slashCommand(scaleSample);
    expect(options.map(({ name, required }) => [name, required])).toEqual([
      ['recipe', true],
      ['count', true],
      ['container', false],
      ['loss', false],
      ['exact', false],
    ]);
  });

  it('should carry types, bounds, choices and completion over', () => {
    const { options } = slashCommand(scaleSample);
    expect(options).toMatchObject([
      {
        type: ApplicationCommandOptionType.String,
        autocomplete: true,
        min_length: 1,
        max_length: 80,
      },
      {
        type: ApplicationCommandOptionType.Integer,
        min_value: 1,
        max_value: 5000,
      },
      {
        type: ApplicationCommandOptionType.String,
        choices: [{ value: 'tin' }, { value: 'jar' }, { value: 'stick' }],
      },
      {
        type: ApplicationCommandOptionType.Number,
        min_value: 0,
        max_value: 50,
      },
      { type: ApplicationCommandOptionType.Boolean },
    ]);
  });

  it('should make choices of listed numbers and no bound of an unbounded whole number', () => {
    const { options } = commandWith(
      z.object({
        step: z.literal([0.1, 0.01]).describe('What the scale reads'),
        count: z.int().describe('How many'),
      }),
    );
    expect(options[0]).toMatchObject({
      choices: [
        { name: '0.1', value: 0.1 },
        { name: '0.01', value: 0.01 },
      ],
    });
    expect(options[1]).not.toHaveProperty('min_value');
    expect(options[1]).not.toHaveProperty('max_value');
  });

  it.each([
    ['an exclusive bound', z.object({ grams: z.number().positive().describe('Grams') })],
    ['a field without description', z.object({ grams: z.number() })],
    ['a list', z.object({ grams: z.array(z.number()).describe('Grams') })],
  ])('should refuse %s', (_, options) => {
    expect(() => commandWith(options)).toThrow('cannot be a slash option');
  });

  it("should keep the samples within the platform's limits", () => {
    expect(commandProblems(slashCommands([scaleSample, echoTopic]))).toEqual([]);
  });

  it.each([
    ['name', { ...scaleSample, name: 'Scale it' }],
    ['description', { ...scaleSample, summary: 'x'.repeat(101) }],
    [
      '25',
      {
        ...scaleSample,
        slash: { ...scaleSample.slash, options: manyOptions(26) },
      },
    ],
    [
      '8000',
      {
        ...scaleSample,
        slash: { ...scaleSample.slash, options: manyOptions(25, 25) },
      },
    ],
  ])('should have a limit check that notices a bad %s', (what, topic) => {
    expect(commandProblems(slashCommands([topic])).join()).toContain(what);
  });
});

function manyOptions(count: number, choices = 0) {
  const field = (name: string) =>
    choices > 0
      ? z.enum(Array.from({ length: choices }, (_, at) => `${name}-${at}`.padEnd(20, 'x')))
      : z.string();
  return z.object(
    Object.fromEntries(
      Array.from({ length: count }, (_, at) => [`option${at}`, field(`option${at}`).describe('One of many')]),
    ),
  );
}
