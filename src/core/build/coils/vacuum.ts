/** Magnetic constant, H/m: 4π·10⁻⁷ within 6e-10 (CODATA 2018; air differs by 4e-7). */
export const MU0 = 4e-7 * Math.PI;
