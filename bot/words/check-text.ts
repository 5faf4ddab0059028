import { watchedThing } from '../../core/check/composition.ts';
import { dropsIn, mostDrops } from '../../core/check/cut.ts';
import type { Cut, Finding } from '../../core/check/finding.ts';
import type { Compared } from '../../core/check/limits.ts';
import { isScent } from '../../core/check/other-findings.ts';
import type { Warning } from '../answer.ts';
import { brief } from './numbers.ts';
import { shortName, warningOf } from './warnings.ts';

/** Name of an ingredient of the library or of a thing that is only watched for. */
export const nameOf = (id: string): string => watchedThing(id)?.name ?? shortName(id);

const names = (ids: readonly string[]): string => [...new Set(ids)].map(nameOf).join(', ');

const capital = (text: string): string => text.charAt(0).toUpperCase() + text.slice(1);

/** Shares as small as 0.00058 % keep their digits. */
export const share = (percent: number): string => `${brief(percent)} %`;

const statusText: Readonly<Record<string, string>> = {
  read: 'read',
  'read-secondary': 'read second-hand',
  memory: 'from memory',
  practice: 'common practice, no source',
  'none-found': 'no figure found',
};

export const howSeen = (status: string): string => statusText[status] ?? status;

const kindText: Readonly<Record<string, string>> = {
  law: 'law',
  'law-prohibited': 'law',
  industry: 'industry standard',
  guidance: 'guidance',
  opinion: 'expert opinion',
  practice: 'practice',
  derived: 'reckoned from the law',
};

/** A place without its remarks. */
const shortCite = (cite: string): string => cite.replace(/\s*\([^()]*\)$/, '').split(';')[0] ?? cite;

/** Only figures that were read may be called the limit. */
const limitText = (row: Compared): string => {
  const figure = share(row.limitPercent);
  const where = `${kindText[row.kind] ?? row.kind}, ${howSeen(row.status)}: ${shortCite(row.cite)}`;
  return row.status === 'memory'
    ? `the limit is about ${figure} (${where})`
    : `the limit is ${figure} (${where})`;
};

const certificate = (rows: readonly Compared[]): string =>
  rows.some((row) => row.status === 'memory' || !row.surelyOver)
    ? " Ask the supplier's certificate for the real figure."
    : '';

/** What a batch is reckoned on when the recipe gives shares only. */
export interface Batch {
  readonly grams: number;
  readonly said: boolean;
  /** A share of one scent was asked about, and no recipe. */
  readonly alone?: boolean;
}

const inBatch = (grams: number, { grams: whole, said }: Batch): string =>
  `${brief(grams)} g in ${said ? 'this' : 'a'} ${brief(whole)} g batch`;

const dropText = (cut: Cut, { grams }: Batch): string => {
  if (!isScent(cut.ingredient)) return '';
  const now = dropsIn((cut.nowPercent / 100) * grams, cut.ingredient);
  const most = mostDrops((cut.mostPercent / 100) * grams, cut.ingredient);
  const before = now.low === now.high ? `${now.low}` : `${now.low} to ${now.high}`;
  if (most < 1) return `, less than one drop instead of ${before}: leave it out or make more`;
  return `, ${most} ${most === 1 ? 'drop' : 'drops'} instead of ${before}`;
};

const cutText = (cut: Cut, batch: Batch): string => {
  if (cut.mostPercent <= 0) return `Leave out the ${nameOf(cut.ingredient)}.`;
  const grams = (cut.mostPercent / 100) * batch.grams;
  return `${share(cut.mostPercent)} ${nameOf(cut.ingredient)} would be within it (${inBatch(grams, batch)}${dropText(cut, batch)}).`;
};

/** The change that would clear a finding. */
const cutsText = (cuts: readonly Cut[], batch: Batch): string =>
  cuts.map((cut) => ` ${cutText(cut, batch)}`).join('');

/** What else a doubtful name may be, and why it matters. */
const kin: readonly (readonly [RegExp, string])[] = [
  [/cedar/i, ': Atlas or Virginian cedarwood, or thuja (white cedar), which does not belong on lips'],
  [/chamomile|camomile/i, ': German or Roman chamomile, or a mayweed, which can blister skin'],
  [/verbena/i, ', and the oil of lemon verbena is prohibited in the EU'],
  [/bay|laurel/i, ', and oil of laurel seed is prohibited in the EU'],
  [/marigold|tagetes/i, ': pot marigold (Calendula), or Tagetes, which is restricted or prohibited'],
];
const kinOf = (said: string): string =>
  kin.find(([pattern]) => pattern.test(said))?.[1] ?? ', and some are restricted or prohibited';

type Of<C extends Finding['code']> = Finding extends infer F
  ? F extends { readonly code: infer D }
    ? C extends D
      ? F
      : never
    : never
  : never;
type RowFinding = Extract<Finding, { readonly rows: unknown }>;

const rowsText = ({ rows, cuts }: RowFinding, batch: Batch): string => {
  const [worst, ...others] = rows;
  const from = worst.from.some((id) => !worst.what.toLowerCase().includes(nameOf(id)))
    ? ` (from ${names(worst.from)})`
    : '';
  const also = others
    .filter((row) => row.limitPercent !== worst.limitPercent || row.what !== worst.what)
    .slice(0, 2)
    .map(
      (row) => `; ${row.what === worst.what ? '' : `${row.what} ${share(row.percent)}: `}${limitText(row)}`,
    )
    .join('');
  return `${worst.what} ${share(worst.percent)}${from}: ${limitText(worst)}${also}.${cutsText(cuts, batch)}${certificate(rows)}`;
};

