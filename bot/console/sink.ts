import type { Writable } from 'node:stream';

/** Writing that waits for a slow reader and takes a reader's leaving quietly. */
export interface Sink {
  /** Resolves once there is room for more; false when nobody reads any longer. */
  write(text: string): Promise<boolean>;
  isGone(): boolean;
  /** Why writing stopped, unless the reader just went away (a closed pipe). */
  fault(): Error | undefined;
  /** Called at once when nobody reads any longer. */
  onGone(then: () => void): void;
}

const isReaderGone = (fault: Error): boolean =>
  'code' in fault && (fault.code === 'EPIPE' || fault.code === 'ERR_STREAM_DESTROYED');

export const sinkOf = (stream: Writable): Sink => {
  let gone = false;
  let fault: Error | undefined;
  let wake = (): void => {};
  let tell = (): void => {};
  const end = (): void => {
    gone = true;
    wake();
    tell();
  };
  stream.on('error', (problem: Error) => {
    if (!isReaderGone(problem)) fault ??= problem;
    end();
  });
  stream.on('close', end);
  stream.on('drain', () => wake());
  return {
    async write(text) {
      if (gone) return false;
      if (stream.write(text)) return true;
      await new Promise<void>((resolve) => {
        wake = resolve;
      });
      return !gone;
    },
    isGone: () => gone,
    fault: () => fault,
    onGone(then) {
      tell = then;
      if (gone) then();
    },
  };
};
