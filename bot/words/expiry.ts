import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { ExpiryWish } from '../topics/expiry.ts';
import { answerDueItems } from './expiry-answer.ts';
import { listDue } from './expiry-due.ts';
import { keepsAnswer } from './expiry-keeps.ts';
import { setReminder, showReminder, stopReminder } from './expiry-reminder.ts';

const answers: Readonly<
  Record<
    ExpiryWish['action'],
    (wish: ExpiryWish, tools: Tools) => Answer | Trouble | Promise<Answer | Trouble>
  >
> = {
  due: listDue,
  keeps: keepsAnswer,
  answer: answerDueItems,
  set: setReminder,
  show: (_wish, tools) => showReminder(tools),
  stop: (_wish, tools) => stopReminder(tools),
};

export const answerExpiry = (wish: ExpiryWish, tools: Tools) => answers[wish.action](wish, tools);
