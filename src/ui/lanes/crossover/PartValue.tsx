import type { Part } from '../../../core/circuit/part.ts';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { figureText } from '../figureText.ts';

/** The value of a resistor, capacitor or coil, edited where it stands; nothing for other parts. */
export function PartValue({ part }: { readonly part: Part }) {
  const system = useWorkbench((s) => s.settings.units);
  const partId = part.id;
  switch (part.kind) {
    case 'resistor':
      return (
        <QuantityField
          label={`${partId} resistance`}
          kind="resistance"
          value={part.ohm}
          note={part.ratedPowerW === null ? '' : `rated ${figureText(part.ratedPowerW, 'power', system)}`}
          command={(ohm) => ({ type: 'set-part', partId, changes: { ohm } })}
        />
      );
    case 'capacitor':
      return (
        <QuantityField
          label={`${partId} capacitance`}
          kind="capacitance"
          value={part.farad}
          command={(farad) => ({ type: 'set-part', partId, changes: { farad } })}
        />
      );
    case 'inductor':
      return (
        <QuantityField
          label={`${partId} inductance`}
          kind="inductance"
          value={part.henry}
          note={`DCR ${figureText(part.dcrOhm, 'resistance', system)}`}
          command={(henry) => ({ type: 'set-part', partId, changes: { henry } })}
        />
      );
    default:
      return null;
  }
}
