import fc from 'fast-check';
import { describe, expect, it } from 'vitest';
import type { Block, Reply } from '../../bot/answer.ts';
import { chatReply } from '../../bot/render/discord.ts';
import { widthOf } from '../../bot/render/width.ts';
import { answered } from '../helpers/chat-stand-in/samples.ts';

const numbers = { align: 'right' } as const;
const table: Block = {
  kind: 'table',
  columns: [
    { title: 'Ingredient', align: 'left' },
    { title: '%', ...numbers },
    { title: 'g', ...numbers },
    { title: 'drops', ...numbers },
  ],
  rows: [
    ['Fractionated coconut oil (MCT)', '48.5', '180.0', ''],
    ['Peppermint essential oil', '1.0', '3.7', 'about 110'],
  ],
  total: ['Total', '100.0', '371.2', ''],
};

const contents = (reply: Reply): string[] => chatReply(reply).messages.map(({ text }) => text);
const tableLinesIn = (text: string): string[] =>
  [...text.matchAll(/```\n([\s\S]*?)\n```/g)].flatMap(([, inside = '']) => inside.split('\n'));

/** What is left of a message without its escaped characters and whole code blocks, taken off from left to right. */
const withoutBlocks = (text: string): string => text.replaceAll(/\\[\s\S]|```[\s\S]*?```/g, '');

const marks = [
  '```',
  '`',
  '\\',
  '<@1>',
  '@everyone',
  '**',
  '||',
  '[a](https://b)',
  '# ',
  '> ',
  '\n',
  ' ',
  'wax',
];
/** Words, any characters at all, everything that means something in a message, and letters under heaps of accents. */
const anyText = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 300 }),
  fc.string({ unit: 'binary', maxLength: 300 }),
  fc.array(fc.constantFrom(...marks), { maxLength: 300 }).map((parts) => parts.join('')),
  fc
    .tuple(fc.constantFrom('\u0301', '\u{1E8D0}'), fc.integer({ min: 1, max: 4000 }))
    .map(([accent, count]) => `e${accent.repeat(count)}`),
);
const anyBlock: fc.Arbitrary<Block> = fc.oneof(
  fc.record({
    kind: fc.constantFrom('text' as const, 'assumed' as const, 'source' as const),
    text: anyText,
  }),
  fc.record({
    kind: fc.constant('list' as const),
    items: fc.array(anyText, { maxLength: 5 }),
  }),
  fc.array(fc.tuple(anyText, anyText), { maxLength: 30 }).map(
    (rows): Block => ({
      kind: 'table',
      columns: [
        { title: 'Name', align: 'left' },
        { title: 'g', ...numbers },
      ],
      rows,
    }),
  ),
);

describe('replies as chat messages', () => {
  it('should set a table in at most 40 columns, names wrapped and numbers whole', () => {
    const [text = ''] = contents(answered({ title: 'Fernlea hand balm', blocks: [table] }));
    const lines = tableLinesIn(text);
    expect(Math.max(...lines.map(widthOf))).toBeLessThanOrEqual(40);
    for (const cell of ['48.5', '180.0', 'about 110', '371.2', 'Peppermint', 'drops'])
      expect(text).toContain(cell);
  });

  it('should put what was assumed, the sources and the reminder last', () => {
    const [text = ''] = contents(
      answered({
        title: 'Balm',
        blocks: [
          { kind: 'assumed', text: 'I took 1 oz as weight.' },
          { kind: 'source', text: 'Codex CXS 210, https://example.org/a_b' },
          { kind: 'text', text: 'Ready.' },
        ],
        warnings: [
          { code: 'local-rules', text: 'Follow your local cosmetic rules.' },
          { code: 'hot-wax', text: 'Hot wax burns.' },
        ],
      }),
    );
    expect(text.split('\n')).toEqual([
      '**Balm**',
      'Ready.',
      '⚠️ Hot wax burns.',
      '-# Assumed: I took 1 oz as weight.',
      '-# Source: Codex CXS 210, https://example.org/a_b',
      '-# Follow your local cosmetic rules.',
    ]);
  });

  it('should repeat the titles of a table that goes over two messages', () => {
    const rows = Array.from({ length: 120 }, (_, at) => [`Lot ${at}`, '', `${at}.0`, '']);
    const texts = contents(answered({ title: 'Lots', blocks: [{ ...table, rows }] }));
    expect(texts).toHaveLength(2);
    for (const text of texts) {
      expect(text.match(/```/g)).toHaveLength(2);
      expect(text).toContain('Ingredient');
    }
    expect(texts.flatMap(tableLinesIn).filter((line) => line.startsWith('Lot '))).toHaveLength(120);
  });

  it('should say that a file is too big instead of sending it', () => {
    const big = {
      name: 'book.json',
      type: 'application/json',
      bytes: new Uint8Array(10 * 1024 * 1024 + 1),
    };
    const { messages } = chatReply(answered({ title: 'Export', files: [big] }));
    expect(messages.flatMap(({ files }) => files)).toEqual([]);
    expect(messages.at(-1)?.text).toContain('book.json is larger than this chat takes');
  });

  it('should spread many files over messages of ten', () => {
    const files = Array.from({ length: 23 }, (_, at) => ({
      name: `${at}.txt`,
      type: 'text/plain',
      bytes: new Uint8Array(1),
    }));
    const { messages } = chatReply(answered({ title: 'Labels', files }));
    expect(messages.map((message) => message.files.length)).toEqual([10, 10, 3]);
  });

  it('should always stay inside the limits, with every code block closed', () => {
    fc.assert(
      fc.property(anyText, fc.array(anyBlock, { maxLength: 8 }), (title, blocks) => {
        const { messages } = chatReply(answered({ title, blocks }));
        expect(messages.length).toBeLessThanOrEqual(2);
        for (const { text } of messages) {
          expect(text.length).toBeLessThanOrEqual(2000);
          expect(text.trim()).not.toBe('');
          expect(text).not.toMatch(/\p{Surrogate}/u);
          expect(withoutBlocks(text)).not.toMatch(/```|@everyone|<@/);
        }
      }),
      { numRuns: 300 },
    );
  });
});
