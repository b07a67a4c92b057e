import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { helmholtzHz, helmholtzNeckM } from './helmholtz.ts';
import { type PortGeometry, portEffectiveLengthM, portEndCorrectionsM, portFlaresM } from './portEffectiveLength.ts';
import { portSectionM2 } from './portShape.ts';

/** Equal ports of one kind in a chamber: how many, and how far each is from its neighbours (when that is known). */
export interface PortGroup {
  readonly count: number;
  readonly neighbourDistancesM?: readonly number[];
}

/**
 * Tuning that ports of a given length give a chamber, Hz.
 *
 * `volumeM3` apparent, after subtracting the ports themselves. Lossless Helmholtz tuning; with losses the impedance dip and the
 * excursion minimum lie within a few per cent.
 *
 * Example: one 100 mm tube, 0.31 m long, in 50 L tunes to 35 Hz.
 */
export const tuningForPortLength = (
  port: PortGeometry & PortGroup,
  volumeM3: number,
  soundSpeedMPerS: number,
): number =>
  helmholtzHz(
    {
      areaM2: port.count * portSectionM2(port.shape),
      effectiveLengthM: portEffectiveLengthM(port, port.neighbourDistancesM),
      volumeM3,
    },
    soundSpeedMPerS,
  );

/**
 * Length that each of `count` ports needs to tune a chamber, m; the inverse of `tuningForPortLength`.
 *
 * A tuning or volume that is not above 0 is the Problem `acoustics.no-tuning-asked`. When the end corrections alone already tune
 * lower, the Problem `acoustics.port-too-wide` says the highest tuning this section can reach (no length but its flares).
 */
export const portLengthForTuning = (
  port: Omit<PortGeometry, 'lengthM'> & PortGroup,
  tuningHz: number,
  volumeM3: number,
  soundSpeedMPerS: number,
): Result<number> => {
  if (!(tuningHz > 0 && volumeM3 > 0 && Number.isFinite(tuningHz) && Number.isFinite(volumeM3))) {
    return fail(problem('acoustics.no-tuning-asked', { kind: 'port' }));
  }
  const areaM2 = port.count * portSectionM2(port.shape);
  const endsM = portEndCorrectionsM(port, port.neighbourDistancesM);
  const lengthM = helmholtzNeckM({ areaM2, tuningHz, volumeM3 }, soundSpeedMPerS) - endsM;
  const shortestM = portFlaresM(port);
  if (lengthM >= shortestM) return succeed(lengthM);
  const highestHz = helmholtzHz({ areaM2, effectiveLengthM: endsM + shortestM, volumeM3 }, soundSpeedMPerS);
  return fail(problem('acoustics.port-too-wide', { kind: 'port' }, { tuningHz, highestHz, areaM2 }));
};

/**
 * Tuning of the same ports when each is cut shorter by `cutM`, Hz: f √(Leff/(Leff − cut)).
 *
 * `volumeM3` apparent with the shorter ports in it. Throws a RangeError when more is cut than the straight part.
 *
 * Example: 70 mm tube, 0.2 m, in 30 L, 5 mm shorter: 39.1 Hz becomes 39.5 Hz
 */
export const tuningOfShorterPort = (
  port: PortGeometry & PortGroup,
  cutM: number,
  volumeM3: number,
  soundSpeedMPerS: number,
): number => {
  const lengthM = port.lengthM - cutM;
  if (!(lengthM >= portFlaresM(port))) throw new RangeError(`${cutM} m is more than this port's straight part`);
  return tuningForPortLength({ ...port, lengthM }, volumeM3, soundSpeedMPerS);
};
