import type { RecipeLine } from '../core/recipe.ts';
import type { FigureValue } from './figures.ts';

/** The contract's error codes; see README, "When Pipkin cannot answer". */
export const troubleCodes = [
  'not-understood',
  'unknown-ingredient',
  'unknown-recipe',
  'bad-quantity',
  'missing',
  'out-of-range',
  'not-allowed',
  'not-found',
  'too-long',
] as const;
export type TroubleCode = (typeof troubleCodes)[number];

/** A clear, kind refusal: what was not understood, and one example that would work. */
export interface Trouble {
  readonly code: TroubleCode;
  readonly text: string;
  /** Where one of several things may have been meant: the words that left it open, and what may stand in their place. */
  readonly open?: Alternatives;
}

export interface Alternatives {
  readonly said: string;
  readonly names: readonly string[];
}

/** A cell is text, or a number already rounded for reading. Columns of numbers are set flush right. */
export interface Column {
  readonly title: string;
  readonly align: 'left' | 'right';
}

export type Block =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'table';
      readonly columns: readonly Column[];
      readonly rows: readonly (readonly string[])[];
      readonly total?: readonly string[];
    }
  /** A drawing in characters, at most 40 columns wide, shown in a fixed-width font. */
  | { readonly kind: 'chart'; readonly lines: readonly string[] }
  | { readonly kind: 'list'; readonly items: readonly string[] }
  | { readonly kind: 'assumed'; readonly text: string }
  | { readonly kind: 'source'; readonly text: string };

/** `code` is a stable kebab-case word of the contract; `text` one short line. */
export interface Warning {
  readonly code: string;
  readonly text: string;
}

/** The obvious next steps, shown as buttons in the group chat: `say` is asked as if the member had typed it. */
export interface NextStep {
  readonly label: string;
  readonly say: string;
  /** Where a front-end has forms: the form to show instead, with what is known filled in. */
  readonly form?: { readonly name: string; readonly filled: Readonly<Record<string, string>> };
}

/** Most things an answer offers to be picked from: ten parts of a menu. Whoever looks for another one says its name. */
export const mostChoices = 240;

/** Many things of one kind to go on with, one of them to be picked: recipes, lots, batches. */
export interface Choices {
  /** What is picked: "Show a recipe". */
  readonly label: string;
  readonly steps: readonly NextStep[];
}

export interface AnswerFile {
  readonly name: string;
  readonly type: string;
  readonly bytes: Uint8Array;
}

/** A recipe that an answer made and nobody saved: what "it" means in the member's next message. */
export interface Made {
  readonly name: string;
  /** What it is picked by, from 1, where there are several: "number 2". */
  readonly number?: number;
  readonly lines: readonly RecipeLine[];
  /** How much of it was weighed out, as the scale topic takes it. */
  readonly make?: Readonly<Record<string, unknown>>;
}

export interface Answer {
  readonly title: string;
  readonly blocks: readonly Block[];
  readonly figures: Readonly<Record<string, FigureValue>>;
  readonly warnings: readonly Warning[];
  readonly next?: readonly NextStep[];
  /** Shown as a menu to pick from in the group chat. */
  readonly choices?: Choices;
  readonly files?: readonly AnswerFile[];
  /** Recipes it came to, the first one meant where none is picked ("the second one"). Remembered for follow-ups. */
  readonly made?: readonly Made[];
  /** Names it offers to choose from, best first: what "the first one" means in the member's next message. */
  readonly offers?: readonly string[];
  /** Shown to the asking member alone where the front-end can (a group's settings list, say). */
  readonly quiet?: boolean;
}

/** What every front-end gets back for one message. */
export type Reply =
  | {
      readonly topic: string;
      readonly request: unknown;
      readonly answer: Answer;
    }
  | { readonly topic: string | null; readonly error: Trouble };
