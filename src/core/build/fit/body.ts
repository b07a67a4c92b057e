import { braceSpaces } from '../panels/braceSolid.ts';
import type { Axis, CabinetBrace, CabinetDriver, CabinetPort, Range, Wall } from '../panels/cabinet.ts';
import { pointOnWall, type Shell } from '../panels/shell.ts';
import { cornersOf, dot, type HalfSpace, type Vector } from '../solid/index.ts';

/** A disc or an upright rectangle (half sizes) on a wall, in that wall's own coordinates. */
export interface FlatShape {
  readonly acrossM: number;
  readonly upM: number;
  readonly size: { readonly radiusM: number } | { readonly halfAcrossM: number; readonly halfUpM: number };
}

/** What reaches into the cabinet square to a wall: its section at some depths under the outer face, straight between them. */
export interface Body {
  readonly id: string;
  readonly kind: 'driver' | 'port';
  readonly chamberId: string;
  readonly wall: Wall;
  readonly acrossM: number;
  readonly upM: number;
  readonly sections: readonly { readonly depthM: number; readonly size: FlatShape['size'] }[];
}

/**
 * A driver behind its wall: from the cut-out narrowing to the magnet, the magnet to its back. The outline between frame and
 * magnet is taken as a cone (common practice, no source).
 */
export function driverBody(driver: CabinetDriver, wallThicknessM: number): Body {
  const backM = driver.recessDepthM + driver.depthM;
  const magnetM = Math.max(Math.min(wallThicknessM, backM), backM - driver.magnetHeightM);
  const wide = { radiusM: driver.cutOutDiameterM / 2 };
  const narrow = { radiusM: driver.magnetDiameterM / 2 };
  const { id, chamberId, at } = driver;
  const sections = [
    { depthM: Math.min(wallThicknessM, backM), size: wide },
    { depthM: magnetM, size: narrow },
    { depthM: backM, size: narrow },
  ];
  return { id, kind: 'driver', chamberId, wall: at.wall, acrossM: at.acrossM, upM: at.upM, sections };
}

/** A port behind its wall, its own boards or tube included. */
export function portBody({ id, chamberId, at, shape, lengthM }: CabinetPort, wallThicknessM: number): Body {
  const body = (acrossM: number, upM: number, size: FlatShape['size']): Body => ({
    id,
    kind: 'port',
    chamberId,
    wall: at.wall,
    acrossM,
    upM,
    sections: [wallThicknessM, lengthM].map((depthM) => ({ depthM, size })),
  });
  if (shape.kind === 'round') return body(at.acrossM, at.upM, { radiusM: shape.boreDiameterM / 2 + shape.wallM });
  const [left, right, top, bottom] = (['left', 'right', 'top', 'bottom'] as const).map((side) =>
    shape.sharedWalls.includes(side) ? 0 : shape.wallM,
  ) as [number, number, number, number];
  return body(at.acrossM + (right - left) / 2, at.upM + (top - bottom) / 2, {
    halfAcrossM: (shape.widthM + left + right) / 2,
    halfUpM: (shape.heightM + top + bottom) / 2,
  });
}

/** A box in a wall's coordinates: across, up, and depth under its outer face. */
export interface WallBox {
  readonly acrossM: Range;
  readonly upM: Range;
  readonly depthM: Range;
}

/** The box round some points, as a wall sees them; exact for a box that is square to the wall, on the safe side otherwise. */
export function boxFrom(points: readonly Vector[], shell: Shell, wall: Wall): WallBox {
  const { origin, across, up, outer } = shell.walls[wall];
  const range = (along: Vector, from: number, sign: 1 | -1): Range => {
    const places = points.map((point) => sign * (dot(point, along) - from));
    return [Math.min(...places), Math.max(...places)];
  };
  return {
    acrossM: range(across, dot(origin, across), 1),
    upM: range(up, dot(origin, up), 1),
    depthM: range(outer.normal, outer.offsetM, -1),
  };
}

export const halfSizes = (size: FlatShape['size']): readonly [number, number] =>
  'radiusM' in size ? [size.radiusM, size.radiusM] : [size.halfAcrossM, size.halfUpM];

/** Corners of the box round a body, in space. */
export function bodyCorners(body: Body, shell: Shell): readonly Vector[] {
  const { outer } = shell.walls[body.wall];
  return body.sections.flatMap(({ depthM, size }) => {
    const [a, b] = halfSizes(size);
    return [-a, a].flatMap((da) =>
      [-b, b].map((db) => {
        const at = pointOnWall(shell, { wall: body.wall, acrossM: body.acrossM + da, upM: body.upM + db });
        return at.map((m, i) => m - depthM * outer.normal[i]!) as unknown as Vector;
      }),
    );
  });
}

type Flat = readonly [Range, Range];

/** What is left of a rectangle round a hole: up to four rectangles. */
function around([[x0, x1], [y0, y1]]: Flat, [[a, b], [c, d]]: Flat): Flat[] {
  if (a >= x1 || b <= x0 || c >= y1 || d <= y0)
    return [
      [
        [x0, x1],
        [y0, y1],
      ],
    ];
  const [left, right] = [Math.max(a, x0), Math.min(b, x1)];
  const pieces: Flat[] = [
    [
      [x0, a],
      [y0, y1],
    ],
    [
      [b, x1],
      [y0, y1],
    ],
    [
      [left, right],
      [y0, c],
    ],
    [
      [left, right],
      [d, y1],
    ],
  ];
  return pieces.filter(([[p, q], [r, s]]) => q > p && s > r);
}

/** The wood of a brace as boxes with its windows left out, each as eight corners in space. */
export function braceBoxes(brace: CabinetBrace, chamber: readonly HalfSpace[]): readonly (readonly Vector[])[] {
  const corners = cornersOf(braceSpaces(brace, chamber));
  const axes = (['x', 'y', 'z'] as const).filter((axis) => axis !== brace.axis) as [Axis, Axis];
  const place = { x: 0, y: 1, z: 2 } as const;
  const whole = axes.map((axis): Range => {
    const places = corners.map((corner) => corner[place[axis]]!);
    return [Math.min(...places), Math.max(...places)];
  }) as [Range, Range];
  let boards: Flat[] = [whole];
  for (const window of brace.windowsM) {
    const hole = [window[axes[0]] ?? whole[0], window[axes[1]] ?? whole[1]] as const;
    boards = boards.flatMap((board) => around(board, hole));
  }
  return boards.map(([first, second]) =>
    first.flatMap((a) =>
      second.flatMap((b) =>
        [brace.atM, brace.atM + brace.thicknessM].map((c) => {
          const point: [number, number, number] = [0, 0, 0];
          point[place[axes[0]]] = a;
          point[place[axes[1]]] = b;
          point[place[brace.axis]] = c;
          return point;
        }),
      ),
    ),
  );
}
