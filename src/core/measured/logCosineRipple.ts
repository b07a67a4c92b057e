/**
 * A ripple that is even in octaves, with its exact minimum phase: ln|H| = A cos(b ln w) has the phase
 * -A tanh(πb/2) sin(b ln w). It serves as a stated deviation in invented data and as a test of the phase rule.
 *
 * `amplitudeNeper` A (8.686 dB each), `b` ripples per 2π of ln w, `lnW` the natural logarithm of the frequency ratio.
 * Derived: the log-axis Hilbert transform of a cosine; no source.
 * Example: `logCosineRipple(0.5, 1.3, 0)` has phase 0 and lnMagnitude 0.5.
 */
export const logCosineRipple = (
  amplitudeNeper: number,
  b: number,
  lnW: number,
): { readonly lnMagnitude: number; readonly phaseRad: number } => ({
  lnMagnitude: amplitudeNeper * Math.cos(b * lnW),
  phaseRad: -amplitudeNeper * Math.tanh((Math.PI * b) / 2) * Math.sin(b * lnW),
});
