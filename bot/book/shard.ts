/** Which part of all groups a process serves: number `index` of `count`. */
export interface Shard {
  readonly index: number;
  readonly count: number;
}

/** The process that serves every group. */
export const onlyShard: Shard = { index: 0, count: 1 };

// The platform's ids are 64-bit numbers whose upper 42 bits are a time; its rule for which shard a server belongs to is
// (id >> 22) % count. See "Sharding" in the platform's documentation of its gateway.
const timeShift = 22n;
const ofServer = /^guild:(\d{1,20})$/;

/**
 * The number of the shard a group belongs to. Servers go by the platform's own rule; everything else, direct messages
 * first of all, belongs to shard 0, which is where the platform sends them.
 */
export const shardOf = (group: string, count: number): number => {
  const [, id] = ofServer.exec(group) ?? [];
  return count > 1 && id !== undefined ? Number((BigInt(id) >> timeShift) % BigInt(count)) : 0;
};

export const belongsTo = (group: string, { index, count }: Shard): boolean => shardOf(group, count) === index;

/** How a shard is named in the store's table of leases, and in messages. */
export const shardName = ({ index, count }: Shard): string => `shard ${index} of ${count}`;
