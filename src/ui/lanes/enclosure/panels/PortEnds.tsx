import type { Command } from '../../../../core/document/command.ts';
import { portName } from '../../../../core/document/describe/portName.ts';
import type { Port } from '../../../../core/document/schema.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';

const OUTSIDE = '(outside)';
type Changes = Partial<Omit<Port, 'id'>>;

/** Where a port leads, how its ends are rounded, how often it bends, what is stuffed into it, and whether it rings. */
export function PortEnds({ port, set }: { readonly port: Port; readonly set: (changes: Changes) => Command }) {
  const chambers = useWorkbench((s) => s.project.enclosure.chambers);
  const of = portName(port.id);
  const flare = (name: string, key: 'innerFlareM' | 'outerFlareM') => (
    <FieldRow name={name} about="Radius of a quarter-round at this end, within the length; 0 is a sharp edge">
      <QuantityField
        label={`${name} of ${of}`}
        kind="length"
        metricUnit="mm"
        value={port[key]}
        least={0}
        note="radius; 0 is a sharp edge"
        command={(next) => set({ [key]: next })}
      />
    </FieldRow>
  );
  return (
    <>
      <ChoiceField
        name="leads to"
        label={`Other end of ${of}`}
        value={port.toChamberId ?? OUTSIDE}
        choices={[
          { value: OUTSIDE, words: 'outside' },
          ...chambers
            .filter(({ id }) => id !== port.chamberId)
            .map((chamber) => ({ value: chamber.id, words: chamber.name })),
        ]}
        command={(id) => set({ toChamberId: id === OUTSIDE ? null : id })}
      />
      {flare('rounding inside', 'innerFlareM')}
      {flare('rounding outside', 'outerFlareM')}
      <FieldRow name="bends" about="Right-angled; each adds a little to the acoustic length">
        <QuantityField
          label={`Bends of ${of}`}
          kind="plain"
          stepping={{ by: 'linear', step: 1 }}
          value={port.bends}
          least={0}
          greatest={4}
          note="right-angled ones"
          command={(bends) => set({ bends: Math.round(bends) })}
        />
      </FieldRow>
      <FieldRow
        name="stuffing"
        about="Flow resistivity of fibre or felt in the bore: it turns the port from a mass into a resistance, an aperiodic vent"
      >
        <QuantityField
          label={`Stuffing of ${of}, flow resistivity`}
          kind="flow-resistivity"
          value={port.stuffingPaSPerM2 === 0 ? null : port.stuffingPaSPerM2}
          absent="none"
          command={(stuffingPaSPerM2) => set({ stuffingPaSPerM2 })}
          clear={() => set({ stuffingPaSPerM2: 0 })}
          note="felt and dense wool: 5 to 50 kPa·s/m² (from memory)"
        />
      </FieldRow>
      <ChoiceField
        name="resonances"
        label={`Pipe resonances of ${of}`}
        value={port.resonances ? 'on' : 'off'}
        choices={[
          { value: 'on', words: 'computed' },
          { value: 'off', words: 'left out' },
        ]}
        command={(value) => set({ resonances: value === 'on' })}
      />
    </>
  );
}
