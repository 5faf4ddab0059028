import { fc, it as property } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { memoryNotes, type Notes } from '../../bot/book/notes.ts';
import { nextButtons, nextMenu } from '../../bot/discord/buttons.ts';
import { formId, meaningOf, sayId } from '../../bot/discord/ids.ts';
import { longIds } from '../../bot/discord/long-ids.ts';
import { type ChatReply, chatReply } from '../../bot/render/discord.ts';

const day = 86_400_000;
const long = (name: string): string => `scale ${name} ${'x'.repeat(150)}`;

const replyWith = (...says: readonly string[]): ChatReply =>
  chatReply({
    topic: 'scale',
    request: {},
    answer: {
      title: 'Balm',
      blocks: [],
      figures: {},
      warnings: [],
      next: says.map((say, at) => ({ label: `Step ${at}`, say })),
      choices: {
        label: 'Show a lot',
        steps: says.map((say, at) => ({ label: `Lot ${at}`, say: `lot ${say}` })),
      },
    },
  });

const idsOf = ({ messages }: ChatReply): readonly string[] =>
  messages.flatMap(({ buttons, menu }) => [...buttons, ...(menu?.options ?? [])].map(({ id }) => id));

const strict = (notes: Notes) =>
  longIds(notes, (fault) => {
    throw fault;
  });

describe('ids', () => {
  property.prop([fc.dictionary(fc.stringMatching(/^[a-z_]{1,20}$/), fc.string()), fc.string()])(
    'should mean what they were made of',
    (filled, words) => {
      const form = meaningOf(formId('recipe', filled));
      expect(form).toEqual({ form: 'recipe', filled: new Map(Object.entries(filled)) });
      expect(meaningOf(sayId(words))).toEqual({ words });
    },
  );

  const anyOrPlain = fc.oneof(fc.string({ unit: 'grapheme' }), fc.stringMatching(/^[A-Za-z0-9 .*_-]*$/));
  property.prop([fc.dictionary(fc.oneof(fc.stringMatching(/^[a-z_]{1,20}$/), fc.string()), anyOrPlain)])(
    'should hold what is filled in as web forms write it',
    (filled) => {
      expect(formId('recipe', filled)).toBe(`form1:recipe:${new URLSearchParams(filled)}`);
    },
  );

  it.each(['', 'say0:help', 'help', 'form1:', 'form1:Recipe:', 'form1:recipe', 'constructor', '__proto__'])(
    'should mean nothing otherwise: %s',
    (id) => expect(meaningOf(id)).toBeUndefined(),
  );
});

describe('buttons and menus', () => {
  it('should open a form, or say the words where the form would hold too much', () => {
    const step = (note: string) => ({
      label: 'Record this pour',
      say: 'poured 24 tins of R today',
      form: { name: 'batch', filled: { say: note } },
    });
    expect(nextButtons([step('slow')])[0]?.id).toBe('form1:batch:say=slow');
    expect(nextButtons([step('x'.repeat(2000))])[0]?.id).toBe('say1:poured 24 tins of R today');
  });

  it('should be no menu where there is nothing to pick from, and no longer than 25', () => {
    const steps = Array.from({ length: 40 }, (_, at) => ({ label: `Lot ${at}`, say: `lot K${at}` }));
    expect(nextMenu({ label: 'Show', steps: [] })).toBeUndefined();
    expect(nextMenu(undefined)).toBeUndefined();
    expect(nextMenu({ label: 'Show', steps })?.options).toHaveLength(25);
  });
});

describe('long ids', () => {
  it('should leave a reply alone whose ids fit, and write nothing', async () => {
    const ids = longIds({ ...memoryNotes(), write: () => Promise.reject(new Error('written')) }, () => {
      throw new Error('a fault');
    });
    const reply = replyWith('help');
    expect(await ids.fitted(reply, 'guild:1', 0)).toBe(reply);
  });

  it('should fit, mean the same later and in another process, and be nothing in another group', async () => {
    const notes = memoryNotes();
    const fitted = idsOf(await strict(notes).fitted(replyWith(long('a'), 'help', long('b')), 'guild:1', 0));
    expect(fitted.every((id) => id.length <= 100)).toBe(true);
    const later = strict(notes);
    const whole = await Promise.all(fitted.map((id) => later.whole(id, 'guild:1', 29 * day)));
    expect(whole).toEqual(idsOf(replyWith(long('a'), 'help', long('b'))));
    expect(await later.whole(fitted[0] ?? '', 'guild:2', 0)).toBeUndefined();
    expect(await later.whole('long1:forged', 'guild:1', 0)).toBeUndefined();
    expect(await later.whole('long1:', 'guild:1', 0)).toBeUndefined();
  });

  it('should be gone after thirty days', async () => {
    const ids = strict(memoryNotes());
    const [first = ''] = idsOf(await ids.fitted(replyWith(long('a')), 'guild:1', 0));
    expect(await ids.whole(first, 'guild:1', 30 * day - 1)).toBeDefined();
    expect(await ids.whole(first, 'guild:1', 30 * day)).toBeUndefined();
    await ids.fitted(replyWith(long('a')), 'guild:1', 20 * day);
    expect(await ids.whole(first, 'guild:1', 40 * day)).toBeDefined();
  });

  it('should keep so many and no more, the latest, also when many are made at once', async () => {
    const notes = memoryNotes();
    const ids = strict(notes);
    const all = await Promise.all(
      Array.from({ length: 100 }, (_, at) => ids.fitted(replyWith(long(`recipe ${at}`)), 'guild:1', at)),
    );
    const kept = (await notes.read('guild:1', 'long-ids')) as { readonly ids: readonly unknown[] };
    expect(kept.ids).toHaveLength(120);
    const [oldest = '', latest = ''] = [all[0], all[99]].map((reply) => (reply ? idsOf(reply)[0] : ''));
    expect(await ids.whole(oldest, 'guild:1', 100)).toBeUndefined();
    expect(await ids.whole(latest, 'guild:1', 100)).toBe(sayId(long('recipe 99')));
  });

  it('should be left out when they cannot be kept, and what was noted be no matter when it cannot be read', async () => {
    const faults: unknown[] = [];
    const full = { ...memoryNotes(), write: () => Promise.reject(new Error('disk full')) };
    const reply = await longIds(full, (fault) => faults.push(fault)).fitted(
      replyWith(long('a'), 'help'),
      'g',
      0,
    );
    expect(idsOf(reply)).toEqual(['say1:help', 'say1:lot help']);
    expect(faults).toHaveLength(1);
    const odd = memoryNotes();
    await odd.write('g', 'long-ids', { v: 2, ids: 'none' });
    expect(await strict(odd).whole('long1:abc', 'g', 0)).toBeUndefined();
  });
});
