import { memo, useRef } from 'react';
import type { PlacedPart, TextAnchor } from '../../../core/schematic/plan.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { useShown } from '../useShown.ts';
import type { Mark } from './litPlaces.ts';
import { PartValue } from './PartValue.tsx';
import { partHandle } from './partHandle.ts';
import { partName } from './partNames.ts';
import { type SchematicView, xPx, yPx } from './schematicView.ts';

/** The handle over one part of the drawing: picks it, opens its menu, and holds its name and its value. */
export const SchematicPart = memo(function SchematicPart({
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
  useShown(button, picked, '.schematic');
  if (!part) return null;
  const pick = () => store.getState().select({ kind: part.kind === 'speaker' ? 'speaker' : 'part', id: part.id });
  const open = () => {
    if (!button.current) return;
    pick();
    openSheet(part.id, button.current.getBoundingClientRect());
  };
  const box = partHandle(placed, view);
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
      <span
        className="schematic-name"
        data-align={placed.nameAnchor.align}
        aria-hidden="true"
        style={anchorStyle(placed, placed.nameAnchor, view)}
      >
        {part.id}
      </span>
      <span
        className="schematic-value"
        data-align={placed.valueAnchor.align}
        style={anchorStyle(placed, placed.valueAnchor, view)}
      >
        <PartValue part={part} />
      </span>
    </div>
  );
});

const SHIFT: Readonly<Record<TextAnchor['align'], string>> = {
  start: '0 -50%',
  middle: '-50% -50%',
  end: '-100% -50%',
};

/** Texts keep their distance to the symbol, which is as rigid as they are. */
const anchorStyle = (placed: PlacedPart, anchor: TextAnchor, view: SchematicView) => ({
  left: xPx(view, anchor.x),
  top: yPx(view, placed.centre.y) + (anchor.y - placed.centre.y) * view.unitPx,
  translate: SHIFT[anchor.align],
});
