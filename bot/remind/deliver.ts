import { createHash } from 'node:crypto';
import type { Due } from '../../core/bench/due.ts';
import { benchOf } from '../../core/book.ts';
import { isDone, type Plan, planFor } from '../../core/remind/plan.ts';
import { ok } from '../../core/result.ts';
import type { Book, By } from '../book/keeper.ts';
import { cannotPost, dailyMessage } from '../words/daily.ts';
import { answerFor } from '../words/decimal-sign.ts';
import type { Sender, Sent } from './sender.ts';

export interface Delivering {
  readonly clock: () => number;
  readonly sender: Sender;
}

/** What came of looking at a group: when to look again, and whether that is because something did not work. */
export interface Outcome {
  readonly did: 'nothing' | 'sent' | 'found' | 'failed' | 'later';
  readonly nextMs: number | undefined;
}

type Telling = Extract<Plan, { kind: 'tell' }>;

/** Who stands in the journal for what nobody asked for. */
const house = 'daily-message';

const by = (at: number): By => ({ who: house, at });

/** At most 25 characters, the same for the same day of the same group and another one for any other. */
const nonceFor = (group: string, day: string, seq: number): string =>
  createHash('sha256')
    .update(JSON.stringify([group, day, seq]))
    .digest('base64url')
    .slice(0, 22);

/** Most things noted as told; more than that come as new again. */
const mostNoted = 1000;

const noted = ({ message }: Telling): string[] =>
  [...message.fresh, ...message.open].slice(0, mostNoted).map(({ item }: Due) => item);

interface Begun {
  readonly plan: Plan;
  readonly nonce: string;
  /** Set when it was begun by an earlier run that may have sent it. */
  readonly earlierMs?: number;
}

/** Looks at the book when its turn has come and writes down that a message is about to go out. */
const begin = async (book: Book, now: number): Promise<Begun> => {
  const changed = await book.change<Begun, never>((state) => {
    const plan = planFor(benchOf(state), now);
    if (plan.kind === 'wait') return ok({ events: [], value: { plan, nonce: '' } });
    const { begun } = plan;
    if (begun)
      return ok({ events: [], value: { plan, nonce: begun.nonce, earlierMs: Date.parse(begun.at) } });
    const { day } = plan.message;
    const nonce = nonceFor(book.group, day, state.seq);
    const at = new Date(now).toISOString();
    return ok({ events: [{ kind: 'reminder-begun', day, nonce, at }], value: { plan, nonce } });
  }, by(now));
  // There is no problem it could have; reading it this way keeps the compiler to that.
  return changed.ok ? changed.value.value : changed.problem;
};

/** Writes down what became of it, unless that stands there already. */
const finish = async (
  book: Book,
  plan: Telling,
  sent: Exclude<Sent, 'later'>,
  told: boolean,
  now: number,
): Promise<void> => {
  const { day } = plan.message;
  await book.change<undefined, never>((state) => {
    if (isDone(benchOf(state), day)) return ok({ events: [], value: undefined });
    return ok({
      events: [
        sent === 'sent'
          ? { kind: 'reminder-sent', day, items: noted(plan) }
          : { kind: 'reminder-failed', day, why: sent, told },
      ],
      value: undefined,
    });
  }, by(now));
};

/** What went out and could not be written down: not to be sent again by this process. */
export type Unwritten = Map<string, string>;

const sendOnce = async (
  parts: Delivering,
  book: Book,
  { plan, nonce, earlierMs }: Begun & { readonly plan: Telling },
  unwritten: Unwritten,
): Promise<Sent | 'found'> => {
  if (unwritten.get(book.group) === nonce) return 'found';
  const place = { group: book.group, channel: plan.reminder.channel };
  const told = dailyMessage(plan.message);
  const message = { ...told, answer: answerFor(told.answer, book.state) };
  if (earlierMs !== undefined) {
    const there = await parts.sender.wasSent(place, message, nonce, earlierMs);
    if (there) return 'found';
  }
  const sent = await parts.sender.send(place, message, nonce);
  if (sent === 'sent') unwritten.set(book.group, nonce);
  return sent;
};

const tellOwnerOnce = async (
  { sender }: Delivering,
  book: Book,
  { reminder }: Telling,
  why: Exclude<Sent, 'sent' | 'later'>,
  nonce: string,
): Promise<boolean> => {
  if (reminder.toldOwner) return true;
  return sender.tellOwner(book.group, cannotPost(why, reminder), `${nonce}-o`);
};

/**
 * Tells one group what is due, if its hour has come. Begun, sent, recorded: a crash in between is found at the next look,
 * which asks the platform whether the message stands there before it sends it with the same nonce. Rejects when the book
 * cannot be read or written; then it is worth another try.
 */
export const deliver = async (
  parts: Delivering,
  book: Book,
  unwritten: Unwritten = new Map(),
): Promise<Outcome> => {
  const now = parts.clock();
  const { plan, ...begun } = await begin(book, now);
  if (plan.kind === 'wait') return { did: 'nothing', nextMs: plan.untilMs };
  const sent = await sendOnce(parts, book, { plan, ...begun }, unwritten);
  if (sent === 'later') return { did: 'later', nextMs: undefined };
  const went = sent === 'found' ? 'sent' : sent;
  const told = went !== 'sent' && (await tellOwnerOnce(parts, book, plan, went, begun.nonce));
  await finish(book, plan, went, told, parts.clock());
  unwritten.delete(book.group);
  const after = planFor(benchOf(book.state), parts.clock());
  return {
    did: sent === 'sent' || sent === 'found' ? sent : 'failed',
    nextMs: after.kind === 'wait' ? after.untilMs : parts.clock(),
  };
};
