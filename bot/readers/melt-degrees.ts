import { convertTemperature } from '../../core/units.ts';
import { anyWord, type Reading } from '../reading.ts';
import { takeItem } from './body.ts';
import type { Item } from './item.ts';
import { type Board, free } from './target.ts';

/** The hotter end of a range: what survives that survives the rest. */
const celsiusOf = (item: Item | undefined): number | undefined => {
  const value = item?.upTo ?? item?.value;
  return item?.unit === 'F' && value !== undefined ? convertTemperature(value, 'F', 'C') : value;
};

/** "Class starts at ten": an hour of the day. */
const atHour =
  /\b(?:starts?|starting|begins?|beginning|opens?|opening|shuts?|closes?|closing|ends?|ending|until|till|meet|meets|meeting|arrives?|arriving|comes?|coming|leaves?|leaving|class|lesson|doors|kicks? off|half past|quarter (?:past|to))(?: is| are)?(?: at| from| by)?(?: about| around)? $/i;
const asHour = /^ ?(?:o'?clock|[ap]\.?m\b|sharp|in the (?:morning|afternoon|evening))/i;
const isHour = (item: Item, text: string): boolean =>
  atHour.test(text.slice(0, item.from)) || asHour.test(text.slice(item.to));

/** "Can I melt shea at 30": a bare number after "at", with nothing of it to weigh. */
export const takeTemperatureAfterAt = (board: Board, reading: Reading): number | undefined => {
  const [item, second] = free(board).filter((each) => each.letter === 'n' && !isHour(each, reading.text));
  if (
    !item ||
    second ||
    !/\b(?:at|than|above|below|over|under|beyond|reach|to) (?:about |around )?$/i.test(
      reading.text.slice(0, item.from),
    )
  )
    return undefined;
  const unit = reading.settings.region === 'us' ? 'F' : 'C';
  return celsiusOf({ ...takeItem(board, item), unit });
};

/** "Between 30 and 35 °C", "35 or 40 degrees": two that belong together, of which the hotter counts. */
const takeSpan = (board: Board): void => {
  const at = board.items.findIndex((item, index) => {
    const [join, end] = [board.items[index + 1], board.items[index + 2]];
    if (item.letter !== 'n' || board.taken[index] || !end || !/^(?:and|or|to|-)$/.test(join?.word ?? ''))
      return false;
    return end.letter === 't' && (item.value ?? 0) < (end.value ?? 0);
  });
  if (at >= 0) takeItem(board, board.items[at] as Item);
};

/** Degrees the table of solids has: asked for together, they are no day to be survived. */
const tabled = new Set([20, 25, 30, 35, 40]);

export const takeTemperature = (board: Board): number | undefined => {
  takeSpan(board);
  const items = free(board).filter((each) => each.letter === 't');
  const [item] = items;
  // "It may reach 35 C. Will it survive 35 C?" says one temperature twice.
  if (!item || items.some((other) => celsiusOf(other) !== celsiusOf(item))) return undefined;
  for (const each of items) takeItem(board, each);
  return celsiusOf(item);
};

/** "Solids at 20, 30 and 40 degrees". */
export const takeTabled = (board: Board, reading: Reading): void => {
  const items = free(board).filter((each) => /[nt]/.test(each.letter));
  if (items.length < 2 || !anyWord(reading, ['solid', 'solids', 'firm', 'firmness', 'soft', 'hard'])) return;
  if (items.every((each) => tabled.has(celsiusOf(each) ?? 0)))
    for (const each of items) takeItem(board, each);
};

/** "will it survive 35", "35 degrees": a bare number where heat is asked about is in °C, in the US in °F. */
export const takeBareTemperature = (board: Board, reading: Reading): number | undefined => {
  if (
    reading.last?.request.survivesC === undefined &&
    !['survive', 'survives', 'surviving', 'stand', 'withstand', 'hold', 'at', 'degree', 'degrees'].some(
      (word) => reading.words.has(word),
    )
  )
    return undefined;
  const [item, second] = free(board).filter((each) => each.letter === 'n' && !isHour(each, reading.text));
  if (!item || second) return undefined;
  const unit = reading.settings.region === 'us' ? 'F' : 'C';
  return celsiusOf({ ...takeItem(board, item), unit });
};
