import { getDocument, OPS } from 'pdfjs-dist/legacy/build/pdf.mjs';

/** A text as the PDF places it: mm from the page's upper left corner, `y` its baseline. */
export interface ReadText {
  readonly text: string;
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly sizePt: number;
}

/** An outline as drawn: the box around it in mm, whether it is curved, dashed, and how many corners it has. */
export interface ReadOutline {
  readonly x: number;
  readonly y: number;
  readonly width: number;
  readonly height: number;
  readonly curved: boolean;
  readonly dashed: boolean;
  readonly points: number;
}

export interface ReadPage {
  readonly widthMm: number;
  readonly heightMm: number;
  readonly texts: readonly ReadText[];
  readonly outlines: readonly ReadOutline[];
}

type Matrix = readonly [number, number, number, number, number, number];

const mm = (points: number): number => (points * 25.4) / 72;

const times = (m: Matrix, n: Matrix): Matrix => [
  m[0] * n[0] + m[2] * n[1],
  m[1] * n[0] + m[3] * n[1],
  m[0] * n[2] + m[2] * n[3],
  m[1] * n[2] + m[3] * n[3],
  m[0] * n[4] + m[2] * n[5] + m[4],
  m[1] * n[4] + m[3] * n[5] + m[5],
];

/** Numbers that follow each path operator: move, line, cubic, quadratic, close. */
const pathNumbers = [2, 2, 6, 4, 0] as const;

const pointsOf = (path: ArrayLike<number>): { points: [number, number][]; curved: boolean } => {
  const points: [number, number][] = [];
  let curved = false;
  for (let at = 0; at < path.length; ) {
    const operator = path[at] ?? 0;
    const count = pathNumbers[operator] ?? 0;
    curved ||= operator === 2 || operator === 3;
    // The circle's own cubics touch its box at their ends, so their handles need not be counted.
    if (count > 0) points.push([path[at + count - 1] ?? 0, path[at + count] ?? 0]);
    at += 1 + count;
  }
  return { points, curved };
};

const boxOf = (points: readonly (readonly [number, number])[]) => {
  const xs = points.map(([x]) => x);
  const ys = points.map(([, y]) => y);
  const [x, y] = [Math.min(...xs), Math.min(...ys)];
  return { x, y, width: Math.max(...xs) - x, height: Math.max(...ys) - y };
};

const outlinesOf = (
  fns: readonly number[],
  args: readonly unknown[],
  heightPt: number,
): readonly ReadOutline[] => {
  const kept: { matrix: Matrix; dashed: boolean }[] = [];
  let matrix: Matrix = [1, 0, 0, 1, 0, 0];
  let dashed = false;
  const found: ReadOutline[] = [];
  for (const [at, fn] of fns.entries()) {
    if (fn === OPS.save) kept.push({ matrix, dashed });
    else if (fn === OPS.restore) ({ matrix, dashed } = kept.pop() ?? { matrix, dashed });
    else if (fn === OPS.transform) matrix = times(matrix, args[at] as Matrix);
    else if (fn === OPS.setDash) dashed = (args[at] as [readonly number[]])[0].length > 0;
    else if (fn === OPS.constructPath) {
      const [, [path]] = args[at] as [number, [ArrayLike<number>]];
      const { points, curved } = pointsOf(path);
      const onPage = points.map(([x, y]): [number, number] => [
        mm(matrix[0] * x + matrix[2] * y + matrix[4]),
        mm(heightPt - (matrix[1] * x + matrix[3] * y + matrix[5])),
      ]);
      found.push({ ...boxOf(onPage), curved, dashed, points: points.length });
    }
  }
  return found;
};

/** Reads a PDF with a library that did not write it. */
export const readPdf = async (bytes: Uint8Array): Promise<readonly ReadPage[]> => {
  const task = getDocument({ data: new Uint8Array(bytes), verbosity: 0 });
  const file = await task.promise;
  const pages: ReadPage[] = [];
  for (let number = 1; number <= file.numPages; number++) {
    const page = await file.getPage(number);
    const [, , width = 0, height = 0] = page.view;
    const { items } = await page.getTextContent();
    const { fnArray, argsArray } = await page.getOperatorList();
    pages.push({
      widthMm: mm(width),
      heightMm: mm(height),
      texts: items.flatMap((item) =>
        'str' in item && item.str.trim() !== ''
          ? [
              {
                text: item.str,
                x: mm(item.transform[4]),
                y: mm(height - item.transform[5]),
                width: mm(item.width),
                sizePt: item.transform[0],
              },
            ]
          : [],
      ),
      outlines: outlinesOf(fnArray, argsArray, height),
    });
  }
  await task.destroy();
  return pages;
};
