import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import { orList } from './ask-back.ts';
import { batchMeant } from './batch-meant.ts';
import type { BenchReading } from './bench-reading.ts';
import { leftover } from './leftover.ts';
import { nextNamed, nextWeight } from './next-named.ts';
import { boardOf } from './target.ts';
import { traceWords } from './trace-words.ts';

/** "And the mint balm?", right after a trace. */
const nextOf = (reading: Reading, bench: BenchReading): Claim | undefined => {
  if (reading.last?.topic !== 'trace') return undefined;
  const next = nextNamed(reading);
  if (next?.lot !== undefined) return claim({ lot: next.lot }, nextWeight);
  if (next?.recipe === undefined) return undefined;
  const found = batchMeant(reading, bench);
  if (found.trouble) return refuse(found.trouble, nextWeight);
  return found.lot === undefined ? undefined : claim({ lot: found.lot }, nextWeight, found.assumed);
};

/** "Which batches have olive oil in them": of the only lot of it; of several, one has to be named. */
const batchesWith =
  /\b(?:which|what|all|list|show|every|any|how many) (?:of )?(?:the |our |my )?(?:batch(?:es)?|pours|tins)\b.{0,30}\b(?:have|has|had|with|contain\w*|used?|made|from|got|in)\b/i;
const mostCodesSaid = 8;
const ofIngredient = (reading: Reading, bench: BenchReading): Claim | undefined => {
  const { rest, lots, days } = bench;
  const named = rest.items.filter(({ letter, generic }) => letter === 'i' && !generic);
  const [id, ...more] = named[0]?.ingredients ?? [];
  if (lots.length + days.length > 0 || named.length !== 1 || id === undefined || more.length > 0)
    return undefined;
  if (!batchesWith.test(rest.text) || rest.items.some(({ letter }) => /[gvn%tR]/.test(letter)))
    return undefined;
  const around = rest.items.filter((item) => item !== named[0]);
  if (leftover(boardOf(around), traceWords, true).blocking.length > 0) return undefined;
  const held = [...reading.bench.lots.values()].filter(({ ingredient }) => ingredient === id);
  const [only, second] = held;
  if (!only) return undefined;
  if (!second) return claim({ lot: only.lot }, 3.05, [`I took ${only.lot}, your only lot of it.`]);
  const codes = orList(held.slice(-mostCodesSaid).map(({ lot }) => lot));
  return refuse({ code: 'missing', text: `Which lot of it: ${codes}? Say its code.` }, 3.05);
};

/** What is asked of a trace without a code: of another recipe's batch, or of an ingredient. */
export const aside = (reading: Reading, bench: BenchReading): Claim | undefined =>
  nextOf(reading, bench) ?? ofIngredient(reading, bench);
