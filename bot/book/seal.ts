import { crc32 } from 'node:zlib';

// Eight hexadecimal digits of CRC-32 over the JSON text that follows. A file system does not notice a flipped bit, and
// a flipped digit in a recipe still parses, so every stored value carries its own check.
const digits = 8;

const sumOf = (text: string): string => crc32(text).toString(16).padStart(digits, '0');

/** What `unseal` throws for a value that is not what was written. Callers turn it into a StoreTrouble. */
export class BrokenSeal extends Error {
  constructor(options?: ErrorOptions) {
    super('a stored value does not match its checksum', options);
    this.name = 'BrokenSeal';
  }
}

/** JSON with its checksum in front. */
export const seal = (data: unknown): string => {
  const text = JSON.stringify(data);
  return sumOf(text) + text;
};

/** The sealed value again. Throws BrokenSeal when checksum and text disagree. */
export const unseal = <T>(sealed: string): T => {
  const text = sealed.slice(digits);
  if (sealed.slice(0, digits) !== sumOf(text)) throw new BrokenSeal();
  return JSON.parse(text);
};

/** The same check on the bytes as they lie in the file, without reading them as JSON. */
export const sealHolds = (bytes: Uint8Array): boolean =>
  bytes.length > digits &&
  Buffer.from(bytes.buffer, bytes.byteOffset, digits).toString('latin1') ===
    crc32(bytes.subarray(digits)).toString(16).padStart(digits, '0');
