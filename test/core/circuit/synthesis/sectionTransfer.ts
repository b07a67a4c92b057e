import { type Part, partBranches, resistor, type Section, source } from '../../../../src/core/circuit/index.ts';
import { solved } from '../solved.ts';

/** Response of a section between 1 V and a load resistance, by the circuit solver. */
export function sectionTransfer(section: Section, loadOhm: number, omegas: Float64Array) {
  const nodes = new Set(section.parts.flatMap((part: Part) => part.nodes));
  const input = nodes.has('@in') ? '@in' : '@out';
  return solved(
    [
      source('V1', [input, '0'], 1, 0),
      ...section.parts.flatMap(partBranches),
      resistor('load', ['@out', '0'], loadOhm),
    ],
    omegas,
  );
}
