/** Does what has the same key one after the other, in the order it comes; other keys do not wait for it. */
export type InOrder = <T>(key: string, work: () => Promise<T>) => Promise<T>;

export const inOrder = (): InOrder => {
  const latest = new Map<string, Promise<unknown>>();
  return async (key, work) => {
    const before = latest.get(key);
    const own = before ? before.then(work, work) : work();
    latest.set(key, own);
    try {
      return await own;
    } finally {
      if (latest.get(key) === own) latest.delete(key);
    }
  };
};
