import { plusMonths } from '../../core/bench/days.ts';
import type { Shares } from '../../core/check/shares.ts';
import { type LabelInput, labelOf } from '../../core/label/label.ts';
import type { LabelText } from '../../core/label/sheet/face.ts';
import type { Region } from '../../core/settings.ts';
import type { Answer, NextStep, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { LabelWish } from '../topics/label.ts';
import { giveWay } from '../turns.ts';
import { labelFigures } from './label-figures.ts';
import { assumedTexts, holdText, missingBlock, type Settled, sourceText, warningsOf } from './label-notes.ts';
import { printSheet, sheetAsked, sheetLines } from './label-sheet.ts';
import { type LabelSubject, labelShares, labelSubject, netSaid } from './label-subject.ts';
import { identityOf, labelText, type TextInput } from './label-text.ts';
import { plain } from './numbers.ts';

const isoDay = (at: number): string => new Date(at).toISOString().slice(0, 10);

const shortNames: Readonly<Record<Region, string>> = {
  eu: 'EU',
  uk: 'Great Britain',
  us: 'US',
  ca: 'Canada',
  au: 'Australia',
};

/** Months an opened tin touched by fingers keeps, for the open jar (common practice, no source). */
const openMonths = 12;

const optional = <K extends string, V>(key: K, value: V | undefined): Partial<Record<K, V>> =>
  value === undefined ? {} : ({ [key]: value } as Record<K, V>);

const isInEnglish = (country: string | undefined): boolean => country === 'ireland' || country === 'malta';

const bestBeforeSaid = (wish: LabelWish, { batch }: LabelSubject, madeOn: string): string | undefined =>
  wish.bestBefore ??
  (wish.keepsMonths === undefined ? batch?.bestBefore : plusMonths(madeOn, wish.keepsMonths));

const inputOf = (
  wish: LabelWish,
  subject: LabelSubject,
  shares: Shares,
  place: { region: Region; on: string; madeOn: string; name: string | undefined },
): LabelInput => {
  const { region, on, madeOn, name } = place;
  const french = region === 'ca' && !wish.englishOnly;
  return {
    lines: shares.lines,
    strained: shares.strained,
    region,
    on,
    madeOn,
    use: wish.use ?? 'leave-on',
    analyses: wish.analyses ?? [],
    scentAsAroma: wish.scentAsAroma ?? false,
    has: {
      identity: identityOf(name).clear,
      lot: wish.lot !== undefined || subject.batch !== undefined,
      contact: wish.contact !== undefined,
      languages: french ? ['en', 'fr'] : ['en'],
      memberLanguage: isInEnglish(wish.country),
      ...optional('maker', wish.person ?? (wish.maker === undefined ? undefined : ('there' as const))),
    },
    ...optional('soldOn', wish.soldOn),
    ...optional('bestBefore', bestBeforeSaid(wish, subject, madeOn)),
    ...optional('net', netSaid(wish, subject, region).net),
  };
};

const netTrouble = (grams: number): Trouble => ({
  code: 'out-of-range',
  text: `A tin with ${plain(grams)} g is no small tin I can label (0.3 g to 1000 g). Try "12 g".`,
});

const order = (wish: LabelWish, madeOn: string): Trouble | undefined =>
  wish.bestBefore !== undefined && wish.bestBefore <= madeOn
    ? {
        code: 'out-of-range',
        text: `Best before ${wish.bestBefore} is not after the day of making, ${madeOn}. Say "made 2026-11-25, best before 2027-05-17".`,
      }
    : undefined;

const settle = (wish: LabelWish, tools: Tools): Settled | Trouble => {
  const region = wish.region ?? tools.settings.region;
  const subject = labelSubject(wish, tools);
  if ('code' in subject) return subject;
  const shares = labelShares(subject, region);
  if ('code' in shares) return shares;
  const madeOn = wish.madeOn ?? subject.batch?.madeOn ?? isoDay(tools.at);
  const on = wish.on ?? isoDay(tools.at);
  const name = wish.name ?? subject.name;
  const wrong = order(wish, madeOn);
  if (wrong) return wrong;
  const input = inputOf(wish, subject, shares, { region, on, madeOn, name });
  const label = labelOf(input);
  if (!label.ok) return netTrouble(label.problem.grams);
  const printed: TextInput = {
    region,
    label: label.value,
    dateGiven: input.bestBefore !== undefined,
    french: input.has.languages.includes('fr'),
    openMonths,
    ...optional('name', name),
    ...optional('lot', wish.lot ?? subject.batch?.lot),
    ...optional('maker', wish.maker),
    ...optional('contact', wish.contact),
  };
  const text = labelText(printed);
  const net = netSaid(wish, subject, region);
  const regionChosen = wish.region !== undefined || tools.settings.regionChosen === true;
  const place = { region, regionChosen, on, madeOn, name };
  return { wish, subject, shares, ...place, label: label.value, text, printed, net };
};

const asPrinted = ({ title, subtitle, net, small }: LabelText): readonly string[] => [
  [title, subtitle, net].filter((part) => part !== undefined).join(' · '),
  ...small.map(({ text, blank, jar }) => (blank ? `${text} ________` : jar ? `${text} (open jar)` : text)),
];

const nextSteps = ({ wish, region, name }: Settled): readonly NextStep[] => [
  ...(region === 'us' ? [] : [{ label: 'For the US', say: 'and for the US?' }]),
  ...(wish.strip ? [] : [{ label: 'Strip round the tin', say: 'strips for a tin 48 mm x 15 mm' }]),
  ...(name !== undefined && wish.recipe !== undefined
    ? [{ label: 'Check the recipe', say: `check "${wish.recipe}"` }]
    : []),
];

/** Answers with the wording of a label, what is missing on it, and a sheet to print. */
export const answerLabel = async (wish: LabelWish, tools: Tools): Promise<Answer | Trouble> => {
  await giveWay();
  const settled = settle(wish, tools);
  if ('code' in settled) return settled;
  await giveWay();
  const { region, text, subject } = settled;
  const asked = sheetAsked(wish, region);
  if ('code' in asked) return asked;
  const printed = await printSheet(text, asked, {
    region,
    at: tools.at,
    ...optional('tins', wish.tins ?? subject.batch?.count),
  });
  if ('code' in printed) return printed;
  return {
    title: `Label for ${settled.name ?? 'your recipe'} (${shortNames[region]})`,
    blocks: [
      { kind: 'list', items: asPrinted(text) },
      ...holdText(settled),
      { kind: 'list', items: sheetLines(printed.sheet, printed.asked) },
      ...missingBlock(settled),
      ...assumedTexts(settled, printed.asked).map((each) => ({ kind: 'assumed', text: each }) as const),
      { kind: 'source', text: sourceText(settled) },
    ],
    figures: labelFigures(settled, printed),
    warnings: warningsOf(settled, printed),
    next: nextSteps(settled),
    files: printed.files,
  };
};
