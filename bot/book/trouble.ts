/** Why a store cannot be used. Each carries a sentence for the person who runs the bot. */
export type StoreTroubleCode =
  | 'in-use'
  | 'damaged'
  | 'not-a-store'
  | 'no-access'
  | 'bad-group'
  | 'unfinished'
  | 'closed';

/** A store that cannot be opened or read. `message` says what is wrong and what to do, in plain words. */
export class StoreTrouble extends Error {
  readonly code: StoreTroubleCode;

  constructor(code: StoreTroubleCode, message: string, options?: ErrorOptions) {
    super(message, options);
    this.name = 'StoreTrouble';
    this.code = code;
  }
}

/** `uncertain`: the database went away on the way and stayed away, so nobody knows yet. */
export type RecordReason = 'disk-full' | 'read-only' | 'failed' | 'uncertain';

const whys: Readonly<Record<RecordReason, string>> = {
  'disk-full': 'the disk is full',
  'read-only': 'the store is read-only',
  failed: 'writing to the store failed',
  uncertain: 'the database went away',
};

/** Thrown when an event could not be written: nothing was recorded and the book stands as it stood before. */
export class NotRecorded extends Error {
  readonly code = 'not-recorded';
  readonly reason: RecordReason;

  constructor(reason: RecordReason, options?: ErrorOptions) {
    super(
      `${reason === 'uncertain' ? 'Perhaps nothing' : 'Nothing'} was recorded: ${whys[reason]}.`,
      options,
    );
    this.name = 'NotRecorded';
    this.reason = reason;
  }
}

/**
 * The one message for every kind of damage. `shown` is the store as its owner wrote it, `detail` what was found,
 * without any recorded text.
 */
export const damaged = (shown: string, detail: string, options?: ErrorOptions): StoreTrouble =>
  new StoreTrouble(
    'damaged',
    `The store "${shown}" is damaged (${detail}). It has not been changed. Keep it as it is, put a ` +
      'backup copy in its place, and start again.',
    options,
  );
