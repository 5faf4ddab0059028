import { parseArgs } from 'node:util';
import { z } from 'zod';
import { fail, ok, type Result } from '../../core/result.ts';
import { type Region, regions } from '../../core/settings.ts';
import { localGroup, localMember } from '../console/local.ts';

export interface AskOptions {
  readonly mode: 'text' | 'json' | 'jsonl' | 'usage';
  readonly words: string;
  readonly group: string;
  readonly member: string;
  readonly store?: string;
  readonly region?: Region;
  /** A fixed clock, epoch milliseconds. */
  readonly now?: number;
}

export const usage = `Ask Pipkin one thing, or many.

  npm run --silent ask -- "scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml"
  npm run --silent ask -- --json "what is candelilla wax"      one line of JSON
  npm run --silent ask -- --jsonl < messages                   one line of JSON for each line, in order

  --store PATH_OR_URL         where the books are kept (default: STORE_URL, or data/book)
  --group NAME                whose book (default: ${localGroup})
  --member NAME               who asks (default: ${localMember})
  --region ${regions.join('|')}    rules and kitchen measures to go by
  --now INSTANT               a fixed clock, as in 2026-05-01T09:00:00Z
  --help                      this text

A message that begins with a dash goes after a further --.
A line of --jsonl is plain text, a JSON string, or {"text": "...", "group": "...", "member": "...", "now": "..."}.
`;

/** A name for a group or member, as given on this machine. */
export const placeName = z
  .string()
  .regex(/^[^\p{Control}\p{Surrogate}]*$/u, 'must not have control characters in it')
  .trim()
  .min(1, 'must not be empty')
  .max(100, 'must be at most 100 characters');

/** An ISO 8601 instant with its offset, as epoch milliseconds. */
export const instant = z.iso
  .datetime({
    offset: true,
    error: 'must be an instant as in 2026-05-01T09:00:00Z',
  })
  .transform((text) => Date.parse(text));

const schema = z
  .object({
    json: z.boolean().optional(),
    jsonl: z.boolean().optional(),
    help: z.boolean().optional(),
    store: z.string().trim().min(1, 'must not be empty').optional(),
    group: placeName.default(localGroup),
    member: placeName.default(localMember),
    region: z
      .string()
      .toLowerCase()
      .pipe(z.enum(regions, `must be one of ${regions.join(', ')}`))
      .optional(),
    now: instant.optional(),
  })
  .refine(({ json, jsonl }) => !(json && jsonl), {
    path: ['json'],
    error: 'and --jsonl do not go together',
  });

const split = (argv: readonly string[]) =>
  parseArgs({
    args: [...argv],
    allowPositionals: true,
    options: {
      json: { type: 'boolean' },
      jsonl: { type: 'boolean' },
      help: { type: 'boolean', short: 'h' },
      store: { type: 'string' },
      group: { type: 'string' },
      member: { type: 'string' },
      region: { type: 'string' },
      now: { type: 'string' },
    },
  });

const modeOf = ({ json, jsonl, help }: Readonly<Record<'json' | 'jsonl' | 'help', boolean | undefined>>) => {
  if (help) return 'usage';
  if (jsonl) return 'jsonl';
  return json ? 'json' : 'text';
};

const checked = (given: ReturnType<typeof split>): Result<AskOptions, string> => {
  const read = schema.safeParse(given.values);
  if (!read.success) {
    return fail(read.error.issues.map(({ path, message }) => `--${path.join('.')} ${message}.`).join('\n'));
  }
  const { json, jsonl, help, group, member, store, region, now } = read.data;
  const mode = modeOf({ json, jsonl, help });
  if (mode === 'jsonl' && given.positionals.length > 0) {
    return fail('--jsonl reads its messages from standard input, not from the command line.');
  }
  if (mode !== 'jsonl' && mode !== 'usage' && given.positionals.length === 0)
    return fail('There is no message.');
  return ok({
    mode,
    words: given.positionals.join(' '),
    group,
    member,
    ...(store === undefined ? {} : { store }),
    ...(region === undefined ? {} : { region }),
    ...(now === undefined ? {} : { now }),
  });
};

/** The command line as options, or what is wrong with it in plain words. */
export const readOptions = (argv: readonly string[]): Result<AskOptions, string> => {
  try {
    return checked(split(argv));
  } catch (fault) {
    if (!(fault instanceof TypeError)) throw fault;
    return fail(fault.message.split(/(?<=')\. /)[0] ?? fault.message);
  }
};
