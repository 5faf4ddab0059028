import { parentPort } from 'node:worker_threads';
import type { ThreadAnswer, ThreadRequest } from './thread-messages.ts';

const told = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

type Maker<Order> = (order: Order) => Uint8Array | Promise<Uint8Array>;

/**
 * The inner side of a thread that draws: one order at a time, in the order they come. `ready` is called once; when it
 * throws, every order is answered with `no-font`, as a missing font is what it looks for. `tidy` is called after each
 * answer, which does not wait for it.
 */
export const serve = <Order>(
  ready: () => Maker<Order> | Promise<Maker<Order>>,
  tidy: () => void = () => {},
): void => {
  const maker = (async () => ready())().catch(told);
  const answer = async ({ id, order }: ThreadRequest<Order>): Promise<ThreadAnswer> => {
    const make = await maker;
    if (typeof make === 'string') return { id, fault: 'no-font', told: make };
    try {
      return { id, made: await make(order) };
    } catch (fault) {
      return { id, fault: 'not-drawn', told: told(fault) };
    }
  };
  parentPort?.on('message', (request: ThreadRequest<Order>) => {
    void answer(request).then((done) => {
      parentPort?.postMessage(done);
      // In a turn of its own: what the drawing held is still in use in this one.
      setImmediate(tidy);
    });
  });
};
