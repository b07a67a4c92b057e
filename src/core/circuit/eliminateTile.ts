import { constantValue, sourceVoltage } from './branchValue.ts';
import {
  addConstant,
  addScaled,
  invert,
  multiply,
  pivotBranch,
  pivotOne,
  scale,
  setProduct,
  subtractProduct,
  sumInto,
  update,
  watchedUpdate,
} from './eliminationKernel.ts';
import {
  DIAGONAL,
  INVERT,
  MULTIPLY,
  PIVOT_BRANCH,
  PIVOT_ONE,
  PIVOT_TWO,
  SCALE,
  SET_TWO,
  STEP_LENGTH,
  SUBSTITUTION_LENGTH,
  SUBTRACT,
} from './eliminationProgram.ts';
import type { FillPlan } from './fillPlan.ts';
import { type Complexes, type NodeSolution, TILE } from './nodeSolution.ts';
import { EXCITATION_LENGTH } from './stampProgram.ts';

/** A pivot is suspect when this much of what the branches put into it has cancelled: so many digits of it are gone. */
const GREATEST_CANCELLATION = 1e6;
/** The square of a hundredth of that: gross admittances are known at three frequencies of the sweep alone before a closer look. */
const WORTH_A_LOOK = 1e8;
/** By how much an admittance may at most change within one tile of neighbouring frequencies. */
const GREATEST_CHANGE = 1e3;

/** Solves the frequencies from `first` on, one tile, and leaves the potentials there. */
export function solveTile(solution: NodeSolution, plan: FillPlan, first: number): void {
  const { compiled, potentials, scratch } = solution;
  const count = Math.min(TILE, solution.frequencyCount - first);
  factoriseTile(solution, plan, scratch, 0, first);
  fillExcitations(solution, first, count);
  substitute(solution, compiled.elimination.forward, potentials, scratch, 0, first, count);
  substitute(solution, compiled.elimination.back, potentials, scratch, 0, first, count);
}

/** Fills and eliminates the equations of one tile; its factors begin at `base` of `factors`. */
export function factoriseTile(
  solution: NodeSolution,
  plan: FillPlan,
  factors: Complexes,
  base: number,
  first: number,
): void {
  const count = Math.min(TILE, solution.frequencyCount - first);
  for (const { slot, constant, sign, re, im } of plan.entries) {
    const at = base + slot * TILE;
    sumInto(factors.re, at, constant, sign, re, first, count);
    sumInto(factors.im, at, 0, sign, im, first, count);
  }
  eliminate(solution, plan.grossSquares, factors, base, first, count);
}

function fillExcitations(solution: NodeSolution, first: number, count: number): void {
  const { compiled, table, potentials, stride } = solution;
  const { excitations } = compiled.stamps;
  const { excited, last } = compiled.elimination;
  for (let row = 0; row < excited.length; row++) {
    // Other rows are set by the substitution, without a look at what they were.
    if (excited[row] === 0 && last[row] === 0 && compiled.symmetric) continue;
    const at = row * stride + first;
    potentials.re.fill(0, at, at + count);
    potentials.im.fill(0, at, at + count);
  }
  for (let e = 0; e < excitations.length; e += EXCITATION_LENGTH) {
    const at = excitations[e]! * stride + first;
    const branch = excitations[e + 1]!;
    const factor = excitations[e + 3]! * sourceVoltage(compiled.branches[excitations[e + 2]!]!);
    const row = table.rows[branch]!;
    const drive = table.drives.get(excitations[e + 2]!);
    if (drive !== undefined)
      addDriven(potentials, at, drive, row ?? constantValue(compiled.branches[branch]!), factor, first, count);
    else if (row === null) addConstant(potentials.re, at, factor * constantValue(compiled.branches[branch]!), count);
    else {
      addScaled(potentials.re, at, row.re, first, factor, count);
      addScaled(potentials.im, at, row.im, first, factor, count);
    }
  }
}

/** x += factor × admittance × drive, for a source whose voltage varies over the sweep. */
function addDriven(
  x: Complexes,
  at: number,
  drive: Complexes,
  admittance: Complexes | number,
  factor: number,
  first: number,
  count: number,
): void {
  const isConstant = typeof admittance === 'number';
  for (let f = 0; f < count; f++) {
    const yRe = isConstant ? admittance : admittance.re[first + f]!;
    const yIm = isConstant ? 0 : admittance.im[first + f]!;
    const dRe = drive.re[first + f]!;
    const dIm = drive.im[first + f]!;
    x.re[at + f]! += factor * (yRe * dRe - yIm * dIm);
    x.im[at + f]! += factor * (yRe * dIm + yIm * dRe);
  }
}

