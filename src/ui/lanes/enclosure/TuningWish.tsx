import { useState } from 'react';
import { lengthForTuning } from '../../../core/design/lengthForTuning.ts';
import { portName } from '../../../core/document/describe/portName.ts';
import type { Port } from '../../../core/document/schema.ts';
import { quantityText } from '../../../core/units/formatQuantity.ts';
import { fieldMessage } from '../../fields/fieldMessageText.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { showInField } from '../../fields/showInField.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';

/** The tuning of a port's chamber, and the length that another tuning would need. */
export function TuningWish({ port }: { readonly port: Port }) {
  const project = useWorkbench((s) => s.project);
  const soundSpeed = useWorkbench((s) => s.evaluation?.simulation.air.soundSpeedMPerS ?? null);
  const tuningHz = useWorkbench(
    (s) => s.evaluation?.keyFigures.chambers.find((chamber) => chamber.id === port.chamberId)?.tuningHz ?? null,
  );
  const system = useWorkbench((s) => s.settings.units);
  const [wishHz, setWishHz] = useState<number | null>(null);
  if (tuningHz === null || soundSpeed === null) return null;
  const wanted = wishHz ?? Math.round(tuningHz);
  const found = lengthForTuning(project, port, wanted, soundSpeed);
  if (found === null) {
    return (
      <p className="enclosure-panel-result">Tuned to {figureText(tuningHz, 'frequency', system)} by all its ports.</p>
    );
  }
  const millimetres = found.ok ? Math.max(1, Math.round(found.value * 1000)) / 1000 : null;
  return (
    <p className="enclosure-panel-result">
      <b>Tuned to {figureText(tuningHz, 'frequency', system)}.</b> For
      <QuantityField
        label={`Wished tuning of ${portName(port.id)}`}
        kind="frequency"
        value={wanted}
        least={5}
        stepping={{ by: 'linear', step: 1 }}
        keep={setWishHz}
      />
      {millimetres === null ? (
        <span className="enclosure-panel-refusal">{found.ok ? '' : fieldMessage(found.problems)}</span>
      ) : (
        <>
          it takes {quantityText(showInField(millimetres, 'length', system, 'mm'))}.{' '}
          <RefusingButton command={() => ({ type: 'set-port', id: port.id, changes: { lengthM: millimetres } })}>
            use that length
          </RefusingButton>
        </>
      )}
    </p>
  );
}
