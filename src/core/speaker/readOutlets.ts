import { type Position, portEffectiveLengthM, portSectionM2 } from '../acoustics/index.ts';
import type { ViscousAir } from '../acoustics/viscousAir.ts';
import type { Project } from '../document/schema.ts';
import { fillOf } from './fillOf.ts';
import type { ModelLine, ModelPassiveRadiator, ModelPort, Radiation } from './model.ts';
import { type PathMemory, rememberedPath } from './radiationPath.ts';

type PathOf = (name: string, place: Outside, areaM2: number) => Radiation;
interface Outside {
  readonly face: 'front' | 'back';
  readonly xM: number;
  readonly yM: number;
}

/** Ports, passive radiators and lines of a cabinet, each with its way to the listening point. */
export function readOutlets(
  project: Project,
  air: ViscousAir,
  listener: Position,
  paths: PathMemory,
): {
  readonly ports: readonly ModelPort[];
  readonly passiveRadiators: readonly ModelPassiveRadiator[];
  readonly lines: readonly ModelLine[];
} {
  const pathOf: PathOf = (name, { face, xM, yM }, areaM2) => {
    const at = { xM, yM, zM: face === 'front' ? 0 : -project.enclosure.depthM };
    return rememberedPath(paths, name, project, at, face, Math.sqrt(areaM2 / Math.PI), listener);
  };
  const { ports, passiveRadiators, lines } = project.enclosure;
  return {
    ports: ports.map((port) => readPort(port, pathOf)),
    passiveRadiators: passiveRadiators.map((radiator) => readRadiator(radiator, pathOf)),
    lines: lines.map((line) => readLine(line, air, pathOf)),
  };
}

type Listed<K extends 'ports' | 'passiveRadiators' | 'lines'> = Project['enclosure'][K][number];

function readPort(port: Listed<'ports'>, pathOf: PathOf): ModelPort {
  const { id, chamberId, toChamberId, shape, count, loss, stuffingPaSPerM2, resonances, outerEnd } = port;
  const areaM2 = count * portSectionM2(shape);
  return {
    id,
    chamberId,
    toChamberId,
    areaM2,
    effectiveLengthM: portEffectiveLengthM(port),
    loss,
    ...(stuffingPaSPerM2 > 0 && { stuffingPaSPerM3: (stuffingPaSPerM2 * port.lengthM) / areaM2 }),
    ...(resonances && {
      pipe: { section: shape, count, outerEnd: outerEnd === 'free' ? 'free' : 'flanged' } as const,
    }),
    radiation: pathOf(`port ${id}`, port, areaM2),
  };
}

/** Equal radiators move as one of their total area: masses and resistances add, and so do stiffnesses. */
function readRadiator(radiator: Listed<'passiveRadiators'>, pathOf: PathOf): ModelPassiveRadiator {
  const { id, chamberId, count, sdM2, mmsKg, fsHz, qms, addedMassKg } = radiator;
  const omegaS = 2 * Math.PI * fsHz;
  return {
    id,
    chamberId,
    sdM2: count * sdM2,
    mmsKg: count * (mmsKg + addedMassKg),
    cmsMPerN: 1 / (omegaS ** 2 * mmsKg * count),
    rmsKgPerS: (count * omegaS * mmsKg) / qms,
    radiation: pathOf(`radiator ${id}`, radiator, count * sdM2),
  };
}

function readLine(line: Listed<'lines'>, air: ViscousAir, pathOf: PathOf): ModelLine {
  const { id, chamberId, lengthM, startAreaM2, endAreaM2, filling, end } = line;
  const share = filling?.placing.kind === 'stuffed' ? filling.placing.share : 1;
  return {
    id,
    chamberId,
    lengthM,
    startAreaM2,
    endAreaM2,
    filled: filling === null ? null : { share, fill: fillOf(filling, air) },
    end: end.kind === 'open' ? { kind: 'open', radiation: pathOf(`line ${id}`, end, endAreaM2) } : end,
  };
}
