import type { MapScales } from './mapScales.ts';

/** The present box while it is sealed: a ring on the lower edge of the map. */
export function SealedMark({ x, scales }: { x: number; scales: MapScales }) {
  const { left, right, bottom } = scales.area;
  if (!(x >= left && x <= right)) return null;
  return <circle className="map-sealed-mark" cx={x} cy={bottom} r={7} />;
}
