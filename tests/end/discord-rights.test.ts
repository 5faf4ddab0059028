import { fc } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { readName } from '../../bot/discord/context-menu.ts';
import { topics } from '../../bot/topics.ts';
import { benchHouse } from '../helpers/bench-house.ts';
import type { Filled, Place } from '../helpers/chat-stand-in/asked.ts';
import type { Exchange } from '../helpers/chat-stand-in/exchange.ts';
import { annexId, guildId, hazel, warden, wren } from '../helpers/chat-stand-in/people.ts';
import type { StandIn } from '../helpers/chat-stand-in/stand-in.ts';
import { useChat } from '../helpers/chat-stand-in/use-chat.ts';
import { useHouse } from '../helpers/use-house.ts';

// Each way in (command, words, button, menu, form, suggestions, command on a message) is tried from the wrong group, by the
// wrong member, and with ids that were replayed or made up.

const openChat = useChat();
const hall = `guild:${guildId}`;
const keep = useHouse();

const unlimited = { burst: 1e6, perMinute: 1e6 };
const limits = { member: unlimited, group: unlimited, typing: unlimited };

/** Things in the hall's book that nobody asks for by these words. */
const secrets = ['Quillfeather', '37.31', '12.25', 'Marrow Lane', 'spring fair', 'itchy elbow'];

/** The hall's book holds things nobody elsewhere may see. */
const open = async () => {
  const made = keep(await benchHouse(hall));
  await made.say('save recipe Zebrawood salve: 37.31 g beeswax, 62.69 g olive oil');
  await made.say('save recipe Quillfeather balm: 20 g beeswax, 80 g olive oil');
  await made.say('bought 500 g mango butter lot ZQ77 from Marrow Lane, 12.25');
  await made.say('report: itchy elbow after 26-KIVO');
  const chat = await openChat({ pipkin: made.pipkin, topics, limits });
  const seqOf = async (group: string): Promise<number> => (await made.keeper.open(group)).state.seq;
  return { ...chat, seqOf, house: made };
};

const idsIn = ({ shown, form }: Exchange): readonly string[] => [
  ...shown.flatMap(({ buttons, options }) => [...buttons, ...options].map(({ id }) => id)),
  ...(form ? [form.id] : []),
];

const asked = [
  'list recipes',
  'show Zebrawood salve',
  'scale Zebrawood salve to 24 tins of 15 ml',
  'versions of Zebrawood salve',
  'stock',
  'lot ZQ77',
  'prices',
  'list batches',
  'batch 26-KIVO',
  'labels for batch 26-KIVO',
  'where did 26-KIVO go',
  'list reactions',
  'what is out of the house',
  'what is due',
  'history',
  'help',
  'zebra',
] as const;

/** What was shown for what was said. A member's own words may be repeated to them ("there is no recipe …"). */
interface Seen {
  readonly said: string;
  readonly shown: string;
}

const seenIn = (said: string, { shown }: Exchange): Seen => ({
  said: decodeURIComponent(said.replaceAll('+', ' ')),
  shown: shown.map(({ content, files }) => [content, ...files.map(({ text }) => text)].join('\n')).join('\n'),
});

const filled: readonly (readonly [command: string, options: Filled])[] = [
  ['recipe', { do: 'list' }],
  ['recipe', { do: 'show', name: 'Zebrawood salve' }],
  ['scale', { recipe: 'Zebrawood salve', tins: 2, size: '15 g' }],
  ['stock', { do: 'show', lot: 'ZQ77' }],
  ['reaction', {}],
  ['book', { do: 'history' }],
  ['book', { do: 'export' }],
];

const sent: readonly (readonly [form: string, fields: Readonly<Record<string, string>>])[] = [
  ['form1:batch:', { recipe: 'Zebrawood salve', make: '2 tins of 15 g' }],
  ['form1:read:', { lines: 'Zebrawood salve', make: '50 g' }],
];

const suggested = async (standIn: StandIn, place: Place): Promise<Seen[]> => {
  const seen: Seen[] = [];
  for (const { name, slash } of topics) {
    for (const option of Object.keys(slash.complete ?? {}))
      for (const typed of ['', 'q', 'z', '26', 'K'])
        seen.push({
          said: typed,
          shown: (await standIn.autocomplete(name, option, typed, place)).join('\n'),
        });
  }
  return seen;
};

/** Every way of asking at a place; what was shown and suggested there. */
const allSeen = async (standIn: StandIn, place: Place, ids: readonly string[]): Promise<readonly Seen[]> => {
  const seen: Seen[] = [];
  for (const say of asked) {
    seen.push(seenIn(say, await standIn.press(`say1:${say}`, place)));
    seen.push(seenIn(say, await standIn.pick(`say1:${say}`, place)));
  }
  for (const id of ids) seen.push(seenIn(id, await standIn.pick(id, place)));
  for (const [command, options] of filled)
    seen.push(seenIn('', await standIn.slash(command, options, place)));
  for (const [form, fields] of sent) seen.push(seenIn('', await standIn.sendForm(form, fields, place)));
  return [...seen, ...(await suggested(standIn, place))];
};

