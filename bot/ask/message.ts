import { z } from 'zod';
import { fail, ok, type Result } from '../../core/result.ts';
import type { Trouble } from '../answer.ts';
import type { Line } from '../console/lines.ts';
import { mostBytes } from '../console/local.ts';
import { instant, placeName } from './options.ts';

export interface AskedLine {
  readonly text: string;
  readonly group?: string | undefined;
  readonly member?: string | undefined;
  readonly now?: number | undefined;
}

const example = 'what is beeswax';

const trouble = (code: Trouble['code'], text: string): Trouble => ({
  code,
  text,
});

const nothingSaid = trouble('not-understood', `There is nothing in that message. Try: ${example}`);
const tooLong = trouble(
  'too-long',
  `That message is longer than ${mostBytes / 1024} kB, so I did not read it. Try a short one: ${example}`,
);

const askedObject = z.strictObject({
  text: z.string(),
  group: placeName.optional(),
  member: placeName.optional(),
  now: instant.optional(),
});

const parsed = (text: string): unknown => {
  try {
    return JSON.parse(text);
  } catch {
    return undefined;
  }
};

const whatIsWrong = ({ code, path, message }: z.core.$ZodIssue): string => {
  if (code === 'unrecognized_keys') return 'I know only "text", "group", "member" and "now"';
  return `"${path.join('.')}" ${code === 'invalid_type' ? 'must be text in quotation marks' : message}`;
};

const fromObject = (text: string): Result<AskedLine, Trouble> => {
  const json = parsed(text);
  const read = askedObject.safeParse(json);
  if (read.success) return ok(read.data);
  const why =
    json === undefined ? 'it is not whole' : read.error.issues.slice(0, 3).map(whatIsWrong).join('; ');
  return fail(
    trouble('not-understood', `That line looks like JSON but ${why}. A line may be {"text": "${example}"}`),
  );
};

const fromText = (text: string): Result<AskedLine, Trouble> => {
  const trimmed = text.trim();
  if (trimmed.startsWith('{')) return fromObject(trimmed);
  const json = /^".*"$/.test(trimmed) ? parsed(trimmed) : undefined;
  return ok({ text: typeof json === 'string' ? json : text });
};

/**
 * One line of `--jsonl` as a message: plain text, a JSON string, or an object with `text` and whose message it is.
 * What looks like an object and is none is refused rather than read as words; so is a line with nothing in it.
 */
export const messageOf = (line: Line): Result<AskedLine, Trouble> => {
  if (line.kind === 'too-long') return fail(tooLong);
  const asked = fromText(line.text);
  return asked.ok && asked.value.text.trim() === '' ? fail(nothingSaid) : asked;
};
