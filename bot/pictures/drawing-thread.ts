import { ThreadFault } from '../threads/thread-fault.ts';
import { compiledScript, type ThreadLimits, WorkThread } from '../threads/work-thread.ts';

export interface PictureLimits extends ThreadLimits {
  /** Longest SVG in UTF-16 units; a chart has about 10,000. */
  readonly svgLength: number;
}

export const usualLimits: PictureLimits = { milliseconds: 5000, waiting: 20, svgLength: 500_000 };

/** The thread that draws pictures. */
export class DrawingThread {
  readonly #longest: number;
  readonly #thread: WorkThread<string>;

  constructor(
    limits: PictureLimits = usualLimits,
    script: URL = compiledScript(import.meta.url, 'pictures/draw-thread.js'),
  ) {
    this.#longest = limits.svgLength;
    this.#thread = new WorkThread(limits, script);
  }

  /** PNG of an SVG. Rejects with a {@link ThreadFault}. */
  async draw(svg: string): Promise<Uint8Array> {
    if (svg.length > this.#longest) throw new ThreadFault('not-drawn', 'SVG too long');
    return this.#thread.make(svg);
  }

  /** Ends the thread; what was waiting fails. */
  close(): Promise<void> {
    return this.#thread.close();
  }
}
