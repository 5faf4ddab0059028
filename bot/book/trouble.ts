/** Why a store cannot be used. Each carries a sentence for the person who runs the bot. */
export type StoreTroubleCode =
  | 'in-use'
  | 'damaged'
  | 'not-a-store'
  | 'not-built'
  | 'no-access'
  | 'bad-group'
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

export type RecordReason = 'disk-full' | 'read-only' | 'failed';

const whys: Readonly<Record<RecordReason, string>> = {
  'disk-full': 'the disk is full',
  'read-only': 'the store is read-only',
  failed: 'writing to the store failed',
};

/** Thrown when an event could not be written: nothing was recorded and the book stands as it stood before. */
export class NotRecorded extends Error {
  readonly code = 'not-recorded';
  readonly reason: RecordReason;

  constructor(reason: RecordReason, options?: ErrorOptions) {
    super(`Nothing was recorded: ${whys[reason]}.`, options);
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
    `The store "${shown}" is damaged (${detail}). It has not been changed. Keep its files as they are, put a ` +
      'backup copy of the folder in its place, and start again.',
    options,
  );
