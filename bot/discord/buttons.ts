import type { Choices, NextStep } from '../answer.ts';
import { maxIdLength, moreId, sayId, stepId } from './ids.ts';

/** A button, or an option of a menu, as the renderer hands it on. */
export interface NextButton {
  readonly label: string;
  readonly id: string;
}

/** A menu to pick one of many from. */
export interface NextMenu {
  readonly label: string;
  readonly options: readonly NextButton[];
}

/** Platform limits: characters of a button's label and of a menu's texts, buttons in one row, options of a menu, rows. */
const maxLabelLength = 80;
const maxMenuLabelLength = 100;
export const maxButtons = 5;
const maxOptions = 25;
const maxRows = 5;

/** Longest id that is made; what is longer than the platform's limit is shortened by long-ids.ts, or left out. */
export const longestId = 1200;

const shortened = (label: string, most: number): string =>
  label.length > most ? `${label.slice(0, most - 1)}…` : label;

const distinct = (steps: readonly NextStep[], mostLabel: number, mostId: number): NextButton[] => {
  const byId = new Map<string, NextButton>();
  for (const step of steps) {
    const whole = stepId(step);
    // A form that holds too much to begin with is still more use than none.
    const id = whole.length > mostId && step.form ? sayId(step.say) : whole;
    if (step.say.trim() === '' || id.length > mostId || step.label.trim() === '' || byId.has(id)) continue;
    byId.set(id, { label: shortened(step.label, mostLabel), id });
  }
  return [...byId.values()];
};

/** Buttons for the next steps. Words that do not fit, or were there before, make no button. */
export const nextButtons = (steps: readonly NextStep[], mostId = longestId): readonly NextButton[] =>
  distinct(steps, maxLabelLength, mostId).slice(0, maxButtons);

/** Which part of a long menu is shown: after how many of its options, and the words that lead to the same answer again. */
export interface Part {
  readonly words: string;
  readonly after: number;
}

/** On each part of a menu one option leads to the next part, from the last one to the first. */
const perPart = maxOptions - 1;

const partOf = (all: readonly NextButton[], { words, after }: Part): readonly NextButton[] => {
  const from = after < all.length ? after : 0;
  const shown = all.slice(from, from + perPart);
  const next = from + perPart < all.length ? from + perPart : 0;
  const id = moreId(next, words);
  if (id.length > longestId) return all.slice(0, maxOptions);
  const label = `More: ${next + 1} to ${Math.min(next + perPart, all.length)} of ${all.length}`;
  return [...shown, { label, id }];
};

/** A menu of choices, or undefined where there is nothing to pick from. A long one is shown in parts. */
export const nextMenu = (choices: Choices | undefined, part?: Part): NextMenu | undefined => {
  const all = distinct(choices?.steps ?? [], maxMenuLabelLength, longestId);
  if (!choices || all.length === 0) return undefined;
  const options = part && all.length > maxOptions ? partOf(all, part) : all.slice(0, maxOptions);
  return { label: shortened(choices.label, maxMenuLabelLength), options };
};

/**
 * Rows of buttons, each row as `nextButtons` makes it; words that were there in a row before make no second button. For
 * messages nobody asked for, whose words have to fit into an id.
 */
export const buttonRows = (rows: readonly (readonly NextStep[])[]): readonly (readonly NextButton[])[] => {
  const said = new Set<string>();
  return rows
    .map((steps) => {
      const fresh = steps.filter(({ say }) => !said.has(say));
      for (const { say } of fresh) said.add(say);
      return nextButtons(fresh, maxIdLength);
    })
    .filter((row) => row.length > 0)
    .slice(0, maxRows);
};
