import type { Command } from '../../../core/document/command.ts';
import { quantityText } from '../../../core/units/formatQuantity.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { showInField } from '../../fields/showInField.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { type Fitting, type GuessedFitting, guessedFittings } from '../read/guessedFittings.ts';
import { LengthField } from './LengthField.tsx';
import { SayingButton } from './SayingButton.tsx';

const MOST_SCREWS = 16;
const LENGTHS = [
  ['cutOutDiameterM', 'cut-out diameter', 'Cut-out diameter'],
  ['recessDepthM', 'recess depth', 'Recess depth'],
  ['screwCircleM', 'screw circle, diameter', 'Screw circle diameter'],
  ['magnetDiameterM', 'magnet diameter', 'Magnet diameter'],
] as const;

/** How each driver is let into its panel; what its sheet does not state is a guess, and says so. */
export function FittingFields() {
  const project = useWorkbench((s) => s.project);
  const fittings = guessedFittings(project);
  return (
    <>
      {project.drivers.map((driver) => {
        const found = fittings.get(driver.id);
        return found === undefined ? null : (
          <FittingField key={driver.id} driverId={driver.id} name={driver.name} fitting={driver.fitting} {...found} />
        );
      })}
    </>
  );
}

function FittingField({
  driverId,
  name,
  fitting,
  guess,
  open,
}: GuessedFitting & { readonly driverId: string; readonly name: string; readonly fitting: Fitting | null }) {
  const system = useWorkbench((s) => s.settings.units);
  const set = (changes: Partial<Fitting>): Command => ({
    type: 'set-driver',
    driverId,
    changes: { fitting: { ...(fitting ?? guess), ...changes } },
  });
  const text = (m: number): string => quantityText(showInField(m, 'length', system, 'mm'));
  return (
    <fieldset className="build-one">
      <legend>{name}</legend>
      {LENGTHS.map(([field, words, label]) => {
        const screwless = field === 'screwCircleM' && (fitting ?? guess).screwCount === 0;
        const guessed = open.has(field) && !screwless;
        return (
          <LengthField
            key={field}
            name={guessed ? `${words} (guess)` : words}
            label={`${label} of ${name}`}
            value={fitting === null || screwless ? null : fitting[field]}
            absent={screwless ? 'not stated' : field === 'recessDepthM' ? 'none' : `about ${text(guess[field])}`}
            least={field === 'recessDepthM' ? 0 : 0.001}
            command={(next) =>
              set(field === 'screwCircleM' && screwless ? { screwCircleM: next, screwCount: 4 } : { [field]: next })
            }
          />
        );
      })}
      <FieldRow name="screws">
        <QuantityField
          label={`Screws of ${name}`}
          kind="plain"
          value={fitting === null || fitting.screwCount === 0 ? null : fitting.screwCount}
          absent="not stated"
          least={0}
          greatest={MOST_SCREWS}
          stepping={{ by: 'linear', step: 1 }}
          command={(screwCount) => set({ screwCount: Math.round(screwCount) })}
          clear={() => set({ screwCount: 0 })}
        />
      </FieldRow>
      {open.has('cutOutDiameterM') || open.has('magnetDiameterM') ? (
        <p className="build-soft">Guessed from the outer diameter: measure the driver, or take it from its sheet.</p>
      ) : null}
      {fitting === null ? null : (
        <SayingButton
          label={`Forget the fitting of ${name}`}
          command={() => ({ type: 'set-driver', driverId, changes: { fitting: null } })}
        >
          Back to the guess
        </SayingButton>
      )}
    </fieldset>
  );
}
