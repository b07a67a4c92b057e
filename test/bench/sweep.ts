import {
  type Complexes,
  compileCircuit,
  type NodeSolution,
  retabulate,
  solveCircuit,
  solveInto,
  tabulateAdmittances,
} from '../../src/core/circuit/index.ts';
import type { Result } from '../../src/core/messages/problem.ts';
import { figure, type Measured } from './figure.ts';
import { openReference, type Reference } from './reference.ts';
import { median, spread } from './statistics.ts';
import { type SweepNetwork, sweepNetwork } from './sweepNetwork.ts';

const RUNS = 15;
/** Sweeps of ours in one run, since a single one is near the clock's resolution. */
const SWEEPS = 20;
/** 1002 points: the simulator chooses its own grid, ours takes it over. */
const SWEEP = '.ac dec 278 10 40000';
/** mathjs is timed on every 25th frequency and scaled: the whole sweep takes it several seconds. */
const EVERY = 25;

const need = <T>(result: Result<T>): T => {
  if (!result.ok) throw new Error(result.problems.map(({ code }) => code).join(', '));
  return result.value;
};

/**
 * The same network, points and answers by our compiled sweep, by ngspice and by mathjs: medians of interleaved runs. A
 * run of ours tabulates every part anew and gives all node voltages; a run of ngspice is its sweep with everything handed
 * over, or with four node voltages; a run of mathjs builds and solves the full matrices of the netlist that ngspice gets.
 */
export async function sweepFigures(): Promise<Measured> {
  const network = sweepNetwork();
  const [ngspice, mathjs] = [openReference(), openReference()];
  try {
    return await compare(network, ngspice, mathjs);
  } finally {
    ngspice.close();
    mathjs.close();
  }
}

async function compare(network: SweepNetwork, simulator: Reference, library: Reference): Promise<Measured> {
  const ngspice = (text: string) => simulator.ask({ by: 'ngspice', text });
  const everything = network.text(SWEEP, '');
  const own = network.text(SWEEP, saving(network.nodes));
  const four = network.text(SWEEP, saving(network.outputs));
  const { vectors } = await ngspice(everything);
  const omegas = Float64Array.from(vectors.get('frequency')!.re, (f) => 2 * Math.PI * f);

  const compiled = need(compileCircuit(network.branches));
  let solution: NodeSolution = need(solveCircuit(compiled, tabulateAdmittances(compiled, omegas)));
  // Other objects for the same branches, so that no admittance is taken over from the sweep before.
  const inTurn = [
    compiled,
    need(
      compileCircuit(
        network.branches.map((branch) => ({ ...branch })),
        compiled,
      ),
    ),
  ];
  let turn = 0;
  const sweep = (): void => {
    const circuit = inTurn[++turn % 2]!;
    solution = need(solveInto(solution, circuit, retabulate(circuit, solution.table)));
  };
  /** What an edit of one value takes: one row is tabulated anew. */
  const edited = inTurn.map(({ branches }) =>
    need(compileCircuit([...branches.slice(0, -1).map((_, i) => network.branches[i]!), branches.at(-1)!], compiled)),
  );
  const edit = (): void => {
    const circuit = edited[++turn % 2]!;
    solution = need(solveInto(solution, circuit, retabulate(circuit, solution.table)));
  };
  const someOf = Array.from({ length: Math.ceil(omegas.length / EVERY) }, (_, i) => i * EVERY);
  const someOmegas = Float64Array.from(someOf, (f) => omegas[f]!);
  const mathjs = () => library.ask({ by: 'mathjs', text: everything, omegas: someOmegas });

  for (let i = 0; i < 20 * SWEEPS; i++) {
    edit();
    sweep();
  }
  await ngspice(four);
  const { vectors: answers } = await mathjs();
  const times = { ours: [], edit: [], all: [], own: [], four: [], mathjs: [] } as Record<
    'ours' | 'edit' | 'all' | 'own' | 'four' | 'mathjs',
    number[]
  >;
  for (let run = 0; run < RUNS; run++) {
    times.edit.push(millisecondsOf(() => Array.from({ length: SWEEPS }, edit)) / SWEEPS);
    times.ours.push(millisecondsOf(() => Array.from({ length: SWEEPS }, sweep)) / SWEEPS);
    times.all.push((await ngspice(everything)).ms);
    times.own.push((await ngspice(own)).ms);
    times.four.push((await ngspice(four)).ms);
    times.mathjs.push(((await mathjs()).ms * omegas.length) / someOf.length);
  }

  const every = Array.from(omegas, (_, f) => f);
  const largest = Math.max(...network.nodes.map((node) => greatest(solution.potential(node))));
  const toNgspice = network.nodes.map((node) => {
    const theirs = vectors.get(`v(${node.toLowerCase()})`) ?? vectors.get(node.toLowerCase());
    if (theirs === undefined) throw new Error(`ngspice gave no voltage of ${node}`);
    return distance(solution.potential(node), theirs, every, every);
  });
  const toMathjs = network.nodes.map((node) => distance(solution.potential(node), answers.get(node)!, someOf, every));
  const ratio = (other: readonly number[]): number => median(other) / median(times.ours);
  const share = (differences: readonly number[]): number => Math.max(...differences) / largest;
  return {
    figures: [
      figure('sweep-vs-ngspice-all', ratio(times.all)),
      figure('sweep-vs-ngspice-four', ratio(times.four)),
      figure('sweep-vs-mathjs', ratio(times.mathjs)),
      figure('sweep-difference', share([...toNgspice, ...toMathjs])),
    ],
    notes: [
      `demo (a)'s crossover: ${network.partCount} parts, its drivers as R-L-C (no box, core loss or semi-inductance); ` +
        `${network.branches.length} branches, ${compiled.unknownCount} unknown nodes, ${omegas.length} frequencies`,
      `ours, all parts tabulated anew, all node voltages: ${spread(times.ours, 'ms')} of ${SWEEPS}`,
      `ours with one value changed, the other admittances kept: ${spread(times.edit, 'ms')}`,
      `ngspice, everything handed over (${vectors.size} vectors): ${spread(times.all, 'ms')}`,
      `ngspice, the ${network.nodes.length} nodes of the network saved: ${spread(times.own, 'ms')}, ` +
        `${ratio(times.own).toFixed(0)} times`,
      `ngspice, four node voltages saved: ${spread(times.four, 'ms')}`,
      `mathjs, ngspice's netlist (${answers.size + 1} unknowns), matrices built, every ${EVERY}th frequency and ` +
        `scaled: ${spread(times.mathjs, 'ms')}`,
      `largest difference to ngspice ${share(toNgspice).toExponential(1)}, to mathjs ` +
        `${share(toMathjs).toExponential(1)} of the largest node voltage, ${largest.toFixed(2)} V`,
    ],
  };
}

const saving = (nodes: readonly string[]): string => `.save ${nodes.map((node) => `v(${node})`).join(' ')}`;

function millisecondsOf(run: () => unknown): number {
  const started = performance.now();
  run();
  return performance.now() - started;
}

const greatest = ({ re, im }: Complexes): number => re.reduce((most, x, f) => Math.max(most, Math.hypot(x, im[f]!)), 0);

/** Greatest distance between two lists of complex numbers, the first read at `at`, the second in its own order. */
const distance = (a: Complexes, b: Complexes, at: readonly number[], own: readonly number[]): number =>
  Math.max(...at.map((f, i) => Math.hypot(a.re[f]! - b.re[own[i]!]!, a.im[f]! - b.im[own[i]!]!)));
