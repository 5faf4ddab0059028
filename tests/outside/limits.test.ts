// The checker against payloads that are just right and just too much. The figures are the platform's published ones; where
// the checker says "from memory", so are these.

import { describe, expect, test } from 'vitest';
import { type Asked, callbackFaults, commandFaults, type File, messageFaults, type Way } from './limits.ts';

const x = (count: number): string => 'x'.repeat(count);
const quiet = { allowed_mentions: { parse: [] } };
const button = (more = {}): object => ({ type: 2, style: 1, custom_id: 'a', label: 'b', ...more });
const row = (...components: object[]): object => ({ type: 1, components });
const options = (count: number): object[] =>
  Array.from({ length: count }, (_, i) => ({ label: `l${i}`, value: `v${i}` }));
const menu = (more = {}): object => ({ type: 3, custom_id: 'm', options: options(2), ...more });
const file = (name = 'a.txt', bytes = 10, field = 'files[0]'): File => ({ field, name, bytes });
const text = (content: string): object => ({ type: 10, content });
const newer = { flags: 1 << 15 };
const many = (count: number, make: (index: number) => object): object[] =>
  Array.from({ length: count }, (_, i) => make(i));

const goodMessages: readonly (readonly [string, object, Way?, (readonly File[])?])[] = [
  ['2,000 characters', { ...quiet, content: x(2000) }],
  [
    '25 buttons',
    {
      ...quiet,
      content: 'a',
      components: many(5, (i) => row(...many(5, (j) => button({ custom_id: `${i} ${j}` })))),
    },
  ],
  ['a menu of 25', { ...quiet, content: 'a', components: [row(menu({ options: options(25) }))] }],
  ['a file', { ...quiet, attachments: [{ id: 0, filename: 'a.txt' }] }, 'create', [file()]],
  [
    'a picture that came with it',
    { ...quiet, embeds: [{ image: { url: 'attachment://a.png' } }] },
    'create',
    [file('a.png')],
  ],
  ['the newer parts', { ...newer, components: [{ type: 17, components: [text(x(4000))] }] }],
  ['an edit that only takes buttons away', { components: [] }, 'edit'],
  ['for one alone', { ...quiet, content: 'a', flags: 64 }, 'callback'],
  ['names that ping nobody', { ...quiet, content: '@everyone <@1>' }],
  [
    'a link',
    { content: 'a', components: [row({ type: 2, style: 5, label: 'a', url: 'https://example.org' })] },
  ],
];

