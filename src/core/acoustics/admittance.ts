/**
 * Admittance of a two-node branch over a sweep: writes real and imaginary parts for every angular frequency (rad/s, ascending,
 * all above 0) into the caller's buffers of the same length. Acoustical branches: volume velocity over pressure, m³/(s·Pa);
 * electrical ones: siemens.
 */
export type Admittance = (omegas: Float64Array, outRe: Float64Array, outIm: Float64Array) => void;
