import { useMemo } from 'react';
import { useWorkbench } from '../../useWorkbench.ts';
import { useBoxSize } from '../useBoxSize.ts';
import { useWindowHeight } from '../useWindowHeight.ts';
import { cabinetDrawing } from './cabinetDrawing.ts';
import { DimensionFields, DimensionLines } from './DimensionFields.tsx';
import { EarMark } from './EarMark.tsx';
import { FrontHandles } from './FrontHandles.tsx';
import { FrontView } from './FrontView.tsx';
import { Leads } from './Leads.tsx';
import { PortLengthHandle } from './PortLengthHandle.tsx';
import { SideView } from './SideView.tsx';
import './cabinet.css';

const LEAST_HEIGHT_PX = 340;
/** Height of what stays above and below the lanes: what is left of the window should show the cabinet whole. */
const AROUND_PX = 450;
const LEAST_GREATEST_PX = 420;

/** Front and side view of the cabinet at one scale, everything on them moved and measured in place. */
export function CabinetViews({
  heightPx,
  leadsPx,
}: {
  /** Height of the rows beside it, which it fills within reason. */
  readonly heightPx: number;
  readonly leadsPx: ReadonlyMap<string, number>;
}) {
  const [ref, { widthPx }] = useBoxSize<HTMLDivElement>();
  const widthM = useWorkbench((s) => s.project.enclosure.widthM);
  const heightM = useWorkbench((s) => s.project.enclosure.heightM);
  const depthM = useWorkbench((s) => s.project.enclosure.depthM);
  const ports = useWorkbench((s) => s.project.enclosure.ports);
  const windowPx = useWindowHeight();
  const greatestPx = Math.max(LEAST_GREATEST_PX, windowPx - AROUND_PX);
  const spacePx = Math.min(greatestPx, Math.max(LEAST_HEIGHT_PX, heightPx));
  const drawing = useMemo(
    () => cabinetDrawing({ widthM, heightM, depthM }, widthPx, spacePx),
    [widthM, heightM, depthM, widthPx, spacePx],
  );
  return (
    <div ref={ref} className="cabinet" style={{ height: drawing.heightPx }}>
      {widthPx > 0 ? (
        <>
          <svg className="cabinet-drawing" width={widthPx} height={drawing.heightPx} aria-hidden="true">
            <FrontView drawing={drawing} />
            <Leads drawing={drawing} leadsPx={leadsPx} />
            <EarMark drawing={drawing} />
            <SideView drawing={drawing} />
            <DimensionLines drawing={drawing} />
          </svg>
          <FrontHandles drawing={drawing} />
          {ports.map((port) => (
            <PortLengthHandle key={port.id} drawing={drawing} port={port} />
          ))}
          <DimensionFields drawing={drawing} />
        </>
      ) : null}
    </div>
  );
}
