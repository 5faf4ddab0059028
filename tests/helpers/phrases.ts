import { readdirSync, readFileSync } from 'node:fs';
import { z } from 'zod';
import { regions } from '../../core/settings.ts';

/** One phrase with what it should mean, or that it should be refused. `before` is said first by the same member. */
const phrase = z.strictObject({
  say: z.string(),
  before: z.array(z.string()).optional(),
  topic: z.string().optional(),
  figures: z.record(z.string(), z.union([z.string(), z.number(), z.boolean(), z.null()])).optional(),
  warnings: z.array(z.string()).optional(),
  refuse: z.literal(true).optional(),
  code: z.union([z.string(), z.array(z.string())]).optional(),
  region: z.enum(regions).optional(),
  note: z.string().optional(),
});
export type Phrase = z.output<typeof phrase>;

/** Checks the shape of phrases read from a file. */
export const phrasesIn = (value: unknown): readonly Phrase[] => z.array(phrase).parse(value);

const folder = new URL('../phrases/', import.meta.url);

/** The phrase tables in `from`, by file name. */
export const phraseTables = (
  from = folder,
): readonly {
  readonly file: string;
  readonly phrases: readonly Phrase[];
}[] =>
  readdirSync(from)
    .filter((file) => file.endsWith('.json'))
    .toSorted()
    .map((file) => ({
      file,
      phrases: z.array(phrase).parse(JSON.parse(readFileSync(new URL(file, from), 'utf8'))),
    }));

const at = (value: unknown, path: string): unknown =>
  path
    .split('.')
    .reduce<unknown>((inner, key) => (inner as Record<string, unknown> | undefined)?.[key], value);

/** Grams may differ by a step of the scale, temperatures of the model by a degree. */
const slackOf = (path: string, step: number): number => {
  if (/_g$|grams/.test(path)) return step + 1e-6;
  return /_c(?:\.\d)?$/.test(path) ? 1 : 0;
};

const exact = /containers|count|version|step|loss/;

/**
 * Differences between figures and what a phrase expects. Numbers may differ by 0.6 % (grams by one step of the scale):
 * the tables were reckoned apart from the code, with densities from the same cited sources.
 */
export const figureFaults = (
  figures: Readonly<Record<string, unknown>>,
  expected: Phrase['figures'],
): string[] =>
  Object.entries(expected ?? {}).flatMap(([path, wanted]) => {
    const got = at(figures, path);
    const step = typeof figures.step_g === 'number' ? figures.step_g : 0;
    const slack = exact.test(path) ? 1e-9 : Math.max(Math.abs(Number(wanted)) * 0.006, slackOf(path, step));
    const same =
      typeof wanted === 'number'
        ? typeof got === 'number' && Math.abs(got - wanted) <= slack
        : got === wanted;
    return same ? [] : [`${path}: ${JSON.stringify(got)} instead of ${JSON.stringify(wanted)}`];
  });
