import { useCallback } from 'react';
import type { PlacedPart, SchematicPlan } from '../../../core/schematic/plan.ts';
import { useWhileOpen } from '../../fields/useWhileOpen.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { useWorkbenchStore } from '../../useWorkbenchStore.ts';
import { litPlaces, sameLit } from './litPlaces.ts';
import { PartSheet } from './PartSheet.tsx';
import { PartSymbol } from './PartSymbol.tsx';
import { SchematicPart } from './SchematicPart.tsx';
import { SchematicWires } from './SchematicWires.tsx';
import type { SchematicView } from './schematicView.ts';
import './schematic.css';
import { useAlike } from '../useAlike.ts';
import { useWays } from '../useWays.ts';

/** Where the drawing is small its text shrinks with it, so that the room kept for texts holds them; but not below this. */
const LEAST_TEXT_PX = 11;

const NOTHING: readonly never[] = [];

/**
 * The circuit as it is drawn by itself: every part picked, stepped and changed in place. `parts` are those shown, in
 * reading order; the wires are cut at the edges of the view.
 */
export function Schematic({
  plan,
  parts,
  view,
  widthPx,
  label,
  nodesNamed,
  startSection,
}: {
  readonly plan: SchematicPlan;
  readonly parts: readonly PlacedPart[];
  readonly view: SchematicView;
  readonly widthPx: number;
  readonly label: string;
  readonly nodesNamed: boolean;
  readonly startSection: (speakerId: string) => void;
}) {
  const store = useWorkbenchStore();
  const ways = useWays();
  const lit = useAlike((s) => litPlaces(s.problems, s.evaluation?.findings ?? NOTHING), sameLit);
  const [sheet, setSheet] = useWhileOpen<{ readonly partId: string; readonly anchor: DOMRect } | null>(null);
  const sheetPart = useWorkbench((s) => s.project.network.parts.find((part) => part.id === sheet?.partId));

  const openSheet = useCallback((partId: string, anchor: DOMRect) => setSheet({ partId, anchor }), [setSheet]);
  const enter = useCallback(
    (placed: PlacedPart) => {
      const lane = plan.lanes[placed.lane];
      const speakerId = lane?.kind === 'way' ? lane.partId : null;
      const { lifted, lift } = store.getState();
      if (lifted !== speakerId) lift(speakerId);
    },
    [plan, store],
  );
  const close = useCallback(
    (how: 'keyboard' | 'elsewhere') => {
      setSheet(null);
      if (how !== 'keyboard' || !sheet) return;
      const drawn = document.querySelector(`[data-part="${CSS.escape(sheet.partId)}"] button`);
      if (drawn instanceof HTMLElement) drawn.focus();
    },
    [sheet, setSheet],
  );
  const wayIndexOf = (partId: string) => ways.find((way) => way.speakerId === partId)?.index ?? null;
  return (
    <section
      className="schematic"
      aria-label={label}
      style={{
        width: widthPx,
        height: view.heightPx,
        fontSize: `min(1em, ${Math.max(LEAST_TEXT_PX, view.unitPx).toFixed(1)}px)`,
      }}
    >
      <svg className="schematic-drawing" width={widthPx} height={view.heightPx} aria-hidden="true">
        <SchematicWires plan={plan} view={view} lit={lit} named={nodesNamed} />
        {parts.map((placed) => (
          <PartSymbol
            key={placed.partId}
            placed={placed}
            view={view}
            mark={lit.parts.get(placed.partId)}
            wayIndex={wayIndexOf(placed.partId)}
          />
        ))}
      </svg>
      {parts.map((placed) => (
        <SchematicPart
          key={placed.partId}
          placed={placed}
          view={view}
          mark={lit.parts.get(placed.partId)}
          openSheet={openSheet}
          enter={enter}
        />
      ))}
      {sheet && sheetPart ? (
        <PartSheet
          key={sheet.partId}
          part={sheetPart}
          anchor={sheet.anchor}
          close={close}
          startSection={(speakerId) => {
            setSheet(null);
            startSection(speakerId);
          }}
        />
      ) : null}
    </section>
  );
}
