import { readFileSync } from 'node:fs';

/** Advance widths in font units, read from a TrueType file's `cmap` (format 12) and `hmtx` tables (OpenType 1.9). */
export const fontAdvances = (
  path: string,
): { unitsPerEm: number; of: (code: number) => number | undefined } => {
  const font = readFileSync(path);
  const tables = new Map<string, number>();
  for (let table = 0; table < font.readUInt16BE(4); table++) {
    const at = 12 + 16 * table;
    tables.set(font.toString('latin1', at, at + 4), font.readUInt32BE(at + 8));
  }
  const start = (tag: string): number => {
    const at = tables.get(tag);
    if (at === undefined) throw new Error(`no table ${tag}`);
    return at;
  };
  const metrics = font.readUInt16BE(start('hhea') + 34);
  const glyphs = new Map<number, number>();
  const cmap = start('cmap');
  for (let record = 0; record < font.readUInt16BE(cmap + 2); record++) {
    const subtable = cmap + font.readUInt32BE(cmap + 8 + 8 * record);
    if (font.readUInt16BE(subtable) !== 12) continue;
    for (let group = 0; group < font.readUInt32BE(subtable + 12); group++) {
      const at = subtable + 16 + 12 * group;
      const first = font.readUInt32BE(at);
      for (let code = first; code <= font.readUInt32BE(at + 4); code++)
        glyphs.set(code, font.readUInt32BE(at + 8) + code - first);
    }
  }
  return {
    unitsPerEm: font.readUInt16BE(start('head') + 18),
    of: (code) => {
      const glyph = glyphs.get(code);
      return glyph === undefined
        ? undefined
        : font.readUInt16BE(start('hmtx') + 4 * Math.min(glyph, metrics - 1));
    },
  };
};
