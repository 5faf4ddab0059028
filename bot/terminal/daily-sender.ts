import type { Reply } from '../answer.ts';
import type { Sink } from '../console/sink.ts';
import type { Sender } from '../remind/sender.ts';
import type { Between } from './chat.ts';

/**
 * Shows the day's message in the chat that is open here. A terminal remembers nothing, so a message that may have been
 * shown right before a crash is shown again; and there is no owner to be told of a channel that is gone.
 */
export const terminalSender = (out: Sink, show: (reply: Reply) => string, between: Between): Sender => ({
  async send(_place, { answer, rows }) {
    const next = rows[0] ?? [];
    const text = show({ topic: 'expiry', request: {}, answer: { ...answer, next } });
    let shown = false;
    await between(async () => {
      shown = await out.write(text);
    });
    return shown ? 'sent' : 'later';
  },
  wasSent: async () => undefined,
  tellOwner: async () => false,
});
