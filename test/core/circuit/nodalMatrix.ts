import { add, type Complex, complex, lusolve, type MathType, multiply, subtract } from 'mathjs';
import { type Branch, nodesOf, RETURN } from '../../../src/core/circuit/index.ts';

/**
 * A second, plain formulation of the same circuit for one frequency: the modified nodal matrix, with the currents of ideal
 * sources as unknowns of their own, solved by a general-purpose library.
 */
export function solveByMatrix(branches: readonly Branch[], omega: number): Map<string, Complex> {
  const nodes = nodesOf(branches);
  const ideal = branches.filter((b) => b.kind === 'source' && b.resistanceOhm === 0);
  const size = nodes.length + ideal.length;
  const matrix: MathType[][] = Array.from({ length: size }, () => Array.from({ length: size }, () => complex(0, 0)));
  const right: MathType[] = Array.from({ length: size }, () => complex(0, 0));
  const row = (node: string): number => (node === RETURN ? -1 : nodes.indexOf(node));
  const enter = (i: number, j: number, value: MathType): void => {
    if (i >= 0 && j >= 0) matrix[i]![j] = add(matrix[i]![j]!, value);
  };
  const conductance = ([a, b]: readonly [string, string], y: MathType): void => {
    for (const [i, j, sign] of [
      [a, a, 1],
      [b, b, 1],
      [a, b, -1],
      [b, a, -1],
    ] as const) {
      enter(row(i), row(j), multiply(sign, y) as MathType);
    }
  };
  for (const branch of branches) {
    if (branch.kind === 'admittance') {
      const re = new Float64Array(1);
      const im = new Float64Array(1);
      branch.admittance(Float64Array.of(omega), re, im);
      conductance(branch.nodes, complex(re[0]!, im[0]!));
    } else if (branch.kind === 'gyrator') {
      const [[a, b], [c, d], g] = [branch.primary, branch.secondary, branch.gyrationS];
      for (const [i, j, value] of [
        [a, c, g],
        [a, d, -g],
        [b, c, -g],
        [b, d, g],
        [c, a, -g],
        [c, b, g],
        [d, a, g],
        [d, b, -g],
      ] as const) {
        enter(row(i), row(j), complex(value, 0));
      }
    } else if (branch.resistanceOhm > 0) {
      conductance(branch.nodes, complex(1 / branch.resistanceOhm, 0));
      const drive = branch.voltageV / branch.resistanceOhm;
      const [plus, minus] = [row(branch.nodes[0]), row(branch.nodes[1])];
      if (plus >= 0) right[plus] = add(right[plus]!, drive);
      if (minus >= 0) right[minus] = subtract(right[minus]!, drive) as MathType;
    } else {
      const extra = nodes.length + ideal.indexOf(branch);
      enter(row(branch.nodes[0]), extra, 1);
      enter(extra, row(branch.nodes[0]), 1);
      right[extra] = complex(branch.voltageV, 0);
    }
  }
  const solution = lusolve(matrix as number[][], right as number[]) as unknown as Complex[][];
  return new Map(nodes.map((node, i) => [node, complex(solution[i]![0]!)]));
}
