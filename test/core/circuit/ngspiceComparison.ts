import { expect, vi } from 'vitest';
import type { Branch } from '../../../src/core/circuit/index.ts';
import { greatestPotential, solved } from './solved.ts';

// Independent computation: the general-purpose circuit simulator ngspice 45.2, compiled to WebAssembly. It is started
// once for each file that compares with it.

/**
 * Greatest difference of any potential, relative to the greatest of its node, or to 1/1000 of the greatest of all.
 * `among`: these nodes alone.
 */
export type Comparison = (branches: readonly Branch[], text: string, among?: readonly string[]) => Promise<number>;

/**
 * What ngspice says while it looks for the direct-current operating point, which a loop of lossless coils or a node
 * between capacitors leaves open. A linear circuit's sweep does not use it; every other message fails the test.
 */
const OPERATING_POINT = /^$|singular matrix|gmin stepping|source stepping|Transient op (started|finished successfully)/;

export const netlist = (lines: readonly string[], sweep = '.ac dec 12 5 40000'): string =>
  ['comparison', ...lines, sweep, '.end', ''].join('\n');

interface Run {
  readonly omegas: Float64Array;
  readonly potentials: ReadonlyMap<string, { re: Float64Array; im: Float64Array }>;
}

/** Starts ngspice and gives what compares a circuit of ours with a netlist, at the frequencies that ngspice chooses. */
export async function comparisonWithNgspice(): Promise<Comparison> {
  // The package repeats on the console what `getError` returns.
  vi.spyOn(console, 'warn').mockImplementation(() => {});
  vi.spyOn(console, 'error').mockImplementation(() => {});
  const { Simulation } = await import('eecircuit-engine');
  const simulator = new Simulation();
  await simulator.start();

  /** Runs a netlist in ngspice; its own frequencies come back with the potentials. */
  const simulate = async (text: string): Promise<Run> => {
    simulator.setNetList(text);
    const result = await simulator.runSim();
    expect(simulator.getError().filter((line) => !OPERATING_POINT.test(line))).toEqual([]);
    if (result.dataType !== 'complex') throw new Error('ngspice gave no complex results');
    const columns = new Map(result.data.map((column) => [column.name, column.values]));
    const frequencies = result.data[0]!.values;
    const potentials = new Map<string, { re: Float64Array; im: Float64Array }>();
    for (const [name, values] of columns) {
      const node = /^v\((.*)\)$/.exec(name)?.[1] ?? (/^[a-z0-9_]+$/.test(name) ? name : undefined);
      if (node === undefined) continue;
      potentials.set(node, {
        re: Float64Array.from(values, (v) => v.real),
        im: Float64Array.from(values, (v) => v.img),
      });
    }
    return { omegas: Float64Array.from(frequencies, (v) => 2 * Math.PI * v.real), potentials };
  };

  return async (branches, text, among) => {
    const run = await simulate(text);
    const solution = solved(branches, run.omegas);
    const least = greatestPotential(solution, solution.compiled.nodes) / 1000;
    let worst = 0;
    for (const node of among ?? solution.compiled.nodes) {
      const scale = Math.max(least, greatestPotential(solution, [node]));
      const ours = solution.potential(node);
      const theirs = run.potentials.get(node.toLowerCase());
      if (theirs === undefined) throw new Error(`ngspice gave no potential of ${node}`);
      for (let f = 0; f < ours.re.length; f++) {
        worst = Math.max(worst, Math.hypot(ours.re[f]! - theirs.re[f]!, ours.im[f]! - theirs.im[f]!) / scale);
      }
    }
    return worst;
  };
}
