import { useMemo } from 'react';
import type { PlacedPart } from '../../core/schematic/plan.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { readingOrder } from './crossover/readingOrder.ts';
import { StackedBand } from './crossover/StackedBand.tsx';
import { drawingUnit, rowUnit } from './drawingUnit.ts';
import { DriverCard } from './driver/DriverCard.tsx';
import { DriverEditor } from './driver/DriverEditor.tsx';
import { CabinetViews } from './enclosure/drawing/CabinetViews.tsx';
import { EnclosurePanels } from './enclosure/EnclosurePanels.tsx';
import { LaneEdge } from './LaneEdge.tsx';
import { laneScale } from './laneScale.ts';
import { lanesOf } from './lanesOf.ts';
import type { LanesPartProps } from './lanesPart.ts';
import { useBoxSize } from './useBoxSize.ts';
import { useRemPx } from './useRemPx.ts';
import { useWays } from './useWays.ts';

const LEFT_PX = 14;
const RIGHT_PX = 8;
const NOTHING = () => 0;
const NO_LEADS: ReadonlyMap<string, number> = new Map();

/** The lanes below one another for a narrow screen: each way's stretch of the circuit, its driver, then the cabinet. */
export function StackedLanes({ nodesNamed, startSection, edited, edit }: LanesPartProps) {
  const [column, { widthPx }] = useBoxSize<HTMLDivElement>();
  const plan = useWorkbench((s) => s.schematic);
  const ways = useWays();
  const remPx = useRemPx();
  const spanM = Math.max(0, ...ways.map((way) => way.driver?.outerDiameterM ?? 0));
  const unitPx = drawingUnit((plan?.width ?? 0) - (plan?.trunkWidth ?? 0), widthPx - LEFT_PX - RIGHT_PX, remPx);
  const scale = useMemo(
    () => laneScale(lanesOf(plan, ways), plan?.height ?? 0, rowUnit(unitPx), NOTHING, NOTHING),
    [plan, ways, unitPx],
  );
  const bands = useMemo(() => bandsOf(plan ? readingOrder(plan) : [], scale.rows), [plan, scale]);
  return (
    <div ref={column} className="lanes-stack">
      {scale.rows.map((row, k) => {
        const way = ways.find((candidate) => candidate.speakerId === row.lane.partId);
        return (
          <section
            key={row.lane.partId ?? `${row.lane.kind} ${row.lane.top}`}
            className="lanes-stacked"
            aria-label={way?.name ?? 'shared parts'}
          >
            {way ? <LaneEdge index={way.index} heightPx={row.heightPx} /> : null}
            {plan && widthPx > 0 ? (
              <div className="lanes-scroller">
                <StackedBand
                  plan={plan}
                  parts={bands[k] ?? []}
                  scale={scale}
                  unitPx={unitPx}
                  row={row}
                  widthPx={widthPx}
                  label={`Circuit of the ${way?.name ?? 'shared parts'}`}
                  nodesNamed={nodesNamed}
                  startSection={startSection}
                />
              </div>
            ) : null}
            {way ? (
              <DriverCard
                way={way}
                spanM={spanM}
                editing={edited === way.speakerId}
                edit={(open) => edit(open ? way.speakerId : null)}
              />
            ) : null}
            {way?.driver && edited === way.speakerId ? <DriverEditor driver={way.driver} way={way} /> : null}
          </section>
        );
      })}
      <CabinetViews heightPx={0} leadsPx={NO_LEADS} />
      <EnclosurePanels />
    </div>
  );
}

/** The parts that belong to each row: by height, those between rows to the next one below. */
function bandsOf(
  parts: readonly PlacedPart[],
  rows: readonly { readonly lane: { readonly bottom: number } }[],
): PlacedPart[][] {
  const bands: PlacedPart[][] = rows.map(() => []);
  for (const placed of parts) {
    const k = rows.findIndex((row) => placed.centre.y <= row.lane.bottom);
    bands[k === -1 ? rows.length - 1 : k]?.push(placed);
  }
  return bands;
}
