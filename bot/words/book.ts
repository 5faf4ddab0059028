import type { Answer, Trouble } from '../answer.ts';
import type { Tools } from '../topic.ts';
import type { BookWish } from '../topics/book.ts';
import { exportBook } from './book-export.ts';
import { forgetContact, forgetEverything, keepEverything } from './book-forget.ts';
import { showHistory } from './book-history.ts';
import { importBook } from './book-import.ts';
import { redoLast, undoLast } from './book-undo.ts';

/** Answers everything about the book itself. */
export const answerBook = (wish: BookWish, tools: Tools): Promise<Answer | Trouble> => {
  switch (wish.action) {
    case 'export':
      return exportBook(wish, tools);
    case 'import':
      return importBook(wish, tools);
    case 'undo':
      return undoLast(wish, tools);
    case 'redo':
      return redoLast(tools);
    case 'history':
      return showHistory(wish, tools);
    case 'forget':
      return forgetEverything(wish, tools);
    case 'keep':
      return keepEverything(tools);
    case 'forget-contact':
      return forgetContact(wish, tools);
  }
};
