import type { LabelText } from '../../core/label/sheet/face.ts';
import { labelSheet, type Sheet } from '../../core/label/sheet/sheet.ts';
import type { SheetProblem, SheetSizes } from '../../core/label/sheet/sheet-sizes.ts';
import { type PaperSize, usualPaper } from '../../core/paper/paper.ts';
import type { Region } from '../../core/settings.ts';
import type { AnswerFile, Trouble, Warning } from '../answer.ts';
import type { FigureValue } from '../figures.ts';
import type { LabelWish } from '../topics/label.ts';
import { plain } from './numbers.ts';

/** Usual where nobody said: a small lid, and the glued end of a strip (common practice, no source). */
const usual = { roundMm: 40, overlapMm: 6 } as const;

export interface SheetAsked {
  readonly sizes: SheetSizes;
  readonly paper: PaperSize;
  /** True when nobody said a size: then the usual one may grow until everything fits. */
  readonly free: boolean;
  readonly assumed: readonly string[];
}

const noHeight: Trouble = {
  code: 'missing',
  text: 'How wide and how high is the tin? Say it as "strips for a tin 48 mm x 15 mm" (across and high).',
};

export const paperNames: Readonly<Record<PaperSize, string>> = { a4: 'A4', letter: 'Letter' };

/** Sizes and paper of a wish, the usual ones where it says nothing. */
export const sheetAsked = (wish: LabelWish, region: Region): SheetAsked | Trouble => {
  const paper = wish.paper ?? usualPaper(region);
  const { strip, roundMm } = wish;
  if (!strip) {
    return { sizes: { roundMm: roundMm ?? usual.roundMm }, paper, free: roundMm === undefined, assumed: [] };
  }
  const { tinMm, heightMm, overlapMm } = strip;
  if (tinMm === undefined || heightMm === undefined) return noHeight;
  return {
    paper,
    free: false,
    sizes: {
      strip: { tinMm, heightMm, overlapMm: overlapMm ?? usual.overlapMm },
      ...(roundMm === undefined ? {} : { roundMm }),
    },
    assumed: overlapMm === undefined ? [`${usual.overlapMm} mm of the strip lie under its other end.`] : [],
  };
};

const outOfRange = (text: string): Trouble => ({ code: 'out-of-range', text });

export const sheetTrouble = (problem: SheetProblem, { sizes, paper }: SheetAsked): Trouble => {
  const strip = sizes.strip !== undefined;
  const example = strip ? '"strips for a tin 48 mm x 15 mm"' : '"round labels 40 mm"';
  switch (problem.code) {
    case 'label-too-small':
      return outOfRange(
        `${plain(problem.mm)} mm is too small for a label to be cut or read. Try ${example}.`,
      );
    case 'label-too-large':
      return outOfRange(
        `${strip ? 'A tin' : 'A label'} of ${plain(problem.mm)} mm does not fit on ${paperNames[paper]}: ${plain(problem.mostMm)} mm is the most. Try ${example}.`,
      );
    case 'front-does-not-fit':
      return outOfRange(
        `The words do not fit on that label in type that can still be read.${problem.leastMm === undefined ? '' : ` ${plain(problem.leastMm)} mm ${strip ? 'high' : 'across'} would hold them.`} Try ${example}, or lid and strip together: "round 45 mm and strips for a tin 48 mm x 15 mm".`,
      );
  }
};

export interface Printed {
  /** Sizes as printed, with what was assumed about them. */
  readonly asked: SheetAsked;
  readonly sheet: Sheet;
  readonly files: readonly AnswerFile[];
  readonly warnings: readonly Warning[];
}

/** What found no room is said: it is never printed smaller than can be read. */
const leftOutWarning = ({ leftOut, roomyMm, least }: Sheet, sizes: SheetSizes): Warning[] => {
  if (!leftOut) return [];
  const more = sizes.strip ? 'high' : 'across';
  const room = roomyMm === undefined ? '' : ` ${roomyMm} mm ${more} would hold it.`;
  return [
    {
      code: 'text-does-not-fit',
      text: `The small print is left out: at the least readable size (small letters ${plain(least.smallMm, 1)} mm high) it finds no room.${room} Or give it with each tin on a card or leaflet, where your rules allow that.`,
    },
  ];
};

