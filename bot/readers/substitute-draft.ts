import { defined } from '../../core/defined.ts';
import type { RecipeLine } from '../../core/recipe.ts';
import type { Trouble } from '../answer.ts';
import { anyWord, type Reading } from '../reading.ts';
import { shortName } from '../words/warnings.ts';
import { unknownIngredient } from './ask-back.ts';
import type { Item } from './item.ts';
import type { Wish } from './scale-wish.ts';
import type { ChangeBody } from './substitute-body.ts';
import { earlierIn, lastChange, type Swap, swapIn } from './substitute-last.ts';
import { type Settled, sameJob, settleIn, settleOut } from './substitute-names.ts';
import type { PartRead } from './substitute-part.ts';
import type { Phrase } from './substitute-phrases.ts';
import { howMuchOf, onlyAll, replacesWhich } from './substitute-troubles.ts';
import type { Withouts } from './substitute-without.ts';

/** A request in the making. */
export interface Draft {
  readonly request: Wish;
  readonly assumed: readonly string[];
  readonly trouble?: Trouble;
}

export interface Said {
  readonly reading: Reading;
  readonly withouts: Withouts;
  readonly body: ChangeBody;
  /** What the recipe is made of, when it is known. */
  readonly own: readonly string[] | undefined;
  /** How much of an ingredient is exchanged, when the message says so. */
  readonly part?: PartRead | undefined;
}

/** Swaps made so far in this conversation, on the same recipe. */
export const swapsBefore = ({ reading, body }: Said): readonly Swap[] => {
  const last = body.before ? lastChange(reading) : undefined;
  const swap = swapIn(last);
  return swap ? [...earlierIn(last), swap] : [];
};

const withoutBefore = ({ reading, body }: Said): readonly string[] => {
  const last = body.before ? lastChange(reading)?.without : undefined;
  return Array.isArray(last) ? (last as readonly string[]) : [];
};

export const linesOf = (reading: Reading, body: ChangeBody): readonly RecipeLine[] | undefined =>
  body.recipe === undefined ? body.lines : reading.recipes.exact(body.recipe)?.lines;

export const bodyOf = ({ recipe, lines, make }: ChangeBody): Wish => ({
  ...(recipe === undefined ? {} : { recipe }),
  ...(lines ? { lines } : {}),
  ...(Object.keys(make).length > 0 ? { make } : {}),
});

const draftOf = (request: Wish, ...settled: readonly Settled[]): Draft => {
  const trouble = settled.find((each) => each.trouble)?.trouble;
  return {
    request,
    assumed: settled.flatMap(({ assumed }) => (assumed ? [assumed] : [])),
    ...(trouble ? { trouble } : {}),
  };
};

const settledWithouts = ({
  withouts,
  own,
}: Said): { ids: readonly string[]; settled: readonly Settled[] } => {
  const settled = withouts.names.map((item) => settleOut(item, own));
  return { ids: settled.flatMap(({ id }) => (id === undefined ? [] : [id])), settled };
};

const withoutField = (said: Said, ids: readonly string[]): Wish => {
  const without = [...new Set([...withoutBefore(said), ...said.withouts.kinds, ...ids])];
  return without.length > 0 ? { without } : {};
};

const earlierField = (swaps: readonly Swap[]): Wish => (swaps.length > 0 ? { earlier: swaps } : {});

/** "Swap A for B" after a swap goes on from there; after B came in, "swap A for C" puts C where B is. */
const swapDraft = (said: Said, from: Settled, to: Settled, part?: PartRead): Draft => {
  const before = swapsBefore(said);
  const last = before.at(-1);
  const again = last?.from === from.id ? last : undefined;
  const chain = again ? before.slice(0, -1) : before;
  if (part && !part.part) return { request: {}, assumed: [], trouble: howMuchOf(shortName(from.id ?? '')) };
  const { ids, settled } = settledWithouts(said);
  const request = {
    ...bodyOf(said.body),
    from: from.id,
    to: to.id,
    ...defined({ part: part?.part ?? again?.part }),
    ...earlierField(chain),
    ...withoutField(
      said,
      ids.filter((id) => id !== from.id),
    ),
  };
  const drafted = draftOf(request, from, to, ...settled);
  return { ...drafted, assumed: [...drafted.assumed, ...shareAssumed(from, to, part)] };
};

/** "5 % of the shea" is a share of the shea; many mean percent of the recipe, so it is said. */
const shareAssumed = (from: Settled, to: Settled, part: PartRead | undefined): readonly string[] => {
  if (!part?.ofIt || !part.part || from.id === undefined || to.id === undefined) return [];
  const said = `${Number((part.part.amount * 100).toFixed(2))} %`;
  return [
    `I took ${said} as a share of the ${shortName(from.id)}. For ${said} of the whole recipe: "swap ${said} ${shortName(from.id)} for ${shortName(to.id)}".`,
  ];
};

/** Words that ask for something not named: "which wax can replace beeswax", "another oil instead of …". */
const openWords =
  `which what another other different plant vegan vegetable some any cheap cheaper cheapest`.split(' ');

const whatDraft = (said: Said, what: Settled): Draft => {
  const { ids, settled } = settledWithouts(said);
  const { make: _make, ...body } = bodyOf(said.body);
  return draftOf({ ...body, replaces: what.id, ...withoutField(said, ids) }, what, ...settled);
};

/** The part that was said of these names. */
const partFor = ({ part }: Said, ...names: readonly Item[]): PartRead | undefined =>
  part && names.includes(part.of) ? part : undefined;

