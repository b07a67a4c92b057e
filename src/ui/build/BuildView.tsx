import { lazy, Suspense, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { ErrorBoundary } from '../frame/ErrorBoundary.tsx';
import './build-view.css';

const parts = () => import('./index.ts');
const BuildActions = lazy(async () => ({ default: (await parts()).BuildActions }));
const BuildSheet = lazy(async () => ({ default: (await parts()).BuildSheet }));

const FOR_A_PAIR = 2;

/** Whether Escape belongs to something that is open above the sheet: a panel, a list of choices. */
const isTaken = ({ target }: KeyboardEvent): boolean =>
  target instanceof HTMLSelectElement ||
  [...document.querySelectorAll('.popover:popover-open')].some((panel) => panel.checkVisibility());

/**
 * The page of the cabinet as wood, in place of the workbench while `open`. Its line at the top and the way back stand at once, the rest
 * is fetched when it is opened first. How many cabinets are built is kept while the page is.
 */
export function BuildView({ open, close }: { readonly open: boolean; readonly close: () => void }) {
  const [cabinets, setCabinets] = useState(FOR_A_PAIR);
  const heading = useRef<HTMLHeadingElement>(null);
  useLayoutEffect(() => {
    if (!open) return;
    const yPx = window.scrollY;
    const opener = document.activeElement;
    window.scrollTo(0, 0);
    heading.current?.focus({ preventScroll: true });
    return () => {
      // The workbench is there again only after this.
      requestAnimationFrame(() => {
        window.scrollTo(0, yPx);
        if (opener instanceof HTMLElement) opener.focus({ preventScroll: true });
      });
    };
  }, [open]);
  useEffect(() => {
    if (!open) return;
    const onKeyDown = (event: KeyboardEvent): void => {
      if (event.key !== 'Escape' || event.defaultPrevented || isTaken(event)) return;
      event.preventDefault();
      close();
    };
    window.addEventListener('keydown', onKeyDown);
    return () => window.removeEventListener('keydown', onKeyDown);
  }, [open, close]);
  if (!open) return null;
  return (
    <main className="build">
      <div className="build-bar">
        <button type="button" className="build-back" onClick={close} title="Back to the workbench (Esc)">
          Back to the workbench
        </button>
        <h1 ref={heading} tabIndex={-1} className="build-title">
          Build sheet
        </h1>
        <Suspense>
          <BuildActions cabinets={cabinets} />
        </Suspense>
      </div>
      <ErrorBoundary panel="the build sheet">
        <Suspense fallback={<p className="build-wait">Measuring the panels…</p>}>
          <BuildSheet cabinets={cabinets} setCabinets={setCabinets} />
        </Suspense>
      </ErrorBoundary>
    </main>
  );
}
