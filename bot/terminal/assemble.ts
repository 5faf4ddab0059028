/** Puts typed and pasted lines together into messages. */
export interface Assembler {
  /** Takes a line; gives the message it completes, if it does. */
  add(line: string, pasted: boolean): string | undefined;
  /** What is left when no more lines come. */
  rest(): string | undefined;
  /** `list` waits for an empty line, `more` for one more line, `paste` for Enter. */
  waitsFor(): 'message' | 'list' | 'more' | 'paste';
}

/** Characters of one message that are kept; the handler refuses far shorter ones, kindly. */
const mostKept = 64 * 1024;

/**
 * A message is one line, except that lines pasted together stay together until Enter, a line ending in `\` goes on
 * in the next one, and a line ending in `:` (a recipe's name, say) goes on until an empty line.
 */
export const assembler = (): Assembler => {
  let kept: string[] = [];
  let size = 0;
  let state: ReturnType<Assembler['waitsFor']> = 'message';

  const keep = (line: string): void => {
    size += line.length + 1;
    if (size <= mostKept + line.length) kept.push(line);
  };
  const whole = (): string => {
    const message = kept.join('\n');
    kept = [];
    size = 0;
    state = 'message';
    return message;
  };
  const typed = (line: string): string | undefined => {
    if (state === 'list' && line.trim() === '') return whole();
    if (state !== 'list' && /\\\s*$/.test(line)) {
      keep(line.replace(/\\\s*$/, ''));
      state = 'more';
      return undefined;
    }
    keep(line);
    if (state === 'list' || (state !== 'paste' && /:\s*$/.test(line))) {
      state = 'list';
      return undefined;
    }
    return whole();
  };

  return {
    add(line, pasted) {
      if (!pasted) return typed(line);
      keep(line);
      if (state === 'message') state = 'paste';
      return undefined;
    },
    rest: () => (kept.length > 0 ? whole() : undefined),
    waitsFor: () => state,
  };
};
