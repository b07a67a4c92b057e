/**
 * Far-field pressure of a uniform straight line source, or of a rectangular piston in the plane of one side, relative to its
 * axis: sin(u)/u, u = (kL/2) sin θ, signed.
 *
 * `length` in m, wavenumber rad/m, angle rad from the axis. A rectangle off both planes: the product of the two factors with the
 * direction cosines. Holds from about L²/(2λ) outwards.
 * Source: L. L. Beranek, T. J. Mellow, Acoustics, 2012, equation 13.318 (rectangle).
 *
 * Example: 0.12 m at 3.5 kHz and 30 degrees: −6.2 dB
 */
export const lineDirectivity = (lengthM: number, wavenumberPerM: number, angleRad: number): number => {
  const u = ((wavenumberPerM * lengthM) / 2) * Math.sin(angleRad);
  return Math.abs(u) < 1e-8 ? 1 : Math.sin(u) / u;
};
