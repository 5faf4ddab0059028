/** More than the platform sends anew after a broken connection; some hundred kilobytes. */
const mostIds = 10_000;

/**
 * Says of an id whether it was asked about before, among the last so many: after a broken connection the platform may
 * send the same event once more, and nobody is to be answered twice.
 */
export const seenIds = (most = mostIds): ((id: string) => boolean) => {
  const ids = new Set<string>();
  return (id) => {
    if (ids.has(id)) return true;
    ids.add(id);
    const oldest = ids.values().next();
    if (ids.size > most && !oldest.done) ids.delete(oldest.value);
    return false;
  };
};
