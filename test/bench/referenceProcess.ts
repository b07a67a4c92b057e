// What the solver is compared with, in a process of its own. Once any array buffer of an engine has been detached (growing
// WebAssembly memory does it, and so does loading hundreds of modules), every typed array there is slower by a quarter for
// good (measured), and what is compared would pay for it. Runs are timed here; handing results over is not counted.
import { Simulation } from 'eecircuit-engine';
import { plainNetlist, solveByMathjs } from './sweepByMathjs.ts';

export interface ReferenceRequest {
  readonly by: 'ngspice' | 'mathjs';
  readonly text: string;
  /** For mathjs: where to solve. */
  readonly omegas?: Float64Array;
}
export interface ReferenceReply {
  readonly ms: number;
  /** Complex values by name of the vector or node. */
  readonly vectors: ReadonlyMap<string, { readonly re: Float64Array; readonly im: Float64Array }>;
}

const simulator = new Simulation();
let started: Promise<void> | undefined;

async function byNgspice(text: string): Promise<ReferenceReply> {
  started ??= simulator.start();
  await started;
  const begun = performance.now();
  simulator.setNetList(text);
  const result = await simulator.runSim();
  const ms = performance.now() - begun;
  if (result.dataType !== 'complex') throw new Error(simulator.getError().join(' '));
  const vectors = result.data.map(({ name, values }): [string, { re: Float64Array; im: Float64Array }] => [
    name,
    { re: Float64Array.from(values, (v) => v.real), im: Float64Array.from(values, (v) => v.img) },
  ]);
  return { ms, vectors: new Map(vectors) };
}

function byMathjs(text: string, omegas: Float64Array): ReferenceReply {
  const netlist = plainNetlist(text);
  const begun = performance.now();
  const answers = Array.from(omegas, (omega) => solveByMathjs(netlist, omega));
  const ms = performance.now() - begun;
  const vectors = netlist.nodes.map((node): [string, { re: Float64Array; im: Float64Array }] => [
    node,
    {
      re: Float64Array.from(answers, (answer) => answer.get(node)!.re),
      im: Float64Array.from(answers, (answer) => answer.get(node)!.im),
    },
  ]);
  return { ms, vectors: new Map(vectors) };
}

process.on('message', async ({ by, text, omegas }: ReferenceRequest) => {
  process.send?.(by === 'ngspice' ? await byNgspice(text) : byMathjs(text, omegas!));
});
