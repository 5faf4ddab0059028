import { type Batch, type Lot, tinsLeft } from '../../core/bench/state.ts';
import type { TracedGone } from '../../core/bench/trace.ts';
import { countText } from './batch-text.ts';
import { shortName } from './warnings.ts';

/** "olive oil with calendula" for an oil infused in the house. */
export const lotName = ({ ingredient, herbs }: Lot): string =>
  herbs ? `${shortName(ingredient)} with ${herbs.map(shortName).join(' and ')}` : shortName(ingredient);

/** One word for the containers of several batches: their own when they are alike. */
export const containerOf = (batches: readonly Batch[]): string => {
  const words = new Set(batches.map(({ container }) => container));
  const [only] = words;
  return words.size === 1 && only ? only : 'container';
};

const hows: Readonly<Record<TracedGone['how'], string>> = {
  given: 'given',
  sold: 'sold',
  used: 'used here',
  wasted: 'thrown away',
  kept: 'kept as a sample',
};

/** "2026-11-25: 6 given to Spring fair". */
export const goneText = ({ on, count, how, to }: TracedGone): string =>
  `${on}: ${count} ${hows[how]}${to ? ` to ${to}` : ''}`;

/** What a batch still has in the house. */
export const hereText = (batch: Batch): string => countText(Math.max(0, tinsLeft(batch)), batch.container);
