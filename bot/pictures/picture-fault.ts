/**
 * Why there is no picture: too many are waiting (`busy`), it took too long (`too-slow`), the shipped fonts are missing
 * (`no-font`), the SVG is not one or too long (`not-drawn`), the thread would not run (`no-thread`), or all is closing.
 */
export type PictureFaultCode = 'busy' | 'too-slow' | 'no-font' | 'not-drawn' | 'no-thread' | 'closed';

export class PictureFault extends Error {
  readonly code: PictureFaultCode;

  constructor(code: PictureFaultCode, told?: string) {
    super(told === undefined ? code : `${code}: ${told}`);
    this.name = 'PictureFault';
    this.code = code;
  }
}
