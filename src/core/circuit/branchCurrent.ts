import { type Branch, type GyratorBranch, RETURN } from './branch.ts';
import { branchOf, voltageBetweenInto } from './branchVoltage.ts';
import type { Complexes, NodeSolution } from './nodeSolution.ts';

/**
 * Writes the current of a branch, A rms (m³/s rms of an acoustical one), into `out`: through an admittance from its
 * first node to its second; into the first primary node of a gyrator; out of the plus terminal of a source.
 * @example branchCurrentInto({ re, im }, solution, 'R1')
 */
export function branchCurrentInto(out: Complexes, solution: NodeSolution, id: string): void {
  const branch = branchOf(solution, id);
  if (branch.kind === 'admittance') {
    voltageBetweenInto(out, solution, branch.nodes[0], branch.nodes[1]);
    const row = solution.table.rows[solution.compiled.indexOf.get(id)!]!;
    for (let f = 0; f < solution.frequencyCount; f++) {
      const a = out.re[f]!;
      const b = out.im[f]!;
      out.re[f] = a * row.re[f]! - b * row.im[f]!;
      out.im[f] = a * row.im[f]! + b * row.re[f]!;
    }
    return;
  }
  if (branch.kind === 'gyrator') {
    voltageBetweenInto(out, solution, ...branch.secondary);
    scaleInto(out, branch.gyrationS, solution.frequencyCount);
    return;
  }
  const [plus, minus] = branch.nodes;
  if (branch.resistanceOhm > 0) {
    voltageBetweenInto(out, solution, plus, minus);
    const drive = solution.table.drives.get(solution.compiled.indexOf.get(id)!);
    for (let f = 0; f < solution.frequencyCount; f++) {
      out.re[f] = (branch.voltageV * (drive?.re[f] ?? 1) - out.re[f]!) / branch.resistanceOhm;
      out.im[f] = (branch.voltageV * (drive?.im[f] ?? 0) - out.im[f]!) / branch.resistanceOhm;
    }
    return;
  }
  idealSourceCurrentInto(out, solution, branch, plus);
}

/** Writes the current into the first secondary node of a gyrator, -g v1, into `out`. */
export function secondaryCurrentInto(out: Complexes, solution: NodeSolution, gyrator: GyratorBranch): void {
  voltageBetweenInto(out, solution, ...gyrator.primary);
  scaleInto(out, -gyrator.gyrationS, solution.frequencyCount);
}

/** What all other branches take out of the source's node. */
function idealSourceCurrentInto(out: Complexes, solution: NodeSolution, source: Branch, node: string): void {
  const one: Complexes = {
    re: new Float64Array(solution.frequencyCount),
    im: new Float64Array(solution.frequencyCount),
  };
  out.re.fill(0, 0, solution.frequencyCount);
  out.im.fill(0, 0, solution.frequencyCount);
  const add = (sign: number): void => {
    for (let f = 0; f < solution.frequencyCount; f++) {
      out.re[f]! += sign * one.re[f]!;
      out.im[f]! += sign * one.im[f]!;
    }
  };
  if (node === RETURN) throw new Error('A source cannot drive the return.');
  for (const branch of solution.compiled.branches) {
    if (branch === source) continue;
    if (branch.kind === 'gyrator') {
      if (branch.primary.includes(node)) {
        branchCurrentInto(one, solution, branch.id);
        if (branch.primary[0] === node) add(1);
        if (branch.primary[1] === node) add(-1);
      }
      if (branch.secondary.includes(node)) {
        secondaryCurrentInto(one, solution, branch);
        if (branch.secondary[0] === node) add(1);
        if (branch.secondary[1] === node) add(-1);
      }
      continue;
    }
    if (branch.nodes[0] === branch.nodes[1] || !branch.nodes.includes(node)) continue;
    branchCurrentInto(one, solution, branch.id);
    // The current of another source counts out of its plus terminal.
    const outOfFirst = branch.kind === 'source' ? -1 : 1;
    add(branch.nodes[0] === node ? outOfFirst : -outOfFirst);
  }
}

function scaleInto(out: Complexes, factor: number, count: number): void {
  for (let f = 0; f < count; f++) {
    out.re[f]! *= factor;
    out.im[f]! *= factor;
  }
}
