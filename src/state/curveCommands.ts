import type { Command } from '../core/document/command.ts';
import type { Curve, Project } from '../core/document/schema.ts';
import { freshId } from '../core/document/start/freshId.ts';
import type { CurveChoice, PendingCurve } from './workbench.ts';

/** The edits that take waiting curves into the document: the curves, and their driver's use of them above the blend. */
export function curveCommands(project: Project, pending: PendingCurve, choice: CurveChoice): readonly Command[] {
  const added: Curve[] = [];
  pending.curves.forEach((read, k) => {
    const quantity = choice.quantities[k] ?? null;
    if (quantity === null) return;
    added.push({
      id: freshId('curve', [...project.curves, ...added]),
      name: read.name.slice(0, 160),
      belongsTo: choice.belongsTo,
      quantity,
      frequenciesHz: [...read.frequenciesHz],
      magnitudes: [...read.magnitudes],
      phasesDeg: read.phasesDeg === null ? null : [...read.phasesDeg],
      taken: choice.taken,
      sourceName: read.sourceName.slice(0, 200),
    });
  });
  const commands: Command[] = added.map((curve) => ({ type: 'add-curve', curve }));
  const { belongsTo, blendHz } = choice;
  if (belongsTo.kind !== 'driver' || blendHz === null || added.length === 0) return commands;

  const { driverId } = belongsTo;
  const present = project.drivers.find((driver) => driver.id === driverId)?.measured;
  const last = (quantity: Curve['quantity']) => added.filter((curve) => curve.quantity === quantity).at(-1)?.id;
  const measured = {
    responseCurveId: last('response') ?? present?.responseCurveId ?? null,
    impedanceCurveId: last('impedance') ?? present?.impedanceCurveId ?? null,
    blendHz,
  };
  return [...commands, { type: 'set-driver', driverId, changes: { measured } }];
}
