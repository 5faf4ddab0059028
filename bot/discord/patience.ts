import { setTimeout as pause } from 'node:timers/promises';
import { DefaultRestOptions, type RESTOptions } from 'discord.js';

type Send = RESTOptions['makeRequest'];

/** Milliseconds between one attempt and the next. For a first answer together well within the three seconds it may take. */
const firstPauses: readonly number[] = [100, 200, 400, 800];
const pauses: readonly number[] = [...firstPauses, 1600, 3200];

const pausesFor = (url: string): readonly number[] => (/\/callback(\?|$)/.test(url) ? firstPauses : pauses);

/** A line that broke or was never there, by the codes of Node and of the client for HTTP. */
const brokenLine = new Set([
  'ECONNRESET',
  'ECONNREFUSED',
  'EPIPE',
  'ETIMEDOUT',
  'EAI_AGAIN',
  'UND_ERR_SOCKET',
  'UND_ERR_CONNECT_TIMEOUT',
]);

const codeOf = (fault: unknown): unknown =>
  fault instanceof Error && 'code' in fault ? fault.code : undefined;

/**
 * Whether a call may be made again when nobody can say if it was heard. A first answer is refused the second time, a message
 * carries its nonce, an edit changes nothing more; only a further message to a command would stand there twice.
 */
const mayRepeat = (url: string, method: string | undefined): boolean =>
  method !== 'POST' || !/\/webhooks\/\d+\/[^/]+(\?|$)/.test(url);

/** One attempt; nothing where another is to follow. */
const attempted = async (...[send, url, init]: [Send, ...Parameters<Send>]) => {
  try {
    const response = await send(url, init);
    if (response.status < 500) return response;
    await response.arrayBuffer();
  } catch (fault) {
    if (!brokenLine.has(String(codeOf(fault))) || !mayRepeat(url, init.method)) throw fault;
  }
  return undefined;
};

/**
 * Makes calls that meet a server out of order (5xx) or a broken line again after growing pauses. The library makes them again
 * at once, which a platform that is away for half a second does not notice, and does not know most broken lines.
 *
 * @param send - makes one call
 * @param waitsFor - milliseconds before each further attempt of a call to that address
 */
export const patiently =
  (
    send: Send = DefaultRestOptions.makeRequest,
    waitsFor: (url: string) => readonly number[] = pausesFor,
  ): Send =>
  async (url, init) => {
    const signal = init.signal ?? undefined;
    for (const wait of waitsFor(url)) {
      const response = await attempted(send, url, init);
      if (response) return response;
      await pause(wait, undefined, { signal });
    }
    return send(url, init);
  };
