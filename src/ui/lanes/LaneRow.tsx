import type { ReactNode } from 'react';
import { useWorkbench } from '../useWorkbench.ts';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import type { Way } from '../waysInOrder.ts';
import { LaneEdge } from './LaneEdge.tsx';

/** One way's row in the drivers' column: its coloured edge, and its curve lifted while pointer or focus is inside. */
export function LaneRow({
  way,
  topPx,
  heightPx,
  measured,
  children,
}: {
  readonly way: Way;
  readonly topPx: number;
  readonly heightPx: number;
  /** Told the element whose height the row must hold. */
  readonly measured: (element: HTMLElement | null) => void;
  readonly children: ReactNode;
}) {
  const store = useWorkbenchStore();
  const lifted = useWorkbench((s) => s.lifted === way.speakerId);
  const lift = (on: boolean) => {
    const { lifted: now, lift: set } = store.getState();
    if (on && now !== way.speakerId) set(way.speakerId);
    if (!on && now === way.speakerId) set(null);
  };
  return (
    <section
      className="lane-row"
      aria-label={`${way.name} driver`}
      data-lifted={lifted ? '' : undefined}
      style={{ top: topPx, height: heightPx }}
      onPointerEnter={() => lift(true)}
      onPointerLeave={() => lift(false)}
      onFocus={() => lift(true)}
      onBlur={(event) => {
        if (!event.currentTarget.contains(event.relatedTarget)) lift(false);
      }}
    >
      <LaneEdge index={way.index} heightPx={heightPx} />
      <div ref={measured}>{children}</div>
    </section>
  );
}
