import type { Command } from '../../../core/document/command.ts';
import type { Wood } from '../../../core/document/schema.ts';
import { quantityText } from '../../../core/units/formatQuantity.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { showInField } from '../../fields/showInField.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { LengthField } from './LengthField.tsx';

const PANELS = [
  ['frontM', 'front'],
  ['backM', 'back'],
  ['leftM', 'left side'],
  ['rightM', 'right side'],
  ['topM', 'top'],
  ['bottomM', 'bottom'],
] as const;
const JOINTS = [
  { value: 'butt', words: 'butt' },
  { value: 'mitre', words: 'mitre' },
  { value: 'rebate', words: 'rebate' },
];
const THROUGH = [
  { value: 'sides', words: 'the sides' },
  { value: 'top-and-bottom', words: 'top and bottom' },
];
const LEAST_M = 0.001;

/** Thickness of each panel, how they are joined, and the shape of the cabinet. */
export function PanelFields() {
  const { wood, panelM, widthM } = useWorkbench((s) => s.project.enclosure);
  const system = useWorkbench((s) => s.settings.units);
  const set = (changes: Partial<Wood>): Command => ({ type: 'set-wood', changes });
  const text = (m: number): string => quantityText(showInField(m, 'length', system, 'mm'));
  return (
    <>
      <LengthField
        name="panels"
        label="Panel thickness"
        value={panelM}
        least={LEAST_M}
        command={(next) => ({ type: 'set-enclosure', changes: { panelM: next } })}
      />
      {PANELS.map(([field, name]) => (
        <LengthField
          key={field}
          name={name}
          label={`Thickness of the ${name}`}
          value={wood[field]}
          absent={`as panels, ${text(panelM)}`}
          note="empty: as the panels"
          least={LEAST_M}
          command={(next) => set({ [field]: next })}
          clear={() => set({ [field]: null })}
        />
      ))}
      <ChoiceField
        name="joint"
        value={wood.joint}
        choices={JOINTS}
        command={(joint) => set({ joint: joint as Wood['joint'] })}
      />
      {wood.joint === 'mitre' ? null : (
        <ChoiceField
          name="running through"
          value={wood.through}
          choices={THROUGH}
          command={(through) => set({ through: through as Wood['through'] })}
        />
      )}
      {wood.joint === 'rebate' ? (
        <LengthField
          name="depth of the rebate"
          label="Depth of the rebate"
          value={wood.rebateM}
          least={0}
          note="half the panel is usual"
          command={(rebateM) => set({ rebateM })}
        />
      ) : null}
      <FieldRow name="front leans back by">
        <QuantityField
          label="Lean of the front"
          kind="angle"
          value={wood.frontLeanDeg}
          least={0}
          greatest={30}
          note="from upright, 30° at most"
          command={(frontLeanDeg) => set({ frontLeanDeg })}
        />
      </FieldRow>
      <LengthField
        name="width at the back"
        label="Width at the back"
        value={wood.backWidthM}
        absent={`as the front, ${text(widthM)}`}
        note="empty: as the front"
        least={0.02}
        command={(backWidthM) => set({ backWidthM })}
        clear={() => set({ backWidthM: null })}
      />
    </>
  );
}
