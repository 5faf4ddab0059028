import { mkdtemp, readdir, readFile, writeFile } from 'node:fs/promises';
import { tmpdir } from 'node:os';
import { join } from 'node:path';
import { fc, it as prop } from '@fast-check/vitest';
import { describe, expect, it } from 'vitest';
import type { Reply } from '../../bot/answer.ts';
import type { FigureValue } from '../../bot/figures.ts';
import { safeName, saveFiles } from '../../bot/render/files.ts';
import { jsonLine } from '../../bot/render/json.ts';

const replyWith = (figures: Readonly<Record<string, FigureValue>>): Reply => ({
  topic: 'convert',
  request: { value: 5, unit: 'oz' },
  answer: {
    title: '141.7 g',
    blocks: [],
    figures,
    warnings: [{ code: 'rough-estimate', text: 'About.' }],
  },
});

describe('a reply as one line of JSON', () => {
  it('should have the fields of an answer, in their order', () => {
    const files = [{ name: 'a.txt', path: '/x/a.txt' }];
    expect(jsonLine(replyWith({ value: 141.7, unit: 'g' }), files)).toBe(
      '{"topic":"convert","request":{"value":5,"unit":"oz"},"figures":{"value":141.7,"unit":"g"},' +
        '"warnings":[{"code":"rough-estimate","text":"About."}],' +
        '"text":"141.7 g\\n\\nMind: About.\\n\\nFile a.txt: /x/a.txt","files":[{"name":"a.txt","path":"/x/a.txt"}]}',
    );
  });

  it('should have a topic and an error for a refusal', () => {
    const line = jsonLine({
      topic: null,
      error: { code: 'too-long', text: 'Too long.\u001b' },
    });
    expect(line).toBe('{"topic":null,"error":{"code":"too-long","text":"Too long."}}');
  });

  it('should never say undefined, NaN, Infinity or minus zero', () => {
    const figures = {
      none: Number.NaN,
      most: Number.POSITIVE_INFINITY,
      zero: -0,
      deep: [{ least: Number.NEGATIVE_INFINITY, gone: undefined }],
      list: [undefined],
    } as unknown as Record<string, FigureValue>;
    const line = jsonLine({
      ...replyWith(figures),
      request: undefined,
    } as Reply);
    expect(JSON.parse(line)).toMatchObject({
      request: null,
      figures: {
        none: null,
        most: null,
        zero: 0,
        deep: [{ least: null }],
        list: [null],
      },
    });
    expect(line).not.toMatch(/undefined|NaN|Infinity|-0\b/);
  });

  prop.prop([fc.dictionary(fc.string(), fc.jsonValue() as fc.Arbitrary<FigureValue>)])(
    'should be one line that reads back as the same figures',
    (figures) => {
      const line = jsonLine(replyWith(figures));
      expect(line).not.toContain('\n');
      expect(JSON.parse(line).figures).toEqual(JSON.parse(JSON.stringify(figures)));
    },
  );
});

describe("an answer's files", () => {
  const bytes = new TextEncoder().encode('INCI');
  const label = { name: 'label.pdf', type: 'application/pdf', bytes };
  const folder = async () => join(await mkdtemp(join(tmpdir(), 'pipkin-files-')), 'files');

  it('should be written under the name given, in a folder made for them', async () => {
    const into = await folder();
    const saved = await saveFiles(into, [label]);
    expect(saved).toEqual([{ name: 'label.pdf', path: join(into, 'label.pdf') }]);
    expect(await readFile(join(into, 'label.pdf'), 'utf8')).toBe('INCI');
  });

  it('should never take the place of an earlier file', async () => {
    const into = await folder();
    await saveFiles(into, []);
    await saveFiles(into, [label, label]);
    await writeFile(join(into, 'label.pdf'), 'mine');
    const [third] = await saveFiles(into, [label]);
    expect(third?.path).toBe(join(into, 'label-3.pdf'));
    expect((await readdir(into)).sort()).toEqual(['label-2.pdf', 'label-3.pdf', 'label.pdf']);
    expect(await readFile(join(into, 'label.pdf'), 'utf8')).toBe('mine');
  });

  it.each([
    ['../../etc/passwd', 'etc-passwd'],
    ['.hidden', 'hidden'],
    ['a/b\\c:d.pdf', 'a-b-c-d.pdf'],
    ['\u001b\u202e', 'file'],
    [`${'x'.repeat(300)}.pdf`, `${'x'.repeat(96)}.pdf`],
  ])('should make %j a name that stays in the folder', (name, safe) => {
    expect(safeName(name)).toBe(safe);
  });

  prop.prop([fc.string({ unit: 'binary' })])('should never name a path or a dot file', (name) => {
    expect(safeName(name)).toMatch(/^[^./\\\p{Control}][^/\\\p{Control}]{0,99}$/u);
  });
});
