import type { Bench } from '../../core/bench/state.ts';
import { type BookState, benchOf } from '../../core/book.ts';
import type { Settings } from '../../core/settings.ts';
import type { Answer, Block, Reply } from '../answer.ts';

// Everything is written with a decimal point; where a group reads decimal commas, what is read is changed in this one place,
// after the answer stands. Figures, files and the words of buttons stay as they are. What an answer shows can be said back:
// a group with commas has "12,345" read as twelve and a bit (pointed).

/** Numbers that are none: sections of the law, and whatever stands within a word, a code, a date or an address. */
const number =
  /\bCFR(?:(?:,| and)? ?\d+(?:\.\d+)*(?:\([a-z]\))*)+|(?<![\p{L}\p{N}_.,/#]|\p{L}[-:])\d+\.\d+(?![\p{N}_/]|[.,]\d|-?\p{Lu}{2})/gu;

const commas = (text: string): string =>
  text.replace(number, (found) => (found.startsWith('CFR') ? found : found.replace('.', ',')));

const isName = /\d\.\d/;

/** Names of a part of the book that hold something like a number; looked for once while that part stands unchanged. */
const namesOnce = <P extends object>(
  names: (part: P) => Iterable<string>,
): ((part: P) => readonly string[]) => {
  const known = new WeakMap<P, readonly string[]>();
  return (part) => {
    const before = known.get(part);
    if (before) return before;
    const found = [...names(part)].filter((name) => isName.test(name));
    known.set(part, found);
    return found;
  };
};

const recipeNames = namesOnce((recipes: BookState['recipes']) =>
  Object.values(recipes).map(({ name }) => name),
);
const codes = namesOnce((items: Bench['lots'] | Bench['batches']) => items.keys() as Iterable<string>);

/** Names and codes that stay as they are: with a comma nobody would find them. */
const namesIn = (state: BookState): readonly string[] => {
  const { lots, batches } = benchOf(state);
  return [...recipeNames(state.recipes), ...codes(lots), ...codes(batches)];
};

const around = (text: string, [name, ...others]: readonly string[]): string =>
  name === undefined
    ? commas(text)
    : text
        .split(name)
        .map((part) => around(part, others))
        .join(name);

type Change = (text: string) => string;

const inBlock = (block: Block, change: Change): Block => {
  switch (block.kind) {
    case 'source':
      return block;
    case 'text':
    case 'assumed':
      return { ...block, text: change(block.text) };
    case 'chart':
      return { ...block, lines: block.lines.map(change) };
    case 'list':
      return { ...block, items: block.items.map(change) };
    case 'table':
      return {
        ...block,
        rows: block.rows.map((row) => row.map(change)),
        ...(block.total ? { total: block.total.map(change) } : {}),
      };
  }
};

const inAnswer = (answer: Answer, change: Change): Answer => ({
  ...answer,
  title: change(answer.title),
  blocks: answer.blocks.map((block) => inBlock(block, change)),
  warnings: answer.warnings.map((warning) => ({ ...warning, text: change(warning.text) })),
  ...(answer.next ? { next: answer.next.map((step) => ({ ...step, label: change(step.label) })) } : {}),
});

const hasComma = ({ decimal }: Settings): boolean => decimal === 'comma';

/** The answer as the group reads numbers. */
export const answerFor = (answer: Answer, state: BookState): Answer => {
  if (!hasComma(state.settings)) return answer;
  const names = namesIn(state);
  return inAnswer(answer, (text) => around(text, names));
};

/** The same for a reply. */
export const replyFor = (reply: Reply, state: BookState): Reply => {
  if (!hasComma(state.settings)) return reply;
  if ('answer' in reply) return { ...reply, answer: answerFor(reply.answer, state) };
  const text = around(reply.error.text, namesIn(state));
  return { ...reply, error: { ...reply.error, text } };
};

const grouped = /(?<![\d.,])(\d{1,3}),(\d{3})(?![\d,]|\.\d)/g;

/** A message of a group with decimal commas, in which "12,345" is twelve and a bit and no thousands. Places stay the same. */
export const pointed = (text: string, settings: Settings): string =>
  hasComma(settings) ? text.replace(grouped, '$1.$2') : text;

const doubtful = /(?<![\d.,])[1-9]\d{0,2}\.\d{3}(?![\d.,])/;

/** Where a group writes decimal commas, "1.250" may have been meant as a thousand and more: how it was read is told. */
export const readAs = (text: string, settings: Settings): readonly string[] => {
  const said = hasComma(settings) ? doubtful.exec(text)?.[0] : undefined;
  if (said === undefined) return [];
  return [
    `The point in your number is read as a decimal sign: ${Number(said)}. For thousands write ${said.replace('.', '')}.`,
  ];
};
