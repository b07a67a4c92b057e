import type { PublishedPoint } from '../../../core/design/alignmentMap/index.ts';
import type { MapMark } from './placeMarks.ts';

/** The published boxes as they are drawn: diamonds, on the sealed edge triangles, each with its name. */
export function MapMarks({ marks }: { marks: readonly MapMark[] }) {
  return (
    <g className="map-marks">
      {marks.map(({ x, y, sealed, label, labelX, labelY }) => (
        <g key={`${label} ${sealed}`} data-mark={label}>
          <path d={sealed ? `M${x - 5} ${y}h10l-5 -8z` : `M${x - 5.5} ${y}l5.5 -5.5l5.5 5.5l-5.5 5.5z`} />
          <text x={labelX} y={labelY} dy="0.35em" textAnchor="middle">
            {label}
          </text>
        </g>
      ))}
    </g>
  );
}

/** Over them a button each, which takes the box; where several share a mark, the first: all of them stand in the table below. */
export function MarkButtons({
  marks,
  canPick,
  pick,
  point,
}: {
  marks: readonly MapMark[];
  canPick(point: PublishedPoint): boolean;
  pick(point: PublishedPoint): void;
  /** The pointer rests on this box; null: it has left. */
  point(at: PublishedPoint | null): void;
}) {
  return marks.map(({ x, y, sealed, label, points }) => {
    const first = points.find(canPick);
    return (
      first && (
        <button
          key={`${label} ${sealed}`}
          type="button"
          className="map-mark-button"
          style={{ left: x, top: y }}
          aria-label={`Take ${label}`}
          onClick={() => pick(first)}
          onPointerEnter={() => point(first)}
          onPointerLeave={() => point(null)}
        />
      )
    );
  });
}
