import { PassThrough, Readable, Writable } from 'node:stream';
import { fc, it as prop } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import { type Line, linesOf } from '../../bot/console/lines.ts';
import { sinkOf } from '../../bot/console/sink.ts';
import { assembler } from '../../bot/terminal/assemble.ts';
import { isLeaving } from '../../bot/terminal/words.ts';

const split = async (chunks: readonly Uint8Array[], most: number): Promise<Line[]> => {
  const lines: Line[] = [];
  for await (const line of linesOf(Readable.from(chunks.map((chunk) => Buffer.from(chunk))), most))
    lines.push(line);
  return lines;
};

describe('splitting a stream into lines', () => {
  prop.prop([fc.array(fc.string({ unit: 'grapheme' })), fc.integer({ min: 1, max: 20 })])(
    'should find the same lines however the bytes come in',
    async (texts, size) => {
      const lines = texts.map((text) => text.replace(/[\r\n\uFEFF]/g, ''));
      const bytes = Buffer.from(lines.map((line) => `${line}\n`).join(''));
      const chunks = Array.from({ length: Math.ceil(bytes.length / size) }, (_, index) =>
        bytes.subarray(index * size, (index + 1) * size),
      );
      expect(await split(chunks, 10_000)).toEqual(lines.map((text) => ({ kind: 'line', text })));
    },
  );

  it('should refuse a line one byte too long, count its break, and go on with the next', async () => {
    const chunks = ['abcd\nab', 'cde', '\nabc\n\nabcde'].map((text) => Buffer.from(text));
    expect(await split(chunks, 4)).toEqual([
      { kind: 'line', text: 'abcd' },
      { kind: 'too-long' },
      { kind: 'line', text: 'abc' },
      { kind: 'line', text: '' },
      { kind: 'too-long' },
    ]);
  });
});

describe('writing to a reader', () => {
  it('should wait for a slow reader', async () => {
    const stream = new PassThrough({ highWaterMark: 4 });
    const sink = sinkOf(stream);
    let written = false;
    const writing = sink.write('more than four').then((went) => {
      written = true;
      return went;
    });
    await new Promise((resolve) => setImmediate(resolve));
    expect(written).toBe(false);
    stream.resume();
    expect(await writing).toBe(true);
  });

  const failing = (code: string) =>
    new Writable({
      write: (_chunk, _encoding, done) => done(Object.assign(new Error(code), { code })),
    });

  it('should take a closed pipe as the end, without a fault', async () => {
    const sink = sinkOf(failing('EPIPE'));
    let told = false;
    sink.onGone(() => {
      told = true;
    });
    await sink.write('x');
    await new Promise((resolve) => setImmediate(resolve));
    expect({ told, gone: sink.isGone(), fault: sink.fault() }).toEqual({
      told: true,
      gone: true,
      fault: undefined,
    });
    expect(await sink.write('y')).toBe(false);
  });

  it('should keep the fault of a full disk', async () => {
    const sink = sinkOf(failing('ENOSPC'));
    await sink.write('x');
    await new Promise((resolve) => setImmediate(resolve));
    expect(sink.fault()?.message).toBe('ENOSPC');
  });
});

describe('putting lines together', () => {
  it('should wait for what the last line asks for', () => {
    const messages = assembler();
    expect(messages.add('save recipe X:', false)).toBeUndefined();
    expect(messages.waitsFor()).toBe('list');
    expect(messages.add('- 1 g beeswax \\', false)).toBeUndefined();
    expect(messages.add(' ', false)).toBe('save recipe X:\n- 1 g beeswax \\');
    expect(messages.waitsFor()).toBe('message');
    expect(messages.add('a \\ ', false)).toBeUndefined();
    expect(messages.waitsFor()).toBe('more');
    expect(messages.add('b', false)).toBe('a \nb');
  });

  it('should keep a paste together, colons and empty lines and all, until Enter', () => {
    const messages = assembler();
    for (const line of ['recipe X:', '', '1 g beeswax']) expect(messages.add(line, true)).toBeUndefined();
    expect(messages.waitsFor()).toBe('paste');
    expect(messages.add('note:', false)).toBe('recipe X:\n\n1 g beeswax\nnote:');
  });

  it('should give what is left at the end, once', () => {
    const messages = assembler();
    messages.add('recipe X:', false);
    expect(messages.rest()).toBe('recipe X:');
    expect(messages.rest()).toBeUndefined();
  });

  it('should not pile up a message without end', () => {
    const messages = assembler();
    messages.add('recipe X:', false);
    for (let count = 0; count < 5000; count++) messages.add('x'.repeat(100), false);
    expect(messages.add('', false)?.length).toBeLessThan(70_000);
  });

  it.each(['quit', ' Exit ', 'bye!', 'good bye', '/quit'])('should take %j as leaving', (words) => {
    expect(isLeaving(words)).toBe(true);
  });

  it.each(['quit smoking balm', 'exit 5', 'save recipe bye: 1 g beeswax', ''])(
    'should not take %j as leaving',
    (words) => {
      expect(isLeaving(words)).toBe(false);
    },
  );
});
