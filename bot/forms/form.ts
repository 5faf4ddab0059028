/** The filled-in options of a command, by name. */
export type SlashValues = Readonly<Record<string, string | number | boolean | undefined>>;

/** One thing to fill in. `name` is that of the command's option that says the same, so that what is known is filled in. */
export interface FormField {
  readonly name: string;
  readonly label: string;
  /** One line of help, shown while the field is empty: what would work. */
  readonly about?: string;
  readonly required?: boolean;
  /** Several lines, as pasted. */
  readonly long?: boolean;
  /** Most characters that can be typed. */
  readonly most: number;
}

/** What was filled in, by field; a field left empty is missing. */
export type Filled = Readonly<Record<string, string>>;

/**
 * A form to fill in. `say` turns it into the words of a plain message, which goes through the same reader as everything
 * else, so a form cannot mean anything a message could not.
 */
export interface FormSpec {
  /** Names it in the ids of buttons; the topic's name. */
  readonly name: string;
  readonly title: string;
  readonly fields: readonly FormField[];
  /** True when a command was given too little to be said, and the form is to be shown instead. */
  opens?(options: SlashValues): boolean;
  say(filled: Filled): string;
}

/** What a form shows to begin with: the options of the same names, as far as they fit. */
export const filledFrom = ({ fields }: FormSpec, options: SlashValues): Filled =>
  Object.fromEntries(
    fields.flatMap(({ name, most }) => {
      const value = options[name];
      const text = value === undefined ? '' : String(value);
      return text === '' || text.length > most ? [] : [[name, text]];
    }),
  );

/** Only this form's own fields, trimmed and no longer than they may be: what came in is not trusted. */
export const filledIn = ({ fields }: FormSpec, given: ReadonlyMap<string, string>): Filled =>
  Object.fromEntries(
    fields.flatMap(({ name, most }) => {
      const text = (given.get(name) ?? '').slice(0, most).trim();
      return text === '' ? [] : [[name, text]];
    }),
  );
