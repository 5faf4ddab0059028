import type { Answer } from '../answer.ts';
import { localRules } from './warnings.ts';

const tries = [
  { label: 'A gram table', say: 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml' },
  { label: 'Will it melt?', say: 'will 20% beeswax, 30% shea butter, 50% olive oil survive 35 C' },
  { label: 'A new recipe', say: 'vegan stick that survives 38 C, no nuts, with shea and mango' },
] as const;

/** What a group is told once, when the bot comes to it: what it is for, and three things to try. */
export const welcome: Answer = {
  title: 'Hello, I am Pipkin',
  blocks: [
    {
      kind: 'text',
      text: 'I work out what to weigh for your balms and salves, how they take heat, labels, prices and records of what you pour. Mention me and ask in plain words, or type /help. Three things to try:',
    },
    { kind: 'list', items: tries.map(({ say }) => say) },
    {
      kind: 'text',
      text: 'Those who manage this server set whose rules apply: /settings. What you write to me directly stays in a book of your own.',
    },
  ],
  figures: {},
  warnings: [localRules],
  next: tries,
};
