/**
 * Proportions of a level plot: so many decibels are as long as one decade of frequency.
 * Source: IEC 60263:2020, clause 4.1 (a summary of the standard looked up; the edition of 1982 had 25 and 50 only).
 */
export const DB_PER_DECADE = [10, 20, 25, 50] as const;

/**
 * The same for quantities on a logarithmic axis of their own: decades of the quantity as long as one decade of frequency.
 * Source: IEC 60263:2020, clause 4.2.
 */
export const DECADES_PER_DECADE: readonly number[] = DB_PER_DECADE.map((db) => db / 20);

/** Range of a polar plot in decibels: of absolute levels, and of levels relative to the axis. Source: IEC 60263:2020, foreword, item d. */
export const POLAR_RANGE_DB = { absolute: [60, 30], relative: 30 } as const;
