/** A repeatable stream of numbers: the same seed gives the same stream on every machine. */
export interface RandomStream {
  /** Evenly spread over [0, 1), 32 bits of resolution. */
  uniform(): number;
  /** Mean 0, standard deviation 1. */
  normal(): number;
}

/**
 * A seeded random stream (seed: a whole number, taken modulo 2³²).
 *
 * Uniform: a counter with a 32-bit mixing function (the "mulberry32" arrangement, public domain, from memory): period 2³², fit for
 * noise, tolerance draws and restarts, not for secrets. Normal: Box and Muller 1958, Annals of Mathematical Statistics 29, 610.
 *
 * Example: randomStream(1).uniform() is the same number each time.
 */
export const randomStream = (seed: number): RandomStream => {
  let state = seed >>> 0;
  let spare: number | null = null;
  const uniform = (): number => {
    state = (state + 0x6d2b79f5) >>> 0;
    let mixed = Math.imul(state ^ (state >>> 15), 1 | state);
    mixed = (mixed + Math.imul(mixed ^ (mixed >>> 7), 61 | mixed)) ^ mixed;
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296;
  };
  const normal = (): number => {
    if (spare !== null) {
      const kept = spare;
      spare = null;
      return kept;
    }
    const radius = Math.sqrt(-2 * Math.log(1 - uniform()));
    const angle = 2 * Math.PI * uniform();
    spare = radius * Math.sin(angle);
    return radius * Math.cos(angle);
  };
  return { uniform, normal };
};
