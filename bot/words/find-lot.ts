import { lotKey } from '../../core/bench/codes.ts';
import type { Batch, Bench, Lot } from '../../core/bench/state.ts';
import { slips } from '../../core/edit-distance.ts';
import type { Trouble } from '../answer.ts';
import { echo, orList } from '../readers/ask-back.ts';

const mostOffered = 3;
/** Codes looked through for a near one; the latest count. */
const mostLooked = 20_000;

/** Codes of the book within two slips of what was said, nearest first. */
const nearCodes = (said: string, codes: Iterable<string>): readonly string[] => {
  const key = lotKey(said);
  const most = key.length >= 5 ? 2 : 1;
  const found: { code: string; far: number }[] = [];
  let looked = 0;
  for (const code of codes) {
    looked += 1;
    if (looked > mostLooked) break;
    const far = slips(lotKey(code), key, most);
    if (far <= most) found.push({ code, far });
  }
  return found
    .sort((a, b) => a.far - b.far || (a.code < b.code ? -1 : 1))
    .slice(0, mostOffered)
    .map(({ code }) => code);
};

function* codesOf(items: Iterable<{ readonly lot: string }>): Generator<string> {
  for (const { lot } of items) yield lot;
}

const notFound = (what: string, said: string, near: readonly string[], list: string): Trouble => ({
  code: 'not-found',
  text: `There is no ${what} ${echo(said)} in this book. ${near.length > 0 ? `Did you mean ${orList(near)}?` : `Ask "${list}" to see what there is.`}`,
});

/** The batch of this code, or a trouble with the nearest codes. A lot of the shelf is told to be one. */
export const findBatch = (code: string, bench: Bench): Batch | Trouble => {
  const batch = bench.batches.get(lotKey(code));
  if (batch) return batch;
  const lot = bench.lots.get(lotKey(code));
  if (lot)
    return {
      code: 'not-found',
      text: `${lot.lot} is a lot on the shelf, not a batch. Ask "stock" or "list batches".`,
    };
  return notFound('batch', code, nearCodes(code, codesOf(bench.batches.values())), 'list batches');
};

/** The lot on the shelf of this code, or a trouble with the nearest codes. A batch is told to be one. */
export const findLot = (code: string, bench: Bench): Lot | Trouble => {
  const lot = bench.lots.get(lotKey(code));
  if (lot) return lot;
  const batch = bench.batches.get(lotKey(code));
  if (batch)
    return {
      code: 'not-found',
      text: `${batch.lot} is a batch of ${batch.name}, not a lot on the shelf. Ask "batch ${batch.lot}".`,
    };
  return notFound('lot', code, nearCodes(code, codesOf(bench.lots.values())), 'stock');
};

/** A lot on the shelf or a batch, whichever has this code. */
export const findEither = (code: string, bench: Bench): Lot | Batch | Trouble => {
  const found = bench.batches.get(lotKey(code)) ?? bench.lots.get(lotKey(code));
  if (found) return found;
  const near = nearCodes(code, [...codesOf(bench.batches.values()), ...codesOf(bench.lots.values())]);
  return notFound('lot or batch', code, near, 'list batches');
};
