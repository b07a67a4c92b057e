import { fail, problem, type Result, succeed } from '../../messages/problem.ts';

/** What a person reads from the impedance of a vented box between its two peaks. */
export interface ImpedanceDip {
  /** Tuning over the driver's free-air resonance, h. */
  readonly tuningOverFs: number;
  /** Driver compliance over the box's, α = Vas/Vb. */
  readonly alpha: number;
  /** |Z| at the dip over the voice coil's Re. */
  readonly dipOverRe: number;
  readonly qes: number;
  readonly qms: number;
}

/**
 * QL from the dip of a vented box's impedance: (h/α)[1/(QES(r − 1)) − 1/QMS].
 *
 * All loss booked as leak; exact for h = 1 and a leak alone, otherwise a start for a fit (the dip gives the total, the two peaks
 * separate its parts). A dip at or below Re, or one that the driver's own QMS explains with a box that gives power, is the Problem
 * `acoustics.no-leak-in-dip`. Source: R. H. Small, J. Audio Eng. Soc. 21, 1973, part IV (from memory).
 *
 * Example: h 1, α 1.5, r 1.2, QES 0.4, QMS 5: 8.2
 */
export const leakQFromDip = (dip: ImpedanceDip): Result<number> => {
  const { tuningOverFs, alpha, dipOverRe, qes, qms } = dip;
  const conductance = 1 / (qes * (dipOverRe - 1)) - 1 / qms;
  if (dipOverRe > 1 && conductance > 0 && Number.isFinite(conductance)) {
    return succeed((tuningOverFs / alpha) * conductance);
  }
  return fail(problem('acoustics.no-leak-in-dip', { kind: 'chamber' }, { dipOverRe, qms }));
};
