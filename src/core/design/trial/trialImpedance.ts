import { inputImpedance, OPEN_OHM, type OutputTerm, sourceCurrent, voltageBetweenInto } from '../../circuit/index.ts';
import { potentialRow } from '../../circuit/nodeSolution.ts';
import { complexCurve } from '../../speaker/complexCurve.ts';
import type { ComplexCurve } from '../../speaker/simulation.ts';
import type { Tried } from './crossoverTrial.ts';
import { adjointOf, complexDerivatives } from './gradient.ts';
import { betweenTerms } from './trialCurve.ts';

/**
 * Impedance at an amplifier's terminals, ohm, its own resistance and cable not included.
 * @example trialImpedance(tried, 'V1')
 */
export const trialImpedance = ({ solution }: Tried, amplifierId: string): ComplexCurve =>
  inputImpedance(solution, amplifierId);

/**
 * d ln Z / d ln p at an amplifier's terminals, per variable: the real part is the relative change of |Z|, the imaginary part
 * radians. 0 where nothing flows.
 * @example trialImpedanceDerivatives(tried, 'V1')[0].re
 */
export function trialImpedanceDerivatives(tried: Tried, amplifierId: string): ComplexCurve[] {
  const { solution, compiled, table } = tried;
  const source = compiled.branches[compiled.indexOf.get(amplifierId) ?? -1];
  if (source?.kind !== 'source') throw new RangeError(`The network has no amplifier ${amplifierId}.`);
  const count = solution.frequencyCount;
  const current = sourceCurrent(solution, amplifierId);
  const voltage = complexCurve(count);
  voltageBetweenInto(voltage, solution, source.nodes[0], source.nodes[1]);
  const isOpen = (f: number): boolean =>
    Math.hypot(voltage.re[f]!, voltage.im[f]!) >= OPEN_OHM * Math.hypot(current.re[f]!, current.im[f]!);
  const inverseCurrent = complexCurve(count);
  for (let f = 0; f < count; f++) if (!isOpen(f)) setInverse(inverseCurrent, f, current);

  if (source.resistanceOhm > 0) {
    // i = (E - v) / R, so d ln Z = dv/v - di/i = dv (1/v + 1/(R i)).
    const weight = complexCurve(count);
    for (let f = 0; f < count; f++) {
      if (isOpen(f)) continue;
      setInverse(weight, f, voltage);
      weight.re[f]! += inverseCurrent.re[f]! / source.resistanceOhm;
      weight.im[f]! += inverseCurrent.im[f]! / source.resistanceOhm;
    }
    return complexDerivatives(tried, adjointOf(tried, betweenTerms(source.nodes, weight)));
  }
  // v stands still: d ln Z = -di/i, with i the sum of y (v - v') over what hangs on the source's node. Setting u = 1/i there
  // brings the terms (v - v') dy of these branches into the general formula.
  const [node] = source.nodes;
  const terms: OutputTerm[] = table.rows.flatMap((row) => {
    if (row === null || !row.branch.nodes.includes(node)) return [];
    const [a, b] = row.branch.nodes;
    if (a === b) return [];
    const weight = complexCurve(count);
    for (let f = 0; f < count; f++) {
      weight.re[f] = row.re[f]! * inverseCurrent.re[f]! - row.im[f]! * inverseCurrent.im[f]!;
      weight.im[f] = row.re[f]! * inverseCurrent.im[f]! + row.im[f]! * inverseCurrent.re[f]!;
    }
    return [{ node: a === node ? b : a, weight }];
  });
  for (const other of compiled.branches) {
    if (other.kind !== 'source' || other === source || !other.nodes.includes(node)) continue;
    throw new RangeError(`${other.id} drives the node of ${source.id}, an ideal source.`);
  }
  const adjoint = adjointOf(tried, terms);
  const at = potentialRow(compiled, node) * solution.stride;
  adjoint.potentials.re.set(inverseCurrent.re, at);
  adjoint.potentials.im.set(inverseCurrent.im, at);
  return complexDerivatives(tried, adjoint);
}

function setInverse(out: ComplexCurve, f: number, { re, im }: ComplexCurve): void {
  const squared = re[f]! ** 2 + im[f]! ** 2;
  out.re[f] = re[f]! / squared;
  out.im[f] = -im[f]! / squared;
}
