import { type Problem, problem } from '../../messages/problem.ts';
import type { Design } from '../design.ts';
import type { Curve } from '../schema.ts';

/** Drivers of a design that refer to curves which are not there, are of the other quantity or belong to something else. */
export function curveReferences({ drivers }: Design, curves: readonly Curve[]): Problem[] {
  const problems: Problem[] = [];
  for (const { id, measured } of drivers) {
    if (measured === null) continue;
    const wanted = [
      ['response', measured.responseCurveId],
      ['impedance', measured.impedanceCurveId],
    ] as const;
    for (const [quantity, curveId] of wanted) {
      if (curveId === null) continue;
      const curve = curves.find((candidate) => candidate.id === curveId);
      const place = { kind: 'driver', id, field: `measured.${quantity}CurveId` } as const;
      if (!curve) problems.push(problem('document.curve-missing', place, { curveId }));
      else if (curve.quantity !== quantity) {
        const values = { curveId, wanted: quantity, quantity: curve.quantity };
        problems.push(problem('document.curve-quantity', place, values));
      } else if (curve.belongsTo.kind !== 'driver' || curve.belongsTo.driverId !== id) {
        problems.push(problem('document.curve-owner', place, { curveId }));
      }
    }
  }
  return problems;
}
