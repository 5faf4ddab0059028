import type { Reply } from '../answer.ts';
import type { SavedFile } from './files.ts';
import { textOf } from './text.ts';

/** `text` of a JSON line is set to this many columns, whatever terminal it was asked from. */
export const jsonTextWidth = 80;

/**
 * One reply as one line of JSON, without the line break:
 * `{topic, request, figures, warnings, text, files}` or `{topic, error: {code, text}}`. A figure that is no number
 * (a topic's fault, for its own tests to find) becomes null, because a reader of the line must not choke on it.
 */
export const jsonLine = (reply: Reply, files: readonly SavedFile[] = []): string => {
  if ('error' in reply) {
    const { code } = reply.error;
    const text = textOf(reply, { width: Number.POSITIVE_INFINITY });
    return JSON.stringify({ topic: reply.topic, error: { code, text } });
  }
  const { topic, request, answer } = reply;
  const line = {
    topic,
    request: request ?? null,
    figures: answer.figures,
    warnings: answer.warnings.map(({ code, text }) => ({ code, text })),
    text: textOf(reply, { width: jsonTextWidth, files }),
    files: files.map(({ name, path }) => ({ name, path })),
  };
  return JSON.stringify(line);
};
