import type { Command } from '../../../../core/document/command.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import { type Footprint, keepOnBaffle } from '../keepOnBaffle.ts';

const FACES = [
  { value: 'front', words: 'front' },
  { value: 'back', words: 'back' },
];

export interface Place {
  readonly face: 'front' | 'back';
  readonly xM: number;
  readonly yM: number;
}

/** Where a thing sits: on which face, how far across, how high. It stays on its panel. */
export function PlaceFields({
  of,
  place,
  footprint,
  set,
}: {
  readonly of: string;
  readonly place: Place;
  readonly footprint: Footprint;
  readonly set: (place: Place) => Command;
}) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const { face, xM, yM } = place;
  const at = (next: { readonly xM: number; readonly yM: number }) =>
    set({ face, ...keepOnBaffle(next, footprint, enclosure) });
  return (
    <>
      <ChoiceField
        name="sits on the"
        label={`Face of ${of}`}
        value={face}
        choices={FACES}
        command={(next) => set({ face: next as Place['face'], xM, yM })}
      />
      <FieldRow name="across">
        <QuantityField
          label={`Place of ${of} across, right of the middle`}
          kind="length"
          metricUnit="mm"
          value={xM}
          note="right of the middle"
          command={(next) => at({ xM: next, yM })}
        />
      </FieldRow>
      <FieldRow name="up">
        <QuantityField
          label={`Height of ${of}`}
          kind="length"
          metricUnit="mm"
          value={yM}
          note="from the bottom"
          command={(next) => at({ xM, yM: next })}
        />
      </FieldRow>
    </>
  );
}
