import type { Listening } from '../../core/document/schema.ts';
import { QuantityField } from '../fields/index.ts';
import { radiationWords } from '../radiationWords.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { Popover } from './Popover.tsx';
import './ListeningControl.css';

const RADIATION: readonly { readonly id: Listening['radiation']; readonly about: string }[] = [
  {
    id: 'baffle-step',
    about: 'with the baffle step: half space at high, full space at low frequencies',
  },
  { id: 'half-space', about: 'as in an endless wall' },
  { id: 'full-space', about: 'as without any baffle: 6 dB less at every frequency' },
];

/** Where the listener sits and what surrounds the speaker: angles at hand, the rest in a small panel. */
export function ListeningControl() {
  const listening = useWorkbench((s) => s.project.listening);
  const dispatch = useWorkbench((s) => s.dispatch);
  const set = (changes: Partial<Listening>) => ({ type: 'set-listening', changes }) as const;
  return (
    <fieldset className="listening" aria-label="Listening place">
      <span className="frame-soft">heard at</span>
      <QuantityField
        label="Listening distance from the front"
        kind="length"
        value={listening.distanceM}
        metricUnit="m"
        least={0.1}
        greatest={20}
        stepping={{ by: 'linear', step: 0.05, imperialStep: 0.0762 }}
        command={(distanceM) => set({ distanceM })}
      />
      <QuantityField
        label="Horizontal listening angle, positive to the right"
        kind="angle"
        value={listening.horizontalDeg}
        least={-180}
        greatest={180}
        command={(horizontalDeg) => set({ horizontalDeg })}
      />
      <span className="frame-soft">to the side</span>
      <QuantityField
        label="Vertical listening angle, positive upwards"
        kind="angle"
        value={listening.verticalDeg}
        least={-90}
        greatest={90}
        command={(verticalDeg) => set({ verticalDeg })}
      />
      <span className="frame-soft">up</span>
      <Popover
        label="Height, stand and surroundings"
        face={radiationWords[listening.radiation]}
        className="frame-button"
      >
        {() => (
          <div className="listening-panel">
            <dl className="listening-fields">
              <dt>ear height above the floor</dt>
              <dd>
                <QuantityField
                  label="Ear height above the floor"
                  kind="length"
                  value={listening.heightM}
                  metricUnit="m"
                  stepping={{ by: 'linear', step: 0.01 }}
                  command={(heightM) => set({ heightM })}
                />
              </dd>
              <dt>height of the stand</dt>
              <dd>
                <QuantityField
                  label="Height of the stand"
                  kind="length"
                  value={listening.standHeightM}
                  least={0}
                  stepping={{ by: 'linear', step: 0.01 }}
                  command={(standHeightM) => set({ standHeightM })}
                />
              </dd>
            </dl>
            <fieldset className="listening-radiation">
              <legend>The speaker stands</legend>
              {RADIATION.map((choice) => (
                <label key={choice.id}>
                  <input
                    type="radio"
                    name="radiation"
                    checked={listening.radiation === choice.id}
                    onChange={() => dispatch(set({ radiation: choice.id }))}
                  />
                  <span>
                    {radiationWords[choice.id]} <span className="frame-soft">{choice.about}</span>
                  </span>
                </label>
              ))}
            </fieldset>
          </div>
        )}
      </Popover>
    </fieldset>
  );
}
