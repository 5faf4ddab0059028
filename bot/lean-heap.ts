import { setFlagsFromString } from 'node:v8';

/** How much the heap may grow on what was left after a collection before the next one is due. The engine's own is up to 300. */
const growingPercent = 25;

/** The engine's name for it; one that does not know it any more says so on standard error and goes on. */
export const growingFlag = '--heap-growing-percent';

/**
 * Has the heap collected when it has grown by a quarter. By itself the engine lets it grow to several times what is in use
 * where the machine has memory to spare, and gives nothing of that back. For a large heap: a small one is soon a quarter
 * larger, and would be collected so often that a busy bot answers some percent less.
 */
export const keepHeapLean = (): void => setFlagsFromString(`${growingFlag}=${growingPercent}`);
