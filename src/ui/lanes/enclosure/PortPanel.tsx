import type { Command } from '../../../core/document/command.ts';
import { portName } from '../../../core/document/describe/portName.ts';
import type { Port } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { RefusingButton } from '../RefusingButton.tsx';
import { keepOnBaffle } from './keepOnBaffle.ts';
import { LossFields } from './LossFields.tsx';
import { PortEnds } from './panels/PortEnds.tsx';
import { PortFacts } from './panels/PortFacts.tsx';
import { portFootprint } from './portFaces.ts';
import { TuningWish } from './TuningWish.tsx';

const ENDS = [
  { value: 'free', words: 'free' },
  { value: 'flanged', words: 'flush in a wall' },
  { value: 'on-wall', words: 'along a wall' },
];
const FACES = [
  { value: 'front', words: 'front' },
  { value: 'back', words: 'back' },
];
const SHAPES = [
  { value: 'round', words: 'round' },
  { value: 'slot', words: 'slot' },
];

/** All about one kind of port: its bore, length, ends, loss and place, and the length that a wished tuning needs. */
export function PortPanel({ port }: { readonly port: Port }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const set = (changes: Partial<Omit<Port, 'id'>>): Command => ({ type: 'set-port', id: port.id, changes });
  const { shape } = port;
  const length = (name: string, value: number, changes: (m: number) => Partial<Omit<Port, 'id'>>, least?: number) => (
    <FieldRow name={name}>
      <QuantityField
        label={`${name} of ${portName(port.id)}`}
        kind="length"
        metricUnit="mm"
        value={value}
        {...(least === undefined ? {} : { least })}
        command={(m) => set(changes(m))}
      />
    </FieldRow>
  );
  const place = (next: { readonly xM: number; readonly yM: number }) =>
    keepOnBaffle(next, portFootprint(port), enclosure);
  return (
    <div className="enclosure-panel">
      <div className="enclosure-panel-columns">
        <div>
          <ChoiceField
            name="shape"
            label={`Shape of ${portName(port.id)}`}
            value={shape.kind}
            choices={SHAPES}
            command={(kind) => set({ shape: shapeOfKind(kind, port) })}
          />
          {shape.kind === 'round' ? (
            length('diameter', shape.diameterM, (diameterM) => ({ shape: { kind: 'round', diameterM } }), 0.005)
          ) : (
            <>
              {length('width', shape.widthM, (widthM) => ({ shape: { ...shape, widthM } }), 0.005)}
              {length('height', shape.heightM, (heightM) => ({ shape: { ...shape, heightM } }), 0.003)}
            </>
          )}
          {length('length', port.lengthM, (lengthM) => ({ lengthM }), 0.001)}
          <FieldRow name="how many">
            <QuantityField
              label={`How many of ${portName(port.id)}`}
              kind="plain"
              stepping={{ by: 'linear', step: 1 }}
              value={port.count}
              least={1}
              greatest={8}
              command={(count) => set({ count: Math.round(count) })}
            />
          </FieldRow>
          {length('wall', port.wallM, (wallM) => ({ wallM }), 0)}
          <ChoiceField
            name="opens to"
            label={`Face of ${portName(port.id)}`}
            value={port.face}
            choices={FACES}
            command={(face) => set({ face: face as Port['face'] })}
          />
          {length('across', port.xM, (xM) => place({ xM, yM: port.yM }))}
          {length('up', port.yM, (yM) => place({ xM: port.xM, yM }))}
        </div>
        <div>
          <ChoiceField
            name="chamber"
            label={`Chamber of ${portName(port.id)}`}
            value={port.chamberId}
            choices={enclosure.chambers.map((chamber) => ({ value: chamber.id, words: chamber.name }))}
            command={(chamberId) =>
              set({ chamberId, toChamberId: port.toChamberId === chamberId ? null : port.toChamberId })
            }
          />
          <ChoiceField
            name="inner end"
            label={`Inner end of ${portName(port.id)}`}
            value={port.innerEnd}
            choices={ENDS}
            command={(innerEnd) => set({ innerEnd: innerEnd as Port['innerEnd'] })}
          />
          <ChoiceField
            name="outer end"
            label={`Outer end of ${portName(port.id)}`}
            value={port.outerEnd}
            choices={ENDS}
            command={(outerEnd) => set({ outerEnd: outerEnd as Port['outerEnd'] })}
          />
          <LossFields
            name="loss QP"
            about="Quality factor of the friction in the port: the smaller, the more it loses"
            of={portName(port.id)}
            loss={port.loss}
            command={(loss) => set({ loss })}
          />
          <PortEnds port={port} set={set} />
        </div>
      </div>
      <TuningWish port={port} />
      <PortFacts port={port} />
      <RefusingButton command={() => ({ type: 'remove-port', id: port.id })}>remove this port</RefusingButton>
    </div>
  );
}

/** The other shape with the same area, a slot being four times as wide as high. */
function shapeOfKind(kind: string, { shape }: Port): Port['shape'] {
  if (kind === shape.kind) return shape;
  const millimetres = (m: number) => Math.max(0.003, Math.round(m * 1000) / 1000);
  if (shape.kind === 'round') {
    const heightM = millimetres(Math.sqrt(((Math.PI / 4) * shape.diameterM ** 2) / 4));
    return { kind: 'slot', heightM, widthM: millimetres(heightM * 4) };
  }
  return { kind: 'round', diameterM: millimetres(Math.sqrt((shape.widthM * shape.heightM * 4) / Math.PI)) };
}
