import { Writable } from 'node:stream';

/** An output that takes a piece and only a little later finds that its reader has gone (as pipes on some systems). */
export const leftLater = (): Writable =>
  new Writable({
    write(_piece, _encoding, done) {
      const gone = Object.assign(new Error('write EPIPE'), { code: 'EPIPE' });
      setTimeout(() => done(gone), 20);
    },
  });
