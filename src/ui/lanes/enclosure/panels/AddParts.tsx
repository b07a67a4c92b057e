import { useState } from 'react';
import type { Command } from '../../../../core/document/command.ts';
import type { Project } from '../../../../core/document/schema.ts';
import { newChamber } from '../../../../core/document/start/newChamber.ts';
import { newLine } from '../../../../core/document/start/newLine.ts';
import { newPort } from '../../../../core/document/start/newPort.ts';
import { newRadiator } from '../../../../core/document/start/newRadiator.ts';
import type { Selection } from '../../../../state/workbench.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { useWorkbenchStore } from '../../../useWorkbenchStore.ts';
import { RefusingButton } from '../../RefusingButton.tsx';

type Picked = NonNullable<Selection>;

/** Buttons that add a chamber, or a port, passive radiator or line to a chosen chamber, and pick what came. */
export function AddParts({ preferred }: { readonly preferred: string | null }) {
  const store = useWorkbenchStore();
  const chambers = useWorkbench((s) => s.project.enclosure.chambers);
  const [wished, setWished] = useState<string | null>(null);
  const here = [preferred, wished].find((id) => chambers.some((chamber) => chamber.id === id));
  const chamber = chambers.find(({ id }) => id === here) ?? chambers[0];
  const adding = (kind: Picked['kind'], words: string, made: (project: Project) => readonly [Command, string]) => (
    <RefusingButton
      {...(kind === 'chamber' || !chamber ? {} : { label: `Add a ${words} to ${chamber.name}` })}
      command={() => made(store.getState().project)[0]}
      after={(before) => store.getState().select({ kind, id: made(before)[1] })}
    >
      {words}
    </RefusingButton>
  );
  return (
    <fieldset className="enclosure-add" aria-label="Add to the cabinet">
      {adding('chamber', 'Add a chamber', (project) => {
        const added = newChamber(project);
        return [{ type: 'add-chamber', chamber: added }, added.id];
      })}
      {chamber ? (
        <>
          <span className="lane-soft">· In</span>
          <select
            className="field-row-choice"
            aria-label="Chamber that gets the new part"
            value={chamber.id}
            onChange={(event) => {
              setWished(event.target.value);
              if (preferred !== null) store.getState().select({ kind: 'chamber', id: event.target.value });
            }}
          >
            {chambers.map(({ id, name }) => (
              <option key={id} value={id}>
                {name}
              </option>
            ))}
          </select>
          <span className="lane-soft">add:</span>
          {adding('port', 'port', (project) => {
            const port = newPort(project, chamber.id);
            return [{ type: 'add-port', port }, port.id];
          })}
          {adding('radiator', 'passive radiator', (project) => {
            const radiator = newRadiator(project, chamber.id);
            return [{ type: 'add-radiator', radiator }, radiator.id];
          })}
          {adding('duct', 'transmission line', (project) => {
            const line = newLine(project, chamber.id);
            return [{ type: 'add-line', line }, line.id];
          })}
        </>
      ) : (
        <span className="lane-soft">Ports, passive radiators and transmission lines need a chamber first.</span>
      )}
    </fieldset>
  );
}
