import type { Finding } from '../../messages/problem.ts';
import { driverOf } from '../keyFigures.ts';
import type { Check } from './context.ts';

/** Air that must stay free behind a port's inner end, as a share of its least width. Common practice, no source. */
const CLEARANCE_SHARE = 1;

/** Drivers beyond the baffle or over one another, a port that does not fit the depth, chambers that share the same space. */
export const cabinetFit: Check = ({ project }) => {
  const { enclosure } = project;
  const findings: Finding[] = [];
  const say = (code: string, kind: 'mount' | 'port' | 'chamber', id: string, values: Finding['values']): void => {
    findings.push({ severity: 'warning', code, place: { kind, id }, values });
  };
  const discs = enclosure.mounts.flatMap((mount) => {
    const driver = driverOf(project, mount.partId);
    return driver === undefined ? [] : [{ ...mount, radiusM: driver.outerDiameterM / 2, depthM: driver.depthM }];
  });
  discs.forEach((disc, i) => {
    const overM = Math.max(
      Math.abs(disc.xM) + disc.radiusM - enclosure.widthM / 2,
      disc.radiusM - disc.yM,
      disc.yM + disc.radiusM - enclosure.heightM,
    );
    if (overM > 1e-9) say('finding.driver-over-edge', 'mount', disc.partId, { overM });
    if (disc.depthM > enclosure.depthM - enclosure.panelM) {
      say('finding.magnet-hits-back', 'mount', disc.partId, {
        depthM: disc.depthM,
        roomM: enclosure.depthM - enclosure.panelM,
      });
    }
    for (const other of discs.slice(i + 1)) {
      const gapM = Math.hypot(disc.xM - other.xM, disc.yM - other.yM) - disc.radiusM - other.radiusM;
      if (gapM < -1e-9) say('finding.drivers-overlap', 'mount', disc.partId, { other: other.partId, overlapM: -gapM });
    }
  });
  for (const port of enclosure.ports) {
    const leastM = port.shape.kind === 'round' ? port.shape.diameterM : port.shape.heightM;
    const roomM = enclosure.depthM - enclosure.panelM - CLEARANCE_SHARE * leastM;
    const halfWidthM = (port.count * (port.shape.kind === 'round' ? port.shape.diameterM : port.shape.widthM)) / 2;
    const overM = Math.max(
      Math.abs(port.xM) + halfWidthM - (enclosure.widthM / 2 - enclosure.panelM),
      leastM / 2 + enclosure.panelM - port.yM,
      port.yM + leastM / 2 - (enclosure.heightM - enclosure.panelM),
    );
    if (overM > 1e-9) say('finding.port-over-edge', 'port', port.id, { overM });
    if (port.lengthM > roomM) say('finding.port-too-long', 'port', port.id, { lengthM: port.lengthM, roomM });
  }
  const spans = enclosure.chambers.flatMap((c) => (c.volume.kind === 'geometry' ? [{ id: c.id, ...c.volume }] : []));
  spans.forEach((span, i) => {
    for (const other of spans.slice(i + 1)) {
      const sharedM = Math.min(span.topM, other.topM) - Math.max(span.bottomM, other.bottomM);
      if (sharedM > 1e-9) say('finding.chambers-overlap', 'chamber', span.id, { chamberId: other.id, sharedM });
    }
  });
  return findings;
};
