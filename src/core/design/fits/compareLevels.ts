import { type Finding, problem } from '../../messages/problem.ts';
import type { DriverResonance } from './driverResonance.ts';

export interface LevelChange {
  readonly quantity: 'reOhm' | 'fsHz' | 'qms' | 'qes';
  /** Loud over soft, less 1. */
  readonly change: number;
  /** In standard deviations of the two together. */
  readonly score: number;
}

/** Changes below this are of no use to know. */
const LEAST_CHANGE = 0.02;
const CERTAIN = 3;

/**
 * How the values of one driver change from a soft to a loud sweep, with a finding `fits.level-dependent` for each that changes by 2 %
 * or more and by three deviations: the loud sweep, and perhaps the soft one, leaves the small-signal range.
 *
 * Example: compareLevels(soft, loud).findings is empty for two sweeps of a linear driver.
 */
export function compareLevels(
  soft: DriverResonance,
  loud: DriverResonance,
): { readonly changes: readonly LevelChange[]; readonly findings: readonly Finding[] } {
  const changes = (['reOhm', 'fsHz', 'qms', 'qes'] as const).map((quantity): LevelChange => {
    const [a, b] = [soft[quantity], loud[quantity]];
    const deviation = Math.hypot(a.relativeSd, b.relativeSd);
    const change = b.value / a.value - 1;
    return { quantity, change, score: deviation > 0 ? Math.abs(Math.log(b.value / a.value)) / deviation : 0 };
  });
  const findings = changes
    .filter(({ change, score }) => Math.abs(change) >= LEAST_CHANGE && score >= CERTAIN)
    .map(
      ({ quantity, change }): Finding => ({
        ...problem('fits.level-dependent', { kind: 'curve' }, { quantity, change }),
        severity: 'warning',
      }),
    );
  return { changes, findings };
}
