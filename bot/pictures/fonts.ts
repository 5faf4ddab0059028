import { accessSync, constants } from 'node:fs';
import { createRequire } from 'node:module';

const fontNames = ['DejaVuSansCondensed', 'DejaVuSansCondensed-Bold'] as const;

/**
 * Paths of the shipped fonts, regular and bold. Throws when one is missing: a drawing library would leave all text out
 * in silence.
 */
export const fontFiles = (): [regular: string, bold: string] => {
  const { resolve } = createRequire(import.meta.url);
  const [regular, bold] = fontNames.map((name) => {
    const path = resolve(`dejavu-fonts-ttf/ttf/${name}.ttf`);
    accessSync(path, constants.R_OK);
    return path;
  });
  if (regular === undefined || bold === undefined) throw new Error('no fonts');
  return [regular, bold];
};
