import type { Command } from '../../../core/document/command.ts';
import type { Brace } from '../../../core/document/schema.ts';
import { ChoiceField } from '../../fields/ChoiceField.tsx';
import { FieldRow } from '../../fields/FieldRow.tsx';
import { QuantityField } from '../../fields/QuantityField.tsx';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { LengthField } from './LengthField.tsx';
import { braceAtM, newBrace } from './newBrace.ts';
import { SayingButton } from './SayingButton.tsx';

const LIES = [
  { value: 'level', words: 'level' },
  { value: 'across', words: 'upright, across' },
  { value: 'lengthwise', words: 'upright, lengthwise' },
];
const PLACE: Readonly<Record<Brace['lies'], string>> = {
  level: 'height above the bottom',
  across: 'depth behind the front',
  lengthwise: 'right of the middle',
};

/** Boards that stiffen a chamber; their wood is taken from its air. */
export function BraceFields() {
  const store = useWorkbenchStore();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const { chambers, wood } = enclosure;
  if (chambers.length === 0) return <p className="build-soft">A brace needs a chamber first.</p>;
  return (
    <>
      {wood.braces.map((brace, i) => (
        <BraceField key={brace.id} brace={brace} name={`brace ${i + 1}`} />
      ))}
      <div className="build-buttons">
        {chambers.map((chamber) => (
          <SayingButton
            key={chamber.id}
            command={() => {
              const now = store.getState().project.enclosure;
              return { type: 'set-wood', changes: { braces: [...now.wood.braces, newBrace(chamber, now)] } };
            }}
          >
            Add a brace to {chamber.name}
          </SayingButton>
        ))}
      </div>
    </>
  );
}

function BraceField({ brace, name }: { readonly brace: Brace; readonly name: string }) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const { chambers, wood } = enclosure;
  const set = (changes: Partial<Brace>): Command => ({
    type: 'set-wood',
    changes: { braces: wood.braces.map((one) => (one.id === brace.id ? { ...one, ...changes } : one)) },
  });
  const lie = (lies: Brace['lies']): Command => {
    const chamber = chambers.find(({ id }) => id === brace.chamberId);
    return set({ lies, ...(chamber === undefined ? {} : { atM: braceAtM(lies, chamber, enclosure) }) });
  };
  return (
    <fieldset className="build-one">
      <legend>{name}</legend>
      <ChoiceField
        name="in"
        label={`Chamber of ${name}`}
        value={brace.chamberId}
        choices={chambers.map((chamber) => ({ value: chamber.id, words: chamber.name }))}
        command={(chamberId) => set({ chamberId })}
      />
      <ChoiceField
        name="stands"
        label={`Direction of ${name}`}
        value={brace.lies}
        choices={LIES}
        command={(lies) => lie(lies as Brace['lies'])}
      />
      <LengthField
        name={PLACE[brace.lies]}
        label={`Place of ${name}, ${PLACE[brace.lies]}`}
        note="of its middle"
        value={brace.atM}
        command={(atM) => set({ atM })}
      />
      <LengthField
        name="thickness"
        label={`Thickness of ${name}`}
        value={brace.thicknessM}
        least={0.001}
        command={(thicknessM) => set({ thicknessM })}
      />
      <FieldRow name="openings">
        <QuantityField
          label={`Openings of ${name}`}
          kind="ratio"
          value={brace.openShare}
          least={0}
          greatest={0.95}
          note="share of its area, 95 % at most"
          command={(openShare) => set({ openShare })}
        />
      </FieldRow>
      <SayingButton
        label={`Remove ${name}`}
        command={() => ({
          type: 'set-wood',
          changes: { braces: wood.braces.filter(({ id }) => id !== brace.id) },
        })}
      >
        Remove
      </SayingButton>
    </fieldset>
  );
}
