import type { Settings } from '../../state/workbench.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { Popover } from './Popover.tsx';

const THEMES: readonly { readonly id: Settings['theme']; readonly name: string }[] = [
  { id: 'auto', name: 'as the device' },
  { id: 'light', name: 'light' },
  { id: 'dark', name: 'dark' },
];
const UNITS: readonly { readonly id: Settings['units']; readonly name: string }[] = [
  { id: 'metric', name: 'metric: mm, L' },
  { id: 'imperial', name: 'imperial: in, ft³' },
];
const SERIES: readonly { readonly id: Settings['series']; readonly name: string }[] = (
  ['E6', 'E12', 'E24', 'E48', 'E96'] as const
).map((id) => ({ id, name: id }));

/** How things look and are counted: large type at once, the rest in a small panel. */
export function LookButtons() {
  const settings = useWorkbench((s) => s.settings);
  const setSettings = useWorkbench((s) => s.setSettings);
  return (
    <>
      <button
        type="button"
        className="frame-button"
        aria-pressed={settings.largeType}
        title="Large type, for a projector (L)"
        onClick={() => setSettings({ largeType: !settings.largeType })}
      >
        Large
      </button>
      <Popover face="Settings" label="Settings">
        {() => (
          <div className="settings">
            <Choice
              legend="Colours"
              name="theme"
              options={THEMES}
              value={settings.theme}
              onChoose={(theme) => setSettings({ theme })}
            />
            <Choice
              legend="Units shown"
              name="units"
              options={UNITS}
              value={settings.units}
              onChoose={(units) => setSettings({ units })}
            />
            <Choice
              legend="Preferred values for the arrow keys"
              name="series"
              options={SERIES}
              value={settings.series}
              onChoose={(series) => setSettings({ series })}
            />
          </div>
        )}
      </Popover>
    </>
  );
}

function Choice<Id extends string>({
  legend,
  name,
  options,
  value,
  onChoose,
}: {
  legend: string;
  name: string;
  options: readonly { readonly id: Id; readonly name: string }[];
  value: Id;
  onChoose(id: Id): void;
}) {
  return (
    <fieldset className="settings-choice">
      <legend className="frame-soft">{legend}</legend>
      {options.map((option) => (
        <label key={option.id}>
          <input type="radio" name={name} checked={option.id === value} onChange={() => onChoose(option.id)} />{' '}
          {option.name}
        </label>
      ))}
    </fieldset>
  );
}
