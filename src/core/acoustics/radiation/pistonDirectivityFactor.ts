import { pistonResistance } from './pistonImpedance.ts';

/**
 * Directivity factor of a flat round piston in an infinite baffle: axial intensity over that of a source of the same power that
 * radiates to all sides of full space. Q = (ka)²/(1 − J1(2ka)/(ka)); directivity index 10 lg Q.
 *
 * 2 (3.01 dB) at low ka, since the power goes to half a sphere; a cabinet tends to 1 there. Source: L. L. Beranek, T. J. Mellow,
 * Acoustics, 2012, chapter 13 (from memory; the integral over the half sphere agrees).
 *
 * Example: 10 lg pistonDirectivityFactor(1) = 3.734 dB
 */
export const pistonDirectivityFactor = (ka: number): number => ka ** 2 / pistonResistance(2 * ka);
