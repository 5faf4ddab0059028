import type { Answer, Reply, Trouble } from './answer.ts';
import type { Book, Keeper } from './book/keeper.ts';
import { NotRecorded, StoreTrouble } from './book/trouble.ts';
import { choose, notUnderstood } from './choose.ts';
import { complete } from './complete.ts';
import type { Heard } from './heard.ts';
import { memory } from './memory.ts';
import { echo } from './readers/ask-back.ts';
import { maxMessageLength } from './readers/tidy.ts';
import type { Claim, Last } from './reading.ts';
import type { Completion, Tools, Topic } from './topic.ts';
import { topics } from './topics.ts';
import { understand } from './understand.ts';

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

const notRecorded = (fault: NotRecorded): Trouble => {
  const what =
    fault.reason === 'uncertain' ? 'I cannot say whether that was recorded' : 'Nothing was recorded';
  const why = {
    'disk-full': 'the disk is full',
    'read-only': 'the book can only be read at the moment',
    failed: 'writing failed',
    uncertain: 'the database went away',
  }[fault.reason];
  return {
    code: 'not-allowed',
    text: `${what}: ${why}. Tell whoever runs me, then say it again, for example "list recipes" to see what stands.`,
  };
};

/** A book that cannot be read. The details are for whoever runs the bot, and are in the log under this id. */
const storeTrouble = (id: string): Trouble => ({
  code: 'not-allowed',
  text: `This group's book cannot be read at the moment (fault ${id}); nothing was recorded and nothing was changed. Tell whoever runs me.`,
});

const programFault = (id: string): Trouble => ({
  code: 'not-understood',
  text: `Something went wrong on my side (fault ${id}). Try it once more, or another way: "help".`,
});

const toolsFor = (heard: Heard, book: Book): Tools => ({
  at: heard.at,
  book,
  member: heard.member,
  channel: heard.channel,
  settings: heard.region ? { ...book.state.settings, region: heard.region } : book.state.settings,
});

const remembered = (topic: Topic, claim: Claim): Last | undefined => {
  const request = claim.kind === 'request' ? claim.request : claim.soFar;
  return request ? { topic: topic.name, request } : undefined;
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

/** Ids for faults: short enough to read out, counted within the process. */
const faultIds = () => {
  let count = 0;
  return (at: number): string => {
    count += 1;
    return `${at.toString(36)}-${count.toString(36)}`;
  };
};

/** Wires the topics to the books. One for each process. */
export const pipkin = ({ keeper, onFault }: Wiring): Pipkin => {
  const conversations = memory();
  const nextId = faultIds();

  const answered = async (heard: Heard): Promise<Reply> => {
    if (heard.text.length > maxMessageLength) return { topic: null, error: tooLong };
    const book = await keeper.open(heard.group);
    const tools = toolsFor(heard, book);
    const last = conversations.recall(heard);
    const reading = understand(heard.text, book.state, tools.settings, last, heard.at);
    const chosen = choose(reading, topics);
    if (!chosen) return { topic: null, error: notUnderstood(reading) };
    const { topic, claim } = chosen;
    const keep = remembered(topic, claim);
    if (keep) conversations.keep(heard, keep);
    if (claim.kind === 'trouble') return { topic: topic.name, error: claim.trouble };
    const answer = await topic.run(claim.request, tools);
    if ('code' in answer) return { topic: topic.name, error: answer };
    if (answer.made)
      conversations.keep(heard, { topic: topic.name, request: claim.request, made: answer.made });
    const said = [
      ...takenUp(reading.last, claim.request),
      ...claim.assumed,
      ...reading.aside.map((words) => `I set aside "${echo(words)}".`),
    ];
    return { topic: topic.name, request: claim.request, answer: withAssumed(answer, said) };
  };

  const afterFault = (heard: Heard, fault: unknown): Trouble => {
    if (fault instanceof NotRecorded) return notRecorded(fault);
    const id = nextId(heard.at);
    onFault(id, fault);
    return fault instanceof StoreTrouble ? storeTrouble(id) : programFault(id);
  };

  const hear = async (heard: Heard): Promise<Reply> => {
    try {
      return await answered(heard);
    } catch (fault) {
      return { topic: null, error: afterFault(heard, fault) };
    }
  };

  return {
    hear,
    complete: async (group, kind, typed) => complete((await keeper.open(group)).state, topics, kind, typed),
  };
};
