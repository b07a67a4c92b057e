import { lazy, Suspense } from 'react';
import { useWorkbench } from '../useWorkbench.ts';

const CurvePanel = lazy(() => import('./curve/CurvePanel.tsx'));

/** Stands under the plots while measured columns wait to be told what they are. */
export function PendingCurveLine() {
  const pending = useWorkbench((s) => s.pendingCurve);
  if (pending === null) return null;
  return (
    <Suspense fallback={<p className="frame-soft">Reading “{pending.fileName}”…</p>}>
      <CurvePanel pending={pending} />
    </Suspense>
  );
}
