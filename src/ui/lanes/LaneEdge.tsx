import { wayColour } from './wayColour.ts';

/** The coloured edge of a lane, with the dash pattern of its curve. Decoration. */
export function LaneEdge({ index, heightPx }: { readonly index: number; readonly heightPx: number }) {
  return (
    <svg className="lane-edge" style={wayColour(index)} width="6" height={heightPx} aria-hidden="true">
      <path d={`M2.5,6V${Math.max(8, heightPx - 6)}`} />
    </svg>
  );
}
