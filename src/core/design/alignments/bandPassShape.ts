/** Pass band of a fourth-order band-pass, fixed by its shape factor S alone. */
export interface BandPassShape {
  /** (fH − fL) Qts/fs between the −3.000 dB points, as the handbook table prints it. */
  readonly b: number;
  /** The same between the half-power points (−3.0103 dB). */
  readonly bHalfPower: number;
  /** Amplitude at the two humps over that at the centre, 1 for S of 0.7071 and more. */
  readonly rippleRatio: number;
}

const EXACT_3_DB = 10 ** 0.3;

/** b for a fall in power by `power`: the low-pass prototype 1/(1 + 2S s + s²) falls so far at w, b = w/(2S). */
const bandwidth = (s: number, power: number): number => {
  const middle = 1 - 2 * s * s;
  return Math.sqrt(middle + Math.sqrt(middle * middle + power - 1)) / (2 * s);
};

/**
 * Bandwidth and ripple of the band-pass of a sealed and a vented chamber from its shape factor S: ripple = −20 lg(2S √(1 − S²)).
 *
 * Lossless, no coil inductance; S above 0. Source: E. R. Geddes, "An Introduction to Band-Pass Loudspeaker Systems",
 * J. Audio Eng. Soc. 37, 1989; table as in V. Dickason, Loudspeaker Design Cookbook (0.7206, 0.9560, 1.2712 for S 0.7, 0.6, 0.5).
 *
 * Example: bandPassShape(0.6) = { b: 0.95604, bHalfPower: 0.95687, rippleRatio: 1.0417 } (0.35 dB)
 */
export const bandPassShape = (s: number): BandPassShape => ({
  b: bandwidth(s, EXACT_3_DB),
  bHalfPower: bandwidth(s, 2),
  rippleRatio: s < Math.SQRT1_2 ? 1 / (2 * s * Math.sqrt(1 - s * s)) : 1,
});
