import { lazy, Suspense } from 'react';
import { useWorkbench } from '../useWorkbench.ts';
import { KeepForm } from './KeepForm.tsx';
import { Popover } from './Popover.tsx';
import { placeBelowAnswer } from './placeBelowAnswer.ts';
import { placeBeside } from './placeBeside.ts';

const CompareTable = lazy(() => import('./CompareTable.tsx'));

/** What the kept states and the present one differ in, and the way back to either. */
export function CompareButton() {
  const kept = useWorkbench((s) => s.project.snapshots.length);
  return (
    <Popover
      face={kept > 0 ? `Compare ${kept} kept` : 'Compare'}
      label="What differs from the kept states"
      place={kept > 0 ? placeBelowAnswer : placeBeside}
    >
      {(close) => (
        <Suspense fallback={<p className="frame-soft">One moment…</p>}>
          <KeepForm />
          <CompareTable close={close} />
        </Suspense>
      )}
    </Popover>
  );
}
