import type { MeasuredCurve } from '../../measured/index.ts';

/** An impedance as it was measured: ascending frequencies, ohm, phase in radians where there is one. */
export interface ImpedanceSweep {
  readonly frequenciesHz: Float64Array;
  readonly magnitudesOhm: Float64Array;
  readonly phasesRad: Float64Array | null;
}

/**
 * The sweep of a measured impedance; throws a RangeError for a response, for lists of unequal length, for frequencies that do not
 * ascend from above 0 and for magnitudes that are not above 0.
 *
 * Example: impedanceSweep(curve).phasesRad is null where the file had no phase.
 */
export function impedanceSweep({ quantity, frequenciesHz, magnitudes, phasesDeg }: MeasuredCurve): ImpedanceSweep {
  const n = frequenciesHz.length;
  if (quantity !== 'impedance' || magnitudes.length !== n || (phasesDeg !== null && phasesDeg.length !== n))
    throw new RangeError('A sweep is made of an impedance with lists of one length.');
  for (let i = 0; i < n; i++)
    if (!(frequenciesHz[i]! > (frequenciesHz[i - 1] ?? 0) && magnitudes[i]! > 0 && Number.isFinite(magnitudes[i]!)))
      throw new RangeError(`Point ${i} of the impedance does not ascend from above 0.`);
  return {
    frequenciesHz: Float64Array.from(frequenciesHz),
    magnitudesOhm: Float64Array.from(magnitudes),
    phasesRad: phasesDeg === null ? null : Float64Array.from(phasesDeg, (deg) => (deg * Math.PI) / 180),
  };
}

/** The part of a sweep from one frequency to another, both included. */
export function partOfSweep(sweep: ImpedanceSweep, fromHz: number, toHz: number): ImpedanceSweep {
  const { frequenciesHz, magnitudesOhm, phasesRad } = sweep;
  let from = 0;
  while (from < frequenciesHz.length && frequenciesHz[from]! < fromHz) from++;
  let to = frequenciesHz.length;
  while (to > from && frequenciesHz[to - 1]! > toHz) to--;
  return {
    frequenciesHz: frequenciesHz.slice(from, to),
    magnitudesOhm: magnitudesOhm.slice(from, to),
    phasesRad: phasesRad?.slice(from, to) ?? null,
  };
}
