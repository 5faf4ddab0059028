import { ingredientById } from '../ingredients.ts';
import type { ExchangedLine } from '../melt/exchange.ts';
import { swap } from '../melt/swap.ts';
import { swapGramForGram } from '../melt/swap-gram-for-gram.ts';
import { meltsIn } from '../melt/swap-parts.ts';
import type { SwapNote, Swapped } from '../melt/swapped.ts';
import { fail, ok, type Result } from '../result.ts';
import { swapAgainstButters } from './butters-give-way.ts';
import { type Mix, merged, type Portion } from './mix.ts';
import type { Replaced, ReplaceProblem, Way } from './replaced.ts';
import { type Role, roleOf, roleOfId } from './role.ts';

interface Ask {
  readonly mix: Mix;
  readonly from: string;
  readonly to: string;
  readonly jobs: readonly [Role, Role];
  /** How much of `from` goes: 1 for all of it. */
  readonly share: number;
  /** True to change gram for gram, whatever that does to the firmness. */
  readonly plain: boolean;
}

const percentOf = (portions: readonly Portion[]): number =>
  portions.reduce((sum, { percent }) => sum + percent, 0);

const taken = ({ mix, from }: Ask): readonly Portion[] =>
  mix.portions.filter(({ ingredient, percent }) => ingredient === from && percent > 0);

/** An oil or butter that a herb was steeped in is steeped again; a wax or scent is not. */
const keepsHerb = ({ jobs: [, to] }: Ask): boolean => to === 'oil' || to === 'butter';

const incoming = (ask: Ask, percent: number): readonly Portion[] => {
  if (percent <= 0) return [];
  const gone = taken(ask);
  const whole = percentOf(gone);
  return gone.map((portion) => ({
    ingredient: ask.to,
    percent: (percent * portion.percent) / whole,
    ...(portion.infusedWith && keepsHerb(ask) ? { infusedWith: portion.infusedWith } : {}),
  }));
};

/** Exchanged lines as portions again: what stays keeps its herb, what comes in takes over that of its place. */
const portionsOf = (ask: Ask, lines: readonly ExchangedLine[]): readonly Portion[] =>
  merged(
    lines.flatMap(({ ingredient, line, percent }): readonly Portion[] => {
      const own = line === undefined ? undefined : ask.mix.portions[line];
      if (ingredient !== ask.to) return own ? [{ ...own, percent }] : [{ ingredient, percent }];
      const comes = incoming(ask, percent - (own?.percent ?? 0));
      return own ? [own, ...comes] : comes;
    }),
  );

const weights = (mix: Mix) =>
  mix.portions.map(({ ingredient, percent }) => ({ ingredient, weight: percent }));

type Made = Result<Replaced, ReplaceProblem>;

const bare = (ask: Ask, way: Way) => {
  const percent = percentOf(taken(ask));
  return {
    from: ask.from,
    to: ask.to,
    way,
    takenPercent: percent * ask.share,
    ...(ask.share < 1 ? { leftPercent: percent * (1 - ask.share) } : {}),
    notes: [],
  };
};

/** What is said of a wax on its own: not where some of the old one stays beside it. */
const aloneNotes: readonly SwapNote[] = ['not-as-only-wax', 'weak-alone-in-sticks'];

const ofSwapped = (ask: Ask, way: Way, made: Swapped): Replaced => ({
  ...bare(ask, way),
  mix: { ...ask.mix, portions: portionsOf(ask, made.lines) },
  percent: made.percent,
  ...(way === 'firmness-held' && ask.jobs[1] === 'wax' ? { range: made.range } : {}),
  ...(made.withFullMelt === undefined ? {} : { withFullMeltPercent: made.withFullMelt.percent }),
  notes: ask.share < 1 ? made.notes.filter((note) => !aloneNotes.includes(note)) : made.notes,
});

/** Gram for gram needs no model: each line keeps its share under another name. */
const inPlace = (ask: Ask): Made => {
  const percent = percentOf(taken(ask)) * ask.share;
  const portions = ask.mix.portions.flatMap((portion): readonly Portion[] => {
    if (portion.ingredient !== ask.from) return [portion];
    const { fresh, infusedWith, ...rest } = portion;
    const herb = infusedWith && keepsHerb(ask) ? { infusedWith } : {};
    const stays = ask.share < 1 ? [{ ...portion, percent: portion.percent * (1 - ask.share) }] : [];
    return [...stays, { ...rest, percent: portion.percent * ask.share, ingredient: ask.to, ...herb }];
  });
  return ok({ ...bare(ask, 'gram-for-gram'), mix: { ...ask.mix, portions: merged(portions) }, percent });
};

