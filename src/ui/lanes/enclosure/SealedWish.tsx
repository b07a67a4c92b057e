import { useState } from 'react';
import { sealedWishFor } from '../../../core/design/sealedWishFor.ts';
import type { Chamber } from '../../../core/document/schema.ts';
import { fieldMessage } from '../../fields/fieldMessageText.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';

/** Maximally flat second-order response: where most people begin. */
const FLAT_QTC = Math.SQRT1_2;

/** For a sealed chamber: the volume that a wished Qtc needs. */
export function SealedWish({ chamber }: { readonly chamber: Chamber }) {
  const project = useWorkbench((s) => s.project);
  const sealed = useWorkbench(
    (s) => s.evaluation?.keyFigures.chambers.find((figure) => figure.id === chamber.id)?.sealed ?? null,
  );
  const system = useWorkbench((s) => s.settings.units);
  const [qtc, setQtc] = useState(FLAT_QTC);
  if (sealed === null) return null;
  const found = sealedWishFor(project, chamber, qtc);
  if (found === null) return null;
  const sized = found.ok ? found.value.sized : null;
  return (
    <p className="enclosure-panel-result">
      For a Qtc of
      <QuantityField
        label={`Wished Qtc of ${chamber.name}`}
        kind="plain"
        value={qtc}
        least={0.3}
        greatest={3}
        keep={setQtc}
      />
      {found.ok ? (
        <>
          it takes {figureText(found.value.netM3, 'volume', system)} net.{' '}
          {sized?.ok ? (
            <RefusingButton
              command={() => ({ type: 'set-chamber', id: chamber.id, changes: { volume: sized.value.volume } })}
            >
              use that volume
            </RefusingButton>
          ) : (
            <span className="enclosure-panel-refusal">{fieldMessage(sized?.problems ?? [])}</span>
          )}
        </>
      ) : (
        <span className="enclosure-panel-refusal">{fieldMessage(found.problems)}</span>
      )}
    </p>
  );
}
