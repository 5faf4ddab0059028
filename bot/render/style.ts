import { styleText } from 'node:util';

/** How each part of an answer is set off. Applied to whole lines after measuring, so it never moves a column. */
export interface Style {
  readonly title: (text: string) => string;
  readonly head: (text: string) => string;
  readonly rule: (text: string) => string;
  readonly total: (text: string) => string;
  readonly mind: (text: string) => string;
  readonly quiet: (text: string) => string;
  readonly trouble: (text: string) => string;
}

const as = (text: string): string => text;

export const plainStyle: Style = {
  title: as,
  head: as,
  rule: as,
  total: as,
  mind: as,
  quiet: as,
  trouble: as,
};

/** ANSI colours, for a terminal only. */
export const colourStyle: Style = {
  title: (text) => styleText(['bold', 'green'], text),
  head: (text) => styleText('bold', text),
  rule: (text) => styleText('dim', text),
  total: (text) => styleText('bold', text),
  mind: (text) => styleText('yellow', text),
  quiet: (text) => styleText('dim', text),
  trouble: (text) => styleText('yellow', text),
};

/** Colour where a person looks at a terminal, and only if they have not asked for none (NO_COLOR, TERM=dumb). */
export const styleFor = (
  output: { readonly isTTY?: boolean },
  env: Readonly<Record<string, string | undefined>>,
): Style => (output.isTTY === true && !env.NO_COLOR && env.TERM !== 'dumb' ? colourStyle : plainStyle);
