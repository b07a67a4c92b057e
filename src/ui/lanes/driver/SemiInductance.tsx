import type { Command } from '../../../core/document/command.ts';
import type { Driver, DriverEntered } from '../../../core/document/schema.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';

const USUAL_EXPONENT = 0.6;

/** Semi-inductance of the coil, Z = K (jω)^n in series with Re and Le: both of its numbers, or none. */
export function SemiInductance({
  driver,
  enter,
  leaveOut,
}: {
  readonly driver: Driver;
  readonly enter: (changes: DriverEntered) => Command;
  readonly leaveOut: () => Command;
}) {
  const { semiInductance } = driver.entered;
  return (
    <>
      <FieldRow
        about="Eddy currents in the iron make the coil’s impedance rise more slowly than an inductance would: by K (jω)^n"
        name={
          <>
            <b>K</b> semi-inductance
          </>
        }
      >
        <QuantityField
          label={`Semi-inductance K of ${driver.name}`}
          kind="plain"
          stepping={{ by: 'digit' }}
          value={semiInductance?.kOhmSn ?? null}
          note="Z = K (jω)^n, in Ω sⁿ"
          command={(kOhmSn) =>
            enter({ semiInductance: { kOhmSn, exponent: semiInductance?.exponent ?? USUAL_EXPONENT } })
          }
          clear={leaveOut}
        />
      </FieldRow>
      {semiInductance ? (
        <FieldRow
          name={
            <>
              <b>n</b> its exponent
            </>
          }
        >
          <QuantityField
            label={`Semi-inductance exponent of ${driver.name}`}
            kind="plain"
            value={semiInductance.exponent}
            least={0.01}
            greatest={1}
            command={(exponent) => enter({ semiInductance: { ...semiInductance, exponent } })}
          />
        </FieldRow>
      ) : null}
    </>
  );
}
