import type { AdmittanceBranch } from '../../circuit/branch.ts';
import type { Part } from '../../circuit/part.ts';
import type { AirBranch, Row } from './build.ts';
import { type BuildLayout, branchesOf } from './buildLayout.ts';
import { invertInPlace, solveSymmetricInPlace } from './complexMatrix.ts';

// At each frequency, from the air inwards. The air's nodal admittances are inverted to Za. A cone between two of its nodes moves U
// forward, out of the rear node and into the front one: with its incidence a, the air loads the cones by A = a'Za a. Moving parts and
// air together take U = M⁻¹ B i, M = diag(Zm/Sd²) + A, B = diag(Bl/Sd), so that the drivers are ports of impedance
// Zd = diag(Zc) + B M⁻¹ B and admittance Yd = Zd⁻¹. Yd enters the network's nodal equations between the drivers' terminals, and one
// ampere into the terminals gives the potentials v, of which Z is one. Every matrix is symmetric (two gyrators in a row are
// reciprocal), so v serves as its own adjoint:
//   dZ = -v_b² dy of a part,  i² dZc of a coil,  2 i U dB of a motor,  -U² dZm/Sd² of moving parts,  p_b² dy of the air.

/** Least conductance from any node to the return and across the terminals, S: what hangs free still has a potential. */
const STRAY_S = 1e-12;
/** Coil of a driver that is open, ohm. */
const OPEN_COIL_OHM = 1e9;

/** What a solve leaves: impedance and d ln Z by each unknown, and on wish what moves in the air for one ampere. */
export interface BuildSolution {
  readonly z: Row;
  /** One row an unknown. */
  readonly slopes: readonly Row[];
  /** Forward volume velocity of each cone per ampere into the terminals, m³/(s·A); empty unless asked for. */
  readonly flows: readonly Row[];
  /** Pressure of each air node per ampere, Pa/A; empty unless asked for. */
  readonly pressures: readonly Row[];
}

/** Solves one layout again and again; a solution's rows are overwritten by the next one. */
export interface BuildSolver {
  readonly layout: BuildLayout;
  /** Room for two numbers an unknown and frequency, for whoever fits with it. */
  readonly scratch: Float64Array;
  solve(logs: Float64Array, withSound?: boolean): BuildSolution;
}

const rows = (count: number, length: number): Row[] =>
  Array.from({ length: count }, () => ({ re: new Float64Array(length), im: new Float64Array(length) }));

/**
 * A solver for all values of a build's unknowns (logarithms over the nominal values, in the layout's order).
 *
 * Agrees with `simulate` to 1e-9 where both can solve; a network that is open altogether reads far above 100 MΩ.
 * @example buildSolver(buildLayout(build, unknowns)).solve(new Float64Array(unknowns.length)).z
 */
