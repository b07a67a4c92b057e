import type { StoreApi } from 'zustand';
import type { Workbench } from '../state/workbench.ts';

/** Set where the handler of an input event begins that leads to an edit. */
export const EDIT_MARK = 'conewright:edit';
/** From there to the first task after the frame that shows the edit. */
export const PAINT_MEASURE = 'conewright:paint';

const MOST_KEPT = 5000;
const INPUT_EVENTS = ['keydown', 'pointerdown', 'pointermove', 'pointerup', 'input', 'change', 'click'] as const;

/**
 * Measures every edit from its input event's handler to the first task after the frame that shows it, as entries of the
 * performance timeline, for the benchmark and for anyone who looks at a profile. Wraps `dispatch`; edits of one frame are
 * one measure, from the first of them. A long session does not gather entries without end.
 */
export function markEdits(store: StoreApi<Workbench>): void {
  let inputAt: number | null = null;
  let editAt: number | null = null;
  let kept = 0;
  // The first listener of all: its time is when the handlers of this event begin.
  for (const type of INPUT_EVENTS) {
    const noteTime = (): void => {
      inputAt = performance.now();
    };
    window.addEventListener(type, noteTime, { capture: true, passive: true });
  }
  const afterFrame = new MessageChannel();
  afterFrame.port1.onmessage = () => {
    if (editAt === null) return;
    performance.measure(PAINT_MEASURE, { start: editAt, end: performance.now() });
    editAt = null;
    if (++kept < MOST_KEPT) return;
    performance.clearMarks(EDIT_MARK);
    performance.clearMeasures(PAINT_MEASURE);
    kept = 0;
  };
  const { dispatch } = store.getState();
  store.setState({
    dispatch: (command) => {
      const startAt = inputAt ?? performance.now();
      inputAt = null;
      const problems = dispatch(command);
      if (problems.length > 0 || editAt !== null) return problems;
      editAt = startAt;
      performance.mark(EDIT_MARK, { startTime: startAt });
      // The plots have asked for their frame before this one, so that it runs last of them; the task after it comes when
      // the frame has been handed over.
      requestAnimationFrame(() => afterFrame.port2.postMessage(null));
      return problems;
    },
  });
}
