import type { AdmittanceBranch } from '../../circuit/branch.ts';
import type { ComplexCurve } from '../../speaker/simulation.ts';
import { type DriverPorts, isZero } from './driverPorts.ts';

/**
 * The drivers as branches between the crossover's nodes: each its own admittance across its terminals, and for two that
 * share air a lattice of four branches ±y between the one's terminals and the other's, which together carry the current
 * that the one's voltage makes in the other and nothing else. Two motors in a row are reciprocal, so one y serves both ways.
 * @example portBranches(ports, [['w1', '0'], ['0', 't3']], ['LS1', 'LS2'])
 */
export function portBranches(
  { admittances }: DriverPorts,
  nodes: readonly (readonly [string, string])[],
  ids: readonly string[],
): AdmittanceBranch[] {
  return nodes.flatMap(([plus, minus], k) => {
    const branches = [branchOf(`${ids[k]} terminals`, [plus, minus], admittances[k]![k]!, 1)];
    for (let j = 0; j < k; j++) {
      const shared = meanOf(admittances[k]![j]!, admittances[j]![k]!);
      if (isZero(shared)) continue;
      const [otherPlus, otherMinus] = nodes[j]!;
      const name = `${ids[j]} and ${ids[k]}`;
      branches.push(
        branchOf(`${name} 1`, [plus, otherPlus], shared, -1),
        branchOf(`${name} 2`, [minus, otherMinus], shared, -1),
        branchOf(`${name} 3`, [plus, otherMinus], shared, 1),
        branchOf(`${name} 4`, [minus, otherPlus], shared, 1),
      );
    }
    return branches.filter((branch) => branch.nodes[0] !== branch.nodes[1]);
  });
}

function branchOf(id: string, nodes: readonly [string, string], y: ComplexCurve, sign: 1 | -1): AdmittanceBranch {
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (_omegas, outRe, outIm) => {
      for (let f = 0; f < outRe.length; f++) {
        outRe[f] = sign * y.re[f]!;
        outIm[f] = sign * y.im[f]!;
      }
    },
  };
}

const meanOf = (a: ComplexCurve, b: ComplexCurve): ComplexCurve => ({
  re: a.re.map((x, f) => (x + b.re[f]!) / 2),
  im: a.im.map((x, f) => (x + b.im[f]!) / 2),
});
