import type { Complexes } from '../nodeSolution.ts';
import { type Conductor, resistivityAtOhmM } from './conductor.ts';

/** A two-core loudspeaker cable: one-way length in m, cross-section of each core in m². */
export interface Cable {
  readonly lengthM: number;
  readonly areaM2: number;
  readonly conductor: Conductor;
  readonly temperatureC: number;
}

/**
 * Resistance of a cable, there and back, ohm. Its inductance (about 0.6 µH/m, from memory) is left out: at 5 m and 20 kHz
 * 0.4 Ω of reactance.
 * @example cableOhm({ lengthM: 5, areaM2: 2.5e-6, conductor: COPPER, temperatureC: 20 }) // 0.069
 */
export const cableOhm = ({ lengthM, areaM2, conductor, temperatureC }: Cable): number =>
  (2 * lengthM * resistivityAtOhmM(conductor, temperatureC)) / areaM2;

/**
 * Level that a series resistance (a cable's, an amplifier's) takes off at each frequency, dB, 0 or below as a rule:
 * 20 lg |Z/(Z + R)| for the load `impedance` in ohm. What differs between frequencies colours the sound.
 * @example seriesLossDb({ re: Float64Array.of(4), im: Float64Array.of(0) }, 0.1) // [-0.21]
 */
export const seriesLossDb = ({ re, im }: Complexes, seriesOhm: number): Float64Array =>
  re.map((r, f) => 20 * Math.log10(Math.hypot(r, im[f]!) / Math.hypot(r + seriesOhm, im[f]!)));
