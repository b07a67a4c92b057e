import { useMemo } from 'react';
import { useWorkbench } from '../useWorkbench.ts';
import { BareCrossover } from './crossover/BareCrossover.tsx';
import { CrossoverColumn } from './crossover/CrossoverColumn.tsx';
import { readingOrder } from './crossover/readingOrder.ts';
import { Schematic } from './crossover/Schematic.tsx';
import { drawingUnit, rowUnit, WIDE_MARGINS_PX } from './drawingUnit.ts';
import { DriverCard } from './driver/DriverCard.tsx';
import { DriverEditor } from './driver/DriverEditor.tsx';
import { CabinetViews } from './enclosure/drawing/CabinetViews.tsx';
import { EnclosurePanels } from './enclosure/EnclosurePanels.tsx';
import { LaneRow } from './LaneRow.tsx';
import { laneScale } from './laneScale.ts';
import { lanesOf } from './lanesOf.ts';
import type { LanesPartProps } from './lanesPart.ts';
import { useBoxSize } from './useBoxSize.ts';
import { useRemPx } from './useRemPx.ts';
import { useRowHeights } from './useRowHeights.ts';
import { useWays } from './useWays.ts';

const { left: LEFT_PX, right: RIGHT_PX } = WIDE_MARGINS_PX;
const LEAST_ROW_REM = 7.5;
/** Key of the open data sheet among the measured heights; no part can be called so. */
const SHEET = '(sheet)';
/** Where a lead leaves its row: beside the driver's drawing on the card. */
const LEAD_REM = 2.75;

/** The lanes side by side: one drawing of the crossover across all rows, a card in each row, the cabinet beside them. */
export function WideLanes({ layout, nodesNamed, startSection, edited, edit }: LanesPartProps) {
  const [column, { widthPx }] = useBoxSize<HTMLDivElement>();
  const plan = useWorkbench((s) => s.schematic);
  const ways = useWays();
  const remPx = useRemPx();
  const { heights, refOf } = useRowHeights();
  const spanM = Math.max(0, ...ways.map((way) => way.driver?.outerDiameterM ?? 0));
  const unitPx = drawingUnit(plan?.width ?? 0, widthPx - LEFT_PX - RIGHT_PX, remPx);
  const lanes = useMemo(() => lanesOf(plan, ways), [plan, ways]);
  const sheetPx = heights.get(SHEET) ?? 0;
  const scale = useMemo(
    () =>
      laneScale(
        lanes,
        plan?.height ?? 0,
        rowUnit(unitPx),
        (lane) => (lane.kind === 'way' ? Math.max(LEAST_ROW_REM * remPx, heights.get(lane.partId ?? '') ?? 0) : 0),
        // The open data sheet lies below its row's drawing and card and pushes the next lane down.
        (lane) => (lane.partId !== null && lane.partId === edited ? sheetPx : 0),
      ),
    [lanes, plan, unitPx, remPx, heights, edited, sheetPx],
  );
  const view = useMemo(() => ({ unitPx, scale, topPx: 0, heightPx: scale.heightPx, leftPx: LEFT_PX }), [unitPx, scale]);
  const parts = useMemo(() => (plan ? readingOrder(plan) : []), [plan]);
  const rows = scale.rows.flatMap((row) => {
    const way = ways.find((candidate) => candidate.speakerId === row.lane.partId);
    return row.lane.kind === 'way' && way ? [{ ...row, way }] : [];
  });
  const open = rows.find((row) => row.way.speakerId === edited);
  const leadsPx = new Map(rows.map((row) => [row.way.speakerId, row.topPx + LEAD_REM * remPx]));
  const isBare = useWorkbench((s) =>
    s.project.network.parts.every(({ kind }) => kind === 'speaker' || kind === 'amplifier'),
  );
  const drawnPx = Math.max(widthPx, LEFT_PX + RIGHT_PX + (plan?.width ?? 0) * unitPx);
  return (
    <div className="lanes-body" data-layout={layout}>
      <CrossoverColumn column={column} rows={rows} heightPx={scale.heightPx}>
        {plan && widthPx > 0 ? (
          <div className="lanes-scroller">
            <Schematic
              plan={plan}
              parts={parts}
              view={view}
              widthPx={drawnPx}
              label="Crossover circuit"
              nodesNamed={nodesNamed}
              startSection={startSection}
            />
            {isBare ? <BareCrossover startSection={startSection} /> : null}
          </div>
        ) : (
          <p className="lanes-empty">The circuit cannot be drawn yet: the line above the lanes says why.</p>
        )}
      </CrossoverColumn>
      <div className="lanes-drivers" style={{ minHeight: scale.heightPx }}>
        {rows.map(({ way, topPx, heightPx }) => (
          <LaneRow key={way.speakerId} way={way} topPx={topPx} heightPx={heightPx} measured={refOf(way.speakerId)}>
            <DriverCard
              way={way}
              spanM={spanM}
              editing={edited === way.speakerId}
              edit={(open) => edit(open ? way.speakerId : null)}
            />
          </LaneRow>
        ))}
      </div>
      {open?.way.driver ? (
        <div ref={refOf(SHEET)} className="lanes-sheet" style={{ marginTop: open.topPx + open.heightPx - sheetPx }}>
          <DriverEditor driver={open.way.driver} way={open.way} />
        </div>
      ) : null}
      <div className="lanes-enclosure">
        <CabinetViews heightPx={scale.heightPx} leadsPx={layout === 'three-columns' ? leadsPx : NO_LEADS} />
        <EnclosurePanels />
      </div>
    </div>
  );
}

const NO_LEADS: ReadonlyMap<string, number> = new Map();
