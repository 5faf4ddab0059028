/** The ISO day of an instant, in UTC. */
export const isoDay = (at: number): string => new Date(at).toISOString().slice(0, 10);
