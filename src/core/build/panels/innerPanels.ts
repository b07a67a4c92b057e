import { type HalfSpace, type Vector, volumeOf } from '../solid/index.ts';
import { braceSpaces, braceWoodM3 } from './braceSolid.ts';
import type { Axis, Cabinet, CabinetBrace } from './cabinet.ts';
import { type InnerSpaces, slab, unitOf } from './chamberSpaces.ts';
import type { Panel, PanelCutOut, PanelEdge, PanelPoint } from './panel.ts';
import { type PanelFaces, panelFaces } from './panelFaces.ts';
import { portBoards } from './portSpace.ts';
import type { Shell } from './shell.ts';

const BACKWARDS: Vector = [0, 0, -1];
/** How a board square to an axis is drawn: lying ones from above, upright ones from the front or from the side. */
const FRAMES: Readonly<Record<Axis, { across: Vector; up: Vector }>> = {
  x: { across: BACKWARDS, up: [0, 1, 0] },
  y: { across: [1, 0, 0], up: BACKWARDS },
  z: { across: [1, 0, 0], up: [0, 1, 0] },
};

const edgesOf = (points: readonly PanelPoint[]): PanelEdge[] =>
  points.map(([x, y], i) => {
    const [nextX, nextY] = points[(i + 1) % points.length]!;
    const runs = Math.abs(nextX - x) > Math.abs(nextY - y) ? 'across' : 'up';
    return { meets: 'edge', joint: 'ends-at', runs, lengthM: Math.hypot(nextX - x, nextY - y), bevelRad: 0 };
  });

function board(
  id: string,
  kind: 'divider' | 'brace',
  axis: Axis,
  atM: number,
  thicknessM: number,
  solid: readonly HalfSpace[],
) {
  const [upper, lower] = slab(axis, [atM, atM + thicknessM]);
  const faces = panelFaces(upper, { normal: upper.normal, offsetM: -lower.offsetM }, solid, FRAMES[axis]);
  const lying = axis === 'y';
  const panel: Panel = {
    id,
    kind,
    lengthM: lying ? faces.acrossM : faces.upM,
    widthM: lying ? faces.upM : faces.acrossM,
    thicknessM,
    grain: lying ? 'across' : 'up',
    shape: faces.shape,
    outerFace: faces.outerFace,
    innerFace: faces.innerFace,
    edges: edgesOf(faces.outerFace),
    rebates: [],
    cutOuts: [],
    woodM3: volumeOf(solid),
  };
  return { panel, faces };
}

function windowsOf(brace: CabinetBrace, { toPanel, acrossM, upM }: PanelFaces): PanelCutOut[] {
  const { across, up } = FRAMES[brace.axis];
  const axisOf = (direction: Vector): Axis => (direction[0] !== 0 ? 'x' : direction[1] !== 0 ? 'y' : 'z');
  return brace.windowsM.map((window, i) => {
    const ends = (direction: Vector, place: 0 | 1, whole: number): readonly [number, number] => {
      const axis = axisOf(direction);
      const range = window[axis];
      if (range === undefined) return [0, whole];
      const at = range.map((m) => toPanel(unitOf(axis).map((unit) => unit * m) as unknown as Vector)[place]);
      return [Math.max(0, Math.min(...at)), Math.min(whole, Math.max(...at))];
    };
    const [left, right] = ends(across, 0, acrossM);
    const [low, high] = ends(up, 1, upM);
    return {
      kind: 'window',
      id: `${brace.id} ${i + 1}`,
      at: [(left + right) / 2, (low + high) / 2],
      acrossM: right - left,
      upM: high - low,
    };
  });
}

/** Dividers, braces and the boards of slot ports; each ends at what it meets. */
export function innerPanels(cabinet: Cabinet, shell: Shell, { chambers, dividers }: InnerSpaces): Panel[] {
  const parting = cabinet.dividers.map(
    ({ id, axis, atM, thicknessM }) => board(id, 'divider', axis, atM, thicknessM, dividers.get(id)!).panel,
  );
  const braces = cabinet.braces.map((brace) => {
    const chamber = chambers.get(brace.chamberId)!;
    const solid = braceSpaces(brace, chamber);
    const { panel, faces } = board(brace.id, 'brace', brace.axis, brace.atM, brace.thicknessM, solid);
    return { ...panel, cutOuts: windowsOf(brace, faces), woodM3: braceWoodM3(brace, chamber) };
  });
  const boards = cabinet.ports.flatMap((port) =>
    portBoards(port, shell.walls[port.at.wall].thicknessM).map(({ side, lengthM, widthM, thicknessM }): Panel => {
      const face: PanelPoint[] = [
        [0, 0],
        [widthM, 0],
        [widthM, lengthM],
        [0, lengthM],
      ];
      return {
        id: `${port.id} ${side}`,
        kind: 'port-board',
        lengthM,
        widthM,
        thicknessM,
        grain: 'backwards',
        shape: 'rectangle',
        outerFace: face,
        innerFace: face,
        edges: edgesOf(face),
        rebates: [],
        cutOuts: [],
        woodM3: lengthM * widthM * thicknessM,
      };
    }),
  );
  return [...parting, ...braces, ...boards];
}
