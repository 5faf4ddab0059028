import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import type { Reading } from '../reading.ts';
import { type Subject, subjectBefore } from './body.ts';
import type { StripSaid } from './label-sizes.ts';
import type { Board } from './target.ts';

/** What a message says about labels. */
export interface LabelRead {
  readonly subject: Subject;
  readonly fields: Readonly<Record<string, unknown>>;
  readonly trouble?: Trouble;
  readonly board: Board;
}

export const hasBody = ({ subject, fields }: LabelRead): boolean =>
  subject.recipe !== undefined || subject.lines !== undefined || fields.batch !== undefined;

/** The last label asked for. */
export const lastLabel = (reading: Reading): Readonly<Record<string, unknown>> | undefined =>
  reading.last?.topic === 'label' ? reading.last.request : undefined;

const mergedStrip = (before: unknown, said: unknown): StripSaid | undefined =>
  before === undefined && said === undefined
    ? undefined
    : { ...(before as StripSaid), ...(said as StripSaid) };

/** The last label with what this message says put in its place; a new size replaces the other shape. */
export const continued = (
  last: Readonly<Record<string, unknown>>,
  read: LabelRead,
): Readonly<Record<string, unknown>> => {
  const { subject, fields } = read;
  const body = hasBody(read) ? defined({ recipe: subject.recipe, lines: subject.lines }) : undefined;
  const {
    recipe: _recipe,
    lines: _lines,
    batch: _batch,
    ...without
  } = last as Record<string, unknown> & { recipe?: unknown; lines?: unknown; batch?: unknown };
  const base: Record<string, unknown> = body ? without : { ...last };
  // Another region has another paper, and a lot belongs to its batch.
  if (fields.roundMm !== undefined && fields.strip === undefined) delete base.strip;
  if (fields.strip !== undefined && fields.roundMm === undefined && last.strip === undefined)
    delete base.roundMm;
  if (fields.region !== undefined) delete base.country;
  const strip = mergedStrip(base.strip, fields.strip);
  return { ...base, ...body, ...fields, ...(strip ? { strip } : {}) };
};

/** Tins and fill of a scaling that was asked before. */
export const amountsBefore = (
  reading: Reading,
  fields: Readonly<Record<string, unknown>>,
): Readonly<Record<string, unknown>> => {
  // Another fill is another tin, of which nobody said how many.
  if (fields.net !== undefined) return {};
  const request = reading.last?.topic === 'scale' ? reading.last.request : reading.last?.request.batch;
  if (typeof request !== 'object' || request === null) return {};
  const { count, size } = request as { count?: unknown; size?: unknown };
  return defined({ tins: count, net: size });
};

/** The recipe spoken of before, of a batch too. */
export const bodyBefore = (reading: Reading) => {
  const own = subjectBefore(reading);
  if (own) return own;
  const batch = reading.last?.request.batch;
  const { recipe, lines } = (typeof batch === 'object' && batch !== null ? batch : {}) as Record<
    string,
    unknown
  >;
  if (typeof recipe === 'string') return { recipe };
  return Array.isArray(lines) ? { lines: lines as readonly RecipeLine[] } : undefined;
};
