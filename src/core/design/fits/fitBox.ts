import { type AirProperties, type DriverParameters, driverFigures, totalLossQ } from '../../acoustics/index.ts';
import { type Estimate, estimateOf, fitEstimate, schwarzWeights } from '../../math/index.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { boxFindings } from './boxFindings.ts';
import type { BoxFit, BoxFitOptions } from './boxFit.ts';
import type { BoxLoss } from './boxModel.ts';
import { type BoxCandidate, boxCandidates } from './boxSearch.ts';
import { boxStarts } from './boxStart.ts';
import { FS_AT } from './driverModel.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** Sets of losses that are worse by less than this are not told apart from the best: "strong" evidence (Kass and Raftery 1995). */
const APART = 6;

/**
 * Tuning, volume and losses of a box from the impedance of a known driver in it, with 95 % intervals.
 *
 * The driver's values enter with their spread and may move within it; mass, compliance ratio, tuning and every set of leak,
 * absorption and port loss are fitted, the sets compared by Schwarz's criterion. The volume hangs on Vas and carries its spread.
 * Problems: `fits.few-points`, `fits.not-determined`. Findings: see `boxFindings`; `fits.one-peak` where the twin peaks are not seen.
 * Holds where the chamber is small against the wavelength and has one kind of port that acts as a mass.
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21 (1973), parts I and III (model, from memory).
 *
 * Example: fitBox(sweep, parameters, air, { kind: 'vented', spread: USUAL_SPREAD, leadOhm: 0, filled: false })
 */
export function fitBox(
  sweep: ImpedanceSweep,
  driver: DriverParameters,
  air: AirProperties,
  options: BoxFitOptions,
): Result<BoxFit> {
  const { kind, spread, leadOhm } = options;
  const { frequenciesHz, magnitudesOhm } = sweep;
  const place = { kind: 'curve' } as const;
  const n = frequenciesHz.length;
  if (n < FEWEST_POINTS) return fail(problem('fits.few-points', place, { count: n, needed: FEWEST_POINTS }));
  const { fsHz, qms, qes, vasM3 } = driverFigures(driver, air);
  const { seen, starts } = boxStarts(sweep, fsHz, kind);
  const coilOhm = Math.sqrt(Math.max(magnitudesOhm[n - 1]! ** 2 - driver.reOhm ** 2, (0.02 * driver.reOhm) ** 2));
  const start = { reOhm: driver.reOhm, fsHz, qms, qes, coilOhm, coilOmega: 2 * Math.PI * frequenciesHz[n - 1]! };
  const candidates = boxCandidates({ sweep, start, spread, leadOhm, kind }, starts).sort(
    (a, b) => a.result.criterion - b.result.criterion,
  );
  const [best] = candidates;
  const read = best === undefined ? null : readBox(best, vasM3, spread.vas, kind);
  if (best === undefined || read === null) return fail(problem('fits.not-determined', place));
  const { weights } = schwarzWeights(candidates.map(({ result }) => result.criterion));
  const weightOf = (loss: BoxLoss): number =>
    candidates.reduce((sum, { losses }, i) => sum + (losses.includes(loss) ? weights[i]! : 0), 0);
  const rivals = candidates.filter(
    ({ losses, result }) =>
      result.criterion < best.result.criterion + APART && best.losses.some((loss) => !losses.includes(loss)),
  );
  const fitted = {
    kind,
    ...read,
    separated: rivals.length === 0,
    lossWeights: { leak: weightOf('leak'), absorption: weightOf('absorption'), port: weightOf('port') },
    channels: best.result.channels,
  };
  return succeed({ ...fitted, findings: boxFindings(fitted, best.result.misfitScore, seen, sweep, options) });
}

const FEWEST_POINTS = 12;

/** Reads a candidate; null where the data do not fix tuning, ratio or mass. */
function readBox(candidate: BoxCandidate, vasM3: number, vasSd: number, kind: 'vented' | 'closed') {
  const { losses, massAt, alphaAt, tuningAt, lossesAt } = candidate;
  const { fit, inflation } = candidate.result;
  const n = fit.values.length;
  const read = (value: number, ...slopes: readonly [number, number][]): Estimate | null => {
    const all = new Array<number>(n).fill(0);
    for (const [at, slope] of slopes) all[at] = slope;
    return fitEstimate(fit, value, all, inflation);
  };
  const values = fit.values;
  const ratio = values[alphaAt]!;
  const alpha = read(ratio, [alphaAt, 1]);
  const massRatio = read(values[massAt]!, [massAt, 1]);
  const tuningHz =
    kind === 'vented'
      ? read(values[tuningAt]!, [tuningAt, 1])
      : read(
          values[FS_AT]! * Math.sqrt((1 + ratio) / values[massAt]!),
          [FS_AT, 1],
          [alphaAt, ratio / (2 * (1 + ratio))],
          [massAt, -0.5],
        );
  if (alpha === null || massRatio === null || tuningHz === null) return null;
  const together = fit.held.filter((is) => !is).length;
  const qs = losses.map((_, k) => values[lossesAt + k]!);
  const total = totalLossQ(qs);
  return {
    tuningHz,
    alpha,
    apparentM3: estimateOf(vasM3 / ratio, Math.hypot(alpha.relativeSd, vasSd), fit.freedom, together),
    losses: losses.map((loss, k) => ({ loss, q: read(qs[k]!, [lossesAt + k, 1]) })),
    totalQ: losses.length === 0 ? null : read(total, ...qs.map((q, k): [number, number] => [lossesAt + k, total / q])),
    massRatio,
  };
}
