import { describe, expect, it } from 'vitest';
import { faultFields, type LogFields, type LogLevel, logTo } from '../../bot/log.ts';

const written = (
  level: LogLevel,
  tell: (log: ReturnType<typeof logTo>) => void,
  secrets: readonly string[] = [],
): string[] => {
  const lines: string[] = [];
  const log = logTo(
    (line) => lines.push(line),
    level,
    () => 0,
    secrets,
  );
  tell(log);
  return lines;
};

const info = (fields: LogFields, secrets: readonly string[] = []): string =>
  written('info', (log) => log.info('an.event', fields), secrets).join('');

describe('the log', () => {
  it('should write one JSON object a line', () => {
    const line = info({ count: 1 });
    expect(line.endsWith('}\n')).toBe(true);
    expect(JSON.parse(line)).toEqual({
      level: 'info',
      at: '1970-01-01T00:00:00.000Z',
      event: 'an.event',
      count: 1,
    });
  });

  it.each([
    ['silent', 0],
    ['error', 1],
    ['info', 2],
    ['debug', 3],
  ] as const)('should at %s write %i of three events', (level, count) => {
    const lines = written(level, (log) => {
      log.debug('a.debug');
      log.info('an.info', { count: 1 });
      log.error('an.error');
    });
    expect(lines).toHaveLength(count);
  });

  it.each(['token', 'text', 'content', 'password', 'request'])(
    'should leave out a field called %s',
    (name) => {
      const line = info({ [name]: 'my private balm', id: 'a1' });
      expect(line).not.toContain('private');
      expect(JSON.parse(line)).toMatchObject({ [name]: '(left out)', id: 'a1' });
    },
  );

  it('should leave out such a field one level down as well, whatever the types say', () => {
    const careless = { heard: { text: 'my private balm' } } as unknown as LogFields;
    expect(info(careless)).not.toContain('private');
  });

  it('should write no secret, wherever it comes in', () => {
    const secrets = ['a-token-of-no-worth', 'hunter"2\\x'];
    const line = info({ code: `at a-token-of-no-worth and hunter"2\\x` }, secrets);
    expect(JSON.parse(line).code).toBe('at (secret) and (secret)');
  });

  it('should keep a line one line, and free of what a terminal obeys', () => {
    const code = 'a\n{"event":"forged"}\r\u001b[2J\u009b2J\u2028\u202e\u007f';
    const lines = written('error', (log) => log.error('fault', { code }));
    expect(lines).toHaveLength(1);
    // biome-ignore lint/suspicious/noControlCharactersInRegex: they are what is looked for
    expect(lines[0]).toMatch(/^[^\u0000-\u001f\u007f-\u009f\u2028-\u202e]*\n$/);
    expect(JSON.parse(lines[0] ?? '')).toMatchObject({ event: 'fault', code });
  });

  it('should say where a fault is without the words it may quote, but for the person debugging', () => {
    const fault = new RangeError('cannot read "my private balm"');
    expect(faultFields(fault, 'info')).toMatchObject({
      name: 'RangeError',
      where: expect.stringContaining('log.test'),
    });
    expect(JSON.stringify(faultFields(fault, 'info'))).not.toContain('private');
    expect(faultFields(fault, 'debug')).toMatchObject({ message: fault.message });
    expect(faultFields('thrown words', 'info')).toEqual({ name: 'string' });
  });
});
