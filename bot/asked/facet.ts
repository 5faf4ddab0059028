import type { Reading } from '../reading.ts';
import type { Subject } from './subject.ts';

/** A request as a topic takes it. */
export interface Wish {
  readonly topic: string;
  readonly request: Readonly<Record<string, unknown>>;
}

/** One thing that can be asked of the bench book: the words that ask it, and what that is of each kind of subject. */
export interface Facet {
  readonly cue: RegExp;
  readonly never?: RegExp;
  /** Words that many things are asked with. */
  readonly faint?: true;
  /** Sure enough to stand against another topic of the bench. */
  readonly sure?: RegExp;
  readonly of: Partial<Record<Subject['kind'], (subject: Subject, reading: Reading) => Wish | undefined>>;
}

export const batchPage = ({ name }: Subject): Wish => ({
  topic: 'batch',
  request: { action: 'show', lot: name },
});
export const lotPage = ({ name }: Subject): Wish => ({
  topic: 'stock',
  request: { action: 'show', lot: name },
});
export const trace = ({ name }: Subject): Wish => ({ topic: 'trace', request: { lot: name } });
export const sheet = ({ name }: Subject): Wish => ({ topic: 'trace', request: { lot: name, sheet: true } });
export const due = (about: Readonly<Record<string, unknown>>): Wish => ({
  topic: 'expiry',
  request: { action: 'due', period: 'all', ...about },
});
export const dueOfCode = ({ name }: Subject): Wish => due({ lots: [name] });
export const lotsList = ({ names = [] }: Subject): Wish => ({
  topic: 'stock',
  request: { action: 'list', codes: names },
});
export const batchesList = ({ names = [] }: Subject): Wish => ({
  topic: 'batch',
  request: { action: 'list', lots: names },
});
export const dueOfCodes = ({ names = [] }: Subject): Wish => due({ lots: names });
export const history = ({ name }: Subject): Wish => ({
  topic: 'book',
  request: { action: 'history', about: { lot: name } },
});
export const reactions = ({ name }: Subject): Wish => ({
  topic: 'reaction',
  request: { action: 'list', lot: name },
});
export const ifPointed =
  (wish: (subject: Subject) => Wish) =>
  (subject: Subject): Wish | undefined =>
    subject.pointed ? wish(subject) : undefined;
export const ofBatch =
  (wish: (subject: Subject) => Wish) =>
  (subject: Subject): Wish | undefined =>
    subject.batch === undefined ? undefined : wish({ ...subject, name: subject.batch });
