import { useState } from 'react';
import { defaultBlendHz } from '../../../core/document/defaults.ts';
import type { Curve } from '../../../core/document/schema.ts';
import { word } from '../../../core/messages/word.ts';
import type { PendingCurve } from '../../../state/workbench.ts';
import { frequencyText } from '../../plots/frequencyText.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import './CurvePanel.css';
import { guessCurve } from './guessCurve.ts';
import { QuantityInput } from './QuantityInput.tsx';

const CHANNELS = ['left', 'right'] as const;

/** Asks what columns that were read are, so far as the file does not say: whose, of what, and how they were taken. */
export default function CurvePanel({ pending }: { pending: PendingCurve }) {
  const project = useWorkbench((s) => s.project);
  const accept = useWorkbench((s) => s.acceptCurve);
  const dismiss = useWorkbench((s) => s.dismissCurve);
  const [saidOwner, setOwner] = useState<string | null>(null);
  const [quantities, setQuantities] = useState<readonly (Curve['quantity'] | null)[]>([]);
  const [baffle, setBaffle] = useState<Curve['taken']['baffle']>('own');
  const [voltageV, setVoltage] = useState(2.83);
  const [saidDistanceM, setDistance] = useState<number | null>(null);
  const [blendHz, setBlend] = useState(defaultBlendHz);
  const guess = guessCurve(pending.fileName, project.drivers);
  const owner = saidOwner ?? guess.owner;
  const distanceM = saidDistanceM ?? guess.distanceM ?? 1;
  const ofDriver = owner.startsWith('driver ');
  const chosen = pending.curves.map((curve, index) => {
    const said = quantities[index];
    return said === undefined ? curve.quantity : said;
  });
  const files = pending.curves.map((curve, index) => ({ key: `file ${index}`, curve, index }));
  const take = (): void => {
    const channel = CHANNELS.find((candidate) => candidate === owner);
    accept({
      belongsTo: channel ? { kind: 'speaker', channel } : { kind: 'driver', driverId: owner.slice('driver '.length) },
      taken: { baffle, voltageV, distanceM },
      quantities: chosen,
      blendHz: ofDriver ? blendHz : null,
    });
  };
  return (
    <section className="curve-panel" aria-label="Measured columns" data-testid="curve-panel">
      <h2 className="curve-title">What was measured in “{pending.fileName}”?</h2>
      <ul className="curve-files">
        {files.map(({ key, curve, index }) => (
          <li key={key}>
            <label>
              {curve.name}: {curve.frequenciesHz.length} points from {frequencyText(curve.frequenciesHz[0] ?? 0)} to{' '}
              {frequencyText(curve.frequenciesHz.at(-1) ?? 0)},{' '}
              {curve.phasesDeg ? 'with phase' : 'without phase (minimum phase is taken)'}.{' '}
              <select
                value={chosen[index] ?? 'none'}
                onChange={(event) => {
                  const { value } = event.target;
                  const said = value === 'response' || value === 'impedance' ? value : null;
                  setQuantities(chosen.map((before, at) => (at === index ? said : before)));
                }}
              >
                <option value="response">response, dB re 20 µPa</option>
                <option value="impedance">impedance, Ω</option>
                <option value="none">leave it out</option>
              </select>
            </label>
          </li>
        ))}
      </ul>
      <div className="curve-answers">
        <label className="curve-quantity">
          <span className="frame-soft">It belongs to</span>{' '}
          <select data-testid="curve-owner" value={owner} onChange={(event) => setOwner(event.target.value)}>
            {project.drivers.map((driver) => (
              <option key={driver.id} value={`driver ${driver.id}`}>
                {driver.name}
              </option>
            ))}
            <option value="left">the whole speaker, left</option>
            <option value="right">the whole speaker, right</option>
          </select>
        </label>
        <QuantityInput
          key={guess.distanceM}
          label="measured at"
          kind="length"
          unit="m"
          value={distanceM}
          onValue={setDistance}
        />
        <QuantityInput label="with" kind="voltage" unit="V" value={voltageV} onValue={setVoltage} />
        <label className="curve-quantity">
          <span className="frame-soft">on</span>{' '}
          <select
            value={baffle}
            onChange={(event) => setBaffle(event.target.value === 'infinite' ? 'infinite' : 'own')}
          >
            <option value="own">its own baffle</option>
            <option value="infinite">an infinite baffle</option>
          </select>
        </label>
        {ofDriver && <QuantityInput label="used above" kind="frequency" unit="Hz" value={blendHz} onValue={setBlend} />}
      </div>
      {pending.notes.length > 0 && (
        <ul className="curve-notes frame-soft">
          {pending.notes.map((note) => {
            const { sentence, remedy } = word(note);
            return (
              <li key={`${sentence}${remedy}`}>
                {sentence} {remedy}
              </li>
            );
          })}
        </ul>
      )}
      <div className="curve-actions">
        <button type="button" className="frame-button frame-button-main" onClick={take}>
          Take it in
        </button>
        <button type="button" className="frame-button" onClick={dismiss}>
          Leave it
        </button>
      </div>
    </section>
  );
}
