/** Octave ratio of base ten, 10^(3/10). Source: IEC 61260-1:2014 (the abstract seen; the rules below from memory). */
export const OCTAVE_RATIO = 10 ** 0.3;

const REFERENCE_HZ = 1000;
const THIRD_OCTAVE_NOMINALS = [1, 1.25, 1.6, 2, 2.5, 3.15, 4, 5, 6.3, 8] as const;

/**
 * Exact midband frequency in Hz of band `index` of the set with `fraction` bands to the octave; index 0 is 1000 Hz for an
 * odd fraction and the first band above it for an even one, whose edge 1000 Hz is.
 *
 * Source: IEC 61260-1:2014: 1000·G^(x/b) for odd b, 1000·G^((2x+1)/(2b)) for even b.
 * Example: `midbandHz(-9, 3)` is 125.8925.
 */
export const midbandHz = (index: number, fraction: number): number =>
  REFERENCE_HZ * OCTAVE_RATIO ** (fraction % 2 === 1 ? index / fraction : (2 * index + 1) / (2 * fraction));

/** Edges in Hz of the band round an exact midband frequency: f·G^(±1/(2b)). Source: IEC 61260-1:2014. */
export const bandEdgesHz = (exactMidbandHz: number, fraction: number): readonly [lowHz: number, highHz: number] => {
  const half = OCTAVE_RATIO ** (1 / (2 * fraction));
  return [exactMidbandHz / half, exactMidbandHz * half];
};

/**
 * Nominal frequency in Hz of third-octave band `index`, 0 being 1000 Hz.
 *
 * Source: ISO 266:1997, preferred frequencies.
 * Example: `nominalThirdOctaveHz(5)` is 3150.
 */
export function nominalThirdOctaveHz(index: number): number {
  const decade = Math.floor(index / 10);
  return Number(`${THIRD_OCTAVE_NOMINALS[index - 10 * decade]}e${3 + decade}`);
}
