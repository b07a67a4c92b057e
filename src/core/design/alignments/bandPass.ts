import { type Complex, divide } from '../../math/complex.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { bandPassShape } from './bandPassShape.ts';
import type { DriverNumbers } from './driverNumbers.ts';

/** A fourth-order band-pass box: the cone between a sealed rear and a vented front chamber, both tuned to one frequency. */
export interface BandPass {
  readonly s: number;
  /** Total Q of the driver on the sealed rear chamber. */
  readonly qbp: number;
  readonly lowerHz: number;
  readonly upperHz: number;
  /** Tuning of the front chamber, and resonance of the driver on the rear one: the geometric centre of the band. */
  readonly tuningHz: number;
  /** Apparent volumes, m³. */
  readonly frontM3: number;
  readonly rearM3: number;
  /** Amplitude at the centre over the driver's reference level in an infinite baffle. */
  readonly gainRatio: number;
}

const fromQ = (driver: DriverNumbers, s: number, qbp: number): Result<BandPass> => {
  const { fsHz, qts, vasM3 } = driver;
  if (!(qbp > qts)) {
    return fail(
      problem('acoustics.band-pass-too-low', { kind: 'driver' }, { qbp, qts, leastHz: leastLowerHz(driver, s) }),
    );
  }
  const { b } = bandPassShape(s);
  const u = Math.sqrt((b / 2) ** 2 + qbp * qbp) - b / 2;
  const perHz = fsHz / qts;
  return succeed({
    s,
    qbp,
    lowerHz: u * perHz,
    upperHz: (u + b) * perHz,
    tuningHz: qbp * perHz,
    frontM3: (2 * s * qts) ** 2 * vasM3,
    rearM3: vasM3 / ((qbp / qts) ** 2 - 1),
    gainRatio: (2 * s * qbp) ** 2,
  });
};

/** The lower cut-off at which the rear chamber would have to be endless, Hz. */
const leastLowerHz = ({ fsHz, qts }: DriverNumbers, s: number): number => {
  const { b } = bandPassShape(s);
  return ((Math.sqrt((b / 2) ** 2 + qts * qts) - b / 2) * fsHz) / qts;
};

/**
 * The band-pass box of shape S whose lower −3.000 dB point lies at `lowerHz`: Qbp = √(u(u + b)), u = fL Qts/fs.
 *
 * fB = Qbp fs/Qts, Vf = (2 S Qts)² Vas, Vr = Vas/((Qbp/Qts)² − 1), gain (2 S Qbp)². Lossless, unfilled, no coil inductance, an amplifier
 * without output resistance: a start for the circuit. Too low a cut-off, which no rear chamber gives, is the Problem
 * `acoustics.band-pass-too-low` with the least one. Source: as `bandPassShape`; checked here against the acoustic circuit.
 *
 * Example: fs 30 Hz, Qts 0.3, Vas 60 L, S 0.7, 40 Hz: front 10.6 L tuned to 67 Hz, rear 15.1 L, −1.1 dB, up to 112 Hz
 */
export const bandPassForLower = (driver: DriverNumbers, s: number, lowerHz: number): Result<BandPass> => {
  const u = (lowerHz * driver.qts) / driver.fsHz;
  return fromQ(driver, s, Math.sqrt(u * (u + bandPassShape(s).b)));
};

/**
 * The band-pass box of shape S with a given level in its band over the driver's reference level, as an amplitude ratio: the more, the
 * narrower its band in octaves. Assumptions, Problem and source as `bandPassForLower`.
 *
 * Example: S 0.7 and 0 dB: Qbp = 0.714
 */
export const bandPassForGain = (driver: DriverNumbers, s: number, gainRatio: number): Result<BandPass> =>
  fromQ(driver, s, Math.sqrt(gainRatio) / (2 * s));

/**
 * Output of the box re the driver's reference level in an infinite baffle: p²/((p² + p/Qbp + 1)(1 + p²) + γp²), p = jf/fB,
 * γ = 1/(2 S Qbp)². Lossless; source as `bandPassForLower`, form derived from the circuit.
 *
 * Example: at the tuning its amplitude is (2 S Qbp)²
 */
export const bandPassResponse = (
  { s, qbp, tuningHz }: Pick<BandPass, 's' | 'qbp' | 'tuningHz'>,
  frequencyHz: number,
): Complex => {
  const nu = frequencyHz / tuningHz;
  const square = nu * nu;
  const rest = 1 - square;
  const coupling = 1 / (2 * s * qbp) ** 2;
  return divide({ re: -square, im: 0 }, { re: rest * rest - coupling * square, im: (rest * nu) / qbp });
};
