/**
 * Why there is nothing: too many are waiting (`busy`), it took too long (`too-slow`), the shipped fonts are missing
 * (`no-font`), it could not be drawn or is too long (`not-drawn`), the thread would not run (`no-thread`), or all is
 * closing.
 */
export type ThreadFaultCode = 'busy' | 'too-slow' | 'no-font' | 'not-drawn' | 'no-thread' | 'closed';

export class ThreadFault extends Error {
  readonly code: ThreadFaultCode;

  constructor(code: ThreadFaultCode, told?: string) {
    super(told === undefined ? code : `${code}: ${told}`);
    this.name = 'ThreadFault';
    this.code = code;
  }
}
