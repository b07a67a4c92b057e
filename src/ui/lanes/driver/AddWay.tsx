import type { Driver } from '../../../core/document/schema.ts';
import { newWayInChamber } from '../../../core/document/start/newWayInChamber.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { RefusingButton } from '../RefusingButton.tsx';

const ROLES: readonly Driver['role'][] = ['woofer', 'mid', 'tweeter', 'full-range'];

/** Adds a way with an invented driver of the chosen role, to be given its own numbers. */
export function AddWay({ done }: { readonly done: () => void }) {
  const store = useWorkbenchStore();
  return (
    <section className="add-way" aria-label="Add a way">
      <p className="lane-soft">
        A new way begins with an invented driver of ordinary size, straight on the amplifier: enter your own driver's
        numbers on its card, then give it a section of the crossover. A mid comes with a small sealed chamber of its
        own. Tweeters go above mids and mids above woofers; what is in the way moves down.
      </p>
      <div className="add-way-roles">
        {ROLES.map((role) => (
          <RefusingButton
            key={role}
            command={() => newWayInChamber(store.getState().project, role)}
            after={(before, now) => {
              const added = now.network.parts.find(
                (part) => part.kind === 'speaker' && !before.network.parts.some((other) => other.id === part.id),
              );
              if (added) store.getState().select({ kind: 'speaker', id: added.id });
              done();
            }}
          >
            {role}
          </RefusingButton>
        ))}
      </div>
    </section>
  );
}
