// What a member may type: sensible values by what an option or a field says of itself, hostile ones, and the examples of the
// README. Nothing of the bot's code is known here.

import { readFileSync } from 'node:fs';
import { fileURLToPath } from 'node:url';
import type { Wire } from './check.ts';

/** Random numbers from a seed (mulberry32), so that a run can be made again. */
export class Chance {
  #state: number;

  constructor(seed: number) {
    this.#state = seed >>> 0;
  }

  next(): number {
    this.#state = (this.#state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(this.#state ^ (this.#state >>> 15), 1 | this.#state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 2 ** 32;
  }

  below(count: number): number {
    return Math.floor(this.next() * count);
  }

  between(from: number, to: number): number {
    return from + this.next() * (to - from);
  }

  pick<T>(list: readonly T[]): T | undefined {
    return list[this.below(list.length)];
  }
}

export const recipes = [
  { name: 'Fernlea hand balm', lines: '20 % beeswax, 30 % shea butter, 50 % olive oil' },
  { name: 'Mint lip balm', lines: '25 g beeswax, 25 g cocoa butter, 49 g sunflower oil, 1 g peppermint oil' },
  { name: 'Calendula salve', lines: '15 % beeswax, 85 % olive oil' },
];

const sensible: readonly (readonly [RegExp, readonly string[]])[] = [
  [
    /ingredients|lines|one (per|a) line|list|paste/i,
    ['20 g beeswax, 30 g shea butter, 50 g olive oil', '1:4 beeswax to olive oil'],
  ],
  [/best before|date|day|when/i, ['2027-03-31', 'today', '12 June']],
  [/batch/i, ['26-KIVO', 'K12']],
  [/\blot|code/i, ['K12', 'G7, S3']],
  [/recipe|blend/i, ['Fernlea hand balm', 'Mint lip balm', '20 g beeswax, 80 g olive oil']],
  [/ingredient|\boil\b|wax|herb|instead/i, ['beeswax', 'almond oil', 'calendula', 'candelilla']],
  [/temperature|degrees|heat|°/i, ['35 C', '95 F']],
  [/how many|count|number|tins|containers|target/i, ['24 tins of 15 ml', '12']],
  [/size|volume|each/i, ['15 ml', '30 g']],
  [/gram|amount|how much|weight/i, ['500 g', '2 tbsp']],
  [/price|cost|paid|money/i, ['14.50']],
  [/region/i, ['us', 'eu']],
  [/hour|clock|time/i, ['9', '14:00']],
  [/city|zone/i, ['Lisbon']],
  [/claim|wording/i, ['heals cracked lips']],
  [/name|call/i, ['Winter balm']],
  [/note|happened|text|words|what/i, ['set slowly', 'rash on the lips']],
];

export const hostile = [
  '@everyone <@123456789012345678> <@&123456789012345678> @here',
  '```\n# big\n```[here](https://example.org)||x||',
  '__proto__',
  '-1',
  '0',
  '999999999999999999999',
  '1e308 g beeswax',
  'NULL',
  "Robert'); DROP TABLE lots;--",
  '=HYPERLINK("https://example.org")',
  '💄'.repeat(40),
  'ẞ\u0301\u200b\u202e ½ ¾ ٣',
  '\u0000\u0007',
  'wax '.repeat(1400),
];

const fitted = (text: string, one: Wire): string => {
  const most = Number(one.max_length ?? (one.type === 4 ? 4000 : 6000));
  const least = Number(one.min_length ?? 0);
  const cut = text.slice(0, most).replace(/[\uD800-\uDBFF]$/, '');
  return cut.padEnd(least, 'x');
};

/** A sensible text for an option or a field, by its name, label, placeholder and description. */
export function textFor(chance: Chance, one: Wire): string {
  const said = [one.name, one.label, one.placeholder, one.description].filter(Boolean).join(' ');
  const found = sensible.find(([pattern]) => pattern.test(said));
  return fitted(chance.pick(found?.[1] ?? ['24 tins of 15 ml']) ?? '', one);
}

export const hostileFor = (chance: Chance, one: Wire): string =>
  fitted(chance.pick(hostile) ?? '', one) || 'x';

export function numberFor(chance: Chance, one: Wire): number {
  const least = Number(one.min_value ?? 0);
  const most = Number(one.max_value ?? 1000);
  const value = chance.pick([least, most, 24, 12, 1, 15]) ?? least;
  return Math.min(most, Math.max(least, value));
}

/** Everything in backticks in the README's table of topics, with its R and S as saved recipes. */
export function phrases(): string[] {
  const readme = readFileSync(fileURLToPath(new URL('../../README.md', import.meta.url)), 'utf8');
  const rows = readme.split('\n').filter((line) => /^\| `[a-z]+` \|/.test(line));
  return rows
    .flatMap((row) =>
      [
        ...row
          .split('|')
          .slice(2)
          .join('|')
          .matchAll(/`([^`]+)`/g),
      ].map(([, text]) => String(text)),
    )
    .map((text) =>
      text
        .replace(/\bR\b/g, 'Fernlea hand balm')
        .replace(/\bS\b/g, 'Mint lip balm')
        .replace(/\bLOT\b/g, 'K12')
        .replace(/\bNAME\b/g, 'Calendula salve')
        .replace(/^… /, 'workshop for 12 people, Fernlea hand balm, '),
    );
}

export const partials = ['', 'b', 'fern', 'oil', 'zzzz', 'K1', '💄', '<@1>', 'a'.repeat(100), 'bees wacks'];

export const files = [
  { name: 'recipe.txt', text: 'Apricot stick\n25 g beeswax\n25 g shea butter\n50 g apricot kernel oil\n' },
  { name: 'recipe.csv', text: 'ingredient,grams\nbeeswax,20\nolive oil,80\n' },
  { name: 'book.json', text: '{"kind": "pipkin-book", "v": 1, "entries": []}' },
  { name: 'broken.json', text: `{"a": ${'['.repeat(3000)}` },
  { name: 'picture.png', text: '\u0089PNG' },
];
