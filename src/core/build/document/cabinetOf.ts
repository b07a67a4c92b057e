import { chamberHeights, clearDepthM, clearHeights, clearWidthM, thicknessOfM } from '../../document/insideSpace.ts';
import { portCentresM } from '../../document/portCentres.ts';
import type { Chamber, Brace as DocumentBrace, Enclosure, Port, Project } from '../../document/schema.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import {
  type Axis,
  type Cabinet,
  type CabinetBrace,
  type CabinetDriver,
  type CabinetPort,
  type Contents,
  type Divider,
  type PortWall,
  WALLS,
  type Wall,
  WHOLE_INSIDE,
} from '../panels/index.ts';
import { dividersOf } from './dividersOf.ts';
import { jointsOf } from './jointsOf.ts';

/** A document's cabinet as wood, and what the document does not say of it. */
export interface CabinetOfProject {
  readonly cabinet: Cabinet;
  /** Speakers whose cut-out is a guess from the outer diameter. */
  readonly guessedCutOuts: readonly string[];
  /** Chambers that have a size but no place: no boards part them off. */
  readonly placeless: readonly string[];
  /** Speakers between two chambers: their board is there, their cut-out in it is not. */
  readonly inside: readonly string[];
}

// Shares of the outer diameter, or of the depth, where a sheet does not say: common practice, no source.
const CUT_OUT_SHARE = 0.86;
const MAGNET_SHARE = 0.6;
const MAGNET_DEPTH_SHARE = 0.4;
/** Play of a recess about the frame. */
const PLAY_M = 0.001;

/**
 * The cabinet of a document as wood: outer sizes, panels, joints, boards between chambers, braces with one window in their middle,
 * cut-outs, ports, crossover board.
 *
 * Where the driver's sheet states no cut-out it is taken as 86 % of the outer diameter and named in `guessedCutOuts`.
 * Problems: those of `dividersOf`.
 * @example const read = cabinetOf(project); if (read.ok) panelsOf(read.value.cabinet)
 */
export function cabinetOf(project: Project): Result<CabinetOfProject> {
  const { enclosure } = project;
  const { wood, widthM, heightM, depthM } = enclosure;
  const parted = dividersOf(enclosure);
  if (!parted.ok) return parted;
  const dividers = parted.value;
  const spaces = new Set(dividers.flatMap(({ below, above }) => [below, above]));
  const spaceOf: SpaceOf = (chamberId, yM) =>
    chamberId !== null && spaces.has(chamberId) ? chamberId : spaceAt(dividers, yM);
  const drivers = driversOf(project, spaceOf);
  return succeed({
    cabinet: {
      size: {
        measured: 'outside',
        widthM,
        backWidthM: wood.backWidthM ?? widthM,
        heightM,
        depthM,
        slopeRad: (wood.frontLeanDeg * Math.PI) / 180,
      },
      thicknessM: Object.fromEntries(WALLS.map((wall) => [wall, thicknessOfM(enclosure, wall)])) as Record<
        Wall,
        number
      >,
      joints: jointsOf(wood),
      dividers,
      braces: wood.braces.map((brace) => braceOf(brace, project, spaceOf)),
      drivers: drivers.list,
      ports: enclosure.ports
        .filter(({ toChamberId }) => toChamberId === null)
        .flatMap((port) => portsOf(port, project, spaceOf)),
      contents: contentsOf(project, spaceOf),
    },
    guessedCutOuts: drivers.guessed,
    placeless: enclosure.chambers.filter(({ volume }) => volume.kind === 'stated').map(({ id }) => id),
    inside: enclosure.mounts.filter(({ frontChamberId }) => frontChamberId !== null).map(({ partId }) => partId),
  });
}

/** The space of a chamber by its name, or what lies behind the front at a height where the chamber has no place of its own. */
type SpaceOf = (chamberId: string | null, yM: number) => string;

function spaceAt(dividers: readonly Divider[], yM: number): string {
  let space = WHOLE_INSIDE;
  for (const { parts, axis, atM, below, above } of dividers) {
    if (parts === space) space = axis === 'y' && yM < atM ? below : above;
  }
  return space;
}

const uprightFactor = ({ enclosure }: Project): number => 1 / Math.cos((enclosure.wood.frontLeanDeg * Math.PI) / 180);

function driversOf(project: Project, spaceOf: SpaceOf): { list: CabinetDriver[]; guessed: string[] } {
  const guessed: string[] = [];
  const list = project.enclosure.mounts.flatMap((mount): CabinetDriver[] => {
    const part = project.network.parts.find(({ id }) => id === mount.partId);
    const driver = part?.kind === 'speaker' ? project.drivers.find(({ id }) => id === part.driverId) : undefined;
    if (driver === undefined || mount.frontChamberId !== null) return [];
    const { fitting, outerDiameterM, depthM, displacementM3 } = driver;
    if (fitting === null) guessed.push(mount.partId);
    return [
      {
        id: mount.partId,
        chamberId: spaceOf(mount.chamberId, mount.yM),
        at: { wall: 'front', acrossM: mount.xM, upM: mount.yM * uprightFactor(project) },
        cutOutDiameterM: fitting?.cutOutDiameterM ?? CUT_OUT_SHARE * outerDiameterM,
        frameDiameterM: outerDiameterM,
        recessDepthM: fitting?.recessDepthM ?? 0,
        recessDiameterM: outerDiameterM + PLAY_M,
        screwCircleDiameterM: fitting?.screwCircleM ?? null,
        screwCount: fitting?.screwCount ?? 0,
        depthM,
        magnetDiameterM: fitting?.magnetDiameterM ?? MAGNET_SHARE * outerDiameterM,
        magnetHeightM: MAGNET_DEPTH_SHARE * depthM,
        // A driver that is closed at its back stands in a chamber's air too, but none is counted for it.
        displacedM3: mount.chamberId === null ? 0 : displacementM3,
      },
    ];
  });
  return { list, guessed };
}

