import type { Command } from '../../../../core/document/command.ts';
import type { Mount } from '../../../../core/document/schema.ts';
import { ChoiceField } from '../../../fields/ChoiceField.tsx';
import { useWorkbench } from '../../../useWorkbench.ts';
import type { Way } from '../../../waysInOrder.ts';

const CLOSED = '(closed)';
const OPEN = '(open)';
const OUTSIDE = '(outside)';

/** What a driver's cone works on: the air behind it and the air in front of it. */
export function MountAir({ way, mount }: { readonly way: Way; readonly mount: Mount }) {
  const chambers = useWorkbench((s) => s.project.enclosure.chambers);
  const set = (changes: Partial<Omit<Mount, 'partId'>>): Command => ({
    type: 'set-mount',
    partId: mount.partId,
    changes,
  });
  const named = chambers.map((chamber) => ({ value: chamber.id, words: chamber.name }));
  const behind = (id: string): Command => {
    if (id === OPEN) return set({ chamberId: null, frontChamberId: null, back: 'open' });
    if (id === CLOSED) return set({ chamberId: null, back: 'closed' });
    // A chamber cannot be on both sides: it goes from the one to the other.
    const { chamberId, frontChamberId } = mount;
    return set({ chamberId: id, frontChamberId: frontChamberId === id ? chamberId : frontChamberId, back: 'closed' });
  };
  const before = (id: string): Command => {
    if (id === OUTSIDE) return set({ frontChamberId: null });
    const { chamberId, frontChamberId } = mount;
    return set({ frontChamberId: id, chamberId: chamberId === id ? frontChamberId : chamberId, back: 'closed' });
  };
  return (
    <>
      <ChoiceField
        name="air behind"
        label={`Chamber of ${way.name}`}
        value={mount.chamberId ?? (mount.back === 'open' ? OPEN : CLOSED)}
        choices={[
          ...named,
          { value: CLOSED, words: 'none: closed at its back' },
          { value: OPEN, words: 'open: bare baffle' },
        ]}
        command={behind}
      />
      <ChoiceField
        name="air in front"
        label={`Air in front of ${way.name}`}
        value={mount.frontChamberId ?? OUTSIDE}
        choices={[{ value: OUTSIDE, words: 'outside' }, ...named]}
        command={before}
      />
    </>
  );
}
