import type { ReactNode, RefObject } from 'react';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import type { Way } from '../../waysInOrder.ts';
import { LaneEdge } from '../LaneEdge.tsx';

interface WayRow {
  readonly way: Way;
  readonly topPx: number;
  readonly heightPx: number;
}

/** The crossover's column behind its drawing: the lanes' edges, and the lane under the pointer lifted. */
export function CrossoverColumn({
  column,
  rows,
  heightPx,
  children,
}: {
  readonly column: RefObject<HTMLDivElement | null>;
  readonly rows: readonly WayRow[];
  readonly heightPx: number;
  readonly children: ReactNode;
}) {
  const store = useWorkbenchStore();
  const lifted = useWorkbench((s) => s.lifted);
  const lift = (speakerId: string | null) => {
    const { lifted: now, lift: set } = store.getState();
    if (now !== speakerId) set(speakerId);
  };
  return (
    <div
      ref={column}
      className="lanes-crossover"
      style={{ minHeight: heightPx }}
      onPointerMove={(event) => {
        const y = event.clientY - event.currentTarget.getBoundingClientRect().top;
        lift(rows.find((row) => y >= row.topPx && y < row.topPx + row.heightPx)?.way.speakerId ?? null);
      }}
      onPointerLeave={() => lift(null)}
    >
      {rows.map((row) => (
        <div
          key={row.way.speakerId}
          className="lane-row"
          data-lifted={lifted === row.way.speakerId ? '' : undefined}
          style={{ top: row.topPx, height: row.heightPx }}
        >
          <LaneEdge index={row.way.index} heightPx={row.heightPx} />
        </div>
      ))}
      {children}
    </div>
  );
}
