import type { Port } from '../../../core/document/schema.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import type { SideDrawing } from '../enclosure/drawing/cabinetDrawing.ts';
import { SideWords } from '../enclosure/drawing/labels/SideWords.tsx';
import { PortLengthHandle } from '../enclosure/drawing/side/PortLengthHandle.tsx';
import { SideView } from '../enclosure/drawing/side/SideView.tsx';
import { useBoxSize } from '../useBoxSize.ts';
import { useWindowHeight } from '../useWindowHeight.ts';
import '../enclosure/drawing/cabinet.css';
import '../enclosure/drawing/handles.css';

const MARGIN_PX = 26;
/** The plots take the upper part of the window and must stay in view with the whole box. */
const GREATEST_SHARE = 0.43;
const GREATEST_HEIGHT_PX = 400;
/** The type of the words in the box against that in the lanes, as in the style sheet. */
const ENLARGED = 1.6;

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
  const drawing: SideDrawing = { pxPerM, side };
  return (
    <div ref={ref} className="teach-port-box" style={{ height: heightPx }}>
      {widthPx > 0 ? (
        <>
          <svg className="cabinet-drawing" width={widthPx} height={heightPx} aria-hidden="true">
            <SideView drawing={drawing} />
            <SideWords drawing={drawing} enlarged={ENLARGED} />
          </svg>
          <PortLengthHandle drawing={drawing} port={port} />
        </>
      ) : null}
    </div>
  );
}
