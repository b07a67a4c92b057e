import { FILL_MATERIALS } from '../../../../core/acoustics/fill/fillMaterials.ts';
import type { Command } from '../../../../core/document/command.ts';
import type { Filling } from '../../../../core/document/schema.ts';
import { quantityText } from '../../../../core/units/formatQuantity.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { showInField } from '../../../fields/showInField.ts';
import { useWorkbench } from '../../../useWorkbench.ts';

const MATERIAL: Readonly<Record<Filling['material'], string>> = {
  'polyester-wadding': 'polyester',
  'long-fibre-wool': 'long wool',
  'glass-wool': 'glass wool',
  'open-cell-foam': 'foam',
};
const PLACINGS = [
  { value: 'stuffed', words: 'stuffed' },
  { value: 'lined', words: 'lining' },
];
/** Nothing lets less air through than still counts as a filling, and the most is felt. */
const LEAST_SHARE = 0.01;

/** The usual amount of a material, its flow resistivity left to the estimate. */
export const usualFilling = (material: Filling['material']): Filling => ({
  material,
  densityKgPerM3: materialOf(material).bulkDensityKgPerM3.usual,
  flowResistivityPaSPerM2: null,
  placing: { kind: 'stuffed', share: 0.5 },
});

const materialOf = (id: Filling['material']) => FILL_MATERIALS.find((material) => material.id === id)!;

/** Material, amount, place and flow resistivity of what is put into a chamber or a line. */
export function FillingFields({
  of,
  filling,
  set,
  canLine = true,
}: {
  readonly of: string;
  readonly filling: Filling;
  readonly set: (filling: Filling) => Command;
  /** Whether it may lie on the walls alone. */
  readonly canLine?: boolean;
}) {
  const system = useWorkbench((s) => s.settings.units);
  const material = materialOf(filling.material);
  const { least, most } = material.bulkDensityKgPerM3;
  const estimate = material.resistivityPaSPerM2(filling.densityKgPerM3);
  const { placing } = filling;
  return (
    <>
      <ChoiceField
        name="material"
        label={`Material of the filling in ${of}`}
        value={filling.material}
        choices={FILL_MATERIALS.map(({ id }) => ({ value: id, words: MATERIAL[id] }))}
        command={(id) => set({ ...usualFilling(id as Filling['material']), placing })}
      />
      {canLine ? (
        <ChoiceField
          name="placed"
          label={`Place of the filling in ${of}`}
          value={placing.kind}
          choices={PLACINGS}
          command={(kind) => set({ ...filling, placing: placingOf(kind, placing) })}
        />
      ) : null}
      {placing.kind === 'stuffed' ? (
        <FieldRow name="share that is filled">
          <QuantityField
            label={`Filled share of ${of}`}
            kind="ratio"
            value={placing.share}
            least={LEAST_SHARE}
            greatest={1}
            command={(share) => set({ ...filling, placing: { kind: 'stuffed', share } })}
          />
        </FieldRow>
      ) : (
        <FieldRow name="thickness">
          <QuantityField
            label={`Thickness of the lining in ${of}`}
            kind="length"
            metricUnit="mm"
            value={placing.thicknessM}
            least={0.001}
            command={(thicknessM) => set({ ...filling, placing: { kind: 'lined', thicknessM } })}
          />
        </FieldRow>
      )}
      <FieldRow name="density, kg/m³">
        <QuantityField
          label={`Density of the filling in ${of}, kilograms per cubic metre`}
          kind="plain"
          value={filling.densityKgPerM3}
          least={1}
          stepping={{ by: 'digit' }}
          note={`kg per m³ of filled space; usual ${least} to ${most} (from memory)`}
          command={(densityKgPerM3) => set({ ...filling, densityKgPerM3 })}
        />
      </FieldRow>
      <FieldRow
        name="resistivity"
        about="Flow resistivity: how hard it is to press air through a metre of it; estimated from material and density, within a factor of two, unless you know it"
      >
        <QuantityField
          label={`Flow resistivity of the filling in ${of}`}
          kind="flow-resistivity"
          value={filling.flowResistivityPaSPerM2}
          absent={`about ${quantityText(showInField(estimate, 'flow-resistivity', system))}`}
          command={(flowResistivityPaSPerM2) => set({ ...filling, flowResistivityPaSPerM2 })}
          clear={() => set({ ...filling, flowResistivityPaSPerM2: null })}
        />
      </FieldRow>
    </>
  );
}

function placingOf(kind: string, placing: Filling['placing']): Filling['placing'] {
  if (kind === placing.kind) return placing;
  return kind === 'lined' ? { kind: 'lined', thicknessM: 0.03 } : { kind: 'stuffed', share: 0.5 };
}

/** How to put it in, and what to wear. */
export function FillingAdvice({ material }: { readonly material: Filling['material'] }) {
  return (
    <>
      Cut it to fit round a brace and let friction hold it, clear of port and cone (common practice, no source).
      {material === 'glass-wool' ? (
        <b> Glass and mineral wool: gloves and mask; wrap it so that no fibres come out of the port.</b>
      ) : null}
    </>
  );
}
