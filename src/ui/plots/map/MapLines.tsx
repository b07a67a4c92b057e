import { useMemo } from 'react';
import type { AlignmentMap } from '../../../core/design/alignmentMap/index.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { type Box, contourLabels, contours } from '../../../plot/index.ts';
import type { MapQuantity } from './mapQuantities.ts';
import { contourGrid, type MapScales } from './mapScales.ts';

const CHARACTER_PX = 7;

function linesOf(map: AlignmentMap, quantity: MapQuantity, area: Box, units: UnitSystem) {
  const grid = contourGrid(map, quantity.grid(map));
  const stepX = (area.right - area.left) / (grid.rows - 1);
  const stepY = (area.bottom - area.top) / (grid.columns - 1);
  return quantity.levels(quantity.grid(map), units).flatMap((level) =>
    contours(grid, level).map((line) => ({
      level,
      closed: line.closed,
      // Rows of the grid are volumes, across the screen; its columns are tunings, upwards.
      xsPx: line.ys.map((row) => area.left + row * stepX),
      ysPx: line.xs.map((column) => area.bottom - column * stepY),
    })),
  );
}

/** The contours of one quantity with their values written on them. */
export function MapLines({
  map,
  quantity,
  scales,
  taken,
  units,
}: {
  map: AlignmentMap;
  quantity: MapQuantity;
  scales: MapScales;
  taken: readonly Box[];
  units: UnitSystem;
}) {
  const { area } = scales;
  // Kept while the present box is dragged: only the places of the values depend on where it is.
  const drawn = useMemo(() => linesOf(map, quantity, area, units), [map, quantity, area, units]);
  const texts = drawn.map(({ level }) => quantity.text(level, units));
  const places = contourLabels(
    drawn.map((line, k) => ({ ...line, widthPx: texts[k]!.length * CHARACTER_PX, heightPx: 14 })),
    area,
    taken,
  );
  return (
    <g className={`map-lines map-lines-${quantity.id}`}>
      {drawn.map(({ level, closed, xsPx, ysPx }) => (
        <path
          key={`${level} ${xsPx[0]} ${ysPx[0]}`}
          data-level={level}
          d={`M${[...xsPx].map((x, k) => `${x.toFixed(1)} ${ysPx[k]!.toFixed(1)}`).join('L')}${closed ? 'Z' : ''}`}
        />
      ))}
      {places.map((place, k) =>
        place === null ? null : (
          <text key={`${texts[k]} ${place.x} ${place.y}`} x={place.x} y={place.y} dy="0.35em" textAnchor="middle">
            {texts[k]}
          </text>
        ),
      )}
    </g>
  );
}
