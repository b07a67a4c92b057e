import { lineQuarterWaveHz } from '../../../../core/design/lineQuarterWave.ts';
import type { Command } from '../../../../core/document/command.ts';
import type { Line } from '../../../../core/document/schema.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { FieldRow } from '../../../fields/FieldRow.tsx';
import { QuantityField } from '../../../fields/QuantityField.tsx';
import { TextField } from '../../../fields/TextField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import { figureText } from '../../figureText.ts';
import { RefusingButton } from '../../RefusingButton.tsx';
import { ChamberChoice } from './ChamberChoice.tsx';
import { FillingAdvice, FillingFields, usualFilling } from './FillingFields.tsx';
import { PlaceFields } from './PlaceFields.tsx';

const CLOSED = '(closed)';
const OPEN = '(open)';
const FILLED = [
  { value: 'empty', words: 'empty' },
  { value: 'filled', words: 'filled' },
];

/** All about one line: its course, filling and end, and the frequency at which it is a quarter of a wave long. */
export function LinePanel({ line }: { readonly line: Line }) {
  const chambers = useWorkbench((s) => s.project.enclosure.chambers);
  const heightM = useWorkbench((s) => s.project.enclosure.heightM);
  const soundSpeed = useWorkbench((s) => s.evaluation?.simulation.air.soundSpeedMPerS ?? null);
  const system = useWorkbench((s) => s.settings.units);
  const { id, name, filling, end } = line;
  const set = (changes: Partial<Omit<Line, 'id'>>): Command => ({ type: 'set-line', id, changes });
  const area = (shown: string, label: string, key: 'startAreaM2' | 'endAreaM2') => (
    <FieldRow name={shown}>
      <QuantityField
        label={`${label} of ${name}`}
        kind="area"
        value={line[key]}
        least={1e-5}
        command={(next) => set({ [key]: next })}
      />
    </FieldRow>
  );
  const endAs = (value: string): Line['end'] => {
    if (value === CLOSED) return { kind: 'closed' };
    if (value !== OPEN) return { kind: 'chamber', chamberId: value };
    return end.kind === 'open' ? end : { kind: 'open', face: 'back', xM: 0, yM: Math.min(0.1, heightM / 2) };
  };
  const quarterHz = soundSpeed === null ? null : lineQuarterWaveHz(line, soundSpeed);
  const radiusM = Math.sqrt(line.endAreaM2 / Math.PI);
  return (
    <div className="enclosure-panel">
      <TextField
        label="Name of the transmission line"
        value={name}
        command={(next) => set({ name: next })}
        longest={80}
      />
      <div className="enclosure-panel-columns">
        <div>
          <ChamberChoice of={name} chamberId={line.chamberId} command={(chamberId) => set({ chamberId })} />
          <FieldRow name="length">
            <QuantityField
              label={`Length of ${name}`}
              kind="length"
              value={line.lengthM}
              least={0.01}
              stepping={{ by: 'linear', step: 0.01 }}
              note="along its middle"
              command={(lengthM) => set({ lengthM })}
            />
          </FieldRow>
          {area('area at its start', 'Area at the start', 'startAreaM2')}
          {area('area at its end', 'Area at the end', 'endAreaM2')}
          <ChoiceField
            name="ends"
            label={`End of ${name}`}
            value={end.kind === 'open' ? OPEN : end.kind === 'closed' ? CLOSED : end.chamberId}
            choices={[
              { value: OPEN, words: 'in the open' },
              { value: CLOSED, words: 'closed' },
              ...chambers
                .filter((chamber) => chamber.id !== line.chamberId)
                .map((chamber) => ({ value: chamber.id, words: `in ${chamber.name}` })),
            ]}
            command={(value) => set({ end: endAs(value) })}
          />
          {end.kind === 'open' ? (
            <PlaceFields
              of={`the end of ${name}`}
              place={end}
              footprint={{ halfWidthM: radiusM, halfHeightM: radiusM }}
              set={({ face, xM, yM }) => set({ end: { kind: 'open', face, xM, yM } })}
            />
          ) : null}
        </div>
        <div>
          <ChoiceField
            name="inside"
            label={`Filling of ${name}`}
            value={filling === null ? 'empty' : 'filled'}
            choices={FILLED}
            command={(value) =>
              set({ filling: value === 'empty' ? null : (filling ?? usualFilling('polyester-wadding')) })
            }
          />
          {filling === null ? null : (
            <>
              <FillingFields of={name} filling={filling} canLine={false} set={(next) => set({ filling: next })} />
              <p className="enclosure-small">
                <FillingAdvice material={filling.material} />
              </p>
            </>
          )}
        </div>
      </div>
      <p className="enclosure-panel-result">
        {quarterHz === null ? (
          'Between two chambers their air decides where it resonates.'
        ) : (
          <>
            <b>A quarter of a wave long at {figureText(quarterHz, 'frequency', system)}</b> when empty and straight
            {filling === null ? '.' : '; filled, by a tenth to a third lower (common practice, no source).'}
          </>
        )}
      </p>
      <RefusingButton command={() => ({ type: 'remove-line', id })}>remove this transmission line</RefusingButton>
    </div>
  );
}
