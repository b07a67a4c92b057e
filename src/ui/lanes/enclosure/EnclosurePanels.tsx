import { useRef } from 'react';
import { portName } from '../../../core/document/describe/portName.ts';
import type { Selection } from '../../../state/workbench.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { useShown } from '../useShown.ts';
import { wayColour } from '../wayColour.ts';
import { ChamberPanel } from './ChamberPanel.tsx';
import { MountPanel } from './MountPanel.tsx';
import { PortPanel } from './PortPanel.tsx';
import { AddParts } from './panels/AddParts.tsx';
import { LinePanel } from './panels/LinePanel.tsx';
import { RadiatorPanel } from './panels/RadiatorPanel.tsx';
import './enclosure-panels.css';
import './panels/panels.css';
import { useWays } from '../useWays.ts';

/** What of the cabinet can be picked, as a row of buttons, and all about the one that is. */
export function EnclosurePanels() {
  const store = useWorkbenchStore();
  const panels = useRef<HTMLElement>(null);
  const { chambers, ports, passiveRadiators, lines, mounts, panelM } = useWorkbench((s) => s.project.enclosure);
  const ways = useWays();
  const selection = useWorkbench((s) => s.selection);
  const is = (kind: NonNullable<Selection>['kind'], id: string) => selection?.kind === kind && selection.id === id;
  const chamber = chambers.find(({ id }) => is('chamber', id));
  const port = ports.find(({ id }) => is('port', id));
  const radiator = passiveRadiators.find(({ id }) => is('radiator', id));
  const line = lines.find(({ id }) => is('duct', id));
  const way = ways.find(({ speakerId }) => is('speaker', speakerId));
  const mount = mounts.find(({ partId }) => partId === way?.speakerId);
  useShown(
    panels,
    [chamber, port, radiator, line].some((picked) => picked !== undefined),
    '.lanes-enclosure, .lanes-stack',
  );
  const chip = (kind: NonNullable<Selection>['kind'], id: string, words: string, index: number | null) => (
    <button
      key={`${kind} ${id}`}
      type="button"
      className="lane-chip"
      style={wayColour(index)}
      aria-pressed={is(kind, id)}
      onClick={() => store.getState().select(is(kind, id) ? null : { kind, id })}
    >
      {words}
    </button>
  );
  const indexOf = (chamberId: string) => {
    const inside = mounts.filter((entry) => entry.chamberId === chamberId).map((entry) => entry.partId);
    return ways.find((entry) => inside.includes(entry.speakerId))?.index ?? null;
  };
  return (
    <section ref={panels} className="enclosure-panels" aria-label="Parts of the cabinet">
      <div className="enclosure-chips">
        {ways.map((entry) => chip('speaker', entry.speakerId, entry.name, entry.index))}
        {chambers.map((entry) => chip('chamber', entry.id, entry.name, indexOf(entry.id)))}
        {ports.map((entry) => chip('port', entry.id, portName(entry.id), indexOf(entry.chamberId)))}
        {passiveRadiators.map((entry) =>
          chip('radiator', entry.id, entry.name || 'passive radiator', indexOf(entry.chamberId)),
        )}
        {lines.map((entry) => chip('duct', entry.id, entry.name || 'transmission line', indexOf(entry.chamberId)))}
      </div>
      {chamber ? <ChamberPanel chamber={chamber} /> : null}
      {port ? <PortPanel port={port} /> : null}
      {radiator ? <RadiatorPanel radiator={radiator} /> : null}
      {line ? <LinePanel line={line} /> : null}
      {way && mount ? <MountPanel way={way} mount={mount} /> : null}
      <div className="enclosure-more">
        <FieldRow name="panels">
          <QuantityField
            label="Panel thickness"
            kind="length"
            metricUnit="mm"
            value={panelM}
            least={0.001}
            command={(next) => ({ type: 'set-enclosure', changes: { panelM: next } })}
          />
        </FieldRow>
        <AddParts preferred={chamber?.id ?? null} />
      </div>
    </section>
  );
}
