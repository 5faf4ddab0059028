import type { NextStep } from '../answer.ts';
import type { Filled } from '../forms/form.ts';

// What a button, a menu's option or a form means is in its id: the words it says, or the form and what is filled in. So
// it works after a restart, and nothing has to be remembered for it. An id is not trusted and need not be: its words are
// heard from the member who used it, in the group they used it in, by the same reader and with the same rights as if
// typed. A forged id can do nothing that typing could not. The digit counts up when the rest of an id changes its
// meaning, so that an old message's button is known as old.

const sayPrefix = 'say1:';
const morePrefix = 'more1:';
const formPrefix = 'form1:';

/** Platform limit: characters of the id of a button or form, and of the value of a menu's option. */
export const maxIdLength = 100;

/** The id of words to be said. */
export const sayId = (words: string): string => sayPrefix + words;

/** The id of the next part of a long menu: the words it came from are heard again, and it is shown after so many options. */
export const moreId = (after: number, words: string): string => `${morePrefix}${after}:${words}`;

/** Letters, digits and blanks: written the same way by hand, at a tenth of the cost. */
const plainWords = /^[A-Za-z0-9 .*_-]*$/;

const query = (filled: Filled): string => {
  const fields = Object.entries(filled);
  return fields.every(([name, value]) => plainWords.test(name) && plainWords.test(value))
    ? fields.map(([name, value]) => `${name.replaceAll(' ', '+')}=${value.replaceAll(' ', '+')}`).join('&')
    : new URLSearchParams(filled).toString();
};

/** The id of a form, with what it shows to begin with. */
export const formId = (name: string, filled: Filled = {}): string => `${formPrefix}${name}:${query(filled)}`;

export const stepId = ({ say, form }: NextStep): string =>
  form ? formId(form.name, form.filled) : sayId(say);

/** What an id means: words (and how many options of the menu that they lead to are passed over), or a form by its name. */
export type IdMeaning =
  | { readonly words: string; readonly after?: number }
  | { readonly form: string; readonly filled: ReadonlyMap<string, string> };

/** Undefined when the id is none of ours. */
export const meaningOf = (id: string): IdMeaning | undefined => {
  if (id.startsWith(sayPrefix)) return { words: id.slice(sayPrefix.length) };
  const more = id.startsWith(morePrefix) ? /^(\d{1,4}):(.+)$/s.exec(id.slice(morePrefix.length)) : undefined;
  if (more?.[2] !== undefined) return { words: more[2], after: Number(more[1]) };
  if (!id.startsWith(formPrefix)) return undefined;
  const [, form = '', query = ''] = /^([a-z]{1,32}):(.*)$/s.exec(id.slice(formPrefix.length)) ?? [];
  return form === '' ? undefined : { form, filled: new Map(new URLSearchParams(query)) };
};
