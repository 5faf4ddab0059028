type Defined<T> = { [K in keyof T]?: Exclude<T[K], undefined> };

/** The object without its undefined fields, so that "not said" and "absent" are the same thing. */
export const defined = <T extends object>(fields: T): Defined<T> =>
  Object.fromEntries(Object.entries(fields).filter(([, value]) => value !== undefined)) as Defined<T>;
