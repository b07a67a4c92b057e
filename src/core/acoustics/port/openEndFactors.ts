/**
 * End correction of a thin-walled pipe that ends in open air, in radii, low-frequency limit.
 *
 * (1/π) ∫0..∞ ln(1/(2 I1(x) K1(x)))/x² dx = 0.612701, by quadrature (the test repeats it). The often printed 0.6133 of
 * H. Levine, J. Schwinger, "On the radiation of sound from an unflanged circular pipe", Phys. Rev. 73, 1948, 383, is 0.1 % more.
 */
export const FREE_END_RADII = 0.612701;

/** The printed value of Levine and Schwinger, in radii. */
export const FREE_END_RADII_PRINTED = 0.6133;

/**
 * End correction of a pipe that ends in a wide flat baffle, in radii, low-frequency limit: 0.82167.
 *
 * A. N. Norris, I. C. Sheng, "Acoustic radiation from a circular pipe with an infinite flange", J. Sound Vib. 135, 1989, 85, print
 * 0.8217 (from memory); the last digits by mode matching (the test repeats it).
 */
export const FLANGED_END_RADII = 0.82167;

/** End correction of a flat piston in a baffle, in radii: 8/(3π). Lord Rayleigh, Theory of Sound, 1896, section 302. */
export const PISTON_END_RADII = 8 / (3 * Math.PI);