/** A liquid in the place of a butter: gram for gram, and the recipe's own wax makes good the firmness. */
const liquidForButter = (ask: Ask): Made => {
  const firmWith = waxOf(ask.mix);
  const carry = fail({ code: 'liquid-cannot-carry', ingredient: ask.to, celsius: 25 } as const);
  if (firmWith === undefined) return carry;
  const made = swapGramForGram(weights(ask.mix), ask.from, ask.to, { firmWith, share: ask.share });
  if (!made.ok) return made.problem.code === 'not-enough-oil' ? carry : made;
  const { addedPercent = 0 } = made.value;
  return ok({
    ...ofSwapped(ask, 'gram-for-gram-firmed', made.value),
    ...(addedPercent > 0 ? { firmedWith: firmWith, addedPercent } : {}),
  });
};

/** A butter held to the firmness within these shares of the old one is still the same recipe. */
const sameAmount = { low: 0.5, high: 2 } as const;

/** Largest wax of the recipe: what firms it. */
const waxOf = (mix: Mix): string | undefined =>
  mix.portions
    .filter(({ ingredient }) => roleOfId(ingredient) === 'wax')
    .toSorted((a, b) => b.percent - a.percent)[0]?.ingredient;

/**
 * A butter that is nearly liquid at 25 °C says little about firmness: held to it, a few percent, or more than there is
 * room for, would stand in for it. Such a butter changes gram for gram, and the wax that would hold the set is told.
 */
const butterInPlace = (ask: Ask): Made => {
  const made = inPlace(ask);
  const firmWith = waxOf(ask.mix);
  if (!made.ok || firmWith === undefined) return made;
  const firmed = swapGramForGram(weights(ask.mix), ask.from, ask.to, { firmWith, share: ask.share });
  const percent = firmed.ok ? (firmed.value.addedPercent ?? 0) : 0;
  return percent > 0 ? ok({ ...made.value, advice: { wax: firmWith, percent } }) : made;
};

const isButterSwap = ({ jobs }: Ask): boolean => jobs[0] === 'butter' && jobs[1] === 'butter';

/** Where there is no liquid oil the butters give way, if they can. */
const againstButters = (ask: Ask): Made | undefined => {
  const butters = swapAgainstButters(weights(ask.mix), ask.from, ask.to, ask.share);
  if (!butters) return undefined;
  return ok({
    ...bare(ask, 'butters-give-way'),
    mix: { ...ask.mix, portions: portionsOf(ask, butters.lines) },
    percent: butters.percent,
    notes: [
      ...(butters.percent === 0 ? (['already-firm'] as const) : []),
      ...(ask.jobs.includes('wax') ? (['make-a-trial-tin'] as const) : []),
    ],
  });
};

const held = (ask: Ask): Made => {
  const made = swap(weights(ask.mix), ask.from, ask.to, { share: ask.share });
  if (isButterSwap(ask)) {
    const ratio = made.ok ? made.value.ratioByWeight : 0;
    const gone = !made.ok && made.problem.code !== 'not-enough-oil' && made.problem.code !== 'no-liquid-oil';
    if (!gone && (ratio < sameAmount.low || ratio > sameAmount.high)) return butterInPlace(ask);
  }
  if (made.ok) return ok(ofSwapped(ask, 'firmness-held', made.value));
  if (made.problem.code !== 'no-liquid-oil') return made;
  return againstButters(ask) ?? made;
};

/** A herb is strained out or sits in an oil's note: its share of the tin is nothing. */
const herbFor = ({ mix, from, to }: Ask): Made => {
  const renamed = <L extends { readonly ingredient: string }>(line: L): L =>
    line.ingredient === from ? { ...line, ingredient: to } : line;
  return ok({
    from,
    to,
    way: 'herb',
    takenPercent: 0,
    percent: 0,
    notes: [],
    mix: {
      ...mix,
      strained: mix.strained.map(renamed),
      portions: mix.portions.map((portion) =>
        portion.infusedWith === from ? { ...renamed(portion), infusedWith: to } : renamed(portion),
      ),
    },
  });
};

