import { endClearance } from '../../acoustics/port/endClearance.ts';
import type { Cabinet, CabinetPort } from '../panels/cabinet.ts';
import type { InnerSpaces } from '../panels/chamberSpaces.ts';
import { pointOnWall, type Shell } from '../panels/shell.ts';
import { along, depthOf, dot, type HalfSpace } from '../solid/index.ts';
import { type Body, boxFrom, braceBoxes, driverBody, halfSizes, portBody } from './body.ts';
import { bodyToBodyM, bodyToBoxM } from './gaps.ts';
import { type Interference, interference, TOUCHING_M } from './interference.ts';

const placeOf = ({ kind, id }: Body) => ({ kind: kind === 'driver' ? ('mount' as const) : ('port' as const), id });

/** How far a face lies behind the deepest point of a body that it stands in the way of: room, and what the body takes. */
function reachAgainst(
  body: Body,
  face: HalfSpace,
  shell: Shell,
): { readonly roomM: number; readonly takesM: number; readonly square: boolean } {
  const own = shell.walls[body.wall];
  const start = pointOnWall(shell, { wall: body.wall, acrossM: body.acrossM, upM: body.upM });
  const inwards = -dot(face.normal, own.outer.normal);
  const takes = body.sections.map(({ depthM, size }) => {
    const [a, b] = halfSizes(size);
    const sideways =
      'radiusM' in size
        ? size.radiusM * Math.sqrt(Math.max(0, 1 - inwards * inwards))
        : Math.abs(dot(face.normal, own.across)) * a + Math.abs(dot(face.normal, own.up)) * b;
    return inwards * depthM + sideways;
  });
  return { roomM: depthOf(face, start), takesM: Math.max(...takes), square: inwards > 0.5 };
}

function wallFaults(body: Body, spaces: readonly HalfSpace[], shell: Shell): Interference[] {
  if (body.kind === 'port') return [];
  return spaces.flatMap((face) => {
    // Its own wall, or what stands between it and its chamber: that is said of its cut-out.
    if (dot(face.normal, shell.walls[body.wall].outer.normal) > 1 - 1e-9) return [];
    const { roomM, takesM, square } = reachAgainst(body, face, shell);
    if (roomM - takesM >= -TOUCHING_M) return [];
    const code = square ? 'build.magnet-hits-back' : 'build.driver-hits-side';
    return [interference('fault', code, placeOf(body), square ? 'deepen' : 'move', roomM, takesM, { name: body.id })];
  });
}

/** Sides of a slot that air can turn round: not those that a wall of the cabinet makes. */
const openSidesM = ({
  widthM,
  heightM,
  sharedWalls,
}: Extract<CabinetPort['shape'], { readonly kind: 'slot' }>): number =>
  (['top', 'bottom', 'left', 'right'] as const)
    .filter((side) => !sharedWalls.includes(side))
    .reduce((sum, side) => sum + (side === 'top' || side === 'bottom' ? widthM : heightM), 0);

/** Room behind the inner end of a port: `endClearance`. */
function endFaults(port: CabinetPort, spaces: readonly HalfSpace[], shell: Shell): Interference[] {
  const own = shell.walls[port.at.wall];
  const end = along(pointOnWall(shell, port.at), own.outer.normal, -port.lengthM);
  const behindM = spaces.reduce((least, face) => {
    const inwards = -dot(face.normal, own.outer.normal);
    return inwards > 1e-9 ? Math.min(least, depthOf(face, end) / inwards) : least;
  }, Number.POSITIVE_INFINITY);
  const { shape } = port;
  const { leastM, wishedM: usualM } =
    shape.kind === 'round'
      ? endClearance({ kind: 'round', diameterM: shape.boreDiameterM })
      : endClearance(shape, openSidesM(shape));
  const place = { kind: 'port', id: port.id } as const;
  const names = { name: port.id };
  if (behindM < -TOUCHING_M)
    return [
      interference('fault', 'build.port-through-back', place, 'shorten', behindM + port.lengthM, port.lengthM, names),
    ];
  if (behindM < leastM - TOUCHING_M)
    return [interference('fault', 'build.port-choked', place, 'shorten', behindM, leastM, names)];
  if (behindM < usualM - TOUCHING_M)
    return [interference('warning', 'build.port-end-near', place, 'shorten', behindM, usualM, names)];
  return [];
}

/** Drivers and ports against walls, dividers, braces and one another, inside the cabinet. */
export function inwardFaults(cabinet: Cabinet, shell: Shell, { chambers }: InnerSpaces): Interference[] {
  const found: Interference[] = [];
  const thick = cabinet.thicknessM;
  const bodies = [
    ...cabinet.drivers.map((driver) => driverBody(driver, thick[driver.at.wall])),
    ...cabinet.ports.map((port) => portBody(port, thick[port.at.wall])),
  ];
  const boxes = cabinet.braces.flatMap((brace) =>
    braceBoxes(brace, chambers.get(brace.chamberId)!).map((corners) => ({ brace, corners })),
  );
  bodies.forEach((body, i) => {
    found.push(...wallFaults(body, chambers.get(body.chamberId)!, shell));
    for (const brace of cabinet.braces) {
      const gaps = boxes
        .filter((box) => box.brace === brace)
        .map(({ corners }) => bodyToBoxM(body, boxFrom(corners, shell, body.wall)));
      const gapM = Math.min(...gaps, Number.POSITIVE_INFINITY);
      if (brace.chamberId !== body.chamberId || gapM >= -TOUCHING_M) continue;
      const code = body.kind === 'driver' ? 'build.driver-meets-brace' : 'build.port-meets-brace';
      found.push(interference('fault', code, placeOf(body), 'window', gapM, 0, { name: body.id, other: brace.id }));
    }
    for (const other of bodies.slice(i + 1)) {
      if (other.chamberId !== body.chamberId) continue;
      const gapM = bodyToBodyM(body, other, shell);
      if (gapM >= -TOUCHING_M) continue;
      const kinds = new Set([body.kind, other.kind]);
      const code =
        kinds.size === 2 ? 'build.port-meets-driver' : kinds.has('driver') ? 'build.drivers-meet' : 'build.ports-meet';
      found.push(interference('fault', code, placeOf(body), 'move', gapM, 0, { name: body.id, other: other.id }));
    }
  });
  for (const port of cabinet.ports) found.push(...endFaults(port, chambers.get(port.chamberId)!, shell));
  return found;
}