function eliminate(
  solution: NodeSolution,
  grossSquares: Float64Array,
  { re, im }: Complexes,
  base: number,
  first: number,
  count: number,
): void {
  const { compiled, table, suspect } = solution;
  const { steps } = compiled.elimination;
  for (let s = 0; s < steps.length; s += STEP_LENGTH) {
    const operation = steps[s]!;
    const a = base + steps[s + 1]! * TILE;
    const b = base + steps[s + 2]! * TILE;
    const c = base + steps[s + 3]! * TILE;
    const d = base + steps[s + 4]! * TILE;
    let inverseSquare = 0;
    if (operation === PIVOT_BRANCH) {
      const row = table.rows[steps[s + 2]!]!;
      const diagonal = base + steps[s + 5]! * TILE;
      inverseSquare = pivotBranch(re, im, a, row.re, row.im, steps[s + 3]!, d, diagonal, count, suspect, first);
    } else if (operation === PIVOT_ONE) inverseSquare = pivotOne(re, im, a, b, c, d, count, suspect, first);
    else if (operation === PIVOT_TWO) {
      const entry = base + steps[s + 5]! * TILE;
      const multiplier = base + steps[s + 6]! * TILE;
      inverseSquare = pivotOne(re, im, a, b, c, d, count, suspect, first);
      multiply(re, im, multiplier, entry, a, count);
      watchedUpdate(re, im, base + steps[s + 7]! * TILE, multiplier, entry, count, suspect, first);
      update(re, im, base + steps[s + 8]! * TILE, c, entry, count);
    } else if (operation === INVERT) inverseSquare = invert(re, im, a, count);
    else if (operation === MULTIPLY) multiply(re, im, b, a, c, count);
    else if (operation === DIAGONAL) watchedUpdate(re, im, a, b, c, count, suspect, first);
    else update(re, im, a, b, c, count);
    // 0: no pivot in this step. Written so that NaN gets its look too.
    if (inverseSquare !== 0 && !(inverseSquare * grossSquares[steps[s + 1]!]! < WORTH_A_LOOK)) {
      watchPivot(solution, steps[s + 1]!, re, im, a, first, count);
    }
  }
}

/** Runs a list of substitutions on rows of `x` laid out as potentials are. */
export function substitute(
  solution: NodeSolution,
  list: Int32Array,
  x: Complexes,
  factors: Complexes,
  base: number,
  first: number,
  count: number,
): void {
  const { stride } = solution;
  for (let s = 0; s < list.length; s += SUBSTITUTION_LENGTH) {
    const operation = list[s]!;
    const row = list[s + 1]! * stride + first;
    const entry = base + list[s + 2]! * TILE;
    const other = list[s + 3]! * stride + first;
    if (operation === SCALE) scale(x.re, x.im, row, factors.re, factors.im, entry, count);
    else if (operation === SUBTRACT) subtractProduct(x.re, x.im, row, other, factors.re, factors.im, entry, count);
    else {
      setProduct(x.re, x.im, row, other, factors.re, factors.im, entry, count);
      if (operation === SET_TWO) {
        const next = base + list[s + 4]! * TILE;
        subtractProduct(x.re, x.im, row, list[s + 5]! * stride + first, factors.re, factors.im, next, count);
      }
    }
  }
}

/** Marks frequencies where little is left of what went into a pivot, which now holds its inverse. */
function watchPivot(
  solution: NodeSolution,
  row: number,
  re: Float64Array,
  im: Float64Array,
  at: number,
  first: number,
  count: number,
): void {
  const { suspect } = solution;
  // What goes in hardly changes within a tile, so its ends tell whether a closer look is needed at all.
  const ends = Math.max(grossEntry(solution, row, first), grossEntry(solution, row, first + count - 1));
  const enough = GREATEST_CANCELLATION / GREATEST_CHANGE / ends;
  for (let f = 0; f < count; f++) {
    const inverse = Math.abs(re[at + f]!) + Math.abs(im[at + f]!);
    if (inverse < enough) continue;
    if (!(inverse * grossEntry(solution, row, first + f) < GREATEST_CANCELLATION)) suspect[first + f] = 1;
  }
}

function grossEntry({ compiled, table }: NodeSolution, row: number, f: number): number {
  let gross = 0;
  for (const branch of compiled.stamps.entries[row]!.admittances) {
    const { re, im } = table.rows[branch]!;
    gross += Math.abs(re[f]!) + Math.abs(im[f]!);
  }
  return gross;
}
