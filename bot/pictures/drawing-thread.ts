import { Worker } from 'node:worker_threads';
import { PictureFault } from './picture-fault.ts';
import type { DrawAnswer, DrawRequest } from './thread-messages.ts';

interface Job extends DrawRequest {
  readonly done: (png: Uint8Array) => void;
  readonly failed: (fault: PictureFault) => void;
}

export interface PictureLimits {
  /** Longest a picture may take, the start of the thread included. */
  readonly milliseconds: number;
  /** Pictures waiting behind the one being drawn. */
  readonly waiting: number;
  /** Longest SVG in UTF-16 units; a chart has about 10,000. */
  readonly svgLength: number;
}

export const usualLimits: PictureLimits = { milliseconds: 5000, waiting: 20, svgLength: 500_000 };

/** Node cannot run the source: a thread started from it (in tests) takes the compiled file beside it in the build. */
const compiledThread = (): URL =>
  new URL(
    import.meta.url.endsWith('.ts') ? '../../.build/bot/pictures/draw-thread.js' : './draw-thread.js',
    import.meta.url,
  );

/**
 * One thread that draws, started by the first picture and kept. It keeps the program alive only while it draws. A thread
 * that dies or takes too long is replaced; only the picture it was drawing fails.
 */
export class DrawingThread {
  readonly #limits: PictureLimits;
  readonly #script: URL;
  readonly #queue: Job[] = [];
  #current: Job | undefined;
  #timer: NodeJS.Timeout | undefined;
  #worker: Worker | undefined;
  #closed = false;
  #lastId = 0;

  constructor(limits: PictureLimits = usualLimits, script: URL = compiledThread()) {
    this.#limits = limits;
    this.#script = script;
  }

  /** PNG of an SVG. Rejects with a {@link PictureFault}. */
  draw(svg: string): Promise<Uint8Array> {
    if (this.#closed) return Promise.reject(new PictureFault('closed'));
    if (svg.length > this.#limits.svgLength)
      return Promise.reject(new PictureFault('not-drawn', 'SVG too long'));
    if (this.#queue.length >= this.#limits.waiting) return Promise.reject(new PictureFault('busy'));
    return new Promise((done, failed) => {
      this.#lastId += 1;
      this.#queue.push({ id: this.#lastId, svg, done, failed });
      this.#next();
    });
  }

  /** Ends the thread; what was waiting fails. */
  async close(): Promise<void> {
    this.#closed = true;
    const fault = new PictureFault('closed');
    for (const job of this.#queue.splice(0)) job.failed(fault);
    this.#finish()?.failed(fault);
    await this.#dropThread();
  }

  #next(): void {
    if (this.#current || this.#closed) return;
    const job = this.#queue.shift();
    if (!job) {
      this.#worker?.unref();
      return;
    }
    this.#current = job;
    this.#timer = setTimeout(() => this.#lose(new PictureFault('too-slow')), this.#limits.milliseconds);
    try {
      const worker = this.#thread();
      worker.ref();
      worker.postMessage({ id: job.id, svg: job.svg } satisfies DrawRequest);
    } catch (fault) {
      this.#lose(new PictureFault('no-thread', String(fault)));
    }
  }

  #thread(): Worker {
    if (this.#worker) return this.#worker;
    // Nothing of the program's environment or its flags is the thread's business.
    const worker = new Worker(this.#script, { env: {}, execArgv: [] });
    worker.on('message', (answer: DrawAnswer) => this.#heard(worker, answer));
    worker.on('error', (fault) => this.#died(worker, fault.message));
    worker.on('exit', () => this.#died(worker, 'it ended'));
    this.#worker = worker;
    return worker;
  }

  #heard(worker: Worker, answer: DrawAnswer): void {
    if (worker !== this.#worker || answer.id !== this.#current?.id) return;
    const job = this.#finish();
    if ('png' in answer) job?.done(answer.png);
    else job?.failed(new PictureFault(answer.fault, answer.told));
    this.#next();
  }

  #died(worker: Worker, told: string): void {
    if (worker === this.#worker) this.#lose(new PictureFault('no-thread', told));
  }

  /** Gives up the picture being drawn together with its thread, and goes on with the next. */
  #lose(fault: PictureFault): void {
    void this.#dropThread();
    this.#finish()?.failed(fault);
    this.#next();
  }

  #finish(): Job | undefined {
    clearTimeout(this.#timer);
    const job = this.#current;
    this.#current = undefined;
    return job;
  }

  async #dropThread(): Promise<void> {
    const worker = this.#worker;
    this.#worker = undefined;
    await worker?.terminate();
  }
}
