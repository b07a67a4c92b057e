import type { PlotStructure } from './plotStructure.ts';

/** Numbers along the axes of a plot, as SVG text. */
export function PlotAxes({ structure }: { structure: PlotStructure }) {
  const { area } = structure;
  return (
    <g className="plot-axes">
      {structure.xTicks
        .filter((tick) => tick.label !== '')
        .map((tick) => (
          <text key={tick.hz} x={structure.x.toPx(tick.hz)} y={area.bottom} dy="1.25em" textAnchor="middle">
            {tick.label}
          </text>
        ))}
      {structure.leftTicks.map((tick) => (
        <text
          key={tick.value}
          x={area.left}
          dx="-0.5em"
          y={structure.left.toPx(tick.value)}
          dy="0.32em"
          textAnchor="end"
        >
          {tick.label}
        </text>
      ))}
      {structure.right &&
        structure.rightTicks.map((tick) => (
          <text key={tick.value} x={area.right} dx="0.5em" y={structure.right?.toPx(tick.value)} dy="0.32em">
            {tick.label}
          </text>
        ))}
    </g>
  );
}
