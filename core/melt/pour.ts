/** Degrees above the fully melted temperature at which a balm is poured (common practice, no source). */
export const pourAboveC = { low: 3, typical: 5.5, high: 8 } as const;

/** Degrees above the fully melted temperature that the water bath needs at least (common practice, no source). */
export const bathAboveC = 5;

/** Hottest water bath in °C: water steams hard and may splash into the melt. */
export const hottestBathC = 90;