const badMessages: readonly (readonly [string, RegExp, object, Way?, (readonly File[])?])[] = [
  ['2,001 characters', /content: has 2001/, { ...quiet, content: x(2001) }],
  ['nothing', /empty/, { ...quiet }],
  ['blanks', /empty/, { ...quiet, content: ' \n' }],
  ['half a sign', /surrogate/, { ...quiet, content: 'wax \ud83d' }],
  [
    'a sixth row',
    /components: has 6/,
    { content: 'a', components: many(6, (i) => row(button({ custom_id: `${i}` }))) },
  ],
  [
    'a sixth button',
    /has 6 parts/,
    { content: 'a', components: [row(...many(6, (i) => button({ custom_id: `${i}` })))] },
  ],
  ['an empty row', /has 0 parts/, { content: 'a', components: [row()] }],
  ['a label of 81', /label: has 81/, { content: 'a', components: [row(button({ label: x(81) }))] }],
  ['an id of 101', /custom_id: has 101/, { content: 'a', components: [row(button({ custom_id: x(101) }))] }],
  ['no id', /custom_id/, { content: 'a', components: [row({ type: 2, style: 1, label: 'a' })] }],
  ['one id twice', /twice/, { content: 'a', components: [row(button(), button())] }],
  [
    'a button without words',
    /without label/,
    { content: 'a', components: [row({ type: 2, style: 1, custom_id: 'a' })] },
  ],
  [
    'a link of 513',
    /url: has 513/,
    { content: 'a', components: [row({ type: 2, style: 5, label: 'a', url: x(513) })] },
  ],
  ['a menu of 26', /options: has 26/, { content: 'a', components: [row(menu({ options: options(26) }))] }],
  ['a menu of none', /options: has 0/, { content: 'a', components: [row(menu({ options: [] }))] }],
  [
    'one value twice',
    /twice/,
    { content: 'a', components: [row(menu({ options: [...options(1), ...options(1)] }))] },
  ],
  [
    'a value of 101',
    /value: has 101/,
    { content: 'a', components: [row(menu({ options: [{ label: 'a', value: x(101) }] }))] },
  ],
  [
    'a description of 101',
    /description: has 101/,
    { content: 'a', components: [row(menu({ options: [{ label: 'a', value: 'a', description: x(101) }] }))] },
  ],
  [
    'a placeholder of 151',
    /placeholder: has 151/,
    { content: 'a', components: [row(menu({ placeholder: x(151) }))] },
  ],
  ['more picks than options', /max_values 3/, { content: 'a', components: [row(menu({ max_values: 3 }))] }],
  ['a menu beside a button', /beside/, { content: 'a', components: [row(menu(), button())] }],
  ['a button outside a row', /outside a row/, { content: 'a', components: [button()] }],
  [
    'a text input in a message',
    /type 4/,
    { content: 'a', components: [row({ type: 4, custom_id: 'a', style: 1, label: 'a' })] },
  ],
  ['11 embeds', /embeds: has 11/, { embeds: many(11, () => ({ title: 'a' })) }],
  [
    '6,001 characters in embeds',
    /6001 characters/,
    { embeds: [{ description: x(4096) }, { description: x(1905) }] },
  ],
  ['a title of 257', /title: has 257/, { embeds: [{ title: x(257) }] }],
  ['26 fields', /fields: has 26/, { embeds: [{ fields: many(26, () => ({ name: 'a', value: 'b' })) }] }],
  ['a field of 1,025', /value: has 1025/, { embeds: [{ fields: [{ name: 'a', value: x(1025) }] }] }],
  ['newer parts beside content', /beside/, { ...newer, content: 'a', components: [text('a')] }],
  ['newer parts without the flag', /outside a row/, { ...quiet, components: [text('a')] }],
  [
    '4,001 characters in newer parts',
    /4001 characters/,
    { ...newer, components: [text(x(2000)), text(x(2001))] },
  ],
  [
    '41 newer parts',
    /41 parts/,
    { ...newer, components: [{ type: 17, components: many(40, (i) => text(`${i}`)) }] },
  ],
  [
    'a container in a container',
    /container in/,
    { ...newer, components: [{ type: 17, components: [{ type: 17, components: [text('a')] }] }] },
  ],
  [
    'a section of four',
    /has 4 parts/,
    { ...newer, components: [{ type: 9, components: many(4, () => text('a')), accessory: button() }] },
  ],
  ['11 files', /11 files/, { ...quiet }, 'create', many(11, (i) => file('a', 1, `files[${i}]`)) as File[]],
  ['a file of 11 MiB', /10 MiB/, { ...quiet }, 'create', [file('a.pdf', 11 * 1024 * 1024)]],
  ['a path as a name', /a path/, { ...quiet }, 'create', [file('../a.txt')]],
  [
    'a file that did not come',
    /no file/,
    { ...quiet, content: 'a', attachments: [{ id: 1, filename: 'a' }] },
    'create',
    [file()],
  ],
  [
    'a picture that did not come',
    /did not come/,
    { ...quiet, embeds: [{ image: { url: 'attachment://b.png' } }] },
    'create',
    [file('a.png')],
  ],
  ['a ping of all', /pings|would ping/, { content: '@everyone' }],
  ['a ping of one', /would ping/, { content: 'hello <@123>' }],
  ['a ping that is asked for', /pings somebody/, { content: 'a', allowed_mentions: { parse: ['users'] } }],
  ['a ping by id', /pings somebody/, { content: 'a', allowed_mentions: { parse: [], users: ['1'] } }],
  ['a ping in the newer parts', /would ping/, { ...newer, components: [text('<@&1>')] }],
  ['a reply that pings', /would ping/, { content: 'a', message_reference: { message_id: '1' } }],
  [
    'a reply that is to ping',
    /replied/,
    { content: 'a', allowed_mentions: { parse: [], replied_user: true } },
  ],
  ['for one alone, in a channel', /flags/, { ...quiet, content: 'a', flags: 64 }],
  ['a nonce of 26', /nonce: has 26/, { ...quiet, content: 'a', nonce: x(26) }],
  ['aloud', /tts/, { ...quiet, content: 'a', tts: true }],
];