export function buildSolver(layout: BuildLayout): BuildSolver {
  const { build, nodeCount: n, airCount, drivers, parts } = layout;
  const count = build.omegas.length;
  const cones = drivers.length;
  const partRows = rows(parts.length, count);
  const slopeRows = parts.map(({ unknowns }) => rows(unknowns.length, count));
  const airRows = rows(layout.air.length, count);
  const airSlopes = rows(layout.air.length, count);
  const z = rows(1, count)[0]!;
  const slopes = rows(layout.unknowns.length, count);
  const flows = rows(cones, count);
  const pressures = rows(airCount, count);
  const [ya, ma, yd, yn, v] = [airCount ** 2, cones ** 2, cones ** 2, n ** 2, n].map((size) => rows(1, size)[0]!) as [
    Row,
    Row,
    Row,
    Row,
    Row,
  ];
  const [u, i, w, p] = [cones, cones, cones, airCount].map((size) => rows(1, size)[0]!) as [Row, Row, Row, Row];
  const factors = new Float64Array(layout.unknowns.length);
  const factorOf = (k: number): number => (k < 0 ? 1 : factors[k]!);
  const branchAt = parts.map((slot, at) => parts.slice(0, at).filter(({ part }) => part.id === slot.part.id).length);

  function tabulate(): void {
    parts.forEach((slot, at) => {
      const branch = branchesOf({ part: valued(slot.part, slot, factors), state: slot.isBridge ? 'short' : 'whole' })[
        branchAt[at]!
      ]!;
      branch.admittance(build.omegas, partRows[at]!.re, partRows[at]!.im);
      slot.unknowns.forEach(({ name }, k) => {
        tabulateSlope(branch, name, build.omegas, slopeRows[at]![k]!);
      });
    });
  }

  function tabulateAir(): void {
    layout.air.forEach(({ unknown }, k) => {
      airInto(airRows[k]!, airSlopes[k]!, build.air[k]!, factorOf(unknown));
    });
  }

  function solveAt(f: number, withSound: boolean): void {
    const omega = build.omegas[f]!;
    // The air.
    ya.re.fill(0);
    ya.im.fill(0);
    for (let node = 0; node < airCount; node++) ya.re[node * airCount + node] = 1e-30;
    for (let k = 0; k < layout.air.length; k++) {
      const { a, b } = layout.air[k]!;
      stamp(ya, airCount, a, b, airRows[k]!.re[f]!, airRows[k]!.im[f]!);
    }
    for (let k = 0; k < layout.leaks.length; k++) {
      const { a, unknown } = layout.leaks[k]!;
      stamp(ya, airCount, a, -1, factorOf(unknown) * build.leaks[k]!.conductance, 0);
    }
    if (airCount > 0) invertInPlace(ya.re, ya.im, airCount);
    // Cones and their motors.
    for (let k = 0; k < cones; k++) {
      const d = drivers[k]!;
      const { parameters } = build.drivers[k]!.speaker;
      const square = parameters.sdM2 ** 2;
      for (let l = 0; l < cones; l++) {
        const e = drivers[l]!;
        ma.re[k * cones + l] = between(ya.re, airCount, d.front, d.rear, e.front, e.rear);
        ma.im[k * cones + l] = between(ya.im, airCount, d.front, d.rear, e.front, e.rear);
      }
      const stiffness = 1 / (omega * parameters.cmsMPerN * factorOf(d.compliance));
      ma.re[k * cones + k]! += (parameters.rmsKgPerS * factorOf(d.loss)) / square;
      ma.im[k * cones + k]! += (omega * parameters.mmsKg - stiffness) / square;
    }
    invertInPlace(ma.re, ma.im, cones);
    for (let k = 0; k < cones; k++) {
      const { speaker, coil, isOpen } = build.drivers[k]!;
      const bk = (speaker.parameters.blTm / speaker.parameters.sdM2) * factorOf(drivers[k]!.motor);
      for (let l = 0; l < cones; l++) {
        const other = build.drivers[l]!.speaker.parameters;
        const bl = (other.blTm / other.sdM2) * factorOf(drivers[l]!.motor);
        yd.re[k * cones + l] = bk * bl * ma.re[k * cones + l]!;
        yd.im[k * cones + l] = bk * bl * ma.im[k * cones + l]!;
      }
      const inductance = factorOf(drivers[k]!.inductance);
      const coilOhm = isOpen ? OPEN_COIL_OHM : speaker.parameters.reOhm * factorOf(drivers[k]!.resistance);
      yd.re[k * cones + k]! += coilOhm + inductance * coil.re[f]!;
      yd.im[k * cones + k]! += inductance * coil.im[f]!;
    }
    invertInPlace(yd.re, yd.im, cones);
    // The network.
    yn.re.fill(0);
    yn.im.fill(0);
    for (let node = 0; node < n; node++) yn.re[node * n + node] = STRAY_S;
    stamp(yn, n, layout.plus, layout.minus, STRAY_S, 0);
    for (let k = 0; k < parts.length; k++) {
      const { a, b } = parts[k]!;
      stamp(yn, n, a, b, partRows[k]!.re[f]!, partRows[k]!.im[f]!);
    }
    for (let k = 0; k < cones; k++) {
      const { added, isOpen } = build.drivers[k]!;
      const { plus, minus } = drivers[k]!;
      if (added !== null && !isOpen) stamp(yn, n, plus, minus, added.re[f]!, added.im[f]!);
      for (let l = 0; l < cones; l++) {
        const re = yd.re[k * cones + l]!;
        const im = yd.im[k * cones + l]!;
        const to = drivers[l]!;
        addTo(yn, n, plus, to.plus, re, im);
        addTo(yn, n, minus, to.minus, re, im);
        addTo(yn, n, plus, to.minus, -re, -im);
        addTo(yn, n, minus, to.plus, -re, -im);
      }
    }
    v.re.fill(0);
    v.im.fill(0);
    if (layout.plus >= 0) v.re[layout.plus] = 1;
    if (layout.minus >= 0) v.re[layout.minus] = -1;
    solveSymmetricInPlace(yn.re, yn.im, v.re, v.im, n);
    // What flows in the drivers and in the air for one ampere.
    for (let k = 0; k < cones; k++) {
      w.re[k] = at(v.re, drivers[k]!.plus) - at(v.re, drivers[k]!.minus);
      w.im[k] = at(v.im, drivers[k]!.plus) - at(v.im, drivers[k]!.minus);
    }
    apply(i, yd, w, cones);
    for (let k = 0; k < cones; k++) {
      const { parameters } = build.drivers[k]!.speaker;
      const b = (parameters.blTm / parameters.sdM2) * factorOf(drivers[k]!.motor);
      w.re[k] = b * i.re[k]!;
      w.im[k] = b * i.im[k]!;
    }
    apply(u, ma, w, cones);
    for (let node = 0; node < airCount; node++) {
      let re = 0;
      let im = 0;
      for (let k = 0; k < cones; k++) {
        const { front, rear } = drivers[k]!;
        const ar = entry(ya.re, airCount, node, front) - entry(ya.re, airCount, node, rear);
        const ai = entry(ya.im, airCount, node, front) - entry(ya.im, airCount, node, rear);
        re += ar * u.re[k]! - ai * u.im[k]!;
        im += ar * u.im[k]! + ai * u.re[k]!;
      }
      p.re[node] = re;
      p.im[node] = im;
    }
    const cableOhm = layout.cable < 0 ? 0 : build.cableOhm * factors[layout.cable]!;
    const zr = at(v.re, layout.plus) - at(v.re, layout.minus) + cableOhm;
    const zi = at(v.im, layout.plus) - at(v.im, layout.minus);
    z.re[f] = zr;
    z.im[f] = zi;
    slopesAt(f, omega, zr, zi, cableOhm);
    if (!withSound) return;
    for (let k = 0; k < cones; k++) {
      flows[k]!.re[f] = u.re[k]!;
      flows[k]!.im[f] = u.im[k]!;
    }
    for (let node = 0; node < airCount; node++) {
      pressures[node]!.re[f] = p.re[node]!;
      pressures[node]!.im[f] = p.im[node]!;
    }
  }

  function slopesAt(f: number, omega: number, zr: number, zi: number, cableOhm: number): void {
    const squared = zr * zr + zi * zi;
    const ir = zr / squared;
    const ii = -zi / squared;
    /** d ln Z = s² d / Z */
    const put = (k: number, sr: number, si: number, dr: number, di: number): void => {
      const qr = sr * sr - si * si;
      const qi = 2 * sr * si;
      const tr = qr * dr - qi * di;
      const ti = qr * di + qi * dr;
      slopes[k]!.re[f]! += tr * ir - ti * ii;
      slopes[k]!.im[f]! += tr * ii + ti * ir;
    };
    for (const row of slopes) {
      row.re[f] = 0;
      row.im[f] = 0;
    }
    for (let k = 0; k < parts.length; k++) {
      const { a, b, unknowns } = parts[k]!;
      if (unknowns.length === 0) continue;
      const vr = at(v.re, a) - at(v.re, b);
      const vi = at(v.im, a) - at(v.im, b);
      for (let q = 0; q < unknowns.length; q++) {
        const { re, im } = slopeRows[k]![q]!;
        put(unknowns[q]!.at, vr, vi, -re[f]!, -im[f]!);
      }
    }
    for (let k = 0; k < cones; k++) {
      const { resistance, inductance, compliance, loss, motor } = drivers[k]!;
      const { speaker, coil, isOpen } = build.drivers[k]!;
      const { reOhm, rmsKgPerS, cmsMPerN, sdM2, blTm } = speaker.parameters;
      const [cr, ci, ur, ui] = [i.re[k]!, i.im[k]!, u.re[k]!, u.im[k]!];
      if (resistance >= 0 && !isOpen) put(resistance, cr, ci, reOhm * factors[resistance]!, 0);
      if (inductance >= 0)
        put(inductance, cr, ci, coil.re[f]! * factors[inductance]!, coil.im[f]! * factors[inductance]!);
      if (loss >= 0) put(loss, ur, ui, (-rmsKgPerS * factors[loss]!) / sdM2 ** 2, 0);
      if (compliance >= 0) put(compliance, ur, ui, 0, -1 / (omega * cmsMPerN * factors[compliance]! * sdM2 ** 2));
      if (motor >= 0) {
        const twice = (2 * blTm * factors[motor]!) / sdM2;
        const tr = twice * (cr * ur - ci * ui);
        const ti = twice * (cr * ui + ci * ur);
        slopes[motor]!.re[f]! += tr * ir - ti * ii;
        slopes[motor]!.im[f]! += tr * ii + ti * ir;
      }
    }
    for (let k = 0; k < layout.air.length; k++) {
      const { a, b, unknown } = layout.air[k]!;
      if (unknown < 0) continue;
      const { re, im } = airSlopes[k]!;
      put(unknown, at(p.re, a) - at(p.re, b), at(p.im, a) - at(p.im, b), re[f]!, im[f]!);
    }
    for (let k = 0; k < layout.leaks.length; k++) {
      const { a, unknown } = layout.leaks[k]!;
      if (unknown >= 0) put(unknown, at(p.re, a), at(p.im, a), factors[unknown]! * build.leaks[k]!.conductance, 0);
    }
    if (layout.cable >= 0) put(layout.cable, 1, 0, cableOhm, 0);
  }

  return {
    layout,
    scratch: new Float64Array(2 * count * layout.unknowns.length),
    solve: (logs, withSound = false) => {
      for (let k = 0; k < factors.length; k++) factors[k] = Math.exp(logs[k]!);
      tabulate();
      tabulateAir();
      for (let f = 0; f < count; f++) solveAt(f, withSound);
      return { z, slopes, flows: withSound ? flows : [], pressures: withSound ? pressures : [] };
    },
  };
}

