import { constantValue, sourceVoltage } from './branchValue.ts';
import {
  addConstant,
  addMagnitudes,
  addScaled,
  invert,
  multiplier,
  scale,
  substitute,
  update,
  watchedUpdate,
} from './eliminationKernel.ts';
import { BACK_LENGTH, DIAGONAL, MULTIPLIER, PIVOT, STEP_LENGTH } from './eliminationProgram.ts';
import { type Complexes, type NodeSolution, TILE } from './nodeSolution.ts';
import { ENTRY_LENGTH, EXCITATION_LENGTH } from './stampProgram.ts';

/** The last pivot of a network has no entry below it to watch: it is suspect when this much of it has cancelled. */
const GREATEST_CANCELLATION = 1e10;

/** Fills and eliminates the equations of the frequencies from `first` on, one tile, and leaves the potentials there. */
export function eliminateTile(solution: NodeSolution, first: number): void {
  const count = Math.min(TILE, solution.frequencyCount - first);
  const base = first * solution.compiled.elimination.slots;
  fillEntries(solution, base, first, count);
  fillExcitations(solution, first, count);
  eliminate(solution, base, first, count);
  runBack(solution, solution.compiled.elimination.back, solution.potentials, base, first, count);
  watchLastPivots(solution, base, first, count);
}

function fillEntries(solution: NodeSolution, base: number, first: number, count: number): void {
  const { compiled, table, factors } = solution;
  const { entries } = compiled.stamps;
  for (let e = 0; e < entries.length; e += ENTRY_LENGTH) {
    const at = base + entries[e]! * TILE;
    const branch = entries[e + 1]!;
    const sign = entries[e + 2]!;
    const row = table.rows[branch]!;
    if (row !== null) addScaled(factors.re, factors.im, at, row.re, row.im, first, sign, count);
    else addConstant(factors.re, at, sign * constantValue(compiled.branches[branch]!), count);
  }
}

function fillExcitations(solution: NodeSolution, first: number, count: number): void {
  const { compiled, table, potentials, stride } = solution;
  const { excitations } = compiled.stamps;
  for (let e = 0; e < excitations.length; e += EXCITATION_LENGTH) {
    const at = excitations[e]! * stride + first;
    const branch = excitations[e + 1]!;
    const factor = excitations[e + 3]! * sourceVoltage(compiled.branches[excitations[e + 2]!]!);
    const row = table.rows[branch]!;
    if (row !== null) addScaled(potentials.re, potentials.im, at, row.re, row.im, first, factor, count);
    else addConstant(potentials.re, at, factor * constantValue(compiled.branches[branch]!), count);
  }
}

function eliminate(solution: NodeSolution, base: number, first: number, count: number): void {
  const { compiled, factors, potentials, stride, suspect } = solution;
  const { steps } = compiled.elimination;
  const { re, im } = factors;
  for (let s = 0; s < steps.length; s += STEP_LENGTH) {
    const operation = steps[s]!;
    const a = base + steps[s + 1]! * TILE;
    const b = base + steps[s + 2]! * TILE;
    if (operation === PIVOT) invert(re, im, a, count);
    else if (operation === MULTIPLIER) {
      const pivot = steps[s + 3]!;
      const row = steps[s + 4]! * stride + first;
      multiplier(re, im, b, a, base + pivot * TILE, count);
      substitute(potentials.re, potentials.im, row, pivot * stride + first, re, im, b, count);
    } else {
      const c = base + steps[s + 3]! * TILE;
      if (operation === DIAGONAL) watchedUpdate(re, im, a, b, c, count, suspect, first);
      else update(re, im, a, b, c, count);
    }
  }
}

/** Runs a list of substitutions on rows of `x` laid out as potentials are. */
export function runBack(
  solution: NodeSolution,
  list: Int32Array,
  x: Complexes,
  base: number,
  first: number,
  count: number,
): void {
  const { factors, stride } = solution;
  for (let s = 0; s < list.length; s += BACK_LENGTH) {
    const row = list[s]! * stride + first;
    const entry = base + list[s + 1]! * TILE;
    const other = list[s + 2]!;
    if (other < 0) scale(x.re, x.im, row, factors.re, factors.im, entry, count);
    else substitute(x.re, x.im, row, other * stride + first, factors.re, factors.im, entry, count);
  }
}

function watchLastPivots(solution: NodeSolution, base: number, first: number, count: number): void {
  const { compiled, table, factors, suspect } = solution;
  for (const { row, branches } of compiled.elimination.lastPivots) {
    gross.fill(0);
    for (const branch of branches) {
      const admittance = table.rows[branch]!;
      if (admittance !== null) addMagnitudes(gross, admittance.re, admittance.im, first, count);
    }
    const at = base + row * TILE;
    for (let f = 0; f < count; f++) {
      const inverse = Math.abs(factors.re[at + f]!) + Math.abs(factors.im[at + f]!);
      if (!(inverse * gross[f]! < GREATEST_CANCELLATION)) suspect[first + f] = 1;
    }
  }
}

/** Scratch of one tile. */
const gross = new Float64Array(TILE);
