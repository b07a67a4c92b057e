import type { AirProperties } from '../../acoustics/airProperties.ts';
import { airProperties } from '../../acoustics/airProperties.ts';
import { type DriverFigures, driverFigures } from '../../acoustics/driver/driverFigures.ts';
import type { DriverParameters } from '../../acoustics/driver/driverParameters.ts';
import type { Driver, Mount, Project } from '../../document/schema.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { derivedOf } from '../../speaker/derivedOf.ts';
import { driverOf } from '../keyFigures.ts';

/** One way as a start needs it. */
export interface StartingWay {
  readonly mount: Mount;
  readonly driver: Driver;
  readonly parameters: DriverParameters;
  readonly figures: DriverFigures;
  readonly air: AirProperties;
}

/** A speaker's mount and its driver's complete numbers; Problems of the air, the sheet, or `speaker.no-mount`. */
export function wayOf(project: Project, partId: string): Result<StartingWay> {
  const mount = project.enclosure.mounts.find((candidate) => candidate.partId === partId);
  const driver = driverOf(project, partId);
  const air = airProperties(project.air);
  if (!air.ok) return air;
  if (mount === undefined || driver === undefined)
    return fail(problem('speaker.no-mount', { kind: 'part', id: partId }));
  const read = derivedOf(driver);
  if (!read.ok) return read;
  const { parameters } = read.value;
  return succeed({ mount, driver, parameters, figures: driverFigures(parameters, air.value), air: air.value });
}
