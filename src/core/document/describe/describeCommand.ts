import { partKindWords } from '../../messages/partKindWords.ts';
import type { Command } from '../command.ts';
import type { Project, Wood } from '../schema.ts';
import { describeChanges } from './describeChanges.ts';
import { formatField } from './formatField.ts';

/** The value that says most about a part: "2.2 Ω". */
function mainValue(part: { readonly kind: string } & Partial<Record<'ohm' | 'farad' | 'henry', number>>): string {
  if (part.ohm !== undefined) return ` ${formatField('ohm', part.ohm)}`;
  if (part.farad !== undefined) return ` ${formatField('farad', part.farad)}`;
  return part.henry === undefined ? '' : ` ${formatField('henry', part.henry)}`;
}

const counted = (parts: readonly unknown[]) => `${parts.length} part${parts.length === 1 ? '' : 's'}`;

/** Lists of braces are counted, everything else is named. */
function describeWood(was: Wood, changes: Partial<Wood>): string {
  const { braces } = changes;
  if (braces === undefined) return describeChanges('cabinet', was, changes);
  const more = braces.length - was.braces.length;
  return more === 0 ? 'brace changed' : more > 0 ? 'brace added' : 'brace removed';
}

const mainFields = ['ohm', 'farad', 'henry'];

/**
 * A short label of an edit for "undo ...": "R1 1.0 → 2.2 Ω", "port length 118 → 96 mm", "LS1 moved". Values are metric.
 * `project` is the document before the edit; an id that it does not have is named as it is.
 */
export function describeCommand(command: Command, project: Project): string {
  const { enclosure, network, chain } = project;
  const part = (id: string) => network.parts.find((candidate) => candidate.id === id);
  const driverName = (id: string) => project.drivers.find((driver) => driver.id === id)?.name ?? id;
  const speakerName = (id: string) => {
    const speaker = part(id);
    return speaker?.kind === 'speaker' ? `${id} (${driverName(speaker.driverId)})` : id;
  };
  const chamberName = (id: string) => enclosure.chambers.find((chamber) => chamber.id === id)?.name ?? id;
  const radiatorName = (id: string) => enclosure.passiveRadiators.find((one) => one.id === id)?.name ?? id;
  const lineName = (id: string) => enclosure.lines.find((line) => line.id === id)?.name ?? id;
  const curveName = (id: string) => project.curves.find((curve) => curve.id === id)?.name ?? id;
  const stateName = (id: string) => project.snapshots.find((state) => state.id === id)?.name ?? id;
  const portName = (id: string) => (enclosure.ports.length > 1 ? id : 'port');

  switch (command.type) {
    case 'set-name':
      return `name “${command.name}”`;
    case 'set-notes':
      return 'notes';
    case 'set-air':
      return describeChanges('air', project.air, command.changes, ['temperatureC', 'pressurePa', 'humidityFraction']);
    case 'set-listening':
      return describeChanges('listening', project.listening, command.changes);
    case 'set-drive':
      return describeChanges('drive', chain, { driveV: command.driveV }, ['driveV']);
    case 'set-amplifier':
      return describeChanges(
        command.id,
        chain.amplifiers.find(({ id }) => id === command.id),
        command.changes,
      );
    case 'set-part': {
      const { driverId } = command.changes;
      if (driverId !== undefined) return `${command.partId}: ${driverName(driverId)}`;
      return describeChanges(command.partId, part(command.partId), command.changes, mainFields);
    }
    case 'swap-part':
      return `${command.partId} swapped for ${partKindWords(command.part.kind)}${mainValue(command.part)}`;
    case 'insert-in-series':
      return `${partKindWords(command.part.kind)}${mainValue(command.part)} in series with ${command.partId}`;
    case 'add-across':
      return `${partKindWords(command.part.kind)}${mainValue(command.part)} across ${command.nodes.join(' and ')}`;
    case 'move-end':
      return `${command.partId} moved to ${command.to}`;
    case 'remove-part':
      return `${command.partId} removed${command.how === 'leave-open' ? ', gap left open' : ''}`;
    case 'rename-part':
      return `${command.partId} renamed ${command.to}`;
    case 'reverse-speaker':
      return `${command.partId} reversed`;
    case 'insert-section':
      return `section of ${counted(command.parts)} before ${command.speakerId}`;
    case 'replace-network':
      return `circuit of ${counted(command.parts)}`;
    case 'remove-amplifier':
      return `amplifier ${command.id} removed`;
    case 'add-way':
      return `${command.driver.name} added`;
    case 'remove-way':
      return `${speakerName(command.speakerId)} removed`;
    case 'set-driver':
      return describeChanges(
        driverName(command.driverId),
        project.drivers.find(({ id }) => id === command.driverId),
        command.changes,
      );
    case 'set-enclosure':
      return describeChanges('cabinet', enclosure, command.changes);
    case 'set-wood':
      return describeWood(enclosure.wood, command.changes);
    case 'add-chamber':
      return `${command.chamber.name} added`;
    case 'set-chamber':
      return describeChanges(
        chamberName(command.id),
        enclosure.chambers.find(({ id }) => id === command.id),
        command.changes,
      );
    case 'remove-chamber':
      return `${chamberName(command.id)} removed`;
    case 'add-port':
      return 'port added';
    case 'set-port': {
      const keys = Object.keys(command.changes);
      if (keys.length > 0 && keys.every((key) => key === 'xM' || key === 'yM')) return `${portName(command.id)} moved`;
      return describeChanges(
        portName(command.id),
        enclosure.ports.find(({ id }) => id === command.id),
        command.changes,
      );
    }
    case 'remove-port':
      return `${portName(command.id)} removed`;
    case 'add-radiator':
      return `${command.radiator.name} added`;
    case 'set-radiator':
      return describeChanges(
        radiatorName(command.id),
        enclosure.passiveRadiators.find(({ id }) => id === command.id),
        command.changes,
      );
    case 'remove-radiator':
      return `${radiatorName(command.id)} removed`;
    case 'add-line':
      return `${command.line.name} added`;
    case 'set-line':
      return describeChanges(
        lineName(command.id),
        enclosure.lines.find(({ id }) => id === command.id),
        command.changes,
      );
    case 'remove-line':
      return `${lineName(command.id)} removed`;
    case 'set-mount': {
      const keys = Object.keys(command.changes);
      if (keys.every((key) => key === 'xM' || key === 'yM')) return `${speakerName(command.partId)} moved`;
      return describeChanges(
        speakerName(command.partId),
        enclosure.mounts.find(({ partId }) => partId === command.partId),
        command.changes,
      );
    }
    case 'add-curve':
      return `curve ${command.curve.name} added`;
    case 'set-curve':
      return `curve ${curveName(command.id)} changed`;
    case 'remove-curve':
      return `curve ${curveName(command.id)} removed`;
    case 'keep-state':
      return `“${command.name}” kept`;
    case 'drop-state':
      return `“${stateName(command.id)}” dropped`;
    case 'return-to-state':
      return `back to “${stateName(command.id)}”`;
    case 'together': {
      const [first] = command.commands;
      if (!first) return 'nothing';
      const label = describeCommand(first, project);
      return command.commands.length === 1 ? label : `${label} and ${command.commands.length - 1} more`;
    }
  }
}
