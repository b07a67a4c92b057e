import type { Command } from '../../../core/document/command.ts';
import type { Chain } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';

type HighPass = NonNullable<Chain['amplifiers'][number]['highPass']>;
type Slope = Pick<HighPass, 'shape' | 'order'>;

/** A Linkwitz-Riley filter is a Butterworth one twice, so that its order is even. */
const SLOPES: readonly Slope[] = [
  ...([1, 2, 3, 4] as const).map((order): Slope => ({ shape: 'butterworth', order })),
  ...([2, 4] as const).map((order): Slope => ({ shape: 'linkwitz-riley', order })),
];
const NONE = 'none';
const START_HZ = 80;

const keyOf = ({ shape, order }: Slope): string => `${shape} ${order}`;
const NAMES = { butterworth: 'Butterworth', 'linkwitz-riley': 'Linkwitz-Riley' };
const ORDERS = ['', '1st', '2nd', '3rd', '4th'];
const CHOICES = [
  { value: NONE, words: 'none' },
  ...SLOPES.map((slope) => ({
    value: keyOf(slope),
    words: `${NAMES[slope.shape]} ${ORDERS[slope.order]}, ${6 * slope.order} dB/oct`,
  })),
];

/** The active high-pass before an amplifier: shape and order as one choice of those that exist, and its corner. */
export function HighPassFields({
  id,
  highPass,
  set,
}: {
  readonly id: string;
  readonly highPass: HighPass | null;
  readonly set: (highPass: HighPass | null) => Command;
}) {
  return (
    <>
      <ChoiceField
        name="active high-pass"
        label={`Active high-pass before ${id}`}
        value={highPass === null ? NONE : keyOf(highPass)}
        choices={CHOICES}
        command={(key) => {
          const slope = SLOPES.find((candidate) => keyOf(candidate) === key);
          return set(slope === undefined ? null : { ...slope, cornerHz: highPass?.cornerHz ?? START_HZ });
        }}
      />
      {highPass === null ? null : (
        <FieldRow name="its corner" about="−3 dB of a Butterworth filter, −6 dB of a Linkwitz-Riley one">
          <QuantityField
            label={`Corner of the active high-pass before ${id}`}
            kind="frequency"
            stepping={{ by: 'linear', step: 1 }}
            least={5}
            greatest={20000}
            value={highPass.cornerHz}
            command={(cornerHz) => set({ ...highPass, cornerHz })}
          />
        </FieldRow>
      )}
      <p className="part-sheet-hint">
        Small speakers with subwoofers below them get an active high-pass at 80 to 100 Hz: their cones then move less
        and distort less (common practice, no source).
      </p>
    </>
  );
}
