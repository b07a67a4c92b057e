import { edgePaths, openBafflePaths, type Position } from '../acoustics/index.ts';
import type { Project } from '../document/schema.ts';
import type { Radiation } from './model.ts';

/** Where a source's sound leaves: the front, the back, or both sides of a bare baffle. */
export type RadiatingSide = 'front' | 'back' | 'both';

/** Paths of an earlier run by the name of their source, with the numbers that they were worked out from. */
export type PathMemory = Map<string, { readonly from: readonly (number | string)[]; readonly radiation: Radiation }>;

/**
 * `radiationPath`, taken over from `memory` where everything that it depends on is the same, and left there.
 * @example rememberedPath(memory, 'LS1', project, source, 'front', 0.08, listener)
 */
export function rememberedPath(
  memory: PathMemory,
  name: string,
  project: Project,
  source: Position,
  side: RadiatingSide,
  pistonRadiusM: number,
  listener: Position,
): Radiation {
  const { widthM, heightM, depthM } = project.enclosure;
  const { xM, yM, zM } = source;
  const { xM: toX, yM: toY, zM: toZ } = listener;
  const view = project.listening.radiation;
  const from = [side, widthM, heightM, depthM, xM, yM, zM, toX, toY, toZ, pistonRadiusM, view];
  const known = memory.get(name);
  if (known?.from.every((value, i) => value === from[i])) return known.radiation;
  const radiation = radiationPath(project, source, side, pistonRadiusM, listener);
  memory.set(name, { from, radiation });
  return radiation;
}

/**
 * The path from a source on the cabinet to the listening point: exact length, angle off the normal of the face it sits on,
 * and the detours over the cabinet's edges in the `baffle-step` view.
 *
 * A source on the back faces away; one that radiates to both sides has the front as an open baffle, without its sides, back or floor. `pistonRadiusM` of the equivalent flat piston.
 * @example radiationPath(project, { xM: 0, yM: 0.5, zM: -0.02 }, 'front', 0.08, listeningPoint(project.listening))
 */
export function radiationPath(
  project: Project,
  source: Position,
  side: RadiatingSide,
  pistonRadiusM: number,
  listener: Position,
): Radiation {
  const { enclosure, listening } = project;
  const dx = listener.xM - source.xM;
  const dy = listener.yM - source.yM;
  const dz = listener.zM - source.zM;
  const distanceM = Math.hypot(dx, dy, dz);
  // A source on the back faces away: its normal points to -z.
  const onBack = side === 'back';
  const planeZ = onBack ? -enclosure.depthM : 0;
  const outward = onBack ? planeZ - listener.zM : listener.zM - planeZ;
  const offAxisDeg =
    (Math.acos(Math.max(-1, Math.min(1, outward / Math.hypot(dx, dy, listener.zM - planeZ)))) * 180) / Math.PI;
  if (side === 'both') {
    const { widthM, heightM } = enclosure;
    const place = { xM: source.xM, yM: source.yM - heightM / 2 };
    const direction = { xM: dx, yM: dy, zM: listener.zM };
    const dipole = openBafflePaths({ kind: 'rectangle', widthM, heightM }, place, pistonRadiusM, direction);
    return { distanceM, pistonRadiusM, offAxisDeg: Math.min(offAxisDeg, 180 - offAxisDeg), edges: null, dipole };
  }
  const edges =
    listening.radiation === 'baffle-step'
      ? edgePaths(enclosure, source, { xM: listener.xM, yM: listener.yM, zM: outward })
      : null;
  return { distanceM, pistonRadiusM, offAxisDeg: Math.min(90, offAxisDeg), edges };
}
