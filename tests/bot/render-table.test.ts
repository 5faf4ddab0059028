import { fc, it as prop } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { Column } from '../../bot/answer.ts';
import { type TableSpec, tableLines } from '../../bot/render/table.ts';
import { widthOf } from '../../bot/render/width.ts';

const weighOut: TableSpec = {
  columns: [
    { title: 'Ingredient', align: 'left' },
    { title: '%', align: 'right' },
    { title: 'Grams', align: 'right' },
  ],
  rows: [
    ['Beeswax', '20', '74.2'],
    ['Sweet almond oil, cold pressed', '50', '185.6'],
  ],
  total: ['Total', '70', '259.8'],
};

const column = fc.record({
  title: fc.oneof(fc.string({ maxLength: 12 }), fc.constantFrom('Ingredient', 'Drops (about)', 'g')),
  align: fc.constantFrom('left', 'right'),
}) satisfies fc.Arbitrary<Column>;
const cell = fc.oneof(
  fc.string({ unit: 'grapheme', maxLength: 40 }),
  fc.double({ noNaN: true, min: 0, max: 1e6 }).map((grams) => grams.toFixed(2)),
  fc.constantFrom('', 'crème', 'two\nlines', '蜜蝋', '🌿 calendula', '\u001b[31mred'),
);
const anyTable = fc.array(column, { minLength: 1, maxLength: 7 }).chain((columns) => {
  const row = fc.array(cell, {
    minLength: columns.length,
    maxLength: columns.length,
  });
  return fc.record({
    columns: fc.constant(columns),
    rows: fc.array(row, { maxLength: 6 }),
    total: row,
  });
});

describe('a table as plain text', () => {
  it('should set text flush left and numbers flush right, with the total under a rule', () => {
    expect(tableLines(weighOut, 80)).toEqual([
      'Ingredient                       %  Grams',
      '─────────────────────────────────────────',
      'Beeswax                         20   74.2',
      'Sweet almond oil, cold pressed  50  185.6',
      '─────────────────────────────────────────',
      'Total                           70  259.8',
    ]);
  });

  it('should wrap the text column, and never a number, to fit a phone', () => {
    expect(tableLines(weighOut, 30)).toEqual([
      'Ingredient            %  Grams',
      '──────────────────────────────',
      'Beeswax              20   74.2',
      'Sweet almond oil,    50  185.6',
      ' cold pressed',
      '──────────────────────────────',
      'Total                70  259.8',
    ]);
  });

  it('should wrap a long title over several lines rather than break numbers', () => {
    const lines = tableLines(
      {
        columns: [
          { title: 'Oil', align: 'left' },
          { title: 'iodine value', align: 'right' },
        ],
        rows: [['Olive', '75-94']],
      },
      14,
    );
    expect(lines).toEqual(['        iodine', 'Oil      value', '──────────────', 'Olive    75-94']);
  });

  it('should stack the rows where the columns cannot stand side by side', () => {
    expect(tableLines(weighOut, 18)).toEqual([
      'Beeswax',
      '  %: 20',
      '  Grams: 74.2',
      'Sweet almond oil,',
      ' cold pressed',
      '  %: 50',
      '  Grams: 185.6',
      '──────────────────',
      'Total',
      '  %: 70',
      '  Grams: 259.8',
    ]);
  });

  it('should leave out the head where no column has a title, and take short rows', () => {
    const columns: Column[] = [
      { title: '', align: 'left' },
      { title: '', align: 'right' },
    ];
    expect(tableLines({ columns, rows: [['Beeswax', '20'], ['Honey']] }, 40)).toEqual([
      'Beeswax  20',
      'Honey',
    ]);
  });

  it('should align wide characters and emoji by the columns they take', () => {
    const columns: Column[] = [
      { title: 'Herb', align: 'left' },
      { title: 'g', align: 'right' },
    ];
    const rows = [
      ['🌿 mint', '1'],
      ['蜜蝋', '2'],
      ['cre\u0300me', '3'],
    ];
    expect(tableLines({ columns, rows }, 40).slice(2)).toEqual([
      '🌿 mint  1',
      '蜜蝋     2',
      'cre\u0300me    3',
    ]);
  });

  const plainCell = fc.stringMatching(/^[a-e0-9 .,`-]{0,30}$/);
  const plainTable = fc
    .array(fc.record({ title: plainCell, align: fc.constantFrom('left', 'right') }), {
      minLength: 1,
      maxLength: 5,
    })
    .chain((columns) => {
      const row = fc.array(plainCell, { maxLength: columns.length + 1 });
      return fc.record(
        { columns: fc.constant(columns), rows: fc.array(row, { maxLength: 6 }), total: row },
        { requiredKeys: ['columns', 'rows'] },
      );
    });
  const accented = (text: string) => text.replaceAll('e', 'é');

  // An accent takes no room, but a text that has one is measured by the general way.
  prop.prop([plainTable, fc.integer({ min: 10, max: 120 })])(
    'should be set alike whether its text is plain or accented',
    ({ columns, rows, total }, width) => {
      const marked = ['e', ...columns.map(() => '')];
      const table: TableSpec = { columns, rows: [...rows, marked], ...(total ? { total } : {}) };
      const other: TableSpec = {
        columns: columns.map(({ title, align }) => ({ title: accented(title), align })),
        rows: table.rows.map((row) => row.map(accented)),
        ...(total ? { total: total.map(accented) } : {}),
      };
      expect(tableLines(other, width)).toEqual(tableLines(table, width).map(accented));
    },
  );

  prop.prop([anyTable, fc.integer({ min: 10, max: 120 })])(
    'should never be wider than asked',
    (table, width) => {
      for (const line of tableLines(table, width)) expect(widthOf(line)).toBeLessThanOrEqual(width);
    },
  );

  prop.prop([anyTable, fc.integer({ min: 10, max: 120 })])(
    'should let no control character out',
    (table, width) => {
      expect(tableLines(table, width).join('')).not.toMatch(/\p{Control}/u);
    },
  );

  prop.prop([
    fc.array(fc.tuple(fc.stringMatching(/^[A-Z][a-z ]{0,50}$/), fc.nat()), {
      minLength: 1,
    }),
  ])('should end every number of a column in the same place and keep it whole', (pairs) => {
    const columns: Column[] = [
      { title: 'Ingredient', align: 'left' },
      { title: 'g', align: 'right' },
    ];
    const rows = pairs.map(([name, grams]) => [name, String(grams)]);
    const [, rule, ...body] = tableLines({ columns, rows }, 40);
    const withNumber = body.filter((line) => /\d$/.test(line));
    expect(withNumber).toHaveLength(pairs.length);
    for (const line of withNumber) expect(widthOf(line)).toBe(widthOf(rule ?? ''));
  });

  prop.prop([anyTable])('should colour whole lines only, so that no column moves', (table) => {
    const mark = (text: string) => `<${text}>`;
    const marked = {
      title: mark,
      head: mark,
      rule: mark,
      total: mark,
      mind: mark,
      quiet: mark,
      trouble: mark,
    };
    const bare = tableLines(table, 60);
    const lines = tableLines(table, 60, marked);
    expect(lines.map((line, index) => (line === bare[index] ? line : line.slice(1, -1)))).toEqual(bare);
  });
});
