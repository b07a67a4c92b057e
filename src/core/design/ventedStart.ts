import { airProperties } from '../acoustics/airProperties.ts';
import { driverFigures } from '../acoustics/driver/driverFigures.ts';
import { defaultLossQ } from '../document/defaults.ts';
import type { Chamber, Project } from '../document/schema.ts';
import { type Result, succeed } from '../messages/problem.ts';
import { derivedOf } from '../speaker/derivedOf.ts';
import { type FlatVented, flatVentedAlignment } from './alignments/flatVentedAlignment.ts';
import { driversIn } from './driversIn.ts';
import { type VentedBox, ventedBoxFor } from './ventedBoxFor.ts';

/** A flat vented box for a chamber as it stands in the document, and the command that makes it so. */
export interface VentedStart extends VentedBox {
  readonly alignment: FlatVented;
  readonly ql: number;
  /** Whether QL is the chamber's own leak or the default. */
  readonly qlFrom: 'chamber' | 'default';
}

/**
 * The flat vented box (`flatVentedAlignment`) for a chamber with one kind of driver in it, with volume and port fitted to the cabinet.
 *
 * QL is the chamber's own leak, else the default; size and port as `ventedBoxFor`. Several equal drivers count as one
 * with their Vas together. Problems: those of the alignment and of `ventedBoxFor`. null without drivers, with several kinds, or one not fully known.
 * @example ventedStart(project, project.enclosure.chambers[0])
 */
export function ventedStart(project: Project, chamber: Chamber): Result<VentedStart> | null {
  const inside = driversIn(project, chamber);
  const driver = inside[0];
  if (driver === undefined || inside.some((other) => other !== driver)) return null;
  const read = derivedOf(driver);
  const air = airProperties(project.air);
  if (!read.ok || !air.ok) return null;
  const ql = chamber.leak?.q ?? defaultLossQ.leak;
  const { fsHz, qts, vasM3 } = driverFigures(read.value.parameters, air.value);
  const aligned = flatVentedAlignment({ fsHz, qts, vasM3: vasM3 * inside.length }, ql);
  if (!aligned.ok) return aligned;
  const box = ventedBoxFor(project, chamber, aligned.value);
  if (!box.ok) return box;
  return succeed({
    ...box.value,
    alignment: aligned.value,
    ql,
    qlFrom: chamber.leak === null ? 'default' : 'chamber',
  });
}
