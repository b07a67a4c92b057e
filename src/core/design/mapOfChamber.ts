import { airProperties } from '../acoustics/airProperties.ts';
import type { Chamber, Port, Project } from '../document/schema.ts';
import { newPort } from '../document/start/newPort.ts';
import { fail, problem, type Result, succeed } from '../messages/problem.ts';
import { apparentVolumeM3 } from '../speaker/apparentVolume.ts';
import { derivedOf } from '../speaker/derivedOf.ts';
import { fillingFigures } from '../speaker/fillingFigures.ts';
import type { MapInput } from './alignmentMap/alignmentMap.ts';
import { drivenDriver } from './alignmentMap/drivenDriver.ts';
import type { MapLoss } from './alignmentMap/mapLosses.ts';
import type { DriverNumbers } from './alignments/driverNumbers.ts';
import { driversIn } from './driversIn.ts';
import { feedOf } from './feedOf.ts';

/** What the map of a chamber is drawn from; its axes are the caller's. */
export interface ChamberMap {
  readonly input: Omit<MapInput, 'volumesM3' | 'tuningsHz'>;
  /** The drivers as one, with what is in series with the coil; for the published boxes and for suitability. */
  readonly driver: DriverNumbers & { readonly qes: number };
  readonly ql: number | null;
  /** Apparent, m³; not above 0 where nothing is left of the chamber. */
  readonly volumeM3: number;
  /** The chamber's port; null: sealed, and the map is drawn for the port that would be added. */
  readonly port: Port | null;
}

/**
 * The drivers, losses and port of a chamber as the alignment map wants them.
 *
 * A computed filling counts as an absorption of the quality factor that its air has at 50 Hz. Problems: `design.map-no-driver`,
 * `design.map-mixed-drivers` (unlike ones, or equal ones on different voltages), `design.map-other-outlets` (radiators, lines, inner
 * ports), `design.several-ports`, `design.map-unreadable`, those of the drivers' sheets.
 * @example mapOfChamber(project, project.enclosure.chambers[0])
 */
export function mapOfChamber(project: Project, chamber: Chamber): Result<ChamberMap> {
  const { enclosure, chain } = project;
  const place = { kind: 'chamber', id: chamber.id } as const;
  const air = airProperties(project.air);
  if (!air.ok) return air;
  const mounts = enclosure.mounts.filter((m) => m.chamberId === chamber.id);
  const coupled = enclosure.mounts.some(
    (m) => m.frontChamberId === chamber.id || (m.chamberId === chamber.id && m.frontChamberId !== null),
  );
  const drivers = driversIn(project, chamber);
  const first = drivers[0];
  if (first === undefined || coupled) return fail(problem('design.map-no-driver', place, { name: chamber.name }));
  const feeds = mounts.map(({ partId }) => feedOf(project, partId) ?? { seriesOhm: 0, share: 1 });
  const feed = feeds[0]!;
  if (drivers.some((driver) => driver !== first) || feeds.some(({ share }) => share !== feed.share)) {
    return fail(problem('design.map-mixed-drivers', place, { name: chamber.name }));
  }
  const what = otherOutlets(project, chamber);
  if (what !== null) return fail(problem('design.map-other-outlets', place, { name: chamber.name, what }));
  const ports = enclosure.ports.filter(({ chamberId }) => chamberId === chamber.id);
  if (ports.length > 1) return fail(problem('design.several-ports', place, { name: chamber.name }));
  const read = derivedOf(first);
  if (!read.ok) return read;
  const port = ports[0] ?? null;
  const at = { air: air.value, driveV: chain.driveV * feed.share, seriesOhm: feed.seriesOhm, alike: drivers.length };
  const driven = drivenDriver(read.value.parameters, at);
  if (driven === null) return fail(problem('design.map-unreadable', { kind: 'driver', id: first.id }));
  const { reOhm, blTm, mmsKg } = read.value.parameters;
  const qes = (2 * Math.PI * driven.fsHz * mmsKg * (reOhm + feed.seriesOhm)) / blTm ** 2;
  return succeed({
    input: {
      driver: read.value.parameters,
      ...at,
      losses: { leak: chamber.leak, absorption: absorptionOf(project, chamber), port: port?.loss ?? null },
      port: port ?? newPort(project, chamber.id),
    },
    driver: { fsHz: driven.fsHz, qts: driven.qts, vasM3: driven.vasM3, qes },
    ql: chamber.leak?.q ?? null,
    volumeM3: apparentVolumeM3(project, chamber),
    port,
  });
}

/** Stated absorption and a computed filling's, in series as one. */
function absorptionOf(project: Project, chamber: Chamber): MapLoss | null {
  const filling = fillingFigures(project, chamber);
  if (filling === null || !Number.isFinite(filling.airQ)) return chamber.absorption;
  const { airQ, atHz } = filling;
  const stated = chamber.absorption === null ? 0 : atHz / (chamber.absorption.atHz * chamber.absorption.q);
  return { q: 1 / (1 / airQ + stated), atHz };
}

function otherOutlets({ enclosure }: Project, { id }: Chamber): string | null {
  const { passiveRadiators, lines, ports } = enclosure;
  if (passiveRadiators.some(({ chamberId }) => chamberId === id)) return 'a passive radiator';
  if (lines.some(({ chamberId, end }) => chamberId === id || (end.kind === 'chamber' && end.chamberId === id))) {
    return 'a line';
  }
  const inner = ports.some((port) => port.toChamberId === id || (port.chamberId === id && port.toChamberId !== null));
  if (inner) return 'a port to another chamber';
  const stuffed = ports.some(({ chamberId, stuffingPaSPerM2 }) => chamberId === id && stuffingPaSPerM2 > 0);
  return stuffed ? 'a stuffed vent' : null;
}
