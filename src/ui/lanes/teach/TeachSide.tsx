import type { Port } from '../../../core/document/schema.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import type { CabinetDrawing } from '../enclosure/cabinetDrawing.ts';
import { PortLengthHandle } from '../enclosure/PortLengthHandle.tsx';
import { SideView } from '../enclosure/SideView.tsx';
import { useBoxSize } from '../useBoxSize.ts';
import { useWindowHeight } from '../useWindowHeight.ts';
import '../enclosure/cabinet.css';

const MARGIN_PX = 26;
/** The plots take the upper part of the window and must stay in view with the whole box. */
const GREATEST_SHARE = 0.43;
const GREATEST_HEIGHT_PX = 400;

/** The side view of the box, as large as there is room, with the port's end to take hold of. */
export function TeachSide({ port }: { readonly port: Port }) {
  const [ref, { widthPx }] = useBoxSize<HTMLDivElement>();
  const { heightM, depthM } = useWorkbench((s) => s.project.enclosure);
  const highestPx = Math.min(GREATEST_HEIGHT_PX, GREATEST_SHARE * useWindowHeight());
  const pxPerM = Math.max(60, Math.min((widthPx - 2 * MARGIN_PX) / depthM, (highestPx - 2 * MARGIN_PX) / heightM));
  const heightPx = heightM * pxPerM + 2 * MARGIN_PX;
  const side = {
    leftPx: Math.max(MARGIN_PX, (widthPx - depthM * pxPerM) / 2),
    topPx: MARGIN_PX,
    widthPx: depthM * pxPerM,
    heightPx: heightM * pxPerM,
  };
  const drawing: CabinetDrawing = { pxPerM, side, front: { ...side, widthPx: 0 }, widthPx, heightPx };
  return (
    <div ref={ref} className="teach-port-box" style={{ height: heightPx }}>
      {widthPx > 0 ? (
        <>
          <svg className="cabinet-drawing" width={widthPx} height={heightPx} aria-hidden="true">
            <SideView drawing={drawing} />
          </svg>
          <PortLengthHandle drawing={drawing} port={port} />
        </>
      ) : null}
    </div>
  );
}
