import { type RefObject, useEffect, useLayoutEffect, useRef, useState } from 'react';
import { useWorkbenchStore } from '../useWorkbenchStore.ts';
import { type PlotFrame, PlotPainter } from './PlotPainter.ts';
import type { PlotStructure } from './plotStructure.ts';
import { whenPointerLetsGo } from './pointerHeld.ts';
import type { PlotView } from './view.ts';

/**
 * Ties a painter to a component: follows the store, the size and the theme. Returns the frame to render, null when there is
 * nothing to show and undefined before that is known; `write` is called
 * after every painted frame, and after every render of a new structure, to put places and readings into the page.
 */
export function usePlotPainter(
  view: PlotView,
  body: RefObject<HTMLElement | null>,
  canvas: RefObject<HTMLCanvasElement | null>,
  write: (frame: PlotFrame) => void,
): PlotStructure | null | undefined {
  const store = useWorkbenchStore();
  const [structure, setStructure] = useState<PlotStructure | null>();
  const writing = useRef(write);
  writing.current = write;
  const frame = useRef<PlotFrame | null>(null);

  useEffect(() => {
    if (!body.current || !canvas.current) return;
    const box = body.current;
    const painter = new PlotPainter(canvas.current, store, view, {
      onStructure: setStructure,
      onFrame: (next) => {
        frame.current = next;
        writing.current(next);
      },
    });
    const refit = () => painter.refit(box.clientWidth, box.clientHeight);
    const sizes = new ResizeObserver(refit);
    sizes.observe(box);
    const theme = new MutationObserver(refit);
    theme.observe(document.documentElement, { attributes: true, attributeFilter: ['data-theme', 'data-large'] });
    const dark = window.matchMedia('(prefers-color-scheme: dark)');
    dark.addEventListener('change', refit);
    const unsubscribe = store.subscribe((next, before) => {
      const same =
        next.project === before.project &&
        next.evaluation === before.evaluation &&
        next.ghosts === before.ghosts &&
        next.settings === before.settings &&
        next.cursorHz === before.cursorHz &&
        next.lifted === before.lifted;
      if (!same) painter.request();
    });
    const letGo = whenPointerLetsGo(painter.request);
    return () => {
      letGo();
      unsubscribe();
      dark.removeEventListener('change', refit);
      theme.disconnect();
      sizes.disconnect();
      painter.stop();
    };
  }, [store, view, body, canvas]);

  useLayoutEffect(() => {
    if (structure && frame.current) writing.current(frame.current);
  }, [structure]);

  return structure;
}
