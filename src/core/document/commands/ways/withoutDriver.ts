import type { Project } from '../../schema.ts';

/** The project without a driver and without the curves that belong to it, unless a kept state has the driver. */
export function withoutDriver(project: Project, driverId: string): Project {
  const drivers = project.drivers.filter((driver) => driver.id !== driverId);
  const kept = project.snapshots.some((state) => state.drivers.some((driver) => driver.id === driverId));
  const goes = ({ belongsTo }: Project['curves'][number]) =>
    belongsTo.kind === 'driver' && belongsTo.driverId === driverId;
  if (kept || !project.curves.some(goes)) return { ...project, drivers };
  return { ...project, drivers, curves: project.curves.filter((curve) => !goes(curve)) };
}