describe('messages', () => {
  for (const [name, body, way = 'create', sent = []] of goodMessages) {
    test(name, () => expect(messageFaults(body, sent, way)).toEqual([]));
  }
  for (const [name, fault, body, way = 'create', sent = []] of badMessages) {
    test(`${name} is told`, () => expect(messageFaults(body, sent, way).join('\n')).toMatch(fault));
  }
});

const input = (more = {}): object => ({ type: 4, custom_id: 'a', style: 1, label: 'b', ...more });
const modal = (more = {}): object => ({
  type: 9,
  data: { custom_id: 'a', title: 'b', components: [row(input())], ...more },
});
const choices = (count: number): object => ({
  type: 8,
  data: { choices: many(count, (i) => ({ name: `${i}`, value: `${i}` })) },
});
const command: Asked = { type: 2, fromMessage: false };
const component: Asked = { type: 3, fromMessage: true };
const completion: Asked = { type: 4, fromMessage: false };
const form: Asked = { type: 5, fromMessage: false };

const goodCallbacks: readonly (readonly [string, object, Asked])[] = [
  ['a message', { type: 4, data: { ...quiet, content: 'a' } }, command],
  ['a promise for one alone', { type: 5, data: { flags: 64 } }, command],
  ['an update of a pressed message', { type: 7, data: { content: 'a' } }, component],
  ['25 choices', choices(25), completion],
  [
    'a number as a choice',
    { type: 8, data: { choices: [{ name: 'a', value: 12 }] } },
    { ...completion, optionType: 4 },
  ],
  ['a modal of five', modal({ components: many(5, (i) => row(input({ custom_id: `${i}` }))) }), command],
  [
    'a modal with a label',
    modal({ components: [{ type: 18, label: 'a', component: { type: 4, custom_id: 'a', style: 2 } }] }),
    component,
  ],
];

const badCallbacks: readonly (readonly [string, RegExp, object, Asked])[] = [
  ['choices for a command', /does not answer/, choices(1), command],
  ['a message for suggestions', /does not answer/, { type: 4, data: { content: 'a' } }, completion],
  ['an update without a message', /does not answer/, { type: 7, data: { content: 'a' } }, command],
  ['a modal for a modal', /does not answer/, modal(), form],
  ['a pong', /does not answer/, { type: 1 }, command],
  ['26 choices', /choices: has 26/, choices(26), completion],
  [
    'a choice of 101',
    /name: has 101/,
    { type: 8, data: { choices: [{ name: x(101), value: 'a' }] } },
    completion,
  ],
  [
    'a choice without a name',
    /name: has 0/,
    { type: 8, data: { choices: [{ name: '', value: 'a' }] } },
    completion,
  ],
  ['a text where a number belongs', /no number/, choices(1), { ...completion, optionType: 4 }],
  [
    'half a gram where whole ones belong',
    /whole/,
    { type: 8, data: { choices: [{ name: 'a', value: 0.5 }] } },
    { ...completion, optionType: 4 },
  ],
  ['a title of 46', /title: has 46/, modal({ title: x(46) }), command],
  ['no title', /title/, modal({ title: '' }), command],
  [
    'six fields',
    /components: has 6/,
    modal({ components: many(6, (i) => row(input({ custom_id: `${i}` }))) }),
    command,
  ],
  [
    'two fields in a row',
    /has 2 parts/,
    modal({ components: [row(input(), input({ custom_id: 'c' }))] }),
    command,
  ],
  ['a label of 46', /label: has 46/, modal({ components: [row(input({ label: x(46) }))] }), command],
  [
    'a placeholder of 101',
    /placeholder: has 101/,
    modal({ components: [row(input({ placeholder: x(101) }))] }),
    command,
  ],
  ['4,001 filled in', /value: has 4001/, modal({ components: [row(input({ value: x(4001) }))] }), command],
  [
    'more filled in than fits',
    /more than fits/,
    modal({ components: [row(input({ value: x(11), max_length: 10 }))] }),
    command,
  ],
  ['one field twice', /twice/, modal({ components: [row(input()), row(input())] }), command],
  ['a button in a modal', /without a text input/, modal({ components: [row(button())] }), command],
  ['a message too long', /content: has 2001/, { type: 4, data: { content: x(2001) } }, command],
  ['a promise with a flag', /data.flags/, { type: 5, data: { flags: 1 << 15 } }, command],
];

