import type { Batch, Lot } from '../../core/bench/state.ts';
import { benchOf } from '../../core/book.ts';
import type { Answer, Block, Trouble } from '../answer.ts';
import { recipeNames } from '../readers/recipe-names.ts';
import type { Example, Tools, Topic } from '../topic.ts';
import type { HelpWish } from '../topics/help.ts';
import { localRules } from './warnings.ts';

/** Filled in once by the list of topics, which itself contains help: the one place where the circle closes. */
let listed: readonly Topic[] = [];
export const helpAbout = (topics: readonly Topic[]): void => {
  listed = topics;
};

/** True for the name of a topic that can be asked. */
export const isTopicName = (name: string): boolean => listed.some((topic) => topic.name === name);

const exampleLot = 'K12';
const exampleBatch = '26-BAFO';

/** The group's own latest codes in place of those of the example; undefined where it has none. */
const ownCodes = (say: string, tools: Tools): string | undefined => {
  const { lots, batches } = benchOf(tools.book.state);
  const lot = lots.last<Lot | undefined>(undefined)?.lot;
  const batch = batches.last<Batch | undefined>(undefined)?.lot;
  if (lot === undefined || batch === undefined) return undefined;
  return say.replace(exampleLot, lot).replace(exampleBatch, batch);
};

/** An example as it would work in this group's book; undefined where it would not. */
const sayOf = (example: Example, tools: Tools): string | undefined => {
  const { demo, say } = example;
  if (demo !== undefined && recipeNames(tools.book.state).exact(demo) === undefined) return undefined;
  return example.bench ? ownCodes(say, tools) : say;
};

const examplesOf = (topic: Topic, tools: Tools): readonly string[] =>
  topic.examples.flatMap((example) => sayOf(example, tools) ?? []);

const overview = (tools: Tools): Answer => ({
  title: 'What you can ask',
  blocks: [
    {
      kind: 'list',
      items: listed.map((each) => `${each.name}: ${examplesOf(each, tools)[0] ?? each.summary}`),
    },
    {
      kind: 'text',
      text: 'Ask "help scale" for more of one. Plain words do: spoons, ounces, "two dozen", "and for 40 tins?".',
    },
  ],
  figures: {
    topics: listed.map((each) => ({
      name: each.name,
      summary: each.summary,
      examples: examplesOf(each, tools),
    })),
  },
  warnings: [localRules],
});

const one = (topic: Topic, tools: Tools): Answer => ({
  title: `${topic.name}: ${topic.summary}`,
  blocks: [
    { kind: 'text', text: 'For example:' } satisfies Block,
    { kind: 'list', items: examplesOf(topic, tools) },
  ],
  figures: {
    topics: [
      {
        name: topic.name,
        summary: topic.summary,
        examples: examplesOf(topic, tools),
      },
    ],
  },
  warnings: [],
  next: topic.examples
    .filter(({ changes }) => !changes)
    .flatMap((example) => sayOf(example, tools) ?? [])
    .slice(0, 1)
    .map((say) => ({ label: 'Try one', say })),
});

/** Answers with examples that work when pasted, those of a missing recipe left out. */
export const answerHelp = (wish: HelpWish, tools: Tools): Answer | Trouble => {
  if (wish.topic === undefined) return overview(tools);
  const found = listed.find((each) => each.name === wish.topic);
  if (found) return one(found, tools);
  return {
    code: 'not-found',
    text: `There is no help on "${wish.topic}". Topics: ${listed.map((each) => each.name).join(', ')}.`,
  };
};
