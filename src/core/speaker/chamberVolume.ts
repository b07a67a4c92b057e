import { portDisplacementM3 } from '../acoustics/index.ts';
import { braceVolumeM3, chamberHeights, spaceBetweenM3, thicknessOfM } from '../document/insideSpace.ts';
import type { Chamber, Enclosure, Project } from '../document/schema.ts';

export interface ChamberVolume {
  readonly grossM3: number;
  /** Gross less drivers, ports and braces; may be negative, which a caller must refuse. */
  readonly netM3: number;
  /** Net times what the filling gains: what the circuit sees. */
  readonly apparentM3: number;
  readonly driversM3: number;
  readonly portsM3: number;
  /** Braces as stated and as drawn, and the crossover's board. */
  readonly woodM3: number;
}

/** Space between the chamber's bottom and top across the clear width and depth of the cabinet, m³; 0 where they cross. */
export function grossVolumeM3(chamber: Chamber, enclosure: Enclosure): number {
  if (chamber.volume.kind === 'stated') return chamber.volume.grossM3;
  const { bottomM, topM } = chamberHeights(chamber, enclosure);
  return spaceBetweenM3(enclosure, bottomM, topM, chamber.volume.depthM);
}

/**
 * What is left of a chamber after the drivers, ports and braces that stand in it.
 *
 * Drivers take the displacement of their data sheet. Holds for ports inside one chamber only.
 * @example chamberVolume(project, project.enclosure.chambers[0]).netM3
 */
export function chamberVolume(project: Project, chamber: Chamber): ChamberVolume {
  const { enclosure, network, drivers } = project;
  let driversM3 = 0;
  for (const mount of enclosure.mounts) {
    if (mount.chamberId !== chamber.id) continue;
    const part = network.parts.find((p) => p.id === mount.partId);
    if (part?.kind !== 'speaker') continue;
    driversM3 += drivers.find((d) => d.id === part.driverId)?.displacementM3 ?? 0;
  }
  let portsM3 = 0;
  for (const port of enclosure.ports) {
    if (port.chamberId === chamber.id) {
      portsM3 +=
        port.count *
        portDisplacementM3(port.shape, port.wallM, Math.max(0, port.lengthM - thicknessOfM(enclosure, port.face)));
    }
  }
  const grossM3 = grossVolumeM3(chamber, enclosure);
  let woodM3 = chamber.bracesM3;
  const { braces, board } = enclosure.wood;
  for (const brace of braces) if (brace.chamberId === chamber.id) woodM3 += braceVolumeM3(brace, chamber, enclosure);
  if (board?.chamberId === chamber.id) woodM3 += board.widthM * board.heightM * board.depthM;
  const netM3 = grossM3 - driversM3 - portsM3 - woodM3;
  return { grossM3, netM3, apparentM3: netM3 * chamber.fillGain, driversM3, portsM3, woodM3 };
}
