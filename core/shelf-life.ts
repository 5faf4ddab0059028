const daysAMonth = 365.25 / 12;

/** A usual shelf life, which the tables give in months, as the whole days that are told and reckoned with everywhere. */
export const shelfLifeDays = (months: number): number => Math.round(months * daysAMonth);
