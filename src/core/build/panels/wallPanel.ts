import { along, depthOf, dot, sectionOf, sizeOf, type Vector, volumeOf } from '../solid/index.ts';
import type { Cabinet, Wall } from './cabinet.ts';
import { jointBetween, neighboursOf, throughOf } from './jointRules.ts';
import type { Panel, PanelCutOut, PanelEdge, PanelRebate } from './panel.ts';
import { type PanelFaces, panelFaces } from './panelFaces.ts';
import { pointOnWall, type Shell } from './shell.ts';
import { edgeSpace, guestsOf, rebateVolumes, wallSpaces } from './wallSolid.ts';

/** The panel of one wall: its board, edges, steps and cut-outs. */
export function wallPanel(cabinet: Cabinet, shell: Shell, wall: Wall): Panel {
  const own = shell.walls[wall];
  const limits = neighboursOf(wall).map((other) => edgeSpace(cabinet, shell, wall, other));
  const faces = panelFaces(own.outer, own.inner, limits, own);
  const removed = rebateVolumes(cabinet, shell, wall);
  const lengthwise = wall === 'top' || wall === 'bottom' ? 'across' : 'up';
  return {
    id: wall,
    kind: 'wall',
    lengthM: lengthwise === 'up' ? faces.upM : faces.acrossM,
    widthM: lengthwise === 'up' ? faces.acrossM : faces.upM,
    thicknessM: own.thicknessM,
    grain: lengthwise,
    shape: faces.shape,
    outerFace: faces.outerFace,
    innerFace: faces.innerFace,
    edges: neighboursOf(wall).map((other) => edgeOf(cabinet, shell, wall, other)),
    rebates: guestsOf(cabinet, wall).map((guest) => rebateOf(cabinet, shell, wall, guest, removed.get(guest)!)),
    cutOuts: cutOutsOf(cabinet, shell, wall, faces),
    woodM3: volumeOf(wallSpaces(cabinet, shell, wall)) - [...removed.values()].reduce((sum, m3) => sum + m3, 0),
  };
}

const longestBetween = (points: readonly Vector[]): number =>
  Math.max(0, ...points.flatMap((a) => points.map((b) => sizeOf(along(a, b, -1)))));

const rangeAlong = (points: readonly Vector[], direction: Vector): number => {
  const places = points.map((point) => dot(point, direction));
  return Math.max(...places) - Math.min(...places);
};

function edgeOf(cabinet: Cabinet, shell: Shell, wall: Wall, other: Wall): PanelEdge {
  const joint = jointBetween(cabinet, wall, other);
  const own = shell.walls[wall];
  const space = edgeSpace(cabinet, shell, wall, other);
  const limits = neighboursOf(wall).map((next) => edgeSpace(cabinet, shell, wall, next));
  const ends = sectionOf(own.outer, limits).filter((corner) => Math.abs(depthOf(space, corner)) < 1e-9);
  const across = Math.abs(dot(space.normal, own.across)) > Math.abs(dot(space.normal, own.up));
  const through = throughOf(joint) === wall;
  const kind =
    joint.kind === 'mitre'
      ? 'mitre'
      : joint.kind === 'butt'
        ? through
          ? 'runs-through'
          : 'ends-at'
        : through
          ? 'takes-step'
          : 'ends-in-step';
  const bevel = -Math.asin(Math.max(-1, Math.min(1, dot(space.normal, own.outer.normal))));
  return {
    meets: other,
    joint: kind,
    runs: across ? 'up' : 'across',
    lengthM: longestBetween(ends),
    bevelRad: Math.abs(bevel) < 1e-9 ? 0 : bevel,
  };
}

function rebateOf(cabinet: Cabinet, shell: Shell, wall: Wall, guest: Wall, volumeM3: number): PanelRebate {
  const joint = jointBetween(cabinet, wall, guest);
  if (joint.kind !== 'rebate') throw new Error(`${guest} ends in no step of ${wall}.`);
  const widthM = shell.walls[guest].thicknessM;
  const own = shell.walls[wall];
  const runM = volumeM3 / (joint.depthM * widthM);
  const limits = neighboursOf(wall).map((next) => edgeSpace(cabinet, shell, wall, next));
  const inner = sectionOf(own.inner, limits);
  const goes = Math.abs(dot(shell.walls[guest].outer.normal, own.across)) > 0.5 ? own.up : own.across;
  const step = sectionOf(own.inner, [...limits, ...wallSpaces(cabinet, shell, guest)]);
  return {
    meets: guest,
    depthM: joint.depthM,
    widthM,
    runM,
    stopped: rangeAlong(step, goes) < rangeAlong(inner, goes) - 1e-6,
  };
}

function cutOutsOf(cabinet: Cabinet, shell: Shell, wall: Wall, { toPanel }: PanelFaces): PanelCutOut[] {
  const drivers = cabinet.drivers.flatMap((driver): PanelCutOut[] =>
    driver.at.wall !== wall
      ? []
      : [
          {
            kind: 'driver',
            id: driver.id,
            at: toPanel(pointOnWall(shell, driver.at)),
            throughDiameterM: driver.cutOutDiameterM,
            recess: driver.recessDepthM > 0 ? { diameterM: driver.recessDiameterM, depthM: driver.recessDepthM } : null,
            screws:
              driver.screwCircleDiameterM === null
                ? null
                : { circleDiameterM: driver.screwCircleDiameterM, count: driver.screwCount },
          },
        ],
  );
  const ports = cabinet.ports.flatMap(({ id, at, shape }): PanelCutOut[] => {
    if (at.wall !== wall) return [];
    const centre = toPanel(pointOnWall(shell, at));
    return shape.kind === 'round'
      ? [{ kind: 'port-hole', id, at: centre, throughDiameterM: shape.boreDiameterM + 2 * shape.wallM }]
      : [{ kind: 'slot', id, at: centre, acrossM: shape.widthM, upM: shape.heightM }];
  });
  return [...drivers, ...ports];
}