const isHerbIn = (mix: Mix, id: string): boolean =>
  mix.strained.some(({ ingredient }) => ingredient === id) ||
  mix.portions.some(({ ingredient, infusedWith }) => ingredient === id || infusedWith === id);

const isFirm = (role: Role): boolean => role === 'wax' || role === 'butter';

/** May change gram for gram though the firmness moves: the same job, or a butter for another firm thing or an oil. */
const canBePlain = ({ jobs: [from, to] }: Ask): boolean =>
  from === to || (isFirm(from) && isFirm(to)) || (from === 'butter' && to === 'oil');

const byJobs = (ask: Ask): Made => {
  const [from, to] = ask.jobs;
  if (from === 'oil' && to === 'wax') return fail({ code: 'wax-cannot-be-oil', ingredient: ask.to });
  if (from === 'wax' && to === 'oil')
    return fail({ code: 'liquid-cannot-carry', ingredient: ask.to, celsius: 25 });
  return (ask.plain && canBePlain(ask)) || from === to ? sameJob(ask) : otherJob(ask);
};

/** Waxes and butters hold the firmness unless gram for gram was asked for; everything else changes in place. */
const sameJob = (ask: Ask): Made => (!ask.plain && isFirm(ask.jobs[0]) ? held(ask) : inPlace(ask));

const otherJob = (ask: Ask): Made => {
  const [from, to] = ask.jobs;
  if (from === 'butter' && to === 'oil') return liquidForButter(ask);
  if (isFirm(from) && isFirm(to)) return held(ask);
  if ((to === 'oil' && from !== 'herb') || (from === 'oil' && to === 'butter')) return inPlace(ask);
  return fail({ code: 'different-jobs', from: ask.from, to: ask.to });
};

const checked = (ask: Ask): Made => {
  const { mix, from, to, jobs } = ask;
  if (from === to) return fail({ code: 'same-ingredient', ingredient: from });
  const present = jobs[0] === 'herb' ? isHerbIn(mix, from) : taken(ask).length > 0;
  if (!present) return fail({ code: 'not-in-recipe', ingredient: from });
  if (jobs[0] === 'herb' && ask.share < 1) return fail({ code: 'not-in-part', ingredient: from });
  if (jobs[0] === 'herb') return jobs[1] === 'herb' ? herbFor(ask) : byJobs(ask);
  if (jobs[1] !== 'wax' && jobs[1] !== 'butter') return byJobs(ask);
  const alone = meltsIn(to);
  return alone.ok ? byJobs(ask) : alone;
};

/** How much of an ingredient a swap takes: a share of it (0 to 1), percent of the recipe, or grams of its batch. */
export interface Part {
  readonly amount: number;
  readonly unit: 'share' | 'percent' | 'g';
}

/** All of it, and as its job asks, unless said otherwise. */
export interface How {
  readonly part?: Part | undefined;
  readonly gramForGram?: boolean | undefined;
}

/** The part as a share of the ingredient, at most all of it; grams need a recipe that is written in amounts. */
export const shareOf = (mix: Mix, id: string, part: Part): number => {
  if (part.unit === 'share') return Math.min(1, part.amount);
  const own = percentOf(mix.portions.filter(({ ingredient }) => ingredient === id));
  const percent = part.unit === 'percent' ? part.amount : (100 * part.amount) / (mix.batchG ?? 100);
  // Rounding: 20 of 20 % is all of it.
  return own <= 0 || percent >= own * 0.9999 ? 1 : percent / own;
};

/**
 * Takes `from`, or the part of it that is said, out of a mix and puts `to` in its place, as its job asks: firmness at
 * 25 °C holds where waxes and butters change places; liquids, scent and additives change gram for gram. `from` and
 * `to` are ingredient ids.
 */
export const replace = (mix: Mix, fromId: string, toId: string, how: How = {}): Made => {
  const [out, into] = [ingredientById(fromId), ingredientById(toId)];
  if (!out) return fail({ code: 'unknown-ingredient', ingredient: fromId });
  if (!into) return fail({ code: 'unknown-ingredient', ingredient: toId });
  const share = how.part ? shareOf(mix, out.id, how.part) : 1;
  const plain = how.gramForGram === true;
  return checked({ mix, from: out.id, to: into.id, jobs: [roleOf(out), roleOf(into)], share, plain });
};
