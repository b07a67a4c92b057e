import { useRef } from 'react';
import type { PlacedPart, TextAnchor } from '../../../core/schematic/plan.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import type { Mark } from './litPlaces.ts';
import { PartValue } from './PartValue.tsx';
import { partName } from './partNames.ts';
import { type SchematicView, xPx, yPx } from './schematicView.ts';

/** Half of what a symbol covers across its length, in drawing units. */
const HALF_THICKNESS = 1;
const LEAST_TARGET_PX = 24;

/** The handle over one part of the drawing: picks it, opens its menu, and holds its name and its value. */
export function SchematicPart({
  placed,
  view,
  mark,
  openSheet,
  enter,
}: {
  readonly placed: PlacedPart;
  readonly view: SchematicView;
  readonly mark: Mark | undefined;
  readonly openSheet: (partId: string, anchor: DOMRect) => void;
  /** Pointer or focus came to this part. */
  readonly enter: (placed: PlacedPart) => void;
}) {
  const store = useWorkbenchStore();
  const button = useRef<HTMLButtonElement>(null);
  const part = useWorkbench((s) => s.project.network.parts.find((candidate) => candidate.id === placed.partId));
  const drivers = useWorkbench((s) => s.project.drivers);
  const system = useWorkbench((s) => s.settings.units);
  const picked = useWorkbench(
    (s) => (s.selection?.kind === 'part' || s.selection?.kind === 'speaker') && s.selection.id === placed.partId,
  );
  if (!part) return null;
  const pick = () => store.getState().select({ kind: part.kind === 'speaker' ? 'speaker' : 'part', id: part.id });
  const open = () => {
    if (!button.current) return;
    pick();
    openSheet(part.id, button.current.getBoundingClientRect());
  };
  const box = boxOf(placed, view);
  return (
    <div className="schematic-part" data-part={part.id} data-lit={mark} onPointerEnter={() => enter(placed)}>
      <button
        ref={button}
        type="button"
        className="schematic-part-handle"
        style={{ left: box.leftPx, top: box.topPx, width: box.widthPx, height: box.heightPx }}
        aria-label={partName(part, drivers, system)}
        aria-pressed={picked}
        aria-haspopup="dialog"
        onFocus={() => enter(placed)}
        onClick={(event) => {
          // A key press counts as a click without a pointer.
          if (event.detail === 0) open();
          else pick();
        }}
        onDoubleClick={open}
        onContextMenu={(event) => {
          event.preventDefault();
          open();
        }}
      />
      {picked ? (
        <button
          type="button"
          className="schematic-part-more"
          style={{ left: box.leftPx + box.widthPx, top: box.topPx }}
          aria-label={`What can be done with ${part.id}`}
          aria-haspopup="dialog"
          tabIndex={-1}
          onClick={open}
        >
          ⋯
        </button>
      ) : null}
      <span className="schematic-name" aria-hidden="true" style={anchorStyle(placed, placed.nameAnchor, view)}>
        {part.id}
      </span>
      <span className="schematic-value" style={anchorStyle(placed, placed.valueAnchor, view)}>
        <PartValue part={part} />
      </span>
    </div>
  );
}

function boxOf(placed: PlacedPart, view: SchematicView) {
  const [a, b] = placed.pins;
  const lying = placed.orientation === 'horizontal';
  const thick = HALF_THICKNESS * view.scale.unitPx;
  const x1 = xPx(view, Math.min(a.x, b.x));
  const x2 = xPx(view, Math.max(a.x, b.x));
  const middle = yPx(view, placed.centre.y);
  const half = (Math.abs(a.y - b.y) / 2) * view.scale.unitPx;
  const widthPx = Math.max(LEAST_TARGET_PX, lying ? x2 - x1 : 2 * thick);
  const heightPx = Math.max(LEAST_TARGET_PX, lying ? 2 * thick : 2 * half);
  return { leftPx: (x1 + x2 - widthPx) / 2, topPx: middle - heightPx / 2, widthPx, heightPx };
}

const SHIFT: Readonly<Record<TextAnchor['align'], string>> = {
  start: '0 -50%',
  middle: '-50% -50%',
  end: '-100% -50%',
};

/** Texts keep their distance to the symbol, which is as rigid as they are. */
const anchorStyle = (placed: PlacedPart, anchor: TextAnchor, view: SchematicView) => ({
  left: xPx(view, anchor.x),
  top: yPx(view, placed.centre.y) + (anchor.y - placed.centre.y) * view.scale.unitPx,
  translate: SHIFT[anchor.align],
});
