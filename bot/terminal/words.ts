import type { Style } from '../render/style.ts';
import { wrap } from '../render/wrap.ts';

/** Shown at the start; the first needs the demo book. Each works when pasted. */
export const tries = [
  'scale Fernlea hand balm to 24 tins of 15 ml',
  'what is candelilla wax',
  '150F in C',
] as const;

export const readyLine = 'Pipkin is ready to help with lip balms and salves.';

/** What a person sees when the chat opens. */
export const welcome = (width: number, style: Style): string =>
  [
    style.title(readyLine),
    '',
    ...wrap('Three things to try:', width),
    ...tries.flatMap((say) => wrap(`  ${say}`, width, '  ')),
    '',
    ...wrap('Say help to see everything I can do, or quit (Ctrl-D) to leave.', width).map(style.quiet),
    '',
  ].join('\n');

/** Said when a message goes on after a colon. */
export const listHint = '(one line for each; an empty line sends it)';

export const goodbye = 'Goodbye.';

/** True for a message that only says the person is leaving. */
export const isLeaving = (message: string): boolean =>
  /^\s*[/:]?(?:quit|exit|bye|good ?bye|bye[ -]?bye)\s*[.!]*\s*$/i.test(message);