/** The secrets somebody was shown who did not name them. */
const leaked = (all: readonly Seen[]): readonly string[] =>
  secrets.filter((secret) => all.some(({ said, shown }) => shown.includes(secret) && !said.includes(secret)));

describe('another group', () => {
  it('should see nothing of the hall, whichever way it asks, nor by the ids of the hall’s buttons', async () => {
    const { standIn, seqOf } = await open();
    const inHall: Exchange[] = [];
    for (const say of asked) inHall.push(await standIn.press(`say1:${say}`, { member: warden }));
    const typo = await standIn.sendForm(
      'form1:recipe:',
      { name: 'Zebrawood salve', lines: `20 g beeswax\n${'30 g frobnicate\n'.repeat(6)}` },
      { member: warden },
    );
    const ids = [...new Set([...inHall, typo].flatMap(idsIn))];
    expect(ids.filter((id) => id.startsWith('long1:')).length).toBeGreaterThan(0);
    const own = await allSeen(standIn, { member: warden }, ids);
    // The test itself has to find them where they may be seen.
    expect(leaked(own)).toEqual(secrets);
    const before = await seqOf(hall);
    for (const place of [
      { annexe: true, member: warden },
      { direct: true, member: wren },
    ]) {
      expect(leaked(await allSeen(standIn, place, ids))).toEqual([]);
    }
    expect(await seqOf(hall)).toBe(before);
  });

  it('should not be told by direct words either, and keep its own book', async () => {
    const { standIn, house } = await open();
    for (const say of asked) {
      expect(leaked([seenIn(say, await standIn.direct(say, { member: wren }))])).toEqual([]);
    }
    const lines = '20 g beeswax, 80 g olive oil';
    await standIn.slash(
      'recipe',
      { do: 'save', name: 'Annexe balm', lines },
      { annexe: true, member: warden },
    );
    const names = async (group: string) =>
      Object.values((await house.keeper.open(group)).state.recipes).map(({ name }) => name);
    expect(await names(`guild:${annexId}`)).toEqual(['Annexe balm']);
    expect(await names(hall)).not.toContain('Annexe balm');
  });

  it('should be refused a long id of the hall as a thing of the past', async () => {
    const { standIn } = await open();
    const lines = `20 g beeswax\n${'30 g frobnicate\n'.repeat(6)}`;
    const typo = await standIn.sendForm('form1:recipe:', { name: 'Zebrawood', lines }, { member: warden });
    const [again] = typo.first.buttons;
    expect(again?.id).toMatch(/^long1:/);
    const elsewhere = await standIn.press(again?.id ?? '', { annexe: true, member: warden });
    expect(elsewhere.text).toContain('no longer of use');
    expect((await standIn.pressSent(again?.id ?? '', { member: warden }).formed()).fields[0]?.value).toBe(
      'Zebrawood',
    );
  });
});

/** Everything that writes, with the words that do it. */
const writes = [
  'save recipe Forged: 20 g beeswax, 80 g olive oil',
  'delete Fernlea hand balm',
  'rename Fernlea hand balm to Forged',
  'bought 500 g beeswax lot F1',
  'threw away 50 g of K12',
  'warn me below 200 g beeswax',
  'poured 2 tins of 15 g of Fernlea hand balm today',
  'gave 1 tins of 26-KIVO to the fair',
  'note on 26-KIVO: forged',
  'report: rash after 26-KIVO',
  'shea costs 18 per kg',
  'done with lot K12',
  'undo',
] as const;

/** Everything that only those who manage the group may do. */
const manages = [
  'region us',
  'only role Bench may write',
  'everyone may write',
  'time zone Europe/Lisbon',
  'remind us daily at 9 in Lisbon, 30 days ahead',
  'forget everything',
  'keep everything',
] as const;

const everyWay: readonly ((standIn: StandIn, say: string, place: Place) => Promise<Exchange>)[] = [
  (standIn, say, place) => standIn.mention(say, place),
  (standIn, say, place) => standIn.press(`say1:${say}`, place),
  (standIn, say, place) => standIn.pick(`say1:${say}`, place),
];

/** Forms whose field breaks out of its line: still only the words of a message. */
const everyForm: typeof everyWay = [
  (standIn, say, place) =>
    standIn.sendForm('form1:stock:', { ingredient: `beeswax\n${say}`, amount: '1 g' }, place),
  (standIn, say, place) => standIn.sendForm('form1:read:', { lines: say }, place),
];

