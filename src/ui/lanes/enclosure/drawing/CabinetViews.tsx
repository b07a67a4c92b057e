import { useMemo, useState } from 'react';
import { quantityText } from '../../../../core/units/formatQuantity.ts';
import { showInField } from '../../../fields/showInField.ts';
import { useWorkbench } from '../../../useWorkbench.ts';
import { useBoxSize } from '../../useBoxSize.ts';
import { useRemPx } from '../../useRemPx.ts';
import { useWays } from '../../useWays.ts';
import { useWindowHeight } from '../../useWindowHeight.ts';
import { partitions } from '../sideChambers.ts';
import { type CabinetDrawing, cabinetDrawing } from './cabinetDrawing.ts';
import { EarMark } from './front/EarMark.tsx';
import { FrontHandles } from './front/FrontHandles.tsx';
import { FrontView } from './front/FrontView.tsx';
import { Leads } from './front/Leads.tsx';
import { CabinetHints } from './hints/CabinetHints.tsx';
import { DimensionFields, DimensionLines } from './labels/DimensionFields.tsx';
import { SideWords } from './labels/SideWords.tsx';
import { useDimensions } from './labels/useDimensions.ts';
import { FaultMarks, FaultOutlines } from './marks/FaultMarks.tsx';
import { SectionView } from './section/SectionView.tsx';
import { sectionHeight } from './section/sectionHeight.ts';
import { PortLengthHandle } from './side/PortLengthHandle.tsx';
import { SideView } from './side/SideView.tsx';
import './cabinet.css';
import './handles.css';

const LEAST_HEIGHT_PX = 340;
/** Height of what stays above and below the lanes: what is left of the window should show the cabinet whole. */
const AROUND_PX = 450;
const LEAST_GREATEST_PX = 420;
/** Width, in plain type, from which values find room to the right of the side view. */
const LEAST_CHAINED_PX = 320;

/** Front view, side view and section of the cabinet at one scale, everything on them moved and measured in place. */
export function CabinetViews({
  heightPx,
  leadsPx,
}: {
  /** Height of the rows beside it, which it fills within reason. */
  readonly heightPx: number;
  readonly leadsPx: ReadonlyMap<string, number>;
}) {
  const [ref, { widthPx }] = useBoxSize<HTMLDivElement>();
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const [wanted, want] = useState<'side' | 'section'>('side');
  const typeScale = useRemPx() / 16;
  const windowPx = useWindowHeight();
  const greatestPx = Math.max(LEAST_GREATEST_PX, windowPx - AROUND_PX);
  const spacePx = Math.min(greatestPx, Math.max(LEAST_HEIGHT_PX, heightPx));
  const drawing = useMemo(() => {
    const boards = partitions(enclosure);
    const { braces } = enclosure.wood;
    const needs = {
      typeScale,
      wanted,
      // Where words take more room than the cabinet its boards are set in the panels below.
      chained:
        widthPx >= LEAST_CHAINED_PX * typeScale &&
        (boards.some(({ behind }) => behind === null) || braces.some(({ lies }) => lies === 'level')),
      secondRow: boards.some(({ behind }) => behind !== null) || braces.some(({ lies }) => lies !== 'level'),
    };
    return cabinetDrawing(enclosure, widthPx, spacePx, needs);
  }, [enclosure, widthPx, spacePx, typeScale, wanted]);
  return (
    <div className="cabinet-frame">
      <div ref={ref} className="cabinet" style={{ height: drawing.heightPx }}>
        {widthPx > 0 ? <Views drawing={drawing} leadsPx={leadsPx} wanted={wanted} want={want} /> : null}
      </div>
      <CabinetHints />
    </div>
  );
}

function Views({
  drawing,
  leadsPx,
  wanted,
  want,
}: {
  readonly drawing: CabinetDrawing;
  readonly leadsPx: ReadonlyMap<string, number>;
  readonly wanted: 'side' | 'section';
  readonly want: (view: 'side' | 'section') => void;
}) {
  const enclosure = useWorkbench((s) => s.project.enclosure);
  const selection = useWorkbench((s) => s.selection);
  const system = useWorkbench((s) => s.settings.units);
  const ways = useWays();
  const { placed, taken, outlines, marks } = useDimensions(drawing, ways);
  const { pxPerM, front } = drawing;
  const side = drawing.side ? { side: drawing.side, pxPerM } : null;
  const section = drawing.section ? { section: drawing.section, pxPerM } : null;
  const yM = sectionHeight(enclosure, selection);
  const cutAt = quantityText(showInField(yM, 'length', system, 'mm'));
  const second = drawing.side ?? drawing.section ?? front;
  return (
    <>
      <svg className="cabinet-drawing" width={drawing.widthPx} height={drawing.heightPx} aria-hidden="true">
        <FrontView drawing={drawing} />
        <Leads drawing={drawing} leadsPx={leadsPx} />
        <EarMark drawing={drawing} />
        {side ? <SideView drawing={side} /> : null}
        {side ? <SideWords drawing={side} taken={taken} /> : null}
        {section ? <SectionView drawing={section} yM={yM} /> : null}
        {side && !drawing.switched ? (
          <text className="cabinet-title" x={side.side.leftPx + side.side.widthPx / 2} y={side.side.topPx - 11}>
            side
          </text>
        ) : null}
        {section && !drawing.switched ? (
          <text className="cabinet-title" x={section.section.leftPx + section.section.widthPx / 2} y={front.topPx - 11}>
            {`cut at ${cutAt}`}
          </text>
        ) : null}
        <FaultOutlines boxes={outlines} />
        <DimensionLines placed={placed} />
      </svg>
      {drawing.switched ? (
        <fieldset className="cabinet-switch" style={{ left: second.leftPx + second.widthPx / 2, top: 2 }}>
          <legend className="unseen">What is shown beside the front</legend>
          <button type="button" className="lane-button" aria-pressed={wanted === 'side'} onClick={() => want('side')}>
            side
          </button>
          <button
            type="button"
            className="lane-button"
            aria-pressed={wanted === 'section'}
            aria-label={`section at ${cutAt}`}
            onClick={() => want('section')}
          >
            {wanted === 'section' ? `cut at ${cutAt}` : 'section'}
          </button>
        </fieldset>
      ) : null}
      <FrontHandles drawing={drawing} />
      {side
        ? enclosure.ports.map((port) =>
            port.bends === 0 ? <PortLengthHandle key={port.id} drawing={side} port={port} /> : null,
          )
        : null}
      <DimensionFields placed={placed} />
      <FaultMarks marks={marks} heightPx={drawing.heightPx} />
    </>
  );
}
