import type { Complex } from '../../math/complex.ts';

/**
 * The simplest edge-wave picture: source at the centre of a disc, on axis, relative to full space: 2 − exp(−jka).
 *
 * First order with the amplitude that gives 0 dB at low frequencies; peak +9.54 dB at ka = π. For teaching and for checks:
 * `edgePaths` does the real cabinet.
 */
export const discEdgeWave = (ka: number): Complex => ({ re: 2 - Math.cos(ka), im: Math.sin(ka) });

/** ka at which the disc's edge wave adds in full: the detour is half a wavelength. */
export const DISC_EDGE_PEAK_KA = Math.PI;
