import { Worker } from 'node:worker_threads';
import { ThreadFault } from './thread-fault.ts';
import type { ThreadAnswer, ThreadRequest } from './thread-messages.ts';

interface Job<Order> extends ThreadRequest<Order> {
  readonly done: (made: Uint8Array) => void;
  readonly failed: (fault: ThreadFault) => void;
}

export interface ThreadLimits {
  /** Longest one order may take, the start of the thread included. */
  readonly milliseconds: number;
  /** Orders waiting behind the one being drawn. */
  readonly waiting: number;
}

/** As little room for new objects as the program's own thread is given: these threads rest most of the time. */
const resourceLimits = { maxYoungGenerationSizeMb: 4 };

/** Node cannot run the source: a thread started from it (in tests) takes the compiled file of the build. */
export const compiledScript = (from: string, path: string): URL =>
  from.endsWith('.ts') ? new URL(`../../.build/bot/${path}`, from) : new URL(`../${path}`, from);

/**
 * One thread that makes bytes of orders, started by the first and kept. It keeps the program alive only while it works.
 * A thread that dies or takes too long is replaced; only the order it was at fails.
 */
export class WorkThread<Order> {
  readonly #limits: ThreadLimits;
  readonly #script: URL;
  readonly #queue: Job<Order>[] = [];
  #current: Job<Order> | undefined;
  #timer: NodeJS.Timeout | undefined;
  #worker: Worker | undefined;
  #closed = false;
  #lastId = 0;

  constructor(limits: ThreadLimits, script: URL) {
    this.#limits = limits;
    this.#script = script;
  }

  /** What the thread makes of an order, which has to be plain data. Rejects with a {@link ThreadFault}. */
  make(order: Order): Promise<Uint8Array> {
    if (this.#closed) return Promise.reject(new ThreadFault('closed'));
    if (this.#queue.length >= this.#limits.waiting) return Promise.reject(new ThreadFault('busy'));
    return new Promise((done, failed) => {
      this.#lastId += 1;
      this.#queue.push({ id: this.#lastId, order, done, failed });
      this.#next();
    });
  }

  /** Ends the thread; what was waiting fails. */
  async close(): Promise<void> {
    this.#closed = true;
    const fault = new ThreadFault('closed');
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
    this.#timer = setTimeout(() => this.#lose(new ThreadFault('too-slow')), this.#limits.milliseconds);
    try {
      const worker = this.#thread();
      worker.ref();
      worker.postMessage({ id: job.id, order: job.order } satisfies ThreadRequest<Order>);
    } catch (fault) {
      this.#lose(new ThreadFault('no-thread', String(fault)));
    }
  }

  #thread(): Worker {
    if (this.#worker) return this.#worker;
    // Nothing of the program's environment or its flags is the thread's business.
    const worker = new Worker(this.#script, { env: {}, execArgv: [], resourceLimits });
    worker.on('message', (answer: ThreadAnswer) => this.#heard(worker, answer));
    worker.on('error', (fault) => this.#died(worker, fault.message));
    worker.on('exit', () => this.#died(worker, 'it ended'));
    this.#worker = worker;
    return worker;
  }

  #heard(worker: Worker, answer: ThreadAnswer): void {
    if (worker !== this.#worker || answer.id !== this.#current?.id) return;
    const job = this.#finish();
    if ('made' in answer) job?.done(answer.made);
    else job?.failed(new ThreadFault(answer.fault, answer.told));
    this.#next();
  }

  #died(worker: Worker, told: string): void {
    if (worker === this.#worker) this.#lose(new ThreadFault('no-thread', told));
  }

  /** Gives up the order being worked at together with its thread, and goes on with the next. */
  #lose(fault: ThreadFault): void {
    void this.#dropThread();
    this.#finish()?.failed(fault);
    this.#next();
  }

  #finish(): Job<Order> | undefined {
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
