import type { NextStep } from '../answer.ts';

/** A button as the renderer hands it on. */
export interface NextButton {
  readonly label: string;
  readonly id: string;
}

/** Platform limits: a button's id and label, and the buttons in one row. */
const maxIdLength = 100;
const maxLabelLength = 80;
const maxButtons = 5;

/** Counts up when the rest of an id changes its meaning, so that an old message's button is known as old. */
const prefix = 'say1:';

/**
 * Buttons for the next steps. The id carries the words themselves, so a button works after a restart and nothing has
 * to be remembered for it. Words that do not fit into an id, or were there before, make no button.
 */
export const nextButtons = (steps: readonly NextStep[]): readonly NextButton[] => {
  const byId = new Map<string, NextButton>();
  for (const { label, say } of steps) {
    const id = prefix + say;
    if (say.trim() === '' || id.length > maxIdLength || label.trim() === '' || byId.has(id)) continue;
    byId.set(id, {
      label: label.length > maxLabelLength ? `${label.slice(0, maxLabelLength - 1)}…` : label,
      id,
    });
  }
  return [...byId.values()].slice(0, maxButtons);
};

/** Platform limit: rows of buttons in one message. */
const maxRows = 5;

/** Rows of buttons, each row as `nextButtons` makes it; words that were there in a row before make no second button. */
export const buttonRows = (rows: readonly (readonly NextStep[])[]): readonly (readonly NextButton[])[] => {
  const said = new Set<string>();
  return rows
    .map((steps) => {
      const fresh = steps.filter(({ say }) => !said.has(say));
      for (const { say } of fresh) said.add(say);
      return nextButtons(fresh);
    })
    .filter((row) => row.length > 0)
    .slice(0, maxRows);
};

/**
 * The words a pressed button says, or undefined when the id is none of ours. An id is not trusted and need not be:
 * its words are heard from the member who pressed, in the group they pressed it in, by the same reader and with the
 * same rights as if typed. A forged id can do nothing that typing could not.
 */
export const wordsOfButton = (id: string): string | undefined =>
  id.startsWith(prefix) ? id.slice(prefix.length) : undefined;
