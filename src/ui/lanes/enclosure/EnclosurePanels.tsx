import { useRef } from 'react';
import { newChamber } from '../../../core/document/start/newChamber.ts';
import { newPort } from '../../../core/document/start/newPort.ts';
import type { Selection } from '../../../state/workbench.ts';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { useShown } from '../useShown.ts';
import { wayColour } from '../wayColour.ts';
import { ChamberPanel } from './ChamberPanel.tsx';
import { MountPanel } from './MountPanel.tsx';
import { PortPanel } from './PortPanel.tsx';
import './enclosure-panels.css';
import { useWays } from '../useWays.ts';

/** What of the cabinet can be picked, as a row of buttons, and all about the one that is. */
export function EnclosurePanels() {
  const store = useWorkbenchStore();
  const panels = useRef<HTMLElement>(null);
  const { chambers, ports, mounts, panelM } = useWorkbench((s) => s.project.enclosure);
  const ways = useWays();
  const selection = useWorkbench((s) => s.selection);
  const is = (kind: NonNullable<Selection>['kind'], id: string) => selection?.kind === kind && selection.id === id;
  const chamber = chambers.find(({ id }) => is('chamber', id));
  const port = ports.find(({ id }) => is('port', id));
  const way = ways.find(({ speakerId }) => is('speaker', speakerId));
  const mount = mounts.find(({ partId }) => partId === way?.speakerId);
  useShown(panels, chamber !== undefined || port !== undefined, '.lanes-enclosure, .lanes-stack');
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
  const chamberForPort = chamber ?? chambers.find(({ id }) => mounts.some((entry) => entry.chamberId === id));
  return (
    <section ref={panels} className="enclosure-panels" aria-label="Parts of the enclosure">
      <div className="enclosure-chips">
        {ways.map((entry) => chip('speaker', entry.speakerId, entry.name, entry.index))}
        {chambers.map((entry) => chip('chamber', entry.id, entry.name, indexOf(entry.id)))}
        {ports.map((entry) => chip('port', entry.id, `port ${entry.id}`, indexOf(entry.chamberId)))}
      </div>
      {chamber ? <ChamberPanel chamber={chamber} /> : null}
      {port ? <PortPanel port={port} /> : null}
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
        <RefusingButton command={() => ({ type: 'add-chamber', chamber: newChamber(store.getState().project) })}>
          add a chamber
        </RefusingButton>
        {chamberForPort ? (
          <RefusingButton
            command={() => ({ type: 'add-port', port: newPort(store.getState().project, chamberForPort.id) })}
          >
            add a port to {chamberForPort.name}
          </RefusingButton>
        ) : (
          <span className="lane-soft">A port needs a chamber first.</span>
        )}
      </div>
    </section>
  );
}
