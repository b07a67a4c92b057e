import { type Finding, problem } from '../../messages/problem.ts';
import type { DriverFit, DriverFitOptions } from './driverFit.ts';
import type { DriverStart } from './driverStart.ts';
import type { ImpedanceSweep } from './impedanceSweep.ts';

/** Fewer points than this in the peak's half width leave its height to chance. */
const FEWEST_IN_PEAK = 5;
/** The sweep should reach this far below and above the resonance. */
const REACH_BELOW = 1.5;
const REACH_ABOVE = 4;
const LEADS_SHARE = 0.02;

/**
 * What is doubtful about a fit of a driver: too few points in the peak, a peak near an end of the sweep, leads not taken out or
 * seen in Re, a coil that is only an equivalent, a model that misses the data.
 */
export function driverFindings(
  { frequenciesHz }: ImpedanceSweep,
  { pointsInPeak }: DriverStart,
  { reOhm, fsHz, coil, bandHz, resonanceWith }: Pick<DriverFit, 'reOhm' | 'fsHz' | 'coil' | 'bandHz' | 'resonanceWith'>,
  { leadOhm, dcOhm }: DriverFitOptions,
  judged: { readonly equivalent: boolean; readonly misfit: boolean },
): Finding[] {
  const findings: Finding[] = [];
  const place = { kind: 'curve' } as const;
  const say = (severity: Finding['severity'], made: Omit<Finding, 'severity'>): void => {
    findings.push({ ...made, severity });
  };
  if (pointsInPeak < FEWEST_IN_PEAK)
    say('warning', problem('fits.sweep-coarse', place, { count: pointsInPeak, needed: FEWEST_IN_PEAK }));
  const [fromHz, toHz] = [frequenciesHz[0]!, frequenciesHz.at(-1)!];
  if (fsHz.value / fromHz < REACH_BELOW || toHz / fsHz.value < REACH_ABOVE)
    say('warning', problem('fits.peak-at-edge', place, { fsHz: fsHz.value, fromHz, toHz }));
  if (dcOhm !== null) {
    const excess = reOhm.value / dcOhm - 1;
    if (Math.abs(excess) > LEADS_SHARE && (reOhm.low > dcOhm || reOhm.high < dcOhm))
      say('warning', problem('fits.leads-suspected', place, { fittedOhm: reOhm.value, dcOhm }));
  } else if (leadOhm === null) say('note', problem('fits.leads-unknown', place, { fittedOhm: reOhm.value }));
  if (judged.equivalent)
    say('warning', problem('fits.coil-equivalent', place, { form: coil.form, better: resonanceWith }));
  if (judged.misfit) {
    const narrowed = bandHz[1] < toHz;
    say('warning', problem('fits.model-misfit', place, { narrowed: narrowed ? 1 : 0, toHz: bandHz[1] }));
  }
  return findings;
}
