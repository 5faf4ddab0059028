import { randomUUID } from 'node:crypto';
import { faultFields } from '../log.ts';
import { asideReply, type ChatReply } from '../render/discord.ts';
import type { ChatLog } from './front.ts';

const apology = (id: string): ChatReply =>
  asideReply(
    `Something went wrong on my side, so there is no answer to this one. Please try again. (Fault ${id})`,
  );

/**
 * Does one event's work and never rejects: a fault is logged under an id, and the member told that id by `tell`
 * where it can. So one bad event costs one answer, not the process.
 *
 * @param during - the kind of event, for the log
 * @param tell - sends the apology for the fault; may itself fail, which is logged under the same id
 */
export const guarded = async (
  log: ChatLog,
  during: string,
  work: () => Promise<void>,
  tell?: (reply: ChatReply, fault: unknown) => Promise<void>,
): Promise<void> => {
  try {
    await work();
  } catch (fault) {
    const id = randomUUID().slice(0, 8);
    log.error('chat.fault', { id, during, ...faultFields(fault, 'info') });
    try {
      await tell?.(apology(id), fault);
    } catch (again) {
      log.error('chat.apology-not-sent', {
        id,
        during,
        ...faultFields(again, 'info'),
      });
    }
  }
};
