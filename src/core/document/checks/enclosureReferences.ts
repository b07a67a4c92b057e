import { type Problem, problem } from '../../messages/problem.ts';
import type { Design } from '../design.ts';
import { duplicates } from './duplicates.ts';

/** Chambers, ports and mounts that do not fit together, or do not fit the outer size. */
export function enclosureReferences({ enclosure, network }: Design): Problem[] {
  const { widthM, heightM, depthM, panelM, chambers, ports, mounts } = enclosure;
  const chamberIds = chambers.map((chamber) => chamber.id);
  const problems = [
    ...duplicates(chamberIds, 'chamber', 'chambers'),
    ...duplicates(
      ports.map((port) => port.id),
      'port',
      'ports',
    ),
    ...duplicates(
      mounts.map((mount) => mount.partId),
      'mount',
      'places for the speaker',
    ),
  ];

  if (2 * panelM >= Math.min(widthM, heightM, depthM)) {
    const place = { kind: 'field', field: 'enclosure.panelM' } as const;
    problems.push(problem('document.panel-too-thick', place, { panelM, widthM, heightM, depthM }));
  }
  for (const { id, name, volume } of chambers) {
    if (volume.kind !== 'geometry') continue;
    const { bottomM, topM } = volume;
    const place = { kind: 'chamber', id } as const;
    if (topM <= bottomM) problems.push(problem('document.chamber-upside-down', place, { name, bottomM, topM }));
    if (topM > heightM) problems.push(problem('document.chamber-above-cabinet', place, { name, topM, heightM }));
  }

  const outside = (xM: number, yM: number) => Math.abs(xM) > widthM / 2 || yM < 0 || yM > heightM;
  for (const { id, chamberId, xM, yM } of ports) {
    const place = { kind: 'port', id } as const;
    if (!chamberIds.includes(chamberId)) problems.push(problem('document.port-without-chamber', place, { chamberId }));
    if (outside(xM, yM)) problems.push(problem('document.off-the-front', place, { xM, yM, widthM, heightM }));
  }

  const speakers = network.parts.filter((part) => part.kind === 'speaker').map((part) => part.id);
  for (const { partId, chamberId, xM, yM } of mounts) {
    const place = { kind: 'mount', id: partId } as const;
    if (!speakers.includes(partId)) problems.push(problem('document.mount-without-speaker', place));
    if (chamberId !== null && !chamberIds.includes(chamberId)) {
      problems.push(problem('document.mount-without-chamber', place, { chamberId }));
    }
    if (outside(xM, yM)) problems.push(problem('document.off-the-front', place, { xM, yM, widthM, heightM }));
  }
  for (const id of speakers) {
    if (!mounts.some((mount) => mount.partId === id)) {
      problems.push(problem('document.speaker-without-mount', { kind: 'part', id }));
    }
  }
  return problems;
}
