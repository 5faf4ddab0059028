import { fc, it as prop } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { Answer, Block, Reply } from '../../bot/answer.ts';
import { colourStyle, plainStyle, styleFor } from '../../bot/render/style.ts';
import { textOf } from '../../bot/render/text.ts';
import { widthOf } from '../../bot/render/width.ts';

const answer: Answer = {
  title: 'Fernlea hand balm for 24 tins of 15 ml',
  blocks: [
    { kind: 'assumed', text: '3 % stays in jug and spoon.' },
    {
      kind: 'table',
      columns: [
        { title: 'Ingredient', align: 'left' },
        { title: 'Grams', align: 'right' },
      ],
      rows: [
        ['Beeswax', '74.2'],
        ['Olive oil', '185.6'],
      ],
      total: ['Total', '259.8'],
    },
    { kind: 'text', text: 'Fill each tin with 13.5 g.' },
    {
      kind: 'list',
      items: ['Melt the wax first.', 'Let the blend cool a little before the aroma goes in.'],
    },
    { kind: 'source', text: 'A table of densities' },
    { kind: 'source', text: 'A wax monograph' },
    { kind: 'source', text: 'A wax monograph' },
  ],
  figures: {},
  warnings: [
    { code: 'local-rules', text: 'Check the cosmetic rules where you live.' },
    { code: 'hot-wax', text: 'Hot wax burns; keep children away.' },
  ],
  next: [{ label: '48 tins', say: 'and for 48 tins?' }],
};
const reply: Reply = { topic: 'scale', request: {}, answer };

describe('an answer as plain text', () => {
  it('should read like a calm bench sheet, with the local rules last', () => {
    expect(textOf(reply, { width: 40 })).toBe(
      [
        'Fernlea hand balm for 24 tins of 15 ml',
        '',
        'Ingredient  Grams',
        '─────────────────',
        'Beeswax      74.2',
        'Olive oil   185.6',
        '─────────────────',
        'Total       259.8',
        '',
        'Fill each tin with 13.5 g.',
        '',
        '- Melt the wax first.',
        '- Let the blend cool a little before the',
        '  aroma goes in.',
        '',
        'Assumed: 3 % stays in jug and spoon.',
        '',
        'Sources: A table of densities; A wax',
        '  monograph',
        '',
        'Mind: Hot wax burns; keep children away.',
        '',
        'Check the cosmetic rules where you live.',
      ].join('\n'),
    );
  });

  it('should name written files by their whole path, and next steps where a chat asks for them', () => {
    const files = [{ name: 'label.pdf', path: `/somewhere/${'deep/'.repeat(12)}label.pdf` }];
    const text = textOf(reply, { width: 40, files, next: true });
    expect(text).toContain(`File label.pdf: ${files[0]?.path}`);
    expect(text).toContain('Next, say: and for 48 tins?');
    expect(textOf(reply, { width: 40 })).not.toContain('Next');
  });

  it('should print the words of an error, wrapped', () => {
    const trouble: Reply = {
      topic: null,
      error: {
        code: 'not-understood',
        text: 'I did not understand that.\nTry: what is beeswax',
      },
    };
    expect(textOf(trouble, { width: 80 })).toBe('I did not understand that.\nTry: what is beeswax');
  });

  it('should colour only where a terminal is looked at and nobody declined', () => {
    expect(styleFor({ isTTY: true }, {})).toBe(colourStyle);
    expect(styleFor({ isTTY: true }, { NO_COLOR: '1' })).toBe(plainStyle);
    expect(styleFor({ isTTY: true }, { TERM: 'dumb' })).toBe(plainStyle);
    expect(styleFor({}, {})).toBe(plainStyle);
  });

  it('should say the same with and without colour', () => {
    const coloured = textOf(reply, { width: 60, style: colourStyle });
    // The only control sequences are the colours themselves.
    // biome-ignore lint/suspicious/noControlCharactersInRegex: the colours are made of them
    expect(coloured.replace(/\u001b\[\d+m/g, '')).toBe(textOf(reply, { width: 60 }));
    expect(coloured).not.toBe(textOf(reply, { width: 60 }));
  });

  const anyText = fc.oneof(fc.string({ unit: 'binary', maxLength: 80 }), fc.lorem({ maxCount: 30 }));
  const anyBlock: fc.Arbitrary<Block> = fc.oneof(
    fc.record({
      kind: fc.constantFrom('text', 'assumed', 'source'),
      text: anyText,
    }),
    fc.record({
      kind: fc.constant('list'),
      items: fc.array(anyText, { maxLength: 4 }),
    }),
    fc.record({
      kind: fc.constant('table'),
      columns: fc.array(fc.record({ title: anyText, align: fc.constantFrom('left', 'right') }), {
        maxLength: 5,
      }),
      rows: fc.array(fc.array(anyText, { maxLength: 5 }), { maxLength: 4 }),
    }),
  ) as fc.Arbitrary<Block>;
  const anyAnswer = fc.record({
    title: anyText,
    blocks: fc.array(anyBlock, { maxLength: 6 }),
    figures: fc.constant({}),
    warnings: fc.array(
      fc.record({
        code: fc.constantFrom('hot-wax', 'local-rules'),
        text: anyText,
      }),
      {
        maxLength: 3,
      },
    ),
  });

  prop.prop([anyAnswer, fc.constantFrom(40, 57, 80, 100)])(
    'should keep any answer inside the width and free of control characters',
    (any, width) => {
      const text = textOf({ topic: 'scale', request: {}, answer: any }, { width });
      for (const line of text.split('\n')) {
        expect(widthOf(line)).toBeLessThanOrEqual(width);
        expect(line).not.toMatch(/[\p{Control}\u202A-\u202E\u2066-\u2069]/u);
      }
    },
  );
});
