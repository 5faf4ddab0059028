import { defined } from '../core/defined.ts';
import type { Answer, Reply, Trouble } from './answer.ts';
import { isForgettingDue } from './book/forgetting.ts';
import type { Book, Keeper } from './book/keeper.ts';
import { NotRecorded, StoreTrouble } from './book/trouble.ts';
import { writtenBy } from './book/written-by.ts';
import { choose } from './choose.ts';
import type { Chosen } from './chosen.ts';
import { complete } from './complete.ts';
import { noFiles } from './files/given.ts';
import { type HeldFiles, heldFiles } from './files/held.ts';
import type { Heard } from './heard.ts';
import { inOrder } from './in-order.ts';
import { keptAnswers } from './kept-answers.ts';
import { conversationOf, type Memory, memory } from './memory.ts';
import { notUnderstood } from './not-understood.ts';
import { plainlyAsked } from './plainly-asked.ts';
import { echo } from './readers/ask-back.ts';
import { maxMessageLength } from './readers/tidy.ts';
import type { Last, Reading } from './reading.ts';
import { askedBack, supplied } from './supplied.ts';
import { answeredTogether } from './together.ts';
import type { Completion, Tools } from './topic.ts';
import { topics } from './topics.ts';
import { understand } from './understand.ts';
import { unveiled } from './unveiled.ts';
import { pointed, readAs, replyFor } from './words/decimal-sign.ts';
import { notRecorded, programFault, storeTrouble } from './words/fault.ts';

/** What every front-end talks to. `hear` never throws: each message gets exactly one reply. */
export interface Pipkin {
  hear(heard: Heard): Promise<Reply>;
  /** Names that could complete what is typed so far, best first, at most 25. Only this group's recipes. */
  complete(group: string, kind: Completion, typed: string): Promise<readonly string[]>;
}

export interface Wiring {
  readonly keeper: Keeper;
  /** Called once for a fault of the program with an id the member was shown; never with message text. */
  readonly onFault: (id: string, fault: unknown) => void;
}

const tooLong: Trouble = {
  code: 'too-long',
  text: `That is longer than I read at once (${maxMessageLength} characters). Send one recipe or one question at a time, for example "5 oz in g".`,
};

const withAssumed = (answer: Answer, assumed: readonly string[]): Answer =>
  assumed.length === 0
    ? answer
    : {
        ...answer,
        blocks: [...answer.blocks, ...assumed.map((text) => ({ kind: 'assumed', text }) as const)],
      };

/** The group's book; where its waiting time to be forgotten is over, it is forgotten first. */
const openFor = async (keeper: Keeper, { group, at }: Heard): Promise<Book> => {
  const book = await keeper.open(group);
  if (isForgettingDue(book.state, at)) await book.forget((state) => isForgettingDue(state, at));
  return book;
};

/** While a book waits to be forgotten, everybody who asks anything is told in time to object. */
const withForgetting = (answer: Answer, { state: { forgetting } }: Book): Answer => {
  if (!forgetting) return answer;
  const text = `Everything in this book will be forgotten after ${forgetting.due.slice(0, 16).replace('T', ' ')} UTC, as ${forgetting.name ?? 'a member'} asked. "keep everything" stops it, "export" saves a copy.`;
  return { ...answer, warnings: [...answer.warnings, { code: 'forgetting-soon', text }] };
};

const toolsFor = (heard: Heard, book: Book, held: HeldFiles): Tools => ({
  at: heard.at,
  book: writtenBy(book, heard.member),
  member: heard.member,
  channel: heard.channel,
  files: heard.files ?? noFiles,
  held,
  openly: heard.openly ?? false,
  settings: heard.region
    ? { ...book.state.settings, region: heard.region, regionChosen: true }
    : book.state.settings,
});

const remembered = ({ topic, claim }: Chosen): Last | undefined => {
  const request = claim.kind === 'request' ? claim.request : claim.soFar;
  return request ? { topic: topic.name, request } : undefined;
};

/** What "it" means after an answer: the recipes it came to, what it offered, the batch or lot it told of. */
const outcomeOf = ({ made, offers, figures }: Answer): Pick<Last, 'made' | 'offers' | 'lot' | 'done'> => {
  const lot = typeof figures.lot === 'string' ? figures.lot : undefined;
  return defined({ made, offers, lot, done: true });
};

const linesIn = (request: Readonly<Record<string, unknown>>): unknown[] => {
  const batch = request.batch as Readonly<Record<string, unknown>> | undefined;
  return [request.lines, batch?.lines];
};

/** Says so when a request took up a recipe that nobody saved: the very lines that the last answer came to. */
const takenUp = (last: Last | undefined, request: Readonly<Record<string, unknown>>): readonly string[] => {
  const made = last?.made?.find(({ lines }) => linesIn(request).includes(lines));
  return made ? [`It is ${made.name}.`] : [];
};

/** What was told in words of the maker's own may have been read wrongly. */
const withUndo = (answer: Answer, { told }: Chosen): Answer =>
  told ? { ...answer, next: [{ label: 'Undo this', say: 'undo' }, ...(answer.next ?? [])] } : answer;

