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

const suits = (example: Example, tools: Tools): boolean =>
  example.demo === undefined || recipeNames(tools.book.state).exact(example.demo) !== undefined;

const examplesOf = (topic: Topic, tools: Tools): readonly string[] =>
  topic.examples.filter((example) => suits(example, tools)).map((example) => example.say);

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
    .filter((example) => !example.changes && suits(example, tools))
    .slice(0, 1)
    .map(({ say }) => ({ label: 'Try one', say })),
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
