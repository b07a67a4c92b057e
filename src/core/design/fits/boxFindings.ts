import { type Finding, problem } from '../../messages/problem.ts';
import type { BoxFit, BoxFitOptions } from './boxFit.ts';
import type { BoxLoss } from './boxModel.ts';
import { MISFIT_SCORE } from './impedanceFit.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** Below these a loss is out of the ordinary; common practice, no source, of the order that Small 1973 gives for usual boxes. */
export const USUAL_LOSS_Q: Readonly<Record<BoxLoss, number>> = { leak: 5, absorption: 25, port: 25 };
export const USUAL_FILLED_ABSORPTION_Q = 4;
const MOVED = 0.08;

/**
 * What is out of the ordinary about a box: a loss below its usual Q (certain to the end of its interval), losses that cannot be told
 * apart, a driver that seems to have changed, a model that misses the data, peaks that are not there.
 */
export function boxFindings(
  fit: Pick<BoxFit, 'kind' | 'losses' | 'separated' | 'massRatio'>,
  misfitScore: number,
  seen: boolean,
  { frequenciesHz }: ImpedanceSweep,
  { filled }: Pick<BoxFitOptions, 'filled'>,
): Finding[] {
  const findings: Finding[] = [];
  const place = { kind: 'chamber' } as const;
  for (const { loss, q } of fit.losses) {
    const usual = loss === 'absorption' && filled ? USUAL_FILLED_ABSORPTION_Q : USUAL_LOSS_Q[loss];
    if (fit.separated && q !== null && q.high < usual)
      findings.push({ ...problem('fits.loss-unusual', place, { loss, q: q.value, usual }), severity: 'warning' });
  }
  if (!fit.separated) findings.push({ ...problem('fits.losses-mixed', place), severity: 'note' });
  const { value, low, high } = fit.massRatio;
  if (Math.abs(value - 1) > MOVED && (low > 1 || high < 1))
    findings.push({ ...problem('fits.driver-moved', place, { change: value - 1 }), severity: 'warning' });
  if (misfitScore > MISFIT_SCORE)
    findings.push({
      ...problem('fits.model-misfit', place, { narrowed: 0, toHz: frequenciesHz.at(-1)! }),
      severity: 'warning',
    });
  if (!seen && fit.kind === 'vented') {
    const band = { fromHz: frequenciesHz[0]!, toHz: frequenciesHz.at(-1)! };
    findings.push({ ...problem('fits.one-peak', place, band), severity: 'warning' });
  }
  return findings;
}
