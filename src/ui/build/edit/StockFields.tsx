import type { Command } from '../../../core/document/command.ts';
import type { Wood } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { LengthField } from './LengthField.tsx';

type Stock = Wood['stock'];
const GRAIN = [
  { value: 'along', words: 'along the length' },
  { value: 'none', words: 'none: may be turned' },
];
const FIELDS = [
  ['lengthM', 'length', 'Board length', 0.1],
  ['widthM', 'width', 'Board width', 0.1],
  ['kerfM', 'saw cut', 'Width of the saw cut', 0],
  ['trimM', 'trimmed off each edge', 'Trimmed off each edge', 0],
] as const;
export const MOST_CABINETS = 20;

/** The boards that are bought, the saw, and how many cabinets are cut from them. */
export function StockFields({
  cabinets,
  setCabinets,
}: {
  readonly cabinets: number;
  readonly setCabinets: (cabinets: number) => void;
}) {
  const stock = useWorkbench((s) => s.project.enclosure.wood.stock);
  const set = (changes: Partial<Stock>): Command => ({
    type: 'set-wood',
    changes: { stock: { ...stock, ...changes } },
  });
  return (
    <>
      <FieldRow name="cabinets">
        <QuantityField
          label="Number of cabinets"
          kind="plain"
          value={cabinets}
          least={1}
          greatest={MOST_CABINETS}
          stepping={{ by: 'linear', step: 1 }}
          note="not part of the project"
          keep={(next) => setCabinets(Math.min(MOST_CABINETS, Math.max(1, Math.round(next))))}
        />
      </FieldRow>
      {FIELDS.map(([field, name, label, least]) => (
        <LengthField
          key={field}
          name={name}
          label={label}
          value={stock[field]}
          least={least}
          command={(next) => set({ [field]: next })}
        />
      ))}
      <ChoiceField
        name="grain"
        label="Grain of the boards"
        value={stock.grained ? 'along' : 'none'}
        choices={GRAIN}
        command={(grain) => set({ grained: grain === 'along' })}
      />
    </>
  );
}
