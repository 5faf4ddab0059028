import type { BookState } from '../core/book.ts';
import type { Chosen } from './chosen.ts';
import type { Command } from './heard.ts';
import { claim } from './reading.ts';
import { mostCertain } from './surest.ts';
import type { Topic } from './topic.ts';

/** What a command's options say by themselves; undefined when there is none, or its words have to be read. */
export const plainlyAsked = (
  command: Command | undefined,
  topics: readonly Topic[],
  state: BookState,
): Chosen | undefined => {
  if (!command) return undefined;
  const topic = topics.find(({ name }) => name === command.topic);
  const request = topic?.slash.plain?.(command.options, state);
  return topic && request ? { topic, claim: claim(request, mostCertain) } : undefined;
};
