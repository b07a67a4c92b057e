import { fail, problem, succeed } from '../../../messages/problem.ts';
import type { Driver, DriverEntered } from '../../schema.ts';
import type { Applier } from '../applier.ts';
import { replaceWhere } from '../replaceWhere.ts';
import { withChanges } from '../withChanges.ts';

/** `entered` is given whole: a number that is not in it any more is derived from the others again. */
export const setDriver: Applier<'set-driver'> = (project, { driverId, changes }) => {
  if (!project.drivers.some((driver) => driver.id === driverId)) {
    return fail(problem('document.unknown-driver', { kind: 'driver', id: driverId }));
  }
  const plain: Partial<Driver> = changes.entered ? { ...changes, entered: withoutBlanks(changes.entered) } : changes;
  const drivers = replaceWhere(
    project.drivers,
    (driver) => driver.id === driverId,
    (driver) => withChanges(driver, plain),
  );
  return succeed(withChanges(project, { drivers }));
};

const withoutBlanks = (entered: DriverEntered): DriverEntered =>
  Object.fromEntries(Object.entries(entered).filter(([, value]) => value !== undefined));
