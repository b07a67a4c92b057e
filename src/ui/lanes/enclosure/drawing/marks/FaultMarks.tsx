import { useState } from 'react';
import { useWorkbench } from '../../../../useWorkbench.ts';
import type { Box } from '../cabinetDrawing.ts';
import type { Fault } from './useFaults.ts';

/** Between a mark and what it says. */
const GAP_PX = 4;

/** Outlines round what is in the way of something. */
export function FaultOutlines({ boxes }: { readonly boxes: readonly { readonly fault: Fault; readonly box: Box }[] }) {
  return boxes.map(({ fault, box }) => (
    <rect
      key={`${fault.kind} ${fault.id} ${box.leftPx}`}
      className="cabinet-fault"
      data-severity={fault.severity}
      x={box.leftPx}
      y={box.topPx}
      width={box.widthPx}
      height={box.heightPx}
      rx={4}
    />
  ));
}

/** A mark beside each of them: pointed at or focused it says what is wrong; pressed it picks the thing. */
export function FaultMarks({
  marks,
  heightPx,
}: {
  readonly marks: readonly { readonly fault: Fault; readonly box: Box }[];
  /** Of the drawing: what is said of its lower half stands above the mark. */
  readonly heightPx: number;
}) {
  const select = useWorkbench((s) => s.select);
  const [said, say] = useState<string | null>(null);
  const shown = marks.find(({ fault }) => `${fault.kind} ${fault.id}` === said);
  return (
    <>
      {marks.map(({ fault, box }) => {
        const key = `${fault.kind} ${fault.id}`;
        return (
          <button
            key={key}
            type="button"
            className="cabinet-mark"
            data-severity={fault.severity}
            style={{ left: box.leftPx, top: box.topPx, width: box.widthPx, height: box.heightPx }}
            aria-label={`Does not fit: ${fault.sentences.join(' ')}`}
            onClick={() => select({ kind: fault.kind === 'mount' ? 'speaker' : 'port', id: fault.id })}
            onPointerEnter={() => say(key)}
            onPointerLeave={() => say(null)}
            onFocus={() => say(key)}
            onBlur={() => say(null)}
          >
            <svg viewBox="0 0 16 16" aria-hidden="true">
              <path className="cabinet-mark-line" d="M8 1 15 14H1Z" />
              <path className="cabinet-mark-line" d="M8 5.5v4M8 11v1.4" />
            </svg>
          </button>
        );
      })}
      {shown ? (
        <p
          className="cabinet-said"
          role="status"
          data-above={shown.box.topPx > heightPx / 2 ? '' : undefined}
          style={{ top: shown.box.topPx + (shown.box.topPx > heightPx / 2 ? -GAP_PX : shown.box.heightPx + GAP_PX) }}
        >
          {shown.fault.sentences.join(' ')}
        </p>
      ) : null}
    </>
  );
}
