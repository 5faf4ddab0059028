import { isLotOut } from '../../core/bench/state.ts';
import type { Trace } from '../../core/bench/trace.ts';
import { holdersOf } from '../../core/bench/trace.ts';
import { type DocumentPart, documentPages } from '../../core/paper/document.ts';
import { paperMm, usualPaper } from '../../core/paper/paper.ts';
import type { Region } from '../../core/settings.ts';
import type { AnswerFile, Block } from '../answer.ts';
import { ThreadFault } from '../threads/thread-fault.ts';
import { gramsText } from './batch-text.ts';
import { lotName } from './trace-texts.ts';
import { localRules } from './warnings.ts';

/** Whom a recall is told to besides shops and buyers. From memory, so as advice; the wording of the law was not read. */
const authority: Readonly<Record<Region, string>> = {
  eu: 'Tell the authority of your country at once if the balm may harm (Regulation (EC) 1223/2009, Article 5(2), from memory).',
  uk: 'Tell your local Trading Standards at once if the balm may harm (Regulation (EC) 1223/2009 as kept in UK law, Article 5(2), from memory).',
  us: 'The FDA takes reports of recalls and, since 2022, can order one (MoCRA, read second-hand).',
  ca: 'Ask Health Canada whether they need to know (from memory).',
  au: 'A recall for safety is told to the consumer regulator within 2 days (Australian Consumer Law, section 128, from memory).',
};

const unnamed = 'place not noted';

export interface Holder {
  readonly to: string;
  readonly count: number;
  readonly lots: readonly string[];
}

/** What is said to whoever has a tin; what only the group knows is left as a blank to fill. */
export const noticeText = (trace: Trace): string => {
  const names = [...new Set(trace.batches.map(({ batch }) => batch.name))];
  const codes = trace.batches.map(({ batch }) => batch.lot);
  return `Please stop using ${names.join(', ')} with the code ${codes.join(', ')}. Reason: ____________. Bring it back or throw it away; you get your money or another one. Has your skin or mouth reacted? Keep the tin, see a doctor or pharmacist, and tell us: ____________. Trouble breathing or swelling: call the emergency number.`;
};

export const recallSteps = (region: Region): readonly string[] => [
  'Give out no more of it. Put what is here aside, in a closed box marked "do not use", with the retention sample apart.',
  'Tell every shop and person on the list; write down who was told, when and by whom.',
  authority[region],
  'Take back, count, and destroy on record. Write down the cause.',
];

/** What of the traced lots is still here and has to be put aside too. */
export const shelfTexts = ({ root, lots }: Trace): readonly string[] =>
  [...(root ? [root] : []), ...lots.map(({ lot }) => lot)]
    .filter((lot) => !isLotOut(lot))
    .map((lot) => `Still on the shelf: ${gramsText(lot.leftG)} of lot ${lot.lot}, ${lotName(lot)}.`);

const batchRows = ({ batches }: Trace): readonly (readonly string[])[] =>
  batches.map(({ batch, left, out }) => [
    `${batch.lot}  ${batch.name}`,
    batch.madeOn,
    batch.bestBefore,
    String(batch.count),
    String(Math.max(0, left)),
    String(out),
  ]);

/** Who holds tins, with a word for a place that was not named. */
export const holdersIn = (trace: Trace): readonly Holder[] =>
  holdersOf(trace).map(({ to = unnamed, count, lots }) => ({ to, count, lots }));

const holderRows = (trace: Trace): readonly (readonly string[])[] =>
  holdersIn(trace).map(({ to, count, lots }) => [to, String(count), lots.join(', ')]);

const partsOf = (trace: Trace, lotText: string, region: Region): readonly DocumentPart[] => {
  const holders = holderRows(trace).map(([to = '', count = '', codes = '']) => [to, count, codes, '', '']);
  const items = (texts: readonly string[]) => texts.map((text): DocumentPart => ({ kind: 'item', text }));
  return [
    { kind: 'text', text: lotText },
    { kind: 'heading', text: 'What' },
    {
      kind: 'table',
      shares: [34, 16, 16, 11, 11, 12],
      head: ['batch', 'made', 'best before', 'poured', 'here', 'out'],
      rows: batchRows(trace),
    },
    ...items(shelfTexts(trace)),
    { kind: 'heading', text: 'Who has it' },
    ...(holders.length > 0
      ? [
          {
            kind: 'table',
            shares: [30, 10, 24, 18, 18],
            head: ['to whom', 'out', 'batches', 'told on', 'by'],
            rows: holders,
          } as const,
        ]
      : [{ kind: 'text', text: 'Nobody outside, as far as the book knows.' } as const]),
    { kind: 'heading', text: 'What to say' },
    { kind: 'text', text: noticeText(trace) },
    { kind: 'heading', text: 'What to do' },
    ...items(recallSteps(region)),
    { kind: 'heading', text: 'Closed' },
    { kind: 'text', text: 'Cause: ______________________________________________' },
    { kind: 'text', text: 'Came back: ________   Destroyed: ________   On: ____________   By: ____________' },
  ];
};

/** The recall sheet as PDF, and what to say of it when it could not be made. */
export const recallFile = async (
  trace: Trace,
  about: { readonly lotText: string; readonly region: Region; readonly at: number },
): Promise<{ readonly files: readonly AnswerFile[]; readonly blocks: readonly Block[] }> => {
  const title = `Recall ${trace.code}`;
  const size = paperMm[usualPaper(about.region)];
  const parts = partsOf(trace, about.lotText, about.region);
  try {
    const { pdfOf } = await import('../papers/paper.ts');
    const pages = documentPages({ title, parts, footer: localRules.text }, size);
    const bytes = await pdfOf({ title, language: 'en', pages }, about.at);
    const name = `recall-${trace.code.replace(/[^A-Za-z0-9-]+/g, '-')}.pdf`;
    return { files: [{ name, type: 'application/pdf', bytes }], blocks: [] };
  } catch (fault) {
    if (!(fault instanceof ThreadFault)) throw fault;
    const text = 'The sheet could not be printed just now; the list above has all of it.';
    return { files: [], blocks: [{ kind: 'text', text }] };
  }
};