const comingText = (row: Compared, cuts: readonly Cut[], batch: Batch): string =>
  `From ${row.appliesFrom ?? 'a later day'} ${row.what} may be at most ${share(row.limitPercent)} (law, ${howSeen(row.status)}: ${shortCite(row.cite)}); this has ${share(row.percent)}.${cutsText(cuts, batch)}`;

const bannedText = ({ rows }: RowFinding): string => {
  const [row] = rows;
  const law = row.kind === 'law-prohibited' || row.kind === 'law';
  const verb =
    row.product === 'lip colour'
      ? 'is not a colour allowed on lips'
      : law
        ? 'may not be in it'
        : 'does not belong on lips';
  const why = row.note ? `: ${row.note}` : '';
  return `${capital(names(row.from))} ${verb}${why} (${kindText[row.kind] ?? row.kind}, ${howSeen(row.status)}: ${shortCite(row.cite)}). Leave it out.`;
};

const childText: Readonly<Record<Of<'not-for-children'>['why'], string>> = {
  breathing: 'near the face of a child under about 3 it can stop the breath (from memory)',
  salicylate: 'methyl salicylate is not for children under 6 (EU entry 324, read)',
  honey: 'not for babies under 12 months (from memory)',
  other: 'not for small children (handbook, from memory)',
};

const sentences: { [C in Finding['code']]: (finding: Of<C>, batch: Batch) => string } = {
  'over-limit': rowsText,
  'limit-coming': (finding, batch) => comingText(finding.rows[0], finding.cuts, batch),
  prohibited: bannedText,
  'not-for-lips': bannedText,
  'aroma-too-high': ({ percent, usualPercent, cuts }, batch) =>
    `Scent comes to ${share(percent)}, ${percent > 2 * usualPercent ? 'far ' : ''}over the usual most of ${usualPercent} % on lips (common practice, no source).${cutsText(cuts, batch)}`,
  'light-sensitising': ({ sum, oils, cuts }, batch) =>
    `${capital(names(oils))} can make lips burn in the sun: shares of their limits add up to ${brief(sum)}, and 1 is the most (handbook, read second-hand).${cutsText(cuts, batch)}`,
  'light-herb': ({ ingredient }) =>
    `${capital(nameOf(ingredient))} makes skin sensitive to light (from memory); lips see a lot of sun. Take another herb.`,
  'keep-off-lips': ({ ingredient, note }) =>
    `${capital(nameOf(ingredient))} does not belong on lips${note ? `: ${note}` : ''}. Leave it out.`,
  'brings-water': ({ ingredients }) =>
    ingredients.every((id) => id === 'glycerin')
      ? `${capital(names(ingredients))} mixes with no oil or wax and draws water: it beads and sweats out. Leave it out.`
      : `${capital(names(ingredients))} brings water: mould and rancidity follow. ${ingredients.every(watchedThing) ? 'Leave it out.' : 'Leave it out, or use it dried.'}`,
  'wrong-species': ({ said }) =>
    `"${said}" is more than one plant${kinOf(said)}. Read the Latin name on the bag.`,
  'peanut-protein': () =>
    'Peanut oil may carry at most 0.5 ppm peanut protein (law, read: Reg (EU) 2017/2228): only refined oil with a certificate.',
  'not-for-children': ({ ingredients, why }) => `${capital(names(ingredients))}: ${childText[why]}.`,
  pregnancy: ({ ingredients }) =>
    `Pregnancy: ${ingredients.length > 0 ? `leave out ${names(ingredients)} (from memory). ` : ''}I have no figures that clear a balm for it; ask a midwife or doctor.`,
  pets: () => 'Keep scented balm away from cats and dogs (from memory).',
  'unknown-scent': ({ ingredients }) =>
    `I cannot see into ${names(ingredients)}: ask the supplier for the lip (Category 1) limit and the allergen list.`,
  'dose-over-usual': ({ ingredient, percent, usualPercent }) =>
    `${capital(nameOf(ingredient))} ${share(percent)} is over its usual most of ${share(usualPercent)} (common practice). ${share(usualPercent)} would do.`,
  'ask-certificate': ({ what }) =>
    `No lip figure found for ${what.join('; ')}: the supplier's certificate decides.`,
  hazard: ({ hazard }) => warningOf(hazard).text,
};

const codes: Partial<Record<Finding['code'], string>> = {
  'light-herb': 'light-sensitising',
  'keep-off-lips': 'not-for-lips',
  'peanut-protein': 'nut-allergen',
};

/** In a recipe one scent over its own usual share is another thing than all scent together over the most. */
const codeOf = (finding: Finding, { alone }: Batch): string => {
  if (finding.code !== 'hazard') return codes[finding.code] ?? finding.code;
  const { hazard } = finding;
  return hazard.code === 'aroma-over-usual' && !alone ? hazard.code : warningOf(hazard).code;
};

/** One finding as a warning: what it is, against what, and what would clear it. */
export const findingWarning = (finding: Finding, batch: Batch): Warning => ({
  code: codeOf(finding, batch),
  text: (sentences[finding.code] as (of: Finding, batch: Batch) => string)(finding, batch),
});
