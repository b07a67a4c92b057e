import { useState } from 'react';
import { massForTuning, notchHz } from '../../../../core/design/massForTuning.ts';
import type { PassiveRadiator } from '../../../../core/document/schema.ts';
import { fieldMessage } from '../../../fields/fieldMessageText.ts';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import { figureText } from '../../figureText.ts';
import { RefusingButton } from '../../RefusingButton.tsx';

/** A tenth of a gram: finer than anybody weighs. */
const STEPS_PER_KG = 1e4;

/** Tuning and notch of a passive radiator's chamber, its stroke, and the added mass that another tuning needs. */
export function MassWish({ radiator }: { readonly radiator: PassiveRadiator }) {
  const project = useWorkbench((s) => s.project);
  const air = useWorkbench((s) => s.evaluation?.simulation.air ?? null);
  const tuningHz = useWorkbench(
    (s) => s.evaluation?.keyFigures.chambers.find(({ id }) => id === radiator.chamberId)?.tuningHz ?? null,
  );
  const system = useWorkbench((s) => s.settings.units);
  const [wishHz, setWishHz] = useState<number | null>(null);
  const hertz = (hz: number) => figureText(hz, 'frequency', system);
  const notch = `The sum has a notch at ${hertz(notchHz(radiator))}, its own resonance with what is added.`;
  if (tuningHz === null || air === null) {
    return (
      <p className="enclosure-panel-result">
        {notch} Together with other ports or radiators in this chamber it has no tuning of its own.
      </p>
    );
  }
  const wanted = wishHz ?? Math.round(tuningHz);
  const found = massForTuning(project, radiator, wanted, air);
  const addedMassKg = found?.ok ? Math.round(found.value * STEPS_PER_KG) / STEPS_PER_KG : null;
  return (
    <div className="enclosure-panel-result">
      <p>
        <b>Tuned to {hertz(tuningHz)}.</b> {notch}
      </p>
      <p>
        For
        <QuantityField
          label={`Wished tuning of ${radiator.name}`}
          kind="frequency"
          value={wanted}
          least={5}
          stepping={{ by: 'linear', step: 1 }}
          keep={setWishHz}
        />
        {addedMassKg === null ? (
          <span className="enclosure-panel-refusal">{found?.ok === false ? fieldMessage(found.problems) : ''}</span>
        ) : (
          <>
            add {figureText(addedMassKg, 'mass', system)}
            {radiator.count > 1 ? ' to each' : ''}.{' '}
            <RefusingButton command={() => ({ type: 'set-radiator', id: radiator.id, changes: { addedMassKg } })}>
              use that mass
            </RefusingButton>
          </>
        )}
      </p>
    </div>
  );
}
