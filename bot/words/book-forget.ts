import { benchOf } from '../../core/book.ts';
import { withoutContacts } from '../../core/exchange/without-contacts.ts';
import { fail, ok } from '../../core/result.ts';
import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { bookCounts, countsTable } from './book-counts.ts';
import { confirmWord } from './confirm-word.ts';

/** Hours between the confirmation and the forgetting, in which anybody who writes can stop it. */
export const waitingHours = 24;

/** What stays elsewhere, told plainly. */
const remains =
  'Whoever runs me may have daily backup files; they still hold it until they are replaced, after two weeks unless that was set otherwise. Files I gave you before, and messages in the chat, stay where they are.';

const shown = (iso: string): string => `${iso.slice(0, 16).replace('T', ' ')} UTC`;

const by = ({ member, at }: Tools) => ({ who: member.id, at });

const nothingThere: Trouble = {
  code: 'not-found',
  text: 'There is nothing in this book to forget. Save a recipe first, for example "save recipe Winter balm: 20 g beeswax, 80 g olive oil".',
};

const preview = (tools: Tools, word: string): Answer => {
  const { state } = tools.book;
  const counts = bookCounts(state);
  return {
    title: 'Forget everything in this book?',
    blocks: [
      countsTable(counts),
      {
        kind: 'text',
        text: `All of it would go, with its history (${state.seq} entries), for everybody in this group, and cannot be brought back by me. Take a copy first: "export".`,
      },
      {
        kind: 'text',
        text: `It is forgotten ${waitingHours} hours after you confirm it; until then "keep everything" stops it. If you are sure, type:`,
      },
      { kind: 'list', items: [`confirm forget everything ${word}`] },
      { kind: 'text', text: remains },
    ],
    figures: { confirm: word, hours: waitingHours, entries: state.seq, counts: { ...counts } },
    warnings: [],
    next: [{ label: 'Export first', say: 'export' }],
  };
};

/** Asks for the word first; then the waiting time begins. */
export const forgetEverything = async (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  const { book } = tools;
  if (book.state.seq === 0) return nothingThere;
  const { forgetting } = book.state;
  if (forgetting)
    return {
      code: 'not-allowed',
      text: `That is under way: everything is forgotten after ${shown(forgetting.due)}. "keep everything" stops it.`,
    };
  const word = confirmWord('forget', book.group, book.state.seq);
  if (wish.code === undefined) return preview(tools, word);
  const due = new Date(tools.at + waitingHours * 3_600_000).toISOString();
  const asked = await book.change((state) => {
    const same = wish.code === confirmWord('forget', book.group, state.seq) && !state.forgetting;
    return same ? ok({ events: [{ kind: 'forgetting-asked', due }], value: due }) : fail('other-word');
  }, by(tools));
  if (!asked.ok) return preview(tools, confirmWord('forget', book.group, book.state.seq));
  return {
    title: `Everything will be forgotten after ${shown(due)}`,
    blocks: [
      {
        kind: 'text',
        text: `Until then all of it stands, and anybody who writes here can stop it: "keep everything".`,
      },
      { kind: 'text', text: remains },
    ],
    figures: { due, hours: waitingHours },
    warnings: [],
    next: [
      { label: 'Keep everything', say: 'keep everything' },
      { label: 'Export', say: 'export' },
    ],
  };
};

/** Stops the forgetting. */
export const keepEverything = async (tools: Tools): Promise<Answer | Trouble> => {
  const kept = await tools.book.change(
    ({ forgetting }) =>
      forgetting ? ok({ events: [{ kind: 'forgetting-stopped' }], value: forgetting }) : fail('none'),
    by(tools),
  );
  if (!kept.ok)
    return {
      code: 'not-found',
      text: 'Nothing is about to be forgotten: all of this book is kept. Try "history".',
    };
  return {
    title: 'Everything is kept',
    blocks: [{ kind: 'text', text: 'The forgetting is called off; nothing was lost.' }],
    figures: { kept: true },
    warnings: [],
  };
};

const noReaction = (id: string, known: boolean): Trouble => ({
  code: 'not-found',
  text: known
    ? `Reaction ${id} has no contact noted. There is nothing to forget.`
    : `There is no reaction ${id} in this book. Ask "history" for what was recorded.`,
});

/** Entries written again in one step. */
const mostAtOnce = 40;

/** Writes the entries that hold a contact again without it, until none does; how many there were. */
const rewriteWithout = async (id: string, tools: Tools): Promise<number> => {
  const { book } = tools;
  for (let count = 0; ; ) {
    const { seq } = book.state;
    const entries = await book.entries(1, seq);
    const holding = entries.filter((entry) => withoutContacts(entry, id) !== entry).slice(0, mostAtOnce);
    if (holding.length === 0) return count;
    const rewritten = holding.map((entry) => withoutContacts(entry, id));
    // Somebody may have written meanwhile: then it is looked through again.
    const done = await book.change(
      (state) =>
        state.seq === seq
          ? ok({ events: [{ kind: 'contact-forgotten', id }], value: undefined, rewritten })
          : fail('moved'),
      by(tools),
    );
    if (done.ok) count += rewritten.length;
  }
};

/** Takes a contact out of every entry that holds it, so that it is in no export and no history any more. */
export const forgetContact = async (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  const id = wish.reaction ?? '';
  const reaction = benchOf(tools.book.state).reactions.get(id);
  const rewritten = await rewriteWithout(id, tools);
  if (!reaction || rewritten === 0) return noReaction(id, reaction !== undefined);
  return {
    title: `Forgotten: the contact of reaction ${id}`,
    blocks: [
      {
        kind: 'text',
        text: `What was told of the reaction itself stays. The contact is out of the book and its history and cannot be brought back.`,
      },
      { kind: 'text', text: remains },
    ],
    figures: { reaction: id, entries: rewritten },
    warnings: [],
    quiet: true,
  };
};
