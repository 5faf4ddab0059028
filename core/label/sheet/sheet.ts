import type { Paper, PaperSize } from '../../paper/paper.ts';
import { fail, ok, type Result } from '../../result.ts';
import { type Cut, gridFor, heightOf, pagesOf, perPage, widthOf } from './arrange.ts';
import { type DesignInput, design, type FaceKind, type Part, roomier } from './design.ts';
import type { Face } from './face.ts';
import type { LeastType } from './least-type.ts';
import { cutsOf, leastFor, type SheetProblem, sizeProblem } from './sheet-sizes.ts';

export interface SheetInput extends DesignInput {
  /** Tins to be labelled; undefined fills one page. */
  readonly tins?: number;
  readonly paper: PaperSize;
  readonly language: string;
}

export interface Printed {
  readonly cut: Cut;
  readonly face: FaceKind;
  readonly count: number;
  readonly smallPt: number;
}

export interface Sheet {
  readonly paper: Paper;
  readonly printed: readonly Printed[];
  readonly tins: number;
  readonly least: LeastType;
  /** True when the small print found no room at the least type and is left out; then the smallest size that holds it. */
  readonly leftOut: boolean;
  readonly roomyMm?: number;
}

const sameCut = (a: Cut, b: Cut): boolean =>
  a.shape === b.shape && widthOf(a) === widthOf(b) && heightOf(a) === heightOf(b);

/** Tins that one page serves: as many as every kind of label has room for. */
const tinsOnPage = (parts: readonly Part[], paper: PaperSize): number =>
  Math.max(
    1,
    Math.min(
      ...parts.map(({ cut }) =>
        Math.floor(perPage(gridFor(cut, paper)) / parts.filter((other) => sameCut(other.cut, cut)).length),
      ),
    ),
  );

const repeated = (face: Face, count: number): readonly Face[] => Array.from({ length: count }, () => face);

/** Labels of one size share their pages, those of another begin on a new one. */
const pagesFor = (parts: readonly Part[], tins: number, paper: PaperSize) => {
  const cuts = parts
    .map(({ cut }) => cut)
    .filter((cut, at, all) => all.findIndex((each) => sameCut(each, cut)) === at);
  return cuts.flatMap((cut) => {
    const faces = parts.filter((part) => sameCut(part.cut, cut)).flatMap(({ face }) => repeated(face, tins));
    return pagesOf(faces, cut, gridFor(cut, paper));
  });
};

/**
 * Labels for so many tins as a paper to print at full size: everything on one label where the small print stays
 * readable, else the name on the lid and the small print on a label of its own. What finds no room at the least type is
 * left out and said, never made smaller. Problems: sizes no label can have, or a name that does not fit.
 */
export const labelSheet = (input: SheetInput): Result<Sheet, SheetProblem> => {
  for (const cut of cutsOf(input.sizes)) {
    const problem = sizeProblem(cut, input.paper);
    if (problem) return fail(problem);
  }
  const least = leastFor(input.region, input.sizes);
  const designed = design(input, least);
  if (!designed.ok) {
    const leastMm = input.sizes.strip ? roomier(input, least) : undefined;
    return leastMm === undefined ? designed : fail({ code: 'front-does-not-fit', leastMm });
  }
  const { parts, leftOut } = designed.value;
  const tins = input.tins ?? tinsOnPage(parts, input.paper);
  const roomyMm = leftOut ? roomier(input, least) : undefined;
  return ok({
    paper: {
      title: `Labels: ${input.text.title}`,
      language: input.language,
      pages: pagesFor(parts, tins, input.paper),
    },
    printed: parts.map(({ cut, kind, face }) => ({ cut, face: kind, count: tins, smallPt: face.smallPt })),
    tins,
    least,
    leftOut,
    ...(roomyMm === undefined ? {} : { roomyMm }),
  });
};
