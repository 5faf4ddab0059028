import type { Answer, Block, Trouble, Warning } from './answer.ts';
import { DraftBook } from './book/draft.ts';
import type { Chosen } from './chosen.ts';
import type { Tools } from './topic.ts';

/** As often is it tried when others write in the group meanwhile. */
const mostTries = 3;

const moved: Trouble = {
  code: 'not-allowed',
  text: 'Somebody else wrote in this book just then, so I wrote nothing of that. Say it once more.',
};

const unlike = (warnings: readonly Warning[]): readonly Warning[] =>
  warnings.filter(
    ({ code, text }, at) => warnings.findIndex((other) => other.code === code && other.text === text) === at,
  );

const blocksOf = ({ title, blocks }: Answer, at: number): readonly Block[] =>
  at === 0 ? blocks : [{ kind: 'text', text: title }, ...blocks];

interface LotFigures {
  readonly lot: unknown;
}

const lotsOf = ({ figures: { lots } }: Answer): readonly LotFigures[] | undefined =>
  Array.isArray(lots) ? (lots as LotFigures[]) : undefined;

/** All lots of the shelf that were told of, each as it stands in the end. */
const allLots = (answers: readonly Answer[]): { readonly lots?: readonly LotFigures[] } => {
  const each = answers.map(lotsOf);
  if (each.includes(undefined)) return {};
  return { lots: [...new Map(each.flatMap((lots = []) => lots).map((one) => [one.lot, one])).values()] };
};

/** Several answers as one. What they say of one and the same batch is told as it is in the end. */
const asOne = (answers: readonly Answer[]): Answer => {
  const [first, ...more] = answers as [Answer, ...Answer[]];
  const last = more.at(-1) ?? first;
  const same = more.every(({ figures }) => figures.lot !== undefined && figures.lot === first.figures.lot);
  const figures = same
    ? Object.assign({}, ...answers.map((answer) => answer.figures))
    : { ...first.figures, ...allLots(answers), also: more.map((answer) => answer.figures) };
  return {
    ...first,
    blocks: answers.flatMap(blocksOf),
    figures,
    warnings: unlike(answers.flatMap(({ warnings }) => warnings)),
    next: last.next ?? [],
  };
};

const requestOf = ({ claim }: Chosen): unknown => (claim.kind === 'request' ? claim.request : undefined);

const inPart = ({ code, text }: Trouble): Trouble => ({
  code,
  text: `I wrote down nothing of that, since a part of it cannot be. ${text}`,
});

/** Answers all that a message tells on a draft of the book; undefined where a code turned out another. */
const tried = async (
  all: readonly Chosen[],
  tools: Tools,
): Promise<readonly Answer[] | Trouble | undefined> => {
  const answers: Answer[] = [];
  for (const chosen of all) {
    const answer = await chosen.topic.run(requestOf(chosen), tools);
    if ('code' in answer) return answers.length === 0 ? answer : inPart(answer);
    if (chosen.code !== undefined && answer.figures.lot !== chosen.code) return undefined;
    answers.push(answer);
  }
  return answers;
};

/** Answers what a message asks, and what else it tells besides: all of it is written down, or nothing. */
export const answeredTogether = async (chosen: Chosen, tools: Tools): Promise<Answer | Trouble> => {
  for (let tries = 0; tries < mostTries; tries += 1) {
    const draft = new DraftBook(tools.book);
    const answers = await tried([chosen, ...(chosen.also ?? [])], { ...tools, book: draft });
    if (answers === undefined) return moved;
    if ('code' in answers) return answers;
    if (await draft.commit()) return asOne(answers);
  }
  return moved;
};
