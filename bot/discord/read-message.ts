import type { Message } from 'discord.js';
import { attachedFiles } from './attachments.ts';
import { within } from './front.ts';

/** Lines that say nothing of a recipe: the fence of a code block, a mention alone. */
const empty = /^\s*(?:```\w*|<@[!&]?\d+>)?\s*$/;

/** What stands before the amount in a pasted list: a heading's or a quotation's mark, or that of small print. */
const mark = /^\s*(?:[#>]+\s+|-#\s+)/;

/** A recipe of sixty lines is far smaller. */
const mostBytes = 16_384;
const mostCharacters = 8000;

/** A form has to be shown within three seconds, so a file that takes longer is left out. */
const fileWithinMs = 1500;

/** The text of a message as lines of a recipe, to be looked over by the member. */
const linesOf = (text: string): string[] =>
  text
    .slice(0, mostCharacters)
    .split('\n')
    .map((line) => line.replace(mark, '').trim())
    .filter((line) => !empty.test(line));

/** The first small text file that came with it. */
const textIn = async (message: Message, apiUrl: string | undefined): Promise<string> => {
  const file = attachedFiles(message, apiUrl).attached.find(({ name }) => /\.(?:txt|csv)$/i.test(name));
  const read = file ? await within(file.read(mostBytes), fileWithinMs, undefined) : undefined;
  return read?.ok ? new TextDecoder().decode(read.value) : '';
};

/** What a message and the text file with it hold that may be a recipe; empty when nothing. */
export const recipeIn = async (message: Message, apiUrl: string | undefined): Promise<string> =>
  [...linesOf(message.content), ...linesOf(await textIn(message, apiUrl))].join('\n');
