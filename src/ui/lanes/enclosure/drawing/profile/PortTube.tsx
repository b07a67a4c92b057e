import type { Port } from '../../../../../core/document/schema.ts';
import { hatch } from './hatch.ts';

/**
 * A port cut along its bore, drawn from the origin to the right: walls, rounded ends, and strokes where it is stuffed. `halfM`: half of the
 * bore as it is cut. A bent port shows its length straight, dashed, since nobody said where it bends.
 */
export function PortTube({
  port,
  halfM,
  pxPerM,
}: {
  readonly port: Port;
  readonly halfM: number;
  readonly pxPerM: number;
}) {
  const long = port.lengthM * pxPerM;
  const half = halfM * pxPerM;
  const wall = Math.max(1, port.wallM * pxPerM);
  const outer = Math.min(port.outerFlareM * pxPerM, long / 2);
  const inner = Math.min(port.innerFlareM * pxPerM, long / 2);
  const edge = (sign: 1 | -1, offPx: number, move: 'M' | 'L', back: boolean) => {
    const y = sign * (half + offPx);
    const there = `${move}0,${y + sign * outer}A${outer},${outer} 0 0 ${sign === 1 ? 1 : 0} ${outer},${y}L${long - inner},${y}A${inner},${inner} 0 0 ${sign === 1 ? 1 : 0} ${long},${y + sign * inner}`;
    const here = `${move}${long},${y + sign * inner}A${inner},${inner} 0 0 0 ${long - inner},${y}L${outer},${y}A${outer},${outer} 0 0 0 0,${y + sign * outer}`;
    return back ? here : there;
  };
  const walls = edge(-1, wall / 2, 'M', false) + edge(1, wall / 2, 'M', false);
  return (
    <>
      <path className="cabinet-port-wall-edge" strokeWidth={wall + 1} d={walls} />
      <path className="cabinet-port-wall" strokeWidth={Math.max(0, wall - 1)} d={walls} />
      <path
        className="cabinet-port"
        data-bent={port.bends > 0 ? '' : undefined}
        d={`${edge(-1, 0, 'M', false)}${edge(1, 0, 'L', true)}Z`}
      />
      {port.stuffingPaSPerM2 > 0 ? <path className="cabinet-stuffing" d={hatch(0, -half, long, 2 * half, 6)} /> : null}
    </>
  );
}
