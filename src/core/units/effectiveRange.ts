/**
 * The effective frequency range reaches down to 10 dB below the mean level over one octave round the greatest
 * sensitivity; troughs narrower than 1/9 octave do not end it.
 * Source: IEC 60268-5, effective frequency range.
 */
export const EFFECTIVE_RANGE = { dropDb: 10, averagingOctaves: 1, ignoredTroughOctaves: 1 / 9 } as const;
