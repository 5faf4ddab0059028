import PDFDocument from 'pdfkit';
import type { Mark, Page, Paper, Point, Stroke, TextMark } from '../../core/paper/paper.ts';

/** One order to the thread that writes papers. `at` is the message's instant, epoch milliseconds. */
export interface PaperOrder {
  readonly paper: Paper;
  readonly at: number;
}

type Pdf = InstanceType<typeof PDFDocument>;
type Path = Extract<Mark, { kind: 'path' }>;
type Plain = Exclude<Mark, { kind: 'text' | 'image' | 'path' | 'stamp' }>;
interface Look {
  readonly stroke?: Stroke;
  readonly fill?: string;
}

const ptPerMm = 72 / 25.4;
const pt = (mm: number): number => mm * ptPerMm;
const ink = '#1a1a1a';

/** Fills and strokes the path just drawn; what has neither look is not printed. */
const paint = (pdf: Pdf, { stroke, fill }: Look): void => {
  if (stroke) {
    pdf.lineWidth(pt(stroke.widthMm));
    if (stroke.dashMm) pdf.dash(pt(stroke.dashMm[0]), { space: pt(stroke.dashMm[1]) });
    else pdf.undash();
  }
  if (stroke && fill) pdf.fillAndStroke(fill, stroke.colour);
  else if (stroke) pdf.stroke(stroke.colour);
  else if (fill) pdf.fill(fill);
};

const writeText = (pdf: Pdf, { text, at, sizePt, align = 'left', weight, colour }: TextMark): void => {
  pdf.font(weight ?? 'regular').fontSize(sizePt);
  const width = align === 'left' ? 0 : pdf.widthOfString(text);
  const x = pt(at[0]) - (align === 'middle' ? width / 2 : width);
  pdf
    .fillColor(colour ?? ink)
    .text(text, align === 'left' ? pt(at[0]) : x, pt(at[1]), { lineBreak: false, baseline: 'alphabetic' });
};

/** A path keeps its own units; the page is scaled around it, and its stroke back again. */
const writePath = (pdf: Pdf, mark: Path): void => {
  const { at, unitMm, path, stroke, fill } = mark;
  pdf
    .save()
    .translate(...inPt(at))
    .scale(pt(unitMm))
    .path(path);
  const scaled = stroke && {
    ...stroke,
    widthMm: stroke.widthMm / pt(unitMm),
    ...(stroke.dashMm
      ? { dashMm: [stroke.dashMm[0] / pt(unitMm), stroke.dashMm[1] / pt(unitMm)] as const }
      : {}),
  };
  paint(pdf, { ...(scaled ? { stroke: scaled } : {}), ...(fill ? { fill } : {}) });
  pdf.restore();
};

const inPt = ([x, y]: Point): [number, number] => [pt(x), pt(y)];

const outline = (pdf: Pdf, mark: Plain): void => {
  if (mark.kind === 'line') pdf.moveTo(...inPt(mark.from)).lineTo(...inPt(mark.to));
  else if (mark.kind === 'box') pdf.rect(...inPt(mark.at), pt(mark.widthMm), pt(mark.heightMm));
  else pdf.circle(...inPt(mark.at), pt(mark.radiusMm));
};

const writeShape = (pdf: Pdf, mark: Plain): void => {
  outline(pdf, mark);
  paint(pdf, mark);
};

const writeImage = (pdf: Pdf, { at, widthMm, heightMm, png }: Extract<Mark, { kind: 'image' }>): void => {
  pdf.image(Buffer.from(png), ...inPt(at), { width: pt(widthMm), height: pt(heightMm) });
};

const writeStamp = (pdf: Pdf, { marks, at }: Extract<Mark, { kind: 'stamp' }>): void => {
  for (const place of at) {
    pdf.save().translate(...inPt(place));
    for (const mark of marks) write(pdf, mark);
    pdf.restore();
  }
};

const write = (pdf: Pdf, mark: Mark): void => {
  if (mark.kind === 'text') writeText(pdf, mark);
  else if (mark.kind === 'image') writeImage(pdf, mark);
  else if (mark.kind === 'path') writePath(pdf, mark);
  else if (mark.kind === 'stamp') writeStamp(pdf, mark);
  else writeShape(pdf, mark);
};

const addPage = (pdf: Pdf, { widthMm, heightMm, marks }: Page): void => {
  pdf.addPage({ size: [pt(widthMm), pt(heightMm)], margin: 0 });
  for (const mark of marks) write(pdf, mark);
};

const bytesOf = (pdf: Pdf): Promise<Uint8Array> =>
  new Promise((done, failed) => {
    const parts: Uint8Array[] = [];
    pdf.on('data', (part: Uint8Array) => parts.push(part));
    pdf.on('end', () => done(new Uint8Array(Buffer.concat(parts))));
    pdf.on('error', failed);
  });

/** Writes a paper as PDF with these fonts, blocking. The same order gives the same bytes. */
export const paperWriter =
  ([regular, bold]: readonly [regular: string, bold: string]) =>
  async ({ paper, at }: PaperOrder): Promise<Uint8Array> => {
    const pdf = new PDFDocument({
      autoFirstPage: false,
      lang: paper.language ?? 'en',
      displayTitle: true,
      info: { Title: paper.title, Creator: 'Pipkin', Producer: 'Pipkin', CreationDate: new Date(at) },
    });
    pdf.registerFont('regular', regular).registerFont('bold', bold);
    const bytes = bytesOf(pdf);
    for (const page of paper.pages) addPage(pdf, page);
    pdf.end();
    return bytes;
  };
