import { xmlText } from './chart-text.ts';
import { ascent, type PlacedText } from './placed-text.ts';
import type { Theme } from './theme.ts';

/** A place in the picture, to a tenth of a unit. */
export const n = (value: number): string => String(Math.round(value * 10) / 10);

export const lineSvg = (x1: number, y1: number, x2: number, y2: number, look: string): string =>
  `<path d="M${n(x1)} ${n(y1)}L${n(x2)} ${n(y2)}" fill="none" ${look}/>`;

export const textSvg = ({ box, size, weight, text, turned }: PlacedText, colour: string): string => {
  const bold = weight === 'bold' ? ' font-weight="700"' : '';
  const look = `font-size="${size}"${bold} fill="${colour}"`;
  if (!turned) return `<text x="${n(box.x)}" y="${n(box.y + ascent * size)}" ${look}>${xmlText(text)}</text>`;
  const at = `${n(box.x + ascent * size)} ${n(box.y + box.height)}`;
  return `<text transform="translate(${at}) rotate(-90)" ${look}>${xmlText(text)}</text>`;
};

/** The sign of a curve: a ring for the first, a diamond for the second. */
export const signSvg = (theme: Theme, curve: 0 | 1, x: number, y: number, radius: number): string => {
  const look = `fill="${theme.background}" stroke="${theme.curves[curve]}" stroke-width="3.5"`;
  if (curve === 0) return `<circle cx="${n(x)}" cy="${n(y)}" r="${radius}" ${look}/>`;
  const r = radius * 1.25;
  return `<path d="M${n(x)} ${n(y - r)}l${r} ${r}l-${r} ${r}l-${r} -${r}z" ${look}/>`;
};

/** An error bar: a line with upright ends. */
export const barSvg = (left: number, right: number, y: number, colour: string): string => {
  const half = 7;
  const ends = [left, right].map((x) => `M${n(x)} ${n(y - half)}v${2 * half}`).join('');
  return `<path d="M${n(left)} ${n(y)}H${n(right)}${ends}" fill="none" stroke="${colour}" stroke-width="2.5"/>`;
};
