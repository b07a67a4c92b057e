import type { Command } from '../../../core/document/command.ts';
import type { Driver, DriverEntered } from '../../../core/document/schema.ts';
import { word } from '../../../core/messages/word.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { TextField } from '../../fields/TextField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import type { Way } from '../../waysInOrder.ts';
import { figureText } from '../figureText.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { wayColour } from '../wayColour.ts';
import { CoilHeatFields } from './CoilHeatFields.tsx';
import { DRIVER_FIELDS } from './driverFields.ts';
import { MeasuredUse } from './MeasuredUse.tsx';
import { readDriver } from './readDriver.ts';
import { SemiInductance } from './SemiInductance.tsx';

const ROLES = ['woofer', 'mid', 'tweeter', 'full-range'].map((value) => ({ value, words: value }));
const SHAPES = ['cone', 'dome'].map((value) => ({ value, words: value }));

/** A driver's data sheet, in place: entered numbers and derived ones, contradictions in words, measured curves. */
export function DriverEditor({
  driver,
  way: { speakerId, index: wayIndex },
}: {
  readonly driver: Driver;
  readonly way: Way;
}) {
  const system = useWorkbench((s) => s.settings.units);
  const read = readDriver(driver);
  const set = (changes: Partial<Omit<Driver, 'id'>>): Command => ({ type: 'set-driver', driverId: driver.id, changes });
  const enter = (changes: DriverEntered): Command => set({ entered: { ...driver.entered, ...changes } });
  const leaveOut = (key: keyof DriverEntered): Command => {
    const { [key]: _, ...entered } = driver.entered;
    return set({ entered });
  };
  const findings = read.ok
    ? read.value.findings.map((finding) => ({ ...finding, place: { ...finding.place, id: driver.name } }))
    : read.problems.map((problem) => ({ ...problem, place: { ...problem.place, id: driver.name } }));
  const length = (name: string, key: 'outerDiameterM' | 'depthM', value: number) => (
    <FieldRow name={name}>
      <QuantityField
        label={`${name} of ${driver.name}`}
        kind="length"
        metricUnit="mm"
        value={value}
        least={0}
        command={(m) => set({ [key]: m })}
      />
    </FieldRow>
  );
  return (
    <section className="driver-editor" style={wayColour(wayIndex)} aria-label={`Data sheet of ${driver.name}`}>
      <div className="driver-editor-names">
        <TextField label="Name of the driver" value={driver.name} command={(name) => set({ name })} />
        <TextField
          label="Description of the driver"
          value={driver.description}
          placeholder="what it is made of"
          longest={400}
          command={(description) => set({ description })}
        />
      </div>
      {findings.length > 0 ? (
        <ul className="driver-editor-findings">
          {findings.map((finding) => {
            const { sentence, remedy } = word(finding);
            return (
              <li key={`${finding.code} ${finding.place.field}`}>
                {sentence} <span className="lane-soft">{remedy}</span>
              </li>
            );
          })}
        </ul>
      ) : null}
      <div className="driver-editor-fields">
        <ChoiceField
          name="role"
          label={`Role of ${driver.name}`}
          value={driver.role}
          choices={ROLES}
          command={(role) => set({ role: role as Driver['role'] })}
        />
        <ChoiceField
          name="shape"
          label={`Shape of ${driver.name}`}
          value={driver.shape}
          choices={SHAPES}
          command={(shape) => set({ shape: shape as Driver['shape'] })}
        />
        {DRIVER_FIELDS.map((field) => {
          const derived = read.ok && field.derived ? field.derived(read.value) : null;
          return (
            <FieldRow
              key={field.key}
              name={
                <>
                  <b>{field.symbol}</b> {field.words}
                </>
              }
            >
              <QuantityField
                label={`${field.symbol}, ${field.words}, of ${driver.name}`}
                kind={field.kind}
                {...(field.stepping ? { stepping: field.stepping } : {})}
                value={driver.entered[field.key] ?? null}
                absent={derived === null ? 'not stated' : `${figureText(derived, field.kind, system)} derived`}
                command={(value) => enter({ [field.key]: value })}
                clear={() => leaveOut(field.key)}
              />
            </FieldRow>
          );
        })}
        <SemiInductance driver={driver} enter={enter} leaveOut={() => leaveOut('semiInductance')} />
        {length('outer diameter', 'outerDiameterM', driver.outerDiameterM)}
        {length('depth behind the front', 'depthM', driver.depthM)}
        <FieldRow name="space it takes">
          <QuantityField
            label={`Displacement of ${driver.name}`}
            kind="volume"
            value={driver.displacementM3}
            least={0}
            command={(displacementM3) => set({ displacementM3 })}
          />
        </FieldRow>
        <CoilHeatFields driver={driver} set={set} />
      </div>
      <div className="driver-editor-foot">
        <MeasuredUse driver={driver} />
        <RefusingButton command={() => ({ type: 'remove-way', speakerId })}>remove this way</RefusingButton>
      </div>
    </section>
  );
}
