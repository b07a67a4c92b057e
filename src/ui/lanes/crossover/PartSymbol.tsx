import { memo } from 'react';
import type { PlacedPart } from '../../../core/schematic/plan.ts';
import { symbolOf } from '../../../plot/symbols.ts';
import { useWorkbench } from '../../useWorkbench.ts';
import { wayColour } from '../wayColour.ts';
import type { Mark } from './litPlaces.ts';
import { type SchematicView, xPx, yPx } from './schematicView.ts';

/** One part's symbol in the drawing. A speaker carries its way's colour. */
export const PartSymbol = memo(function PartSymbol({
  placed,
  view,
  mark,
  wayIndex,
}: {
  readonly placed: PlacedPart;
  readonly view: SchematicView;
  readonly mark: Mark | undefined;
  readonly wayIndex: number | null;
}) {
  const hasCore = useWorkbench((s) => {
    const part = s.project.network.parts.find((candidate) => candidate.id === placed.partId);
    return part?.kind === 'inductor' && part.coreLossTangent > 0;
  });
  const [first, second] = placed.pins;
  const lying = placed.orientation === 'horizontal';
  const isReversed = lying ? first.x > second.x : first.y > second.y;
  const { outline, solid } = symbolOf(placed.kind, isReversed, hasCore);
  const place = `translate(${xPx(view, placed.centre.x).toFixed(1)} ${yPx(view, placed.centre.y).toFixed(1)})`;
  // Between two lanes wires stretch and symbols do not: a lead closes what gap that leaves at an upright part.
  const leads = lying
    ? ''
    : placed.pins
        .map((pin) => {
          const drawn = yPx(view, placed.centre.y) + (pin.y - placed.centre.y) * view.unitPx;
          const x = xPx(view, pin.x).toFixed(1);
          return `M${x},${drawn.toFixed(1)}V${yPx(view, pin.y).toFixed(1)}`;
        })
        .join('');
  return (
    <>
      {leads === '' ? null : <path className="schematic-wire" d={leads} />}
      <g
        className="schematic-symbol"
        style={wayColour(wayIndex)}
        data-lit={mark}
        transform={`${place} rotate(${lying ? 0 : 90}) scale(${view.unitPx.toFixed(3)})`}
      >
        <path className="schematic-symbol-outline" d={outline} />
        {solid === '' ? null : <path className="schematic-symbol-solid" d={solid} />}
        {placed.kind === 'speaker' ? <circle className="schematic-symbol-way" r={0.26} /> : null}
      </g>
    </>
  );
});