function valued(part: Part, { unknowns }: BuildLayout['parts'][number], factors: Float64Array): Part {
  if (unknowns.length === 0) return part;
  const changed: Record<string, number> = {};
  const values = part as unknown as Readonly<Record<string, number>>;
  for (const { at: k, name } of unknowns) changed[name] = values[name]! * factors[k]!;
  return { ...part, ...changed };
}

/** d y / d ln value. */
function tabulateSlope(branch: AdmittanceBranch, name: string, omegas: Float64Array, out: Row): void {
  const entry = branch.derivatives?.[name];
  if (entry === undefined) throw new RangeError(`Branch ${branch.id} has no value ${name}.`);
  entry.derivative(omegas, out.re, out.im);
  for (let f = 0; f < omegas.length; f++) {
    out.re[f]! *= entry.value;
    out.im[f]! *= entry.value;
  }
}

/** Admittance of a branch of the air by a factor, and its slope by the factor's logarithm. */
function airInto(out: Row, slope: Row, { admittance, scales }: AirBranch, factor: number): void {
  const { re, im } = admittance;
  for (let f = 0; f < re.length; f++) {
    const a = re[f]!;
    const b = im[f]!;
    if (scales === 'admittance') {
      out.re[f] = factor * a;
      out.im[f] = factor * b;
      slope.re[f] = factor * a;
      slope.im[f] = factor * b;
      continue;
    }
    const squared = a * a + b * b;
    const r = a / squared;
    const x = -b / squared / factor;
    const size = r * r + x * x;
    const yr = r / size;
    const yi = -x / size;
    out.re[f] = yr;
    out.im[f] = yi;
    // dy = y² jx
    slope.re[f] = -x * 2 * yr * yi;
    slope.im[f] = x * (yr * yr - yi * yi);
  }
}

