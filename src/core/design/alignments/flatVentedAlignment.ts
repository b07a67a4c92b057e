import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import type { DriverNumbers } from './driverNumbers.ts';
import { boxFromCoefficients, type VentedAlignment } from './ventedAlignment.ts';
import { ventedB4 } from './ventedB4.ts';
import { chebyshevCoefficients, chebyshevRipple, ventedC4 } from './ventedC4.ts';
import { ventedQb3 } from './ventedQb3.ts';

/** A vented box for a driver in plain numbers. */
export interface FlatVented extends VentedAlignment {
  readonly kind: 'QB3' | 'B4' | 'C4';
  /** Apparent volume, m³. */
  readonly volumeM3: number;
  readonly tuningHz: number;
  readonly f3Hz: number;
  /** Greatest over least amplitude in the band, 1 for QB3 and B4. */
  readonly rippleRatio: number;
}

/** Lowest driver Q taken: below it the box becomes tiny and f3 lies octaves above fs. */
const LEAST_QTS = 0.15;
/** Pole factor of 0.5 dB ripple: as far as "flat" is stretched. */
const LEAST_K = 0.416;
/** No box larger than ten times Vas. */
const LEAST_ALPHA = 0.1;
const NEAR_B4 = 1e-4;
/** Strongest leak taken: below it the quasi-Butterworth equations have no solution for part of the drivers. */
const LEAST_QL = 1.4;

/**
 * The flat vented box for a driver with a given leak QL: QB3 below B4's Q, B4 at it, C4 with at most 0.5 dB of ripple above.
 *
 * Outside (Qts from 0.15 to some 0.6, the upper end depends on QL) the Problem `acoustics.no-flat-vented` tells the range. Assumes
 * leakage losses only, QL from 1.4 upwards (absorption and port loss count into QL), no coil inductance, an amplifier without output resistance; a start for
 * the circuit, which knows all of these. Sources: `ventedQb3`, `ventedB4`, `ventedC4`.
 *
 * Example: fs 33 Hz, Qts 0.3673, Vas 57 L, QL 7: 37.3 L tuned to 36 Hz, f3 38.9 Hz
 */
export const flatVentedAlignment = (driver: DriverNumbers, ql: number): Result<FlatVented> => {
  const { qts, fsHz, vasM3 } = driver;
  const b4 = ql >= LEAST_QL ? ventedB4(ql) : null;
  const most = b4 === null ? 0 : highestQts(ql);
  if (b4 === null || !(qts >= LEAST_QTS && qts <= most)) {
    return fail(problem('acoustics.no-flat-vented', { kind: 'driver' }, { qts, ql, least: LEAST_QTS, most }));
  }
  const inNumbers = (kind: FlatVented['kind'], box: VentedAlignment, rippleRatio: number): FlatVented => ({
    ...box,
    kind,
    volumeM3: vasM3 / box.alpha,
    tuningHz: box.h * fsHz,
    f3Hz: box.f3OverFs * fsHz,
    rippleRatio,
  });
  if (Math.abs(qts / b4.qt - 1) < NEAR_B4) return succeed(inNumbers('B4', b4, 1));
  if (qts < b4.qt) return succeed(inNumbers('QB3', ventedQb3(qts, ql), 1));
  const c4 = ventedC4(qts, ql);
  if (c4 === null) throw new RangeError(`no C4 box for Qts ${qts} below the highest ${most}`);
  return succeed(inNumbers('C4', c4, chebyshevRipple(c4.k)));
};

/** Highest Qts that still has a box with at most the allowed ripple: a strong leak makes the boxes too large before the ripple ends them. */
const highestQts = (ql: number): number => {
  let highest = ventedB4(ql)?.qt ?? 0;
  for (let k = 1; k > LEAST_K; k -= 0.01) {
    const box = boxFromCoefficients(chebyshevCoefficients(Math.max(k - 0.01, LEAST_K)), ql);
    if (box === null || box.alpha < LEAST_ALPHA) break;
    highest = box.qt;
  }
  return highest;
};
