import type { Curve } from '../document/schema.ts';
import type { PreparedCurve } from '../measured/prepareMeasured.ts';
import type { Finding } from '../messages/problem.ts';

/** Up to here a curve should reach; above, its last value holds. */
const WANTED_TO_HZ = 16000;
/** A passive load never turns further than 90°; this much more is laid to the measurement. */
const MOST_PHASE_RAD = (95 * Math.PI) / 180;

/**
 * What is doubtful about a measured table that rules above `blendHz`: a stretch that it does not cover, an impedance that no
 * passive load can have, a phase that was assumed.
 */
export function measuredRemarks(curve: Curve, table: PreparedCurve, blendHz: number): Finding[] {
  const place = { kind: 'curve', id: curve.id } as const;
  const { name, quantity } = curve;
  const findings: Finding[] = [];
  const fromHz = table.frequenciesHz[0]!;
  const toHz = table.frequenciesHz.at(-1)!;
  const neededHz = blendHz / Math.SQRT2;
  if (fromHz > neededHz * 1.02) {
    findings.push({
      severity: 'warning',
      code: 'finding.curve-begins-late',
      place,
      values: { name, fromHz, neededHz, blendHz },
    });
  }
  if (toHz < WANTED_TO_HZ) {
    findings.push({ severity: 'note', code: 'finding.curve-ends-early', place, values: { name, toHz } });
  }
  const turned = quantity === 'impedance' ? table.phasesRad.findIndex((phase) => Math.abs(phase) > MOST_PHASE_RAD) : -1;
  if (turned >= 0) {
    const values = { name, atHz: table.frequenciesHz[turned]!, deg: (table.phasesRad[turned]! * 180) / Math.PI };
    findings.push({ severity: 'warning', code: 'finding.impedance-phase', place, values });
  }
  findings.push(
    ...table.notes.filter((note) => note.code === 'measured.minimum-phase').map((note) => ({ ...note, place })),
  );
  return findings;
}
