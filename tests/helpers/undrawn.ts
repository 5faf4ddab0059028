import { vi } from 'vitest';

// For tests that ask thousands of questions and look at what is said: nothing is drawn and no paper is written. Pictures
// and papers have tests of their own (tests/bot/security/papers, tests/end/discord-files and others).

vi.mock('../../bot/pictures/picture.ts', () => ({
  pngOf: () => Promise.resolve(new Uint8Array()),
  closePictures: () => Promise.resolve(),
}));
vi.mock('../../bot/papers/paper.ts', () => ({
  pdfOf: () => Promise.resolve(new Uint8Array()),
  closePapers: () => Promise.resolve(),
}));
