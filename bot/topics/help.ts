import { z } from 'zod';
import { type Claim, claim, type Reading } from '../reading.ts';
import { topic } from '../topic.ts';
import { answerHelp, isTopicName } from '../words/help.ts';

const request = z.strictObject({ topic: z.string().max(40).optional() });
export type HelpWish = z.output<typeof request>;

/** Words that may stand around a call for help; anything else makes it a question about something. */
const around = new Set(
  `help what how can do use used using work works start started begin beginning commands command examples example menu manual options
  instructions topics all else ask say new able stuff features capabilities questions type write know wat`.split(
    /\s+/,
  ),
);

const isCall = ({ words }: Reading): boolean => {
  const has = (...list: string[]): boolean => list.some((word) => words.has(word));
  if (has('help', 'commands', 'menu', 'manual', 'examples')) return true;
  if (has('what', 'wat') && has('can', 'do', 'ask', 'say') && has('you', 'u', 'i', 'we', 'ya')) return true;
  return (
    has('how') &&
    has('use', 'work', 'works', 'start', 'begin') &&
    has('this', 'it', 'you', 'bot', 'pipkin', 'i')
  );
};

const isWhole = (reading: Reading): boolean =>
  isCall(reading) &&
  reading.items.every(
    (item) => around.has(item.word) || /^[^\p{L}\p{N}]$/u.test(item.letter) || /[ATFWI]/.test(item.letter),
  );

/** Words a member uses for a topic when asking for help with it. */
const topicWords: Readonly<Record<string, RegExp>> = {
  scale: /^(?:scal(?:e|ing)|scale a recipe|weigh(?:ing)?(?: out)?|batch(?:es)?|make a batch|tins)$/i,
  convert: /^(?:convert(?:ing|ion|ions)?|convert units|units?|conversions?|temperatures?|drops)$/i,
  ingredient: /^(?:ingredients?|look(?:ing)? up ingredients?|look up an ingredient|density)$/i,
  recipe: /^(?:recipes?|sav(?:e|ing)(?: a| my)?(?: recipes?)?|save recipes)$/i,
  settings: /^(?:settings?|set ?up|region|preferences)$/i,
  help: /^help$/i,
};

const about =
  /^\W*(?:(?:hi|hello|hey|pipkin|please|can|could|you|i|we|need|want|some|me|us|get|give)\b[\s,!]*)*(?:help(?:\s+me)?:?(?:\s+(?:with|on|about|for|to|understand|topic))?|examples?\s+(?:of|for)|how (?:do|can|to)(?:\s+(?:i|we|you))?)\s+(?:the\s+|a\s+|an\s+|my\s+|with\s+)?(.+?)(?:\s+(?:command|topic|please|pls|thanks|a recipe|recipes|an ingredient|things|something|units))*\W*$/i;

const nameIn = (said: string): string | undefined => (isTopicName(said) ? said : undefined);

const topicOf = (said: string): string | undefined =>
  nameIn(said.trim().toLowerCase()) ??
  Object.entries(topicWords).find(([, pattern]) => pattern.test(said.trim()))?.[0];

const asksHelp = /^\W*(?:please\s+)?help\b|\bhelp\W*$/i;

const read = (reading: Reading): Claim | undefined => {
  const { text } = reading;
  if (text.length > 120) return undefined;
  const said = about.exec(text)?.[1] ?? /^\W*(\w+)\s+help\W*$/i.exec(text)?.[1];
  const named = said === undefined ? undefined : topicOf(said);
  // "help stock" is surer than a look at the stock; "how do I ..." may still be another topic's.
  if (named !== undefined) return claim({ topic: named }, asksHelp.test(text) ? 4 : 3);
  return isWhole(reading) ? claim({}, 3) : undefined;
};

export const help = topic({
  name: 'help',
  summary: 'What you can ask, with examples that work when pasted.',
  request,
  examples: [
    { say: 'help', means: {} },
    { say: 'help scale', means: { topic: 'scale' } },
  ],
  slash: {
    options: z.object({
      topic: z.string().max(40).optional().describe('One topic, for example scale'),
    }),
    complete: { topic: 'topic' },
    say: ({ topic: named }) => (named === undefined ? 'help' : `help ${named}`),
  },
  read,
  answer: answerHelp,
});
