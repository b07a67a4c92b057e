import { fail, type Problem, problem, type Result, succeed } from '../../messages/problem.ts';
import { along, dot, facesOf, type HalfSpace, insetBy, type Vector, volumeOf } from '../solid/index.ts';
import { type Cabinet, WALLS, type Wall, type WallPoint } from './cabinet.ts';

/** A wall's place: its outer face, and the frame that points on it are given in. */
export interface ShellWall {
  readonly wall: Wall;
  readonly outer: HalfSpace;
  readonly inner: HalfSpace;
  readonly thicknessM: number;
  readonly origin: Vector;
  readonly across: Vector;
  readonly up: Vector;
}
export interface Shell {
  readonly walls: Readonly<Record<Wall, ShellWall>>;
  /** Outer sizes: width of the lower front edge and of the back, height, depth along the bottom. */
  readonly widthM: number;
  readonly backWidthM: number;
  readonly heightM: number;
  readonly depthM: number;
  readonly topDepthM: number;
  readonly outerVolumeM3: number;
  readonly innerVolumeM3: number;
}

export const outerSpaces = (shell: Shell): HalfSpace[] => WALLS.map((wall) => shell.walls[wall].outer);
export const innerSpaces = (shell: Shell): HalfSpace[] => WALLS.map((wall) => shell.walls[wall].inner);

export const pointOnWall = (shell: Shell, { wall, acrossM, upM }: WallPoint): Vector => {
  const { origin, across, up } = shell.walls[wall];
  return along(along(origin, across, acrossM), up, upM);
};

/** Outer sizes from inner ones: each face moved out along its own normal. */
function outerSizes({ size, thicknessM: t }: Cabinet) {
  const { widthM, backWidthM, heightM, depthM, slopeRad } = size;
  const taper = (backWidthM - widthM) / (2 * depthM);
  if (size.measured === 'outside') return { widthM, backWidthM, heightM, depthM, taper };
  const forwardM = t.bottom * Math.tan(slopeRad) + t.front / Math.cos(slopeRad);
  const sidesM = (t.left + t.right) * Math.hypot(1, taper);
  return {
    widthM: widthM - 2 * forwardM * taper + sidesM,
    backWidthM: backWidthM + 2 * t.back * taper + sidesM,
    heightM: heightM + t.top + t.bottom,
    depthM: depthM + forwardM + t.back,
    taper,
  };
}

function sizeFaults({ size, thicknessM }: Cabinet): Problem[] {
  const sizes = [size.widthM, size.backWidthM, size.heightM, size.depthM, ...WALLS.map((wall) => thicknessM[wall])];
  const faults: Problem[] = [];
  if (!sizes.every((m) => m > 0 && m < 20)) faults.push(problem('build.cabinet-without-size', { kind: 'document' }));
  if (!(Math.abs(size.slopeRad) < 1))
    faults.push(problem('build.front-too-steep', { kind: 'document' }, { slopeRad: size.slopeRad }));
  return faults;
}

/**
 * The six walls of a cabinet as planes, with its outer and inner volume (m³, nothing inside subtracted). Sizes are exact for
 * leaning fronts and for sides that are not parallel. Returns `build.cabinet-without-size`, `build.front-too-steep` or
 * `build.no-inside`. Source: solid geometry.
 */
export function shellOf(cabinet: Cabinet): Result<Shell> {
  const faults = sizeFaults(cabinet);
  if (faults.length > 0) return fail(...faults);
  const { taper, ...outer } = outerSizes(cabinet);
  const { widthM, heightM, depthM } = outer;
  const slope = cabinet.size.slopeRad;
  const tilt = Math.atan(taper);
  const wallOf = (wall: Wall, normal: Vector, origin: Vector, across: Vector, up: Vector): ShellWall => {
    const face = { normal, offsetM: dot(normal, origin) };
    const thicknessM = cabinet.thicknessM[wall];
    return { wall, outer: face, inner: insetBy(face, thicknessM), thicknessM, origin, across, up };
  };
  const [sin, cos] = [Math.sin(tilt), Math.cos(tilt)];
  const walls = {
    front: wallOf(
      'front',
      [0, Math.sin(slope), Math.cos(slope)],
      [0, 0, 0],
      [1, 0, 0],
      [0, Math.cos(slope), -Math.sin(slope)],
    ),
    back: wallOf('back', [0, 0, -1], [0, 0, -depthM], [1, 0, 0], [0, 1, 0]),
    left: wallOf('left', [-cos, 0, sin], [-widthM / 2, 0, 0], [-sin, 0, -cos], [0, 1, 0]),
    right: wallOf('right', [cos, 0, sin], [widthM / 2, 0, 0], [sin, 0, -cos], [0, 1, 0]),
    top: wallOf('top', [0, 1, 0], [0, heightM, 0], [1, 0, 0], [0, 0, -1]),
    bottom: wallOf('bottom', [0, -1, 0], [0, 0, 0], [1, 0, 0], [0, 0, -1]),
  };
  const topDepthM = depthM - heightM * Math.tan(slope);
  const shell = { walls, ...outer, topDepthM, outerVolumeM3: 0, innerVolumeM3: 0 };
  const innerVolumeM3 = volumeOf(innerSpaces(shell));
  const narrowestM = Math.min(outer.widthM, outer.backWidthM);
  if (!(innerVolumeM3 > 1e-9) || !isWhole(shell) || !(narrowestM > 0))
    return fail(
      problem(
        'build.no-inside',
        { kind: 'document' },
        { widthM: narrowestM, heightM, depthM: Math.min(depthM, topDepthM) },
      ),
    );
  return succeed({ ...shell, outerVolumeM3: volumeOf(outerSpaces(shell)), innerVolumeM3 });
}

/** Every wall still has a four-cornered inner face: none of them meets its opposite before the next wall. */
const isWhole = (shell: Shell): boolean => {
  const faces = facesOf(innerSpaces(shell));
  return faces.length === WALLS.length && faces.every(({ corners }) => corners.length === 4);
};
