import { type Claim, claim, type Reading, refuse } from '../reading.ts';
import type { SettingsWish } from '../topics/settings.ts';
import { leftover } from './leftover.ts';
import { type FoundAt, readCap, readZone } from './settings-bench.ts';
import { readDecimal } from './settings-decimal.ts';
import { readLoss, readStep } from './settings-numbers.ts';
import { type Found, readCurrency, readRegion, readRole, readUnits } from './settings-words.ts';
import { boardOf, take } from './target.ts';

const showing =
  /^\W*(?:(?:please|can|could|you|i|we|me|us|the|show|see|view|list|what|what's|whats|are|is|our|my|current|group|group's|open|display|all|read|tell|check|to|want|let|look|at|how|have|set|hi|hello|hey|pipkin|get|give)\b[\s,'!]*)*(?:settings?|preferences|set-up|setup)\W*(?:please|pls|thanks|thank you|now|of|for|this|group|our|the|are|we|using|right|currently|\W)*$/i;
const asking =
  /^\W*(?:(?:what|which|what's|whats|hi|hello|hey|pipkin|please)\b[\s,']*)+(?:is\s+|are\s+)?(?:our\s+|the\s+|my\s+|current\s+)*(?:region|units?|currency|default loss|loss allowance|time ?zone)\b(?:\W|are|is|we|in|using|set|do|have|use|our|current|to|it|please)*$|^\W*(?:tell me |so |and )*how (?:is|are) (?:everything|you|things|this|we)(?: all)? set[ -]?up(?: for us| here| now)?\W*$/i;

/** "Never more than 6 months" says no to nothing. */
const atMost = /\bnever (?:more|longer|older|over)\b|\b(?:we|i) never keep\b/i;
const refusing = /\b(?:don't|dont|do not|never)\b/i;
/** Words of other topics: a message with one of these is about more than a setting. */
const elsewhere = /\b(?:recipe|workshop|label|swap|melt|cost|stock|batch|expire|remind)\b/i;
/** Longest message that can be a change of settings, in characters. */
const longest = 300;

/** Words that belong to changing settings. Anything else at the heart of the message makes it another request. */
export const settingsWords = new Set(
  `region country rules set setting settings change switch update units unit use prefer work weigh weights weight metric imperial currency money
  prices scale scales balance reads reading read goes go weighs step steps accurate accuracy precise precision resolution shows measures down
  only nearest loss losses waste wastage allowance default usual usually always normal from now allow everyone everybody anyone anybody all
  may can write edit save record role roles members member people those writers writer writing clear any live based located group book whole
  everything display euro euros sterling pounds dollars dollar us american canadian australian swiss francs eu europe european union uk gb britain
  great united kingdom england scotland wales northern ireland usa states america canada australia au germany france spain italy portugal
  netherlands austria belgium sweden denmark poland kitchen new old decimals digits ours make makes then so were
  numbers number figures with as sign separator written amounts answers show
  pay live put by time just writing role british house nothing kept keep keeps long longer here ours after pouring never hundredths tenths thousandths hundredth tenth thousandth resolves resolve count trade sell deal sold should able right people let gram grams everything's
  back return go again percent per cent instead reckon count expect calculate lose losing batches pours pour standard please`.split(
    /\s+/,
  ),
);

/** Values of the settings themselves: amounts, units, "no loss". */
const value = /[g%nuNLpd]/;

const strangers = (reading: Reading, wish: SettingsWish): boolean => {
  const board = boardOf(reading.items);
  for (const [index, item] of board.items.entries())
    if (value.test(item.letter)) take(board, index, index + 1);
  const own = `${wish.writerRole ?? ''} ${wish.currency ?? ''}`.toLowerCase().match(/[\p{L}\p{N}]+/gu) ?? [];
  return leftover(board, new Set([...settingsWords, ...own]), true).blocking.length > 0;
};

const namesSomething = (reading: Reading): boolean => reading.items.some((item) => /[Ric]/.test(item.letter));

/** The message without what has been read already: its items left out, its letters blanked. */
const withoutPlaces = (reading: Reading, places: readonly Required<FoundAt>['place'][]): Reading => ({
  ...reading,
  items: reading.items.filter((item) => !places.some(({ from, to }) => item.from < to && item.to > from)),
  corrected: places.reduce(
    (text, { from, to }) => text.slice(0, from) + ' '.repeat(to - from) + text.slice(to),
    places.length > 0 ? reading.text : reading.corrected,
  ),
});

const changes = (whole: Reading): Claim | undefined => {
  const own: readonly FoundAt[] = [readZone(whole), readCap(whole), readDecimal(whole)];
  const places = own.flatMap(({ place }) => place ?? []);
  const reading = withoutPlaces(whole, places);
  const text = reading.corrected;
  const found: readonly Found[] = [
    readRole(text),
    readStep(reading),
    readLoss(reading),
    readRegion(text),
    readUnits(text),
    readCurrency(text),
    ...own,
  ];
  const trouble = found.find((each) => each.trouble)?.trouble;
  if (trouble) return refuse(trouble, 2.4);
  const wish: SettingsWish = Object.assign({}, ...found.map((each) => each.wish));
  return Object.keys(wish).length === 0 || namesSomething(reading) || strangers(reading, wish)
    ? undefined
    : claim(wish, 3.2);
};

/** What a message would mean to the group's settings: to show them, or to change some. */
export const claimSettings = (reading: Reading): Claim | undefined => {
  const text = reading.corrected;
  if (text.length > longest) return undefined;
  if (showing.test(text) || asking.test(text)) return claim({}, 2.6);
  return refusing.test(text.replace(atMost, ' ')) || elsewhere.test(text) ? undefined : changes(reading);
};
