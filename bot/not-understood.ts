import type { Trouble } from './answer.ts';
import { guessesAt } from './likeness/likely.ts';
import { echo, orList } from './readers/ask-back.ts';
import { letters } from './readers/lexicon.ts';
import type { Reading } from './reading.ts';

const mostGuesses = 2;
const example = 'scale 20 g beeswax, 30 g shea butter, 50 g olive oil to 24 tins of 15 ml';

/** What a message that nobody understood may have meant; else one thing that works. */
const whatWorks = (guesses: readonly string[]): string => {
  if (guesses.length === 0) return `Try for example "${example}", or "help".`;
  return `Did you mean ${orList(guesses.map((guess) => `"${echo(guess)}"`))}? If not, ask "help".`;
};

/** What to say when no topic knows the message: what stood out in it, and what works. */
export const notUnderstood = (reading: Reading): Trouble => {
  const said = reading.items
    .filter((item) => item.letter === letters.unknown || item.letter === letters.danger)
    .map((item) => item.word);
  const about = said.length > 0 ? ` I stumbled over "${echo(said.slice(0, 4).join(' '))}".` : '';
  const greeting = reading.items.length === 0 ? 'Hello! Ask me something' : 'I did not understand that';
  const guesses = guessesAt(reading).slice(0, mostGuesses);
  return {
    code: 'not-understood',
    text: `${greeting}.${about} ${whatWorks(guesses)}`,
    ...(guesses.length > 0 ? { open: { said: reading.text, names: guesses } } : {}),
  };
};