const notWritten: Warning = {
  code: 'no-sheet',
  text: 'The sheet could not be written just now. Ask again for the file; the wording above stands.',
};

interface More {
  readonly tins?: number;
  readonly region: Region;
  readonly at: number;
}

interface Laid {
  readonly asked: SheetAsked;
  readonly sheet: Sheet;
}

const layOut = (text: LabelText, asked: SheetAsked, { tins, region }: More): Laid | Trouble => {
  const sheet = labelSheet({
    text,
    sizes: asked.sizes,
    paper: asked.paper,
    region,
    language: 'en',
    ...(tins === undefined ? {} : { tins }),
  });
  return sheet.ok ? { asked, sheet: sheet.value } : sheetTrouble(sheet.problem, asked);
};

/** Lids come in steps of 5 mm or so (common practice, no source). */
const lidStepMm = 5;

/** Where nobody said a size, the next larger lid that holds all of it. */
const laidOut = (text: LabelText, asked: SheetAsked, more: More): Laid | Trouble => {
  const laid = layOut(text, asked, more);
  if ('code' in laid || !asked.free) return laid;
  const { roomyMm, leftOut } = laid.sheet;
  const roundMm = leftOut && roomyMm !== undefined ? Math.ceil(roomyMm / lidStepMm) * lidStepMm : undefined;
  const sized = roundMm === undefined ? laid : layOut(text, { ...asked, sizes: { roundMm } }, more);
  if ('code' in sized) return sized;
  const assumed = [`No size was said: round labels of ${sized.asked.sizes.roundMm ?? usual.roundMm} mm.`];
  return { ...sized, asked: { ...sized.asked, assumed } };
};

/** Lays the sheet out and has it written. A sheet that cannot be written leaves the wording. */
export const printSheet = async (
  text: LabelText,
  wanted: SheetAsked,
  more: More,
): Promise<Printed | Trouble> => {
  const laid = laidOut(text, wanted, more);
  if ('code' in laid) return laid;
  const { asked, sheet } = laid;
  const warnings = leftOutWarning(sheet, asked.sizes);
  try {
    const { pdfOf } = await import('../papers/paper.ts');
    const bytes = await pdfOf(sheet.paper, more.at);
    return { asked, sheet, files: [{ name: 'labels.pdf', type: 'application/pdf', bytes }], warnings };
  } catch {
    return { asked, sheet, files: [], warnings: [...warnings, notWritten] };
  }
};

const faceNames = { whole: 'everything', front: 'name and contents', back: 'small print' } as const;

/** One line for each kind of label on the sheet. */
export const sheetLines = (
  { printed, paper }: Sheet,
  { sizes, paper: size }: SheetAsked,
): readonly string[] => {
  const pages = `${paper.pages.length} ${paper.pages.length === 1 ? 'page' : 'pages'} ${paperNames[size]}`;
  const each = printed.map(({ cut, face, count, smallPt }) => {
    const shape =
      cut.shape === 'round'
        ? `round ${plain(cut.diameterMm)} mm`
        : `strips ${plain(cut.lengthMm, 1)} × ${plain(cut.heightMm)} mm for a ${plain(sizes.strip?.tinMm ?? 0)} mm tin`;
    return `${count} ${shape}: ${faceNames[face]}, ${plain(smallPt, 1)} pt`;
  });
  return [...each, `${pages}: print at 100 %; the line at the foot is 50 mm long.`];
};

export const sheetFigures = (sheet: Sheet, { paper }: SheetAsked): FigureValue => ({
  paper,
  pages: sheet.paper.pages.length,
  tins: sheet.tins,
  left_out: sheet.leftOut,
  least_type_pt: sheet.least.smallPt,
  labels: sheet.printed.map(({ cut, face, count, smallPt }) => ({
    shape: cut.shape,
    face,
    count,
    type_pt: smallPt,
    ...(cut.shape === 'round'
      ? { diameter_mm: cut.diameterMm }
      : {
          length_mm: Number(cut.lengthMm.toFixed(2)),
          height_mm: cut.heightMm,
          overlap_mm: cut.overlapMm,
        }),
  })),
});
