/**
 * How many lines a process has to have said before the short pause after which it is killed: mostly one, sometimes none,
 * and it is killed while it starts. In the first round more than there are rounds: however slow the machine is, something
 * was acknowledged when all are over.
 */
export const linesBeforeKill = (round: number, rounds: number): number => {
  if (round === 0) return rounds + 2;
  return Math.random() < 0.9 ? 1 : 0;
};