const at = (row: Float64Array, index: number): number => (index < 0 ? 0 : row[index]!);
const entry = (matrix: Float64Array, n: number, i: number, j: number): number =>
  i < 0 || j < 0 ? 0 : matrix[i * n + j]!;
const between = (matrix: Float64Array, n: number, a: number, b: number, c: number, d: number): number =>
  entry(matrix, n, a, c) - entry(matrix, n, a, d) - entry(matrix, n, b, c) + entry(matrix, n, b, d);

function addTo({ re, im }: Row, n: number, i: number, j: number, byRe: number, byIm: number): void {
  if (i < 0 || j < 0) return;
  re[i * n + j]! += byRe;
  im[i * n + j]! += byIm;
}

function stamp(matrix: Row, n: number, a: number, b: number, re: number, im: number): void {
  addTo(matrix, n, a, a, re, im);
  addTo(matrix, n, b, b, re, im);
  addTo(matrix, n, a, b, -re, -im);
  addTo(matrix, n, b, a, -re, -im);
}

function apply(out: Row, matrix: Row, { re, im }: Row, n: number): void {
  for (let k = 0; k < n; k++) {
    let sr = 0;
    let si = 0;
    for (let l = 0; l < n; l++) {
      const mr = matrix.re[k * n + l]!;
      const mi = matrix.im[k * n + l]!;
      sr += mr * re[l]! - mi * im[l]!;
      si += mr * im[l]! + mi * re[l]!;
    }
    out.re[k] = sr;
    out.im[k] = si;
  }
}
