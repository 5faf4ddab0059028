// What a checker of payloads is made of: faults are collected, with the place they stand at, and nothing throws.

export type Wire = { readonly [key: string]: unknown };

export const isThing = (value: unknown): value is Wire =>
  typeof value === 'object' && value !== null && !Array.isArray(value);

export const isAbsent = (value: unknown): value is null | undefined => value === undefined || value === null;

/** Collects faults. Lengths are counted in UTF-16 units, which never is less than what the platform may count. */
export class Check {
  readonly faults: string[] = [];

  fail(at: string, says: string): void {
    this.faults.push(`${at}: ${says}`);
  }

  /** A text of `min` to `max` characters; half a surrogate pair is a text cut in the wrong place. */
  text(at: string, value: unknown, min: number, max: number): void {
    if (typeof value !== 'string') {
      this.fail(at, `is ${typeof value} and no text`);
      return;
    }
    if (value.length < min || value.length > max) {
      this.fail(at, `has ${value.length} characters, allowed are ${min} to ${max}`);
    }
    if (/[\uD800-\uDBFF](?![\uDC00-\uDFFF])|(?<![\uD800-\uDBFF])[\uDC00-\uDFFF]/.test(value)) {
      this.fail(at, 'has half of a surrogate pair');
    }
  }

  optionalText(at: string, value: unknown, min: number, max: number): void {
    if (!isAbsent(value)) this.text(at, value, min, max);
  }

  whole(at: string, value: unknown, min: number, max: number): void {
    if (!Number.isInteger(value) || Number(value) < min || Number(value) > max) {
      this.fail(at, `is ${String(value)}, allowed are whole numbers from ${min} to ${max}`);
    }
  }

  optionalWhole(at: string, value: unknown, min: number, max: number): void {
    if (!isAbsent(value)) this.whole(at, value, min, max);
  }

  /** The parts of a list of `min` to `max`; absent is an empty list. */
  list(at: string, value: unknown, min: number, max: number): readonly unknown[] {
    if (!isAbsent(value) && !Array.isArray(value)) {
      this.fail(at, 'is no list');
      return [];
    }
    const found = value ?? [];
    if (found.length < min || found.length > max) {
      this.fail(at, `has ${found.length} parts, allowed are ${min} to ${max}`);
    }
    return found;
  }

  things(at: string, value: unknown, min: number, max: number): readonly Wire[] {
    return this.list(at, value, min, max).map((part, index) => this.thing(`${at}[${index}]`, part));
  }

  thing(at: string, value: unknown): Wire {
    if (isThing(value)) return value;
    this.fail(at, 'is no object');
    return {};
  }

  unique(at: string, values: readonly unknown[]): void {
    const seen = new Set<unknown>();
    for (const value of values) {
      if (seen.has(value)) this.fail(at, `has ${JSON.stringify(value)} twice`);
      seen.add(value);
    }
  }
}
