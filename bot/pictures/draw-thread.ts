import { parentPort } from 'node:worker_threads';
import { drawerWith, fontFiles } from './draw.ts';
import type { DrawAnswer, DrawRequest } from './thread-messages.ts';

// The thread that draws: one picture at a time, so that the chat goes on meanwhile.

const told = (fault: unknown): string => (fault instanceof Error ? fault.message : String(fault));

const ready = (): ReturnType<typeof drawerWith> | string => {
  try {
    return drawerWith(fontFiles());
  } catch (fault) {
    return told(fault);
  }
};

const draw = ready();

const answer = ({ id, svg }: DrawRequest): DrawAnswer => {
  if (typeof draw === 'string') return { id, fault: 'no-font', told: draw };
  try {
    return { id, png: draw(svg) };
  } catch (fault) {
    return { id, fault: 'not-drawn', told: told(fault) };
  }
};

parentPort?.on('message', (request: DrawRequest) => {
  parentPort?.postMessage(answer(request));
});