describe('a member who may not', () => {
  it('should write nothing while a role is set, whichever way they try; one with the role may', async () => {
    const { standIn, seqOf } = await open();
    await standIn.slash('settings', { writers: 'Bench' }, { member: warden });
    const before = await seqOf(hall);
    for (const say of writes)
      for (const way of [...everyWay, ...everyForm]) await way(standIn, say, { member: hazel });
    const forms = [
      ['form1:recipe:', { name: 'Forged', lines: '20 g beeswax' }],
      ['form1:read:', { name: 'Forged', lines: '20 g beeswax' }],
      ['form1:batch:', { recipe: 'Fernlea hand balm', make: '2 tins of 15 g' }],
      ['form1:stock:', { ingredient: 'beeswax', amount: '500 g' }],
    ] as const;
    for (const [id, fields] of forms) {
      const { first } = await standIn.sendForm(id, fields, { member: hazel });
      expect(first).toMatchObject({ aside: true, content: expect.stringContaining('Bench') });
    }
    expect(await seqOf(hall)).toBe(before);
    // Reading stays open to them, and so do forms that only show.
    expect((await standIn.mention('show Fernlea hand balm', { member: hazel })).text).toContain('beeswax');
    const shown = await standIn.sendForm(
      'form1:read:',
      { lines: '20 g beeswax\n80 g olive oil' },
      { member: hazel },
    );
    expect(shown.text).toContain('100.0');
    await standIn.press(`say1:${writes[0]}`, { member: wren });
    expect(await seqOf(hall)).toBe(before + 1);
  });

  it('should change nothing of what those who manage decide', async () => {
    const { standIn, seqOf, house } = await open();
    const settings = async () => (await house.keeper.open(hall)).state.settings;
    const before = { seq: await seqOf(hall), settings: await settings() };
    for (const say of manages) {
      for (const way of everyWay) expect((await way(standIn, say, { member: hazel })).text).not.toBe('');
      expect(await seqOf(hall), say).toBe(before.seq);
    }
    const command = await standIn.slash('settings', { region: 'us' }, { member: hazel });
    expect(command.text).toMatch(/only those who manage/i);
    expect({ seq: await seqOf(hall), settings: await settings() }).toEqual(before);
    await standIn.press('say1:region us', { member: warden });
    expect((await settings()).region).toBe('us');
  });

  it('should manage their own direct messages only', async () => {
    const { standIn, house } = await open();
    await standIn.direct('region us', { member: hazel });
    expect((await house.keeper.open(`dm:${hazel.id}`)).state.settings.region).toBe('us');
    expect((await house.keeper.open(hall)).state.settings.region).not.toBe('us');
  });
});

describe('ids that were made up', () => {
  it('should each get one answer, aside, and do nothing', async () => {
    const { standIn, seqOf } = await open();
    const before = await seqOf(hall);
    const odd = [
      '__proto__',
      'constructor',
      'say1',
      'say9:help',
      'form1::',
      'form1:toString:',
      'long1:__proto__',
      'pick1',
    ];
    const random = fc.sample(fc.string({ minLength: 1, maxLength: 100, unit: 'binary' }), {
      numRuns: 60,
      seed: 11,
    });
    for (const id of [...odd, ...random]) {
      const exchanges = await Promise.all([
        standIn.press(id),
        standIn.pick(id),
        standIn.sendForm(id, { [id]: id, name: id, lines: id }),
        standIn.onMessage({ name: id, text: id }).until(1),
      ]);
      for (const { shown } of exchanges) expect(shown.map(({ aside }) => aside)).toEqual([true]);
    }
    expect(await seqOf(hall)).toBe(before);
  });

  it('should mean no more than the same words typed, whatever the words are', async () => {
    const { standIn, seqOf } = await open();
    await standIn.slash('settings', { writers: 'Bench' }, { member: warden });
    const before = await seqOf(hall);
    const words = fc.sample(fc.string({ minLength: 1, maxLength: 90, unit: 'binary' }), {
      numRuns: 60,
      seed: 12,
    });
    for (const said of words) {
      await Promise.all([
        standIn.press(`say1:${said}`),
        standIn.sendForm('form1:batch:', { recipe: said, make: said, lots: said, on: said, say: said }),
        standIn.sendForm('form1:read:', { lines: said, make: said, name: said }),
        standIn.slash('scale', { recipe: said }),
        standIn.autocomplete('scale', 'recipe', said),
        standIn.autocomplete('batch', 'lots', said),
      ]);
    }
    expect(await seqOf(hall)).toBe(before);
  });

  it('should read a message of any shape into a form, or say why not', async () => {
    const { standIn } = await open();
    for (const text of [
      'x'.repeat(4000),
      '\n\n',
      '> '.repeat(1000),
      '`'.repeat(300),
      '@everyone 20 g beeswax',
    ]) {
      const exchange = standIn.onMessage({ name: readName, text });
      await Promise.race([exchange.until(1), exchange.formed()]);
      if (exchange.form) expect(exchange.form.fields[0]?.value.length).toBeLessThanOrEqual(3500);
      else expect(exchange.first.aside).toBe(true);
    }
  });
});
