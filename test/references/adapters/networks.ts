import {
  angularFrequency,
  type Complexes,
  compileCircuit,
  inputImpedance,
  parseNetlist,
  partBranches,
  solveCircuit,
  source,
  tabulateAdmittances,
} from '../../../src/core/circuit/index.ts';
import type { Adapter } from '../adapter.ts';
import { angleDeg, asNumbers, asText, dbOfAmplitude, magnitude, ratio } from '../convert.ts';

/** The case says in words where the source and the output are. */
const WORDS = /ideal ([\d.]+) V at node '([^']+)'; output node '([^']+)'/;

const pointsOf = ({ re, im }: Complexes): { re: number; im: number }[] =>
  Array.from(re, (x, f) => ({ re: x, im: im[f]! }));

const network: Adapter = {
  family: 'net',
  requires: ['netlist', 'source', 'f_Hz'],
  run: ({ netlist, source: words, f_Hz }) => {
    const match = WORDS.exec(asText(words));
    if (match === null) throw new TypeError(`not understood: ${asText(words)}`);
    const [, volt = '', input = '', output = ''] = match;
    const lines = Array.isArray(netlist) ? netlist.map(asText) : [asText(netlist)];
    const parts = parseNetlist(lines.join('\n'));
    if (!parts.ok) throw new Error(JSON.stringify(parts.problems));
    const compiled = compileCircuit([
      source('V1', [input, '0'], Number(volt), 0),
      ...parts.value.flatMap((part) => partBranches(part)),
    ]);
    if (!compiled.ok) throw new Error(JSON.stringify(compiled.problems));
    const omegas = Float64Array.from(asNumbers(f_Hz), angularFrequency);
    const solution = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
    if (!solution.ok) throw new Error(JSON.stringify(solution.problems));
    const transfer = pointsOf(solution.value.potential(output));
    const impedance = pointsOf(inputImpedance(solution.value, 'V1'));
    return {
      H_dB: transfer.map((h) => dbOfAmplitude(ratio(magnitude(h), Number(volt)))),
      H_phase_deg: transfer.map(angleDeg),
      Zin_mag_ohm: impedance.map(magnitude),
      Zin_phase_deg: impedance.map(angleDeg),
    };
  },
};

export const adapters: readonly Adapter[] = [network];
