/**
 * Nodal analysis loses digits on admittances far above the rest: 1 mΩ keeps potentials to 1e-12 of the largest, 1 µΩ only
 * to 4e-10 (measured). Links count as this resistance, and resistors below it are raised to it, which is said.
 */
export const LEAST_OHM = 1e-3;
