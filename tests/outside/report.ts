// What a run came to, in a few lines for whoever reads the log.

import type { Run } from './run.ts';

const kindsOf = (counts: ReadonlyMap<string, number>, what: string): string[] =>
  [...counts.keys()]
    .filter((key) => key.startsWith(`kind ${what} `))
    .map((key) => key.slice(6 + what.length));

const at = (sorted: readonly number[], share: number): number =>
  sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? 0;

export function report({ standIn, drive, bot, exits, welcomes }: Run): string {
  const { ledger } = standIn;
  const { counts } = ledger;
  const times = ledger.ackTimes();
  const plain = [...counts]
    .filter(([key]) => !key.startsWith('kind '))
    .map(([key, count]) => `  ${key}: ${count}`);
  const kinds = ['slash commands', 'autocompletes', 'buttons', 'menus', 'modals', 'context menus'].map(
    (what) => `  kinds of ${what}: ${kindsOf(counts, what).length}`,
  );
  return [
    `${drive.done} steps, ${ledger.asked.length} interactions, ${ledger.said.length} messages`,
    `first answers: median ${at(times, 0.5)} ms, p99 ${at(times, 0.99)} ms, longest ${times.at(-1) ?? 0} ms`,
    `left with ${exits.map(({ code, ms }) => `${code} in ${ms} ms`).join(', ')}; ${welcomes} welcomes`,
    ...plain.sort(),
    ...kinds,
    `${ledger.faults.length} faults`,
    ...ledger.faults.map((fault) => `  ${fault}`),
    `${bot.errors().length} lines of error in the log`,
    ...bot.errors().slice(0, 20),
  ].join('\n');
}

export const kinds = kindsOf;
