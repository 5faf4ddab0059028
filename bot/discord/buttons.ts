import type { Choices, NextStep } from '../answer.ts';
import { maxIdLength, sayId, stepId } from './ids.ts';

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

/** A menu of choices, or undefined where there is nothing to pick from. */
export const nextMenu = (choices: Choices | undefined): NextMenu | undefined => {
  const options = distinct(choices?.steps ?? [], maxMenuLabelLength, longestId).slice(0, maxOptions);
  if (!choices || options.length === 0) return undefined;
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
