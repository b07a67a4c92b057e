import type { ReactNode } from 'react';
import type { Part } from '../../../core/circuit/part.ts';
import type { Command, PartValues } from '../../../core/document/command.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { AmplifierValues } from './AmplifierValues.tsx';
import { PartValue } from './PartValue.tsx';

/** Name, values and note of a part: what the drawing shows and what it does not. */
export function PartOtherValues({ part }: { readonly part: Part }) {
  const set = (changes: PartValues): Command => ({ type: 'set-part', partId: part.id, changes });
  return (
    <div className="part-sheet-values">
      <FieldRow name="name">
        <TextField
          label={`Name of ${part.id}`}
          value={part.id}
          longest={24}
          command={(to) => ({ type: 'rename-part', partId: part.id, to })}
        />
      </FieldRow>
      <KindValues part={part} set={set} />
      <FieldRow name="note">
        <TextField label={`Note on ${part.id}`} value={part.note} longest={200} command={(note) => set({ note })} />
      </FieldRow>
    </div>
  );
}

function KindValues({ part, set }: { readonly part: Part; readonly set: (changes: PartValues) => Command }): ReactNode {
  const drivers = useWorkbench((s) => s.project.drivers);
  switch (part.kind) {
    case 'resistor':
      return (
        <>
          <FieldRow name="resistance">
            <PartValue part={part} />
          </FieldRow>
          <FieldRow name="rated power">
            <QuantityField
              label={`Rated power of ${part.id}`}
              kind="power"
              value={part.ratedPowerW}
              command={(ratedPowerW) => set({ ratedPowerW })}
              clear={() => set({ ratedPowerW: null })}
            />
          </FieldRow>
        </>
      );
    case 'capacitor':
      return (
        <>
          <FieldRow name="capacitance">
            <PartValue part={part} />
          </FieldRow>
          <FieldRow name="series, ESR">
            <QuantityField
              label={`ESR of ${part.id}`}
              kind="resistance"
              stepping={{ by: 'linear', step: 0.01 }}
              least={0}
              value={part.esrOhm}
              command={(esrOhm) => set({ esrOhm })}
            />
          </FieldRow>
        </>
      );
    case 'inductor':
      return (
        <>
          <FieldRow name="inductance">
            <PartValue part={part} />
          </FieldRow>
          <FieldRow name="winding, DCR">
            <QuantityField
              label={`DCR of ${part.id}`}
              kind="resistance"
              stepping={{ by: 'linear', step: 0.01 }}
              least={0}
              value={part.dcrOhm}
              command={(dcrOhm) => set({ dcrOhm })}
            />
          </FieldRow>
          <FieldRow
            name="core tan δ"
            about="Core loss tangent: the share of the coil’s reactance that its core turns into heat, as a resistance in series"
          >
            <QuantityField
              label={`Core loss tangent of ${part.id}`}
              kind="plain"
              stepping={{ by: 'linear', step: 0.001 }}
              least={0}
              value={part.coreLossTangent}
              note="0 for an air coil"
              command={(coreLossTangent) => set({ coreLossTangent })}
            />
          </FieldRow>
        </>
      );
    case 'speaker':
      return (
        <ChoiceField
          name="driver"
          label={`Driver of ${part.id}`}
          value={part.driverId}
          choices={drivers.map((driver) => ({ value: driver.id, words: driver.name }))}
          command={(driverId) => set({ driverId })}
        />
      );
    case 'amplifier':
      return <AmplifierValues id={part.id} />;
    default:
      return null;
  }
}
