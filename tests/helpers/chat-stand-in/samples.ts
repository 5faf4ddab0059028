import { z } from 'zod';
import type { Answer, Reply } from '../../../bot/answer.ts';
import type { Pipkin } from '../../../bot/handle.ts';
import type { Heard } from '../../../bot/heard.ts';
import type { LogFields } from '../../../bot/log.ts';
import type { SlashSpec, Topic } from '../../../bot/topic.ts';

// Topics and answers small enough to see through, for tests of the transport alone.

const sampleTopic = (name: string, summary: string, slash: SlashSpec): Topic => ({
  name,
  summary,
  slash,
  request: z.object({}),
  examples: [{ say: name, means: {} }],
  read: () => undefined,
  wouldWrite: () => false,
  run: async () => ({
    code: 'not-understood',
    text: 'A sample topic answers nothing.',
  }),
});

export const scaleSample = sampleTopic('scale', 'Work out the grams of a recipe for a number of tins', {
  options: z.object({
    container: z.enum(['tin', 'jar', 'stick']).describe('What is filled').optional(),
    recipe: z.string().min(1).max(80).describe('A saved recipe'),
    count: z.int().min(1).max(5000).describe('How many'),
    loss: z.number().min(0).max(50).describe('Percent left in jug and spoon').optional(),
    exact: z.boolean().describe('Weigh to the hundredth of a gram').optional(),
  }),
  complete: { recipe: 'recipe' },
  say: ({ recipe, count, container = 'tin' }) => `scale ${recipe} to ${count} ${container}s`,
});

/** Says back what was asked: the least a command can do, to measure others against. */
export const echoTopic = sampleTopic('echo', 'Say it back', {
  options: z.object({
    text: z.string().min(1).max(200).describe('What to say back'),
  }),
  say: ({ text }) => `echo ${text}`,
});

export const answered = (answer: Partial<Answer> & { readonly title: string }): Reply => ({
  topic: 'scale',
  request: {},
  answer: { blocks: [], figures: {}, warnings: [], ...answer },
});

export const refused = (text: string): Reply => ({
  topic: null,
  error: { code: 'not-understood', text },
});

export const echoed = ({ text }: Heard): Reply => answered({ title: text });

/** A Pipkin that answers from `script` and remembers what it heard. */
export interface SamplePipkin extends Pipkin {
  readonly heard: Heard[];
  readonly completed: {
    readonly group: string;
    readonly kind: string;
    readonly typed: string;
  }[];
}

export const samplePipkin = (
  script: (heard: Heard) => Reply | Promise<Reply> = echoed,
  names: readonly string[] = [],
): SamplePipkin => {
  const heard: Heard[] = [];
  const completed: SamplePipkin['completed'] = [];
  return {
    heard,
    completed,
    async hear(one) {
      heard.push(one);
      return script(one);
    },
    async complete(group, kind, typed) {
      completed.push({ group, kind, typed });
      return names.filter((name) => name.toLowerCase().startsWith(typed.toLowerCase()));
    },
  };
};

/** `pipkin`, with everything that begins with "echo" said back instead. */
export const withEcho = (pipkin: Pipkin): Pipkin => ({
  hear: async (heard) => (heard.text.startsWith('echo ') ? echoed(heard) : pipkin.hear(heard)),
  complete: (group, kind, typed) => pipkin.complete(group, kind, typed),
});

export interface LogLine {
  readonly event: string;
  readonly fields: LogFields;
}

/** A log that keeps its lines. */
export const keptLog = () => {
  const lines: LogLine[] = [];
  const faults: LogLine[] = [];
  return {
    lines,
    faults,
    info: (event: string, fields: LogFields = {}): void => void lines.push({ event, fields }),
    error: (event: string, fields: LogFields = {}): void => void faults.push({ event, fields }),
  };
};