const putsIn = /\b(?:instead|with|use|using|put|swap|replace|try|take)\b/i;

/** "What about candelilla instead?": for what came in last, or for the only line that does the same job. */
const loneDraft = (said: Said, item: Extract<Phrase, { kind: 'lone' }>['to']): Draft | undefined => {
  const last = swapIn(said.body.before ? lastChange(said.reading) : undefined);
  const asked = said.body.before ? lastChange(said.reading)?.replaces : undefined;
  const out = last?.from ?? (typeof asked === 'string' ? asked : undefined);
  const to = settleIn(item, out ?? '');
  if (to.id === undefined) return draftOf({}, to);
  const part = partFor(said, item);
  // "And the cocoa butter?" of a recipe that has it asks the same of another line; "with cocoa butter?" puts it in.
  if (asked !== undefined && said.own?.includes(to.id) && !putsIn.test(said.reading.text))
    return whatDraft(said, to);
  if (out !== undefined) return swapDraft(said, { id: out }, to, part);
  if (!said.own) return undefined;
  const same = sameJob(to.id, said.own);
  const [only] = same;
  if (only === undefined || same.length > 1)
    return { request: {}, assumed: [], trouble: replacesWhich(to.id, same) };
  return swapDraft(said, { id: only }, to, part);
};

/** "The shop had no cocoa butter. Is there another one I could use instead?" asks what would do. */
const asksForAnother = (text: string): boolean =>
  /\b(?:had|has|have|got|there(?:'s| is| was)|stocks?|sells?|was|is) no\b/i.test(text) &&
  /\b(?:another|other|something|anything|what|which)\b[^.?!]{0,60}\b(?:instead|else|use|replace|work|do|substitute)\b/i.test(
    text,
  );

export const withoutDraft = (said: Said, gone: readonly Settled[] = []): Draft => {
  const asked = said.body.before ? lastChange(said.reading)?.replaces : undefined;
  // "And vegan?" after "what can replace beeswax" asks the same of fewer.
  if (typeof asked === 'string' && gone.length === 0) return whatDraft(said, { id: asked });
  const { ids, settled } = settledWithouts(said);
  const [lacked, second] = ids;
  if (lacked !== undefined && second === undefined && gone.length === 0 && asksForAnother(said.reading.text))
    return whatDraft({ ...said, withouts: { kinds: [], names: [] } }, { id: lacked });
  const goneIds = gone.flatMap(({ id }) => (id === undefined ? [] : [id]));
  const before = swapsBefore(said);
  const swap = before.at(-1);
  const request = {
    ...bodyOf(said.body),
    ...(swap ?? {}),
    ...earlierField(before.slice(0, -1)),
    ...withoutField(said, [...ids, ...goneIds]),
  };
  return draftOf(request, ...settled, ...gone);
};

type SwapPhrase = Extract<Phrase, { kind: 'swap' }>;

/** "Substitute the shea for mango butter" in a recipe that has shea and no mango. */
const isOtherWay = ({ own }: Said, { from, to }: SwapPhrase): boolean => {
  const has = ({ ingredients = [] }: SwapPhrase['to']): boolean =>
    ingredients.some((id) => own?.includes(id));
  return own !== undefined && has(to) && !has(from);
};

const turnedDraft = (said: Said, { from, to }: SwapPhrase): Draft => {
  const out = settleOut(to, said.own);
  const draft = swapDraft(said, out, settleIn(from, out.id ?? ''));
  return {
    ...draft,
    assumed: [
      ...draft.assumed,
      `I took ${shortName(out.id ?? '')} as what goes out: it is what the recipe has.`,
    ],
  };
};

export const phraseDraft = (said: Said, phrase: Phrase): Draft | undefined => {
  const { own, reading } = said;
  switch (phrase.kind) {
    case 'partly':
      return { request: {}, assumed: [], trouble: onlyAll };
    case 'strange':
      return { request: {}, assumed: [], trouble: unknownIngredient(phrase.words) };
    case 'what':
      return whatDraft(said, settleOut(phrase.what, own));
    case 'gone':
      return withoutDraft(said, [settleOut(phrase.gone, own)]);
    case 'lone':
      return loneDraft(said, phrase.to);
    case 'swap': {
      const from = settleOut(phrase.from, own);
      if (phrase.eitherWay && isOtherWay(said, phrase)) return turnedDraft(said, phrase);
      if (phrase.to.generic && anyWord(reading, openWords)) return whatDraft(said, from);
      const { part } = said;
      const told = partFor(said, phrase.from) ?? (part?.fraction ? partFor(said, phrase.to) : undefined);
      return swapDraft(said, from, settleIn(phrase.to, from.id ?? ''), told);
    }
  }
};

const withoutPart = ({ part: _part, gramForGram: _gram, ...rest }: Wish): Wish => rest;

/** A second and third swap of one message come after the first. */
export const withFurther = (said: Said, draft: Draft, further: readonly SwapPhrase[]): Draft => {
  let whole = draft;
  for (const phrase of further) {
    const next = phraseDraft(said, phrase);
    const swap = swapIn(whole.request);
    if (whole.trouble || !next || !swap) return whole;
    const { from, to } = next.request;
    whole = {
      ...next,
      request: { ...withoutPart(whole.request), from, to, earlier: [...earlierIn(whole.request), swap] },
      assumed: [...whole.assumed, ...next.assumed],
    };
  }
  return whole;
};
