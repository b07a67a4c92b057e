import { useState } from 'react';
import type { Port } from '../../core/document/schema.ts';
import { quantityText } from '../../core/units/formatQuantity.ts';
import { QuantityField } from '../fields/QuantityField.tsx';
import { showInField } from '../fields/showInField.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { LimitBar } from './driver/LimitBar.tsx';
import { limitBars } from './driver/limitBars.ts';
import { figureText } from './figureText.ts';
import { LengthSlider } from './teach/LengthSlider.tsx';
import { portLengths } from './teach/portLengths.ts';
import { TeachSide } from './teach/TeachSide.tsx';
import { wayColour } from './wayColour.ts';
import './teach/teach-port.css';
import { useWays } from './useWays.ts';

/**
 * The view for a room: one port's length as a large handle, the box it changes, and what to watch in the plots above.
 * Shown for projects that open so; null where there is no port to teach with.
 */
export function TeachPort() {
  const port = useWorkbench((s) => s.project.enclosure.ports[0]);
  return port ? <Lesson port={port} /> : null;
}

function Lesson({ port }: { readonly port: Port }) {
  const project = useWorkbench((s) => s.project);
  const { enclosure } = project;
  const figures = useWorkbench((s) => s.evaluation?.keyFigures ?? null);
  const ways = useWays();
  const system = useWorkbench((s) => s.settings.units);
  const [before, setBefore] = useState<{ readonly lengthM: number; readonly tuningHz: number } | null>(null);
  const tuningHz = figures?.chambers.find((chamber) => chamber.id === port.chamberId)?.tuningHz ?? null;
  const inChamber = enclosure.mounts.filter((mount) => mount.chamberId === port.chamberId).map((mount) => mount.partId);
  const way = ways.find((candidate) => inChamber.includes(candidate.speakerId));
  const bars = figures && way ? limitBars(way.speakerId, figures, project, system) : [];
  const length = (metres: number) => quantityText(showInField(metres, 'length', system, 'mm'));
  return (
    <section className="teach-port" style={wayColour(way?.index ?? null)} aria-label="Port tuning">
      <TeachSide port={port} />
      <div className="teach-port-side">
        <div className="teach-port-numbers">
          <p>
            <span>port length</span>
            <QuantityField
              className="teach-port-number"
              label="Length of the port"
              kind="length"
              metricUnit="mm"
              value={port.lengthM}
              least={portLengths(enclosure, port).leastM}
              greatest={portLengths(enclosure, port).greatestM}
              command={(lengthM) => ({ type: 'set-port', id: port.id, changes: { lengthM } })}
            />
          </p>
          <p>
            <span>tuned to</span>
            <output className="teach-port-number">
              {tuningHz === null ? '–' : figureText(tuningHz, 'frequency', system)}
            </output>
          </p>
        </div>
        <LengthSlider port={port} begin={() => tuningHz !== null && setBefore({ lengthM: port.lengthM, tuningHz })} />
        <p className="teach-port-before" aria-live="polite">
          {before && before.lengthM !== port.lengthM && tuningHz !== null
            ? `Was ${length(before.lengthM)} and ${figureText(before.tuningHz, 'frequency', system)}: ${
                port.lengthM > before.lengthM ? 'a longer port tunes lower.' : 'a shorter port tunes higher.'
              }`
            : 'Drag the handle, or use the arrow keys.'}
        </p>
        <div className="teach-port-bars">
          {bars.map((plan) => (
            <LimitBar key={plan.name} plan={plan} />
          ))}
        </div>
        <ul className="teach-port-watch">
          <li>
            <b>Cone and port.</b> At the tuning the port gives the sound and the cone hardly moves: its curve has a dip
            there.
          </li>
          <li>
            <b>Excursion.</b> How far the cone moves, one way, peak: the same dip stands there. Below it the air in the
            box no longer holds the cone back.
          </li>
          <li>
            <b>Impedance.</b> Two peaks, and the low place between them lies at the tuning.
          </li>
          <li>
            <b>Sum.</b> Tuned too high it swells and then drops; too low and the bass fades early.
          </li>
          <li>
            <b>Caution.</b> With a real speaker keep the level low: below the tuning the cone runs out of excursion
            quickly, and hearing does not grow back.
          </li>
        </ul>
      </div>
    </section>
  );
}