/** The answer with what was taken up, assumed and set aside on the way to it. */
const finished = (answer: Answer, { chosen, reading, taken }: Understood, book: Book): Answer => {
  const { claim } = chosen;
  if (!reading) return withForgetting(answer, book);
  const request = claim.kind === 'request' ? claim.request : {};
  const assumed = [...(taken ? [taken] : []), ...(claim.kind === 'request' ? claim.assumed : [])];
  const aside = unveiled(reading.aside, reading.recipes.veils).map(
    (words) => `I set aside "${echo(words)}".`,
  );
  const all = [...takenUp(reading.last, request), ...assumed, ...aside];
  return withForgetting(withUndo(withAssumed(answer, all), chosen), book);
};

/** What a message asks. Without a reading no words had to be read: the command's options said it all. */
interface Understood {
  readonly chosen: Chosen;
  readonly reading?: Reading;
  /** How the message was read together with the one that was asked about. */
  readonly taken?: string;
}

const understood = (
  heard: Heard,
  { files, settings }: Tools,
  { state }: Book,
  conversations: Memory,
): Understood | Trouble => {
  const plain = plainlyAsked(heard.command, topics, state);
  if (plain) return { chosen: plain };
  const attached = files.attached.map(({ name }) => name);
  const { last, asked } = conversations.recall(heard);
  const text = pointed(heard.text, settings);
  const reading = { ...understand(text, state, settings, last, heard.at), attached };
  const answer = asked && supplied(reading, asked, topics);
  if (answer) return { ...answer, taken: answer.assumed };
  const chosen = choose(reading, topics);
  return chosen ? { chosen, reading } : unveiled(notUnderstood(reading), reading.recipes.veils);
};

/** What one message asks, however much that is. */
const asked = (chosen: Chosen, tools: Tools): Promise<Answer | Trouble> =>
  chosen.also
    ? answeredTogether(chosen, tools)
    : chosen.topic.run(chosen.claim.kind === 'request' ? chosen.claim.request : undefined, tools);

/** Ids for faults: short enough to read out, counted within the process. */
const faultIds = () => {
  let count = 0;
  return (at: number): string => {
    count += 1;
    return `${at.toString(36)}-${count.toString(36)}`;
  };
};

/** What a member is told of a fault, which is passed on under the id they see. */
const faultsTold = (onFault: Wiring['onFault']) => {
  const nextId = faultIds();
  return (heard: Heard, fault: unknown): Trouble => {
    if (fault instanceof NotRecorded) return notRecorded(fault);
    const id = nextId(heard.at);
    onFault(id, fault);
    return fault instanceof StoreTrouble ? storeTrouble(id) : programFault(id);
  };
};

/** Wires the topics to the books. One for each process. */
export const pipkin = ({ keeper, onFault }: Wiring): Pipkin => {
  const conversations = memory();
  const afterFault = faultsTold(onFault);
  const held = heldFiles();
  const queue = inOrder();
  const again = keptAnswers();

  const replied = async (heard: Heard, found: Understood, tools: Tools): Promise<Reply> => {
    const { topic, claim } = found.chosen;
    const keep = remembered(found.chosen);
    if (keep) conversations.keep(heard, keep);
    if (claim.kind === 'trouble') return { topic: topic.name, error: claim.trouble };
    const { request } = claim;
    const answer = await (found.reading ? asked(found.chosen, tools) : again(topic, request, tools));
    if ('code' in answer) return { topic: topic.name, error: answer };
    conversations.keep(heard, { topic: topic.name, request, ...outcomeOf(answer) });
    const as = found.reading ? readAs(heard.text, tools.settings) : [];
    return { topic: topic.name, request, answer: withAssumed(finished(answer, found, tools.book), as) };
  };

  const answered = async (heard: Heard): Promise<Reply> => {
    if (heard.text.length > maxMessageLength) return { topic: null, error: tooLong };
    const book = await openFor(keeper, heard);
    const reply = await answeredFrom(book, heard);
    return replyFor(reply, book.state);
  };

  const answeredFrom = async (book: Book, heard: Heard): Promise<Reply> => {
    const tools = toolsFor(heard, book, held);
    const found = understood(heard, tools, book, conversations);
    const reply = 'code' in found ? { topic: null, error: found } : await replied(heard, found, tools);
    conversations.ask(heard, askedBack(reply, 'code' in found ? undefined : found.reading));
    return reply;
  };

  const safely = async (heard: Heard): Promise<Reply> => {
    try {
      return await answered(heard);
    } catch (fault) {
      return { topic: null, error: afterFault(heard, fault) };
    }
  };
  // "the second one" has to find what the message before it came to, however long that takes to answer.
  const hear = (heard: Heard): Promise<Reply> => queue(conversationOf(heard), () => safely(heard));

  return {
    hear,
    complete: async (group, kind, typed) => complete((await keeper.open(group)).state, topics, kind, typed),
  };
};
