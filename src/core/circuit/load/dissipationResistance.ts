import type { Complexes } from '../nodeSolution.ts';

/**
 * The resistance that loads a class B output stage as hard at the worst instant of a full swing as an impedance does, over its
 * modulus: 1 for a resistor, 0.471 at 30°, 0.192 at 90°. Angle in rad, −π/2 to π/2, either sign alike.
 *
 * Rails ±V and a swing of V: the device holding the half wave takes p = (V²/|Z|)(1 − cos θ) cos(θ − φ), greatest at θ = (π + 2|φ|)/3 where
 * d/dθ [cos(θ−φ) − cos θ cos(θ−φ)] = 0; a resistor R takes V²/(4R) at most. Real rails sag and a stage leaves a few volts: a relative
 * figure. Source: closed form derived here after the idea of E. Benjamin, "Audio Power Amplifiers for Loudspeaker Loads", 1994,
 * J. Audio Eng. Soc. 42, 670.
 * @example dissipationFactor(Math.PI / 6) // 0.471
 */
export function dissipationFactor(angleRad: number): number {
  const phi = Math.abs(angleRad);
  return 1 / (4 * (1 - Math.cos((Math.PI + 2 * phi) / 3)) * Math.cos((Math.PI - phi) / 3));
}

/**
 * Equivalent peak dissipation resistance of an impedance (ohm) at each frequency, ohm. Angles beyond ±90° (a load that gives power
 * back on average) count as 90°.
 * @example peakDissipationOhm({ re: Float64Array.of(4), im: Float64Array.of(4) }) // [2.0]
 */
export const peakDissipationOhm = ({ re, im }: Complexes): Float64Array =>
  re.map((r, f) => {
    const x = im[f]!;
    return Math.hypot(r, x) * dissipationFactor(Math.min(Math.PI / 2, Math.abs(Math.atan2(x, r))));
  });
