import { type CSSProperties, useEffect, useState } from 'react';
import { useWhileOpen } from '../fields/useWhileOpen.ts';
import { useWorkbench } from '../useWorkbench.ts';
import { NetlistPanel } from './crossover/netlist/NetlistPanel.tsx';
import { SectionPanel } from './crossover/sections/SectionPanel.tsx';
import { leastDrawingWidth } from './drawingUnit.ts';
import { AddWay } from './driver/AddWay.tsx';
import { LaneHeads } from './LaneHeads.tsx';
import { laneLayout } from './laneLayout.ts';
import { StackedLanes } from './StackedLanes.tsx';
import { TeachPort } from './TeachPort.tsx';
import { useBoxSize } from './useBoxSize.ts';
import { useRemPx } from './useRemPx.ts';
import { useWays } from './useWays.ts';
import { WideLanes } from './WideLanes.tsx';
import './lanes.css';

/** What lies open above the lanes, across all columns. */
export type Drawer =
  | { readonly kind: 'sections'; readonly speakerId: string | null }
  | { readonly kind: 'text' | 'way' };

/** The lanes: one row per way, crossover, driver and enclosure side by side, where everything is edited. */
export function Lanes() {
  const [ref, { widthPx }] = useBoxSize<HTMLDivElement>();
  const remPx = useRemPx();
  const layout = laneLayout(widthPx, remPx);
  const [drawer, setDrawer] = useWhileOpen<Drawer | null>(null);
  const [nodesNamed, setNodesNamed] = useState(false);
  const [edited, edit] = useWhileOpen<string | null>(null);
  const planWidth = useWorkbench((s) => s.schematic?.width ?? 0);
  const drawingLeast = { '--drawing-least': leastDrawingWidth(planWidth) } as CSSProperties;
  const parts = {
    layout,
    nodesNamed,
    edited,
    edit,
    startSection: (speakerId: string) => setDrawer({ kind: 'sections', speakerId }),
  };
  const ways = useWays();
  const picked = useWorkbench((s) => (s.selection?.kind === 'driver' ? s.selection.id : null));
  const pickedWay = ways.find((way) => way.driver?.id === picked)?.speakerId ?? null;
  // A driver picked anywhere, as by a finding about its data sheet, opens that sheet.
  useEffect(() => {
    if (pickedWay !== null) edit(pickedWay);
  }, [pickedWay, edit]);
  const opening = useWorkbench((s) => s.opening);
  const lesson = useWorkbench((s) => s.project.opensWith === 'teach-port');
  return (
    <div ref={ref} className="lanes" style={drawingLeast}>
      {lesson ? <TeachPort key={opening} /> : null}
      <LaneHeads
        layout={layout}
        drawer={drawer}
        setDrawer={setDrawer}
        nodesNamed={nodesNamed}
        setNodesNamed={setNodesNamed}
      />
      {drawer ? (
        <div className="lanes-drawer">
          {drawer.kind === 'sections' ? <SectionPanel key={drawer.speakerId} speakerId={drawer.speakerId} /> : null}
          {drawer.kind === 'text' ? <NetlistPanel /> : null}
          {drawer.kind === 'way' ? <AddWay done={() => setDrawer(null)} /> : null}
        </div>
      ) : null}
      {widthPx === 0 ? null : layout === 'stacked' ? <StackedLanes {...parts} /> : <WideLanes {...parts} />}
    </div>
  );
}