describe('first answers', () => {
  test.each(goodCallbacks)('%s', (_, body, asked) => {
    expect(callbackFaults(body, [], asked)).toEqual([]);
  });

  test.each(badCallbacks)('%s is told', (_, fault, body, asked) => {
    expect(callbackFaults(body, [], asked).join('\n')).toMatch(fault);
  });
});

const slash = (more = {}): object => ({ name: 'wax', description: 'all about wax', ...more });
const option = (more = {}): object => ({ type: 3, name: 'of', description: 'which', ...more });
const choice = (index: number, more = {}): object => ({ name: `${index}`, value: `${index}`, ...more });

const goodCommands: readonly (readonly [string, readonly object[]])[] = [
  ['a plain one', [slash()]],
  ['25 options', [slash({ options: many(25, (i) => option({ name: `o${i}` })) })]],
  [
    'groups',
    [
      slash({
        options: [
          option({ type: 2, name: 'g', options: [option({ type: 1, name: 's', options: [option()] })] }),
        ],
      }),
    ],
  ],
  ['a context menu', [{ type: 3, name: 'Read as a recipe' }]],
  ['other scripts', [slash({ name: 'бальзам' })]],
];

const badCommands: readonly (readonly [string, RegExp, readonly object[]])[] = [
  ['capitals', /small letters/, [slash({ name: 'Wax' })]],
  ['a blank in a name', /no name/, [slash({ name: 'bees wax' })]],
  ['a name of 33', /no name/, [slash({ name: x(33) })]],
  ['a description of 101', /description: has 101/, [slash({ description: x(101) })]],
  ['no description', /description/, [{ name: 'wax' }]],
  ['26 options', /options: has 26/, [slash({ options: many(26, (i) => option({ name: `o${i}` })) })]],
  ['one option twice', /twice/, [slash({ options: [option(), option()] })]],
  ['one command twice', /twice/, [slash(), slash()]],
  [
    'required after optional',
    /required after/,
    [slash({ options: [option(), option({ name: 'b', required: true })] })],
  ],
  ['26 choices', /choices: has 26/, [slash({ options: [option({ choices: many(26, choice) })] })]],
  [
    'a choice of 101',
    /value: has 101/,
    [slash({ options: [option({ choices: [choice(1, { value: x(101) })] })] })],
  ],
  [
    'choices beside suggestions',
    /beside autocomplete/,
    [slash({ options: [option({ choices: [choice(1)], autocomplete: true })] })],
  ],
  [
    'suggestions for yes and no',
    /no type to complete/,
    [slash({ options: [option({ type: 5, autocomplete: true })] })],
  ],
  ['a length of 6,001', /max_length/, [slash({ options: [option({ max_length: 6001 })] })]],
  [
    'values beside subcommands',
    /beside values/,
    [slash({ options: [option(), option({ type: 1, name: 's' })] })],
  ],
  [
    '8,001 characters',
    /allowed are 8000/,
    [
      slash({
        options: many(25, (i) =>
          option({
            name: `o${i}`,
            description: x(100),
            choices: many(25, (j) => choice(j, { name: `${j} long`, value: `${j}${x(8)}` })),
          }),
        ),
      }),
    ],
  ],
  ['a description in a menu', /context menu/, [{ type: 3, name: 'Read', description: 'a' }]],
  ['101 commands', /101 of type 1/, many(101, (i) => slash({ name: `c${i}` }))],
  ['a wrong locale', /no locale/, [slash({ name_localizations: { English: 'wax' } })]],
];

describe('commands', () => {
  test.each(goodCommands)('%s', (_, list) => {
    expect(commandFaults(list)).toEqual([]);
  });

  test.each(badCommands)('%s is told', (_, fault, list) => {
    expect(commandFaults(list).join('\n')).toMatch(fault);
  });
});
