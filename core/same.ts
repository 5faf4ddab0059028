const isObject = (value: unknown): value is Record<string, unknown> =>
  typeof value === 'object' && value !== null;

const given = (value: Record<string, unknown>): string[] =>
  Object.keys(value).filter((key) => value[key] !== undefined);

/** Whether two plain values (as JSON has them) say the same, whatever the order of their fields. */
export const same = (a: unknown, b: unknown): boolean => {
  if (Object.is(a, b)) return true;
  if (!isObject(a) || !isObject(b) || Array.isArray(a) !== Array.isArray(b)) return false;
  const keys = given(a);
  return (
    keys.length === given(b).length && keys.every((key) => Object.hasOwn(b, key) && same(a[key], b[key]))
  );
};
