/** What a shard is told by the one who started it, when it is to finish and leave. */
export const leaveWord = 'leave';

/** The exit code of a shard that must not be started again: the platform shut the bot out. */
export const mayNotReturn = 3;

/** How long a new process waits for the store, and for one that had its groups and may have died: longer than a lease. */
export const storeWaitMs = 15_000;
