import fc from 'fast-check';
import { expect, it } from 'vitest';
import { circuitView } from '../../../src/core/schematic/circuitView.ts';
import { compose } from '../../../src/core/schematic/compose.ts';
import { tabulate } from '../../../src/core/schematic/tabulate.ts';
import { wireUp } from '../../../src/core/schematic/wireUp.ts';
import { anyParts } from './anyParts.ts';
import { faultsOf } from './faultsOf.ts';

it('the table of parts draws any network without a fault (seed 20250617)', () => {
  fc.assert(
    fc.property(anyParts(20), (parts) => {
      const view = circuitView(parts);
      const plan = wireUp(parts, tabulate(view, compose(view, [])));
      expect(plan).not.toBeNull();
      expect(faultsOf(parts, plan!)).toEqual([]);
    }),
    { seed: 20250617, numRuns: 100 },
  );
});
