import type { BookState } from '../core/book.ts';
import type { Settings } from '../core/settings.ts';
import type { Answer, Trouble } from './answer.ts';
import { markLasting } from './lasting.ts';
import { seenIds } from './seen.ts';
import type { Tools, Topic } from './topic.ts';

/** Answers kept at once, of all groups together: some megabytes. The oldest make room. */
const mostAnswers = 500;
/** Requests remembered to be known again. */
const mostRequests = 2000;

interface Kept {
  readonly recipes: BookState['recipes'];
  readonly settings: Settings;
  readonly answer: Answer;
}

/** Answers `request` by `topic`, or gives the answer that the same request had before. */
type Answers = (
  topic: Topic,
  request: Readonly<Record<string, unknown>>,
  tools: Tools,
) => Promise<Answer | Trouble>;

/**
 * The same request of the same group has the same answer until its recipes or settings change; both are new objects after
 * each change. An answer is kept from the second time on: most requests come once, and keeping what nobody asks for again
 * costs the collector more than working it out did. Only for requests made by `plain` of a topic's command, whose answers depend on nothing else.
 */
export const keptAnswers = (): Answers => {
  const kept = new Map<string, Kept>();
  const cameBefore = seenIds(mostRequests);
  return async (topic, request, tools) => {
    const { settings, book } = tools;
    const { recipes } = book.state;
    const key = JSON.stringify([book.group, topic.name, request]);
    const before = kept.get(key);
    if (before?.recipes === recipes && before.settings === settings) return before.answer;
    const answer = await topic.run(request, tools);
    if ('code' in answer) return answer;
    if (!cameBefore(key)) return answer;
    markLasting(answer);
    kept.delete(key);
    kept.set(key, { recipes, settings, answer });
    const oldest = kept.keys().next();
    if (kept.size > mostAnswers && !oldest.done) kept.delete(oldest.value);
    return answer;
  };
};
