import type { Command } from '../../../core/document/command.ts';
import type { Chain } from '../../../core/document/schema.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { HighPassFields } from './HighPassFields.tsx';

type Amplifier = Chain['amplifiers'][number];

/** What is known of an amplifier channel: resistances, what it can give at most, and the active high-pass before it. */
export function AmplifierValues({ id }: { readonly id: string }) {
  const amplifier = useWorkbench((s) => s.project.chain.amplifiers.find((candidate) => candidate.id === id));
  if (!amplifier) return null;
  const set = (changes: Partial<Omit<Amplifier, 'id'>>): Command => ({ type: 'set-amplifier', id, changes });
  const resistance = (
    name: string,
    key: 'outputResistanceOhm' | 'cableOhm' | 'ratedMinimumLoadOhm',
    step: number,
    least: number,
  ) => (
    <FieldRow name={name}>
      <QuantityField
        label={`${name} of ${id}`}
        kind="resistance"
        stepping={{ by: 'linear', step }}
        least={least}
        value={amplifier[key]}
        command={(ohm) => set({ [key]: ohm })}
      />
    </FieldRow>
  );
  const peak = (name: string, key: 'peakVoltageV' | 'peakCurrentA', kind: 'voltage' | 'current') => (
    <FieldRow name={name} about="What it gives at most, before it clips; peak, not rms">
      <QuantityField
        label={`greatest ${name} of ${id}`}
        kind={kind}
        value={amplifier[key]}
        command={(value) => set({ [key]: value })}
        clear={() => set({ [key]: null })}
      />
    </FieldRow>
  );
  return (
    <>
      {resistance('output resistance', 'outputResistanceOhm', 0.01, 0)}
      {resistance('cable, both ways', 'cableOhm', 0.01, 0)}
      {resistance('rated minimum load', 'ratedMinimumLoadOhm', 1, 0.5)}
      {peak('peak voltage', 'peakVoltageV', 'voltage')}
      {peak('peak current', 'peakCurrentA', 'current')}
      <HighPassFields id={id} highPass={amplifier.highPass} set={(highPass) => set({ highPass })} />
    </>
  );
}
