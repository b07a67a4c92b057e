import { type Place, type Problem, problem } from '../../messages/problem.ts';
import type { Design } from '../design.ts';
import { duplicates } from './duplicates.ts';

/** Chambers, ports and mounts that do not fit together, or do not fit the outer size. */
export function enclosureReferences({ enclosure, network }: Design): Problem[] {
  const { widthM, heightM, depthM, panelM, chambers, ports, mounts, passiveRadiators, lines, wood } = enclosure;
  const chamberIds = chambers.map((chamber) => chamber.id);
  const problems = [
    ...duplicates(chamberIds, 'chamber', 'chambers'),
    ...duplicates(
      ports.map((port) => port.id),
      'port',
      'ports',
    ),
    ...duplicates(
      passiveRadiators.map((radiator) => radiator.id),
      'radiator',
      'passive radiators',
    ),
    ...duplicates(
      lines.map((line) => line.id),
      'duct',
      'lines',
    ),
    ...duplicates(
      wood.braces.map((brace) => brace.id),
      'brace',
      'braces',
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
  for (const { id, volume } of chambers) {
    if (volume.kind !== 'geometry') continue;
    const { bottomM, topM } = volume;
    const place = { kind: 'chamber', id } as const;
    if (topM <= bottomM) problems.push(problem('document.chamber-upside-down', place, { bottomM, topM }));
    if (topM > heightM) problems.push(problem('document.chamber-above-cabinet', place, { topM, heightM }));
  }

  const outside = (xM: number, yM: number) => Math.abs(xM) > widthM / 2 || yM < 0 || yM > heightM;
  for (const { id, chamberId, toChamberId, xM, yM } of ports) {
    const place = { kind: 'port', id } as const;
    problems.push(...opensInto(place, chamberIds, chamberId, toChamberId));
    if (outside(xM, yM)) problems.push(problem('document.off-the-front', place, { xM, yM, widthM, heightM }));
  }

  for (const { id, chamberId, xM, yM } of passiveRadiators) {
    const place = { kind: 'radiator', id } as const;
    problems.push(...opensInto(place, chamberIds, chamberId, null));
    if (outside(xM, yM)) problems.push(problem('document.off-the-front', place, { xM, yM, widthM, heightM }));
  }
  for (const { id, chamberId, end } of lines) {
    const place = { kind: 'duct', id } as const;
    problems.push(...opensInto(place, chamberIds, chamberId, end.kind === 'chamber' ? end.chamberId : null));
    if (end.kind === 'open' && outside(end.xM, end.yM)) {
      problems.push(problem('document.off-the-front', place, { xM: end.xM, yM: end.yM, widthM, heightM }));
    }
  }

  for (const { id, chamberId } of wood.braces) {
    if (!chamberIds.includes(chamberId)) {
      problems.push(problem('document.brace-without-chamber', { kind: 'brace', id }, { chamberId }));
    }
  }
  if (wood.board !== null && !chamberIds.includes(wood.board.chamberId)) {
    const place = { kind: 'field', field: 'enclosure.wood.board' } as const;
    problems.push(problem('document.brace-without-chamber', place, { chamberId: wood.board.chamberId }));
  }

  const speakers = network.parts.filter((part) => part.kind === 'speaker').map((part) => part.id);
  for (const { partId, chamberId, frontChamberId, back, xM, yM } of mounts) {
    const place = { kind: 'mount', id: partId } as const;
    if (!speakers.includes(partId)) problems.push(problem('document.mount-without-speaker', place));
    if (chamberId !== null && !chamberIds.includes(chamberId)) {
      problems.push(problem('document.mount-without-chamber', place, { chamberId }));
    }
    if (frontChamberId !== null && !chamberIds.includes(frontChamberId)) {
      problems.push(problem('document.mount-without-chamber', place, { chamberId: frontChamberId }));
    }
    if (frontChamberId !== null && frontChamberId === chamberId) {
      problems.push(problem('document.same-chamber-twice', place, { chamberId: frontChamberId }));
    }
    if (back === 'open' && (chamberId !== null || frontChamberId !== null)) {
      problems.push(problem('document.open-back-in-chamber', place));
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

/** What leads from one chamber to another, or out of it, and names a chamber that is not there, or the same one twice. */
function opensInto(place: Place, known: readonly string[], chamberId: string, toChamberId: string | null): Problem[] {
  const missing = [chamberId, toChamberId].filter((id) => id !== null && !known.includes(id));
  if (missing.length > 0)
    return missing.map((id) => problem('document.port-without-chamber', place, { chamberId: id! }));
  return chamberId === toChamberId ? [problem('document.same-chamber-twice', place, { chamberId })] : [];
}
