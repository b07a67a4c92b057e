import type { AdmittanceBranch } from './branch.ts';
import { capacitor } from './branches/capacitor.ts';
import { inductor } from './branches/inductor.ts';
import { jumper } from './branches/jumper.ts';
import { resistor } from './branches/resistor.ts';
import type { Part } from './part.ts';

/**
 * The branches that a part puts into the circuit, under the part's own id. Speakers and amplifiers have none here: what
 * they are depends on the drivers and on the amplifiers' settings.
 * @example parts.flatMap(partBranches)
 */
export function partBranches(part: Part): AdmittanceBranch[] {
  switch (part.kind) {
    case 'resistor':
      return [resistor(part.id, part.nodes, part.ohm)];
    case 'inductor':
      return [inductor(part.id, part.nodes, part)];
    case 'capacitor':
      return [capacitor(part.id, part.nodes, part)];
    case 'jumper':
      return [jumper(part.id, part.nodes)];
    case 'speaker':
    case 'amplifier':
      return [];
  }
}