function portsOf(port: Port, project: Project, spaceOf: SpaceOf): CabinetPort[] {
  const { shape, wallM, lengthM, face, yM } = port;
  const wide = shape.kind === 'slot' && shape.widthM >= shape.heightM;
  const own: PortWall = wide ? (yM < project.enclosure.heightM / 2 ? 'top' : 'bottom') : 'right';
  const shared = (['top', 'bottom', 'left', 'right'] as const).filter((side) => side !== own);
  return portCentresM(port).map((xM, k) => ({
    id: port.count === 1 ? port.id : `${port.id} ${k + 1}`,
    chamberId: spaceOf(port.chamberId, yM),
    at: { wall: face, acrossM: xM, upM: face === 'front' ? yM * uprightFactor(project) : yM },
    shape:
      shape.kind === 'round'
        ? { kind: 'round', boreDiameterM: shape.diameterM, wallM }
        : {
            kind: 'slot',
            widthM: shape.widthM,
            heightM: shape.heightM,
            wallM,
            sharedWalls: shared.filter((side) => !cutsInto(side, { ...shape, xM, yM }, project.enclosure)),
          },
    lengthM,
  }));
}

/** A slot may lie on a wall, but not in it. */
const IN_WALL_M = 1e-3;
function cutsInto(
  side: PortWall,
  slot: { readonly widthM: number; readonly heightM: number; readonly xM: number; readonly yM: number },
  enclosure: Enclosure,
): boolean {
  const { bottomM, topM } = clearHeights(enclosure);
  const half = enclosure.widthM / 2;
  const overM = {
    bottom: bottomM - (slot.yM - slot.heightM / 2),
    top: slot.yM + slot.heightM / 2 - topM,
    left: slot.widthM / 2 - slot.xM - (half - thicknessOfM(enclosure, 'left')),
    right: slot.widthM / 2 + slot.xM - (half - thicknessOfM(enclosure, 'right')),
  };
  return overM[side] > IN_WALL_M;
}

const AXIS: Readonly<Record<DocumentBrace['lies'], Axis>> = { level: 'y', across: 'z', lengthwise: 'x' };

/** A brace right across its chamber; its openings are one window of the same proportions in its middle. */
function braceOf(brace: DocumentBrace, project: Project, spaceOf: SpaceOf): CabinetBrace {
  const axis = AXIS[brace.lies];
  const middleM = axis === 'z' ? -brace.atM : brace.atM;
  return {
    id: brace.id,
    chamberId: spaceOf(brace.chamberId, brace.lies === 'level' ? brace.atM : 0),
    axis,
    atM: middleM - brace.thicknessM / 2,
    thicknessM: brace.thicknessM,
    spanM: {},
    windowsM: brace.openShare > 0 ? [windowOf(brace, axis, project)] : [],
  };
}

function windowOf(brace: DocumentBrace, axis: Axis, { enclosure }: Project): CabinetBrace['windowsM'][number] {
  const chamber = enclosure.chambers.find(({ id }) => id === brace.chamberId);
  const ranges = chamberRanges(chamber, enclosure, brace);
  const side = Math.sqrt(brace.openShare);
  const centred = ([low, high]: readonly [number, number]): readonly [number, number] => {
    const half = ((high - low) / 2) * side;
    return [(low + high) / 2 - half, (low + high) / 2 + half];
  };
  return Object.fromEntries(
    (['x', 'y', 'z'] as const).filter((one) => one !== axis).map((one) => [one, centred(ranges[one])]),
  );
}
/** Outer bounds of a chamber's air where a brace stands in it. */
function chamberRanges(
  chamber: Chamber | undefined,
  enclosure: Enclosure,
  brace: DocumentBrace,
): Readonly<Record<Axis, readonly [number, number]>> {
  const { bottomM, topM } = chamber === undefined ? clearHeights(enclosure) : chamberHeights(chamber, enclosure);
  const yM = brace.lies === 'level' ? brace.atM : (bottomM + topM) / 2;
  const clear = clearDepthM(enclosure, yM);
  const depthM = chamber?.volume.kind === 'geometry' ? Math.min(chamber.volume.depthM ?? clear, clear) : clear;
  const frontM = enclosure.depthM - thicknessOfM(enclosure, 'back') - clear;
  const half = clearWidthM(enclosure, brace.lies === 'across' ? brace.atM : frontM + depthM / 2) / 2;
  return { x: [-half, half], y: [bottomM, topM], z: [-(frontM + depthM), -frontM] };
}

/** What else takes air: braces' stated volume and the crossover's board. */
function contentsOf({ enclosure }: Project, spaceOf: SpaceOf): Contents[] {
  const { board } = enclosure.wood;
  const boards: Contents[] =
    board === null
      ? []
      : [
          {
            id: 'crossover board',
            chamberId: spaceOf(board.chamberId, 0),
            volumeM3: board.widthM * board.heightM * board.depthM,
          },
        ];
  const stated = enclosure.chambers.flatMap(({ id, bracesM3, volume }): Contents[] =>
    bracesM3 > 0 && volume.kind === 'geometry'
      ? [{ id: `braces in ${id}`, chamberId: spaceOf(id, 0), volumeM3: bracesM3, isBrace: true }]
      : [],
  );
  return [...boards, ...stated];
}
