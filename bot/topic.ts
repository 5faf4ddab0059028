import type { z } from 'zod';
import type { BookState } from '../core/book.ts';
import type { Settings } from '../core/settings.ts';
import type { Answer, Trouble } from './answer.ts';
import type { Book } from './book/keeper.ts';
import type { Files } from './files/given.ts';
import type { HeldFiles } from './files/held.ts';
import type { FormSpec, SlashValues } from './forms/form.ts';
import type { Member } from './heard.ts';
import type { Claim, Reading } from './reading.ts';

/** What a topic may use while answering. No clock of its own: `at` is the message's epoch milliseconds. */
export interface Tools {
  readonly at: number;
  readonly book: Book;
  readonly member: Member;
  /** Where it was asked. */
  readonly channel: string;
  /** Files that came with the message, or that it may name. */
  readonly files: Files;
  readonly held: HeldFiles;
  /** True where others will read the answer too. */
  readonly openly: boolean;
  /** The group's settings, with this message's region if one was given. */
  readonly settings: Settings;
}

/** One thing to say, with the part of the request it means. Help prints `say`, a test runs it and compares `means`. */
export interface Example {
  readonly say: string;
  readonly means: Readonly<Record<string, unknown>>;
  /** True when saying it changes the book, so that it is not offered as a button to try. */
  readonly changes?: true;
  /** Needs this recipe of the demo book, so it is shown only where the recipe exists. */
  readonly demo?: string;
  /**
   * Speaks of lot K12 or batch 26-BAFO: shown only where the group has lots and batches, and then with the codes of its own.
   */
  readonly bench?: true;
}

/** What completes an option. `lots` is a list of codes, the last of which is completed; `lot-or-batch` either of them. */
export type Completion =
  | 'recipe'
  | 'ingredient'
  | 'recipe-or-ingredient'
  | 'topic'
  | 'batch'
  | 'lot'
  | 'lots'
  | 'lot-or-batch';
export type { SlashValues } from './forms/form.ts';

/**
 * A slash command's typed options. `say` turns the filled-in options into the words of a plain message, which goes
 * through the same reader as everything else, so a command cannot mean anything a message could not.
 */
export interface SlashSpec {
  readonly options: z.ZodObject;
  readonly complete?: Readonly<Record<string, Completion>>;
  /** What can be filled in instead. */
  readonly form?: FormSpec;
  say(options: SlashValues): string;
  /**
   * The request itself, where the options are so plain that their words could be read in one way only; else undefined, and
   * the words are read. It spares most of the work of a command and may give nothing that the words would not. What is
   * answered may depend on the request, the group's recipes and its settings only: it is kept (kept-answers.ts).
   */
  plain?(options: SlashValues, state: BookState): Readonly<Record<string, unknown>> | undefined;
}

interface TopicWords {
  readonly name: string;
  /** One line, at most 100 characters: shown in help and as the slash command's description. */
  readonly summary: string;
  readonly examples: readonly [Example, ...Example[]];
  readonly slash: SlashSpec;
  /** Looks at a message and says what it would mean here, if anything. */
  read(reading: Reading): Claim | undefined;
}

export interface TopicSpec<R extends z.ZodObject> extends TopicWords {
  readonly request: R;
  /** True when answering may write to the book: the writers' role is checked first. */
  writes?(request: z.output<R>): boolean;
  /** True when only those who manage the group may ask it. */
  manages?(request: z.output<R>): boolean;
  answer(request: z.output<R>, tools: Tools): Answer | Trouble | Promise<Answer | Trouble>;
}

export interface Topic extends TopicWords {
  readonly request: z.ZodObject;
  /** True when this request would write to the book, or change how it is kept. */
  wouldWrite(input: unknown): boolean;
  /** Checks `input` against the request schema and answers; a bad field becomes a Trouble, never an exception. */
  run(input: unknown, tools: Tools): Promise<Answer | Trouble>;
}

const notAllowed = (text: string): Trouble => ({ code: 'not-allowed', text });

const hasRole = (member: Member, role: string): boolean =>
  member.manages || member.roles.some((own) => own.toLowerCase() === role.toLowerCase());

/** Whether the member may write in this group's book: everyone, unless a role is set. */
export const mayWrite = ({ member, settings: { writerRole } }: Pick<Tools, 'member' | 'settings'>): boolean =>
  writerRole === null || hasRole(member, writerRole);

const barrier = <R extends z.ZodObject>(
  spec: TopicSpec<R>,
  request: z.output<R>,
  tools: Tools,
): Trouble | undefined => {
  const { writerRole } = tools.settings;
  if (spec.manages?.(request) && !tools.member.manages) {
    return notAllowed(
      'Only those who manage this group can change that. Ask one of them, or ask me "settings" to see how it stands.',
    );
  }
  if (spec.writes?.(request) && !mayWrite(tools)) {
    return notAllowed(
      `Only members with the role "${writerRole}" write in this book. You can still scale, convert and look things up.`,
    );
  }
  return undefined;
};

/** The first fault of a request in words: the schema's own message says what would work. */
const faultOf = (error: z.ZodError): Trouble => {
  const [issue] = error.issues;
  const outside = issue?.code === 'too_big' || issue?.code === 'too_small';
  const own = issue && !/^(?:Invalid|Too |Unrecognized|Expected)/.test(issue.message);
  const text = own
    ? issue.message
    : 'One of the figures in that request cannot be meant. Ask "help" for examples that work.';
  return { code: outside ? 'out-of-range' : 'bad-quantity', text };
};

/** Hides a topic's request type behind `run`, so that the list of topics is simply a list. */
export const topic = <R extends z.ZodObject>(spec: TopicSpec<R>): Topic => ({
  ...spec,
  wouldWrite: (input) => {
    const parsed = spec.request.safeParse(input);
    return parsed.success && Boolean(spec.writes?.(parsed.data) || spec.manages?.(parsed.data));
  },
  run: async (input, tools) => {
    const parsed = spec.request.safeParse(input);
    if (!parsed.success) return faultOf(parsed.error);
    return barrier(spec, parsed.data, tools) ?? spec.answer(parsed.data, tools);
  },
});
