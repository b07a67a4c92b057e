import type { Box } from '../cabinetDrawing.ts';
import type { ChamberLabel } from './chamberLabels.ts';

/** What is said of the chambers, at the places that were found for it. */
export function ChamberWords({
  labels,
}: {
  readonly labels: ReadonlyMap<string, ChamberLabel & { readonly box: Box }>;
}) {
  return [...labels].map(([key, { volume, tuning, leadFromPx, box }]) => {
    const x = box.leftPx + box.widthPx / 2;
    const linePx = box.heightPx / (1 + tuning.length);
    const firstPx = box.topPx + linePx / 2;
    return (
      <g key={key} className="cabinet-words">
        {leadFromPx === null ? null : (
          <>
            <circle className="cabinet-words-from" cx={leadFromPx} cy={box.topPx + box.heightPx / 2} r={2} />
            <path
              className="cabinet-words-lead"
              d={`M${leadFromPx},${box.topPx + box.heightPx / 2}H${box.leftPx - 3}`}
            />
          </>
        )}
        <text className="cabinet-volume" x={x} y={firstPx} dy="0.35em">
          {volume}
        </text>
        {tuning.length === 0 ? null : (
          <text className="cabinet-tuning">
            {tuning.map((line, k) => (
              <tspan key={line} x={x} y={firstPx + (k + 1) * linePx} dy="0.35em">
                {k === 0 ? line : ` ${line}`}
              </tspan>
            ))}
          </text>
        )}
      </g>
    );
  });
}
