import { lazy, Suspense, useState } from 'react';
import type { Chamber } from '../../../../core/document/schema.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { useWays } from '../../useWays.ts';
import { Suitabilities } from './Suitabilities.tsx';

const ChamberMap = lazy(() => import('./ChamberMap.tsx'));

/** For a chamber behind a driver: the map of its alignments, loaded when it is opened, and what box suits the driver. */
export function Alignments({ chamber }: { readonly chamber: Chamber }) {
  const [open, setOpen] = useState(false);
  const ways = useWays();
  const partId = useWorkbench(
    (s) => s.project.enclosure.mounts.find((m) => m.chamberId === chamber.id)?.partId ?? null,
  );
  const way = ways.find(({ speakerId }) => speakerId === partId);
  if (way === undefined) return null;
  return (
    <>
      <details
        className="enclosure-fold"
        open={open}
        onToggle={(event) => {
          if (event.target === event.currentTarget) setOpen(event.currentTarget.open);
        }}
      >
        <summary>Alignments: volume against tuning</summary>
        {open ? (
          <Suspense fallback={<p className="lane-soft">Working out the map…</p>}>
            <ChamberMap key={chamber.id} chamber={chamber} />
          </Suspense>
        ) : null}
      </details>
      {way.driver?.role === 'tweeter' ? null : <Suitabilities speakerId={way.speakerId} name={way.name} />}
    </>
  );
}
