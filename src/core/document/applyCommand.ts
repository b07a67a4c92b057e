import { fail, type Result, succeed } from '../messages/problem.ts';
import { changeProblems } from './checks/changeProblems.ts';
import type { Command, CommandType } from './command.ts';
import type { Applier } from './commands/applier.ts';
import { addCurve, removeCurve, setCurve } from './commands/curves/curves.ts';
import { addChamber, removeChamber, setChamber } from './commands/enclosure/chambers.ts';
import { addLine, removeLine, setLine } from './commands/enclosure/lines.ts';
import { addRadiator, removeRadiator, setRadiator } from './commands/enclosure/passiveRadiators.ts';
import { addPort, removePort, setPort } from './commands/enclosure/ports.ts';
import { setEnclosure } from './commands/enclosure/setEnclosure.ts';
import { setMount } from './commands/enclosure/setMount.ts';
import { setWood } from './commands/enclosure/setWood.ts';
import { addAcross } from './commands/network/addAcross.ts';
import { insertInSeries } from './commands/network/insertInSeries.ts';
import { insertSection } from './commands/network/insertSection.ts';
import { keepingWhole } from './commands/network/keepingWhole.ts';
import { moveEnd } from './commands/network/moveEnd.ts';
import { removeAmplifier } from './commands/network/removeAmplifier.ts';
import { removePart } from './commands/network/removePart.ts';
import { renamePart } from './commands/network/renamePart.ts';
import { replaceNetwork } from './commands/network/replaceNetwork.ts';
import { reverseSpeaker } from './commands/network/reverseSpeaker.ts';
import { setPart } from './commands/network/setPart.ts';
import { swapPart } from './commands/network/swapPart.ts';
import { setAir } from './commands/scene/setAir.ts';
import { setAmplifier } from './commands/scene/setAmplifier.ts';
import { setDrive } from './commands/scene/setDrive.ts';
import { setListening } from './commands/scene/setListening.ts';
import { setName } from './commands/scene/setName.ts';
import { setNotes } from './commands/scene/setNotes.ts';
import { dropState } from './commands/states/dropState.ts';
import { keepState } from './commands/states/keepState.ts';
import { returnToState } from './commands/states/returnToState.ts';
import { addWay } from './commands/ways/addWay.ts';
import { removeWay } from './commands/ways/removeWay.ts';
import { setDriver } from './commands/ways/setDriver.ts';
import type { Project } from './schema.ts';

const appliers: { readonly [T in Exclude<CommandType, 'together'>]: Applier<T> } = {
  'set-name': setName,
  'set-notes': setNotes,
  'set-air': setAir,
  'set-listening': setListening,
  'set-drive': setDrive,
  'set-amplifier': setAmplifier,
  'set-part': keepingWhole(setPart),
  'swap-part': keepingWhole(swapPart),
  'insert-in-series': keepingWhole(insertInSeries),
  'add-across': keepingWhole(addAcross),
  'move-end': keepingWhole(moveEnd),
  'remove-part': keepingWhole(removePart),
  'rename-part': renamePart,
  'reverse-speaker': reverseSpeaker,
  'insert-section': keepingWhole(insertSection),
  'replace-network': keepingWhole(replaceNetwork),
  'remove-amplifier': removeAmplifier,
  'add-way': addWay,
  'remove-way': removeWay,
  'set-driver': setDriver,
  'set-enclosure': setEnclosure,
  'set-wood': setWood,
  'add-chamber': addChamber,
  'set-chamber': setChamber,
  'remove-chamber': removeChamber,
  'add-port': addPort,
  'set-port': setPort,
  'remove-port': removePort,
  'add-radiator': addRadiator,
  'set-radiator': setRadiator,
  'remove-radiator': removeRadiator,
  'add-line': addLine,
  'set-line': setLine,
  'remove-line': removeLine,
  'set-mount': setMount,
  'add-curve': addCurve,
  'set-curve': setCurve,
  'remove-curve': removeCurve,
  'keep-state': keepState,
  'drop-state': dropState,
  'return-to-state': returnToState,
};

/**
 * Carries out one edit: the new document, or the problems that forbid it. The document given is never changed, what an
 * edit does not touch stays identical (`===`) in the new one, and an edit that changes nothing returns the same document.
 *
 * The document given must be valid; the new one is then valid by schema and hangs together. Its circuit can still be
 * one that cannot be solved (a gap was left open, say): that is for the evaluation to name.
 * @example applyCommand(project, { type: 'set-part', partId: 'R1', changes: { ohm: 2.2 } })
 */
export function applyCommand(project: Project, command: Command): Result<Project> {
  const result = carryOut(project, command);
  if (!result.ok || result.value === project) return result;
  const problems = changeProblems(project, result.value);
  return problems.length > 0 ? fail(...problems) : result;
}

/** Several commands are checked as one: in between, the document need not hang together. */
function carryOut(project: Project, command: Command): Result<Project> {
  if (command.type !== 'together') {
    const apply = appliers[command.type] as (project: Project, command: Command) => Result<Project>;
    return apply(project, command);
  }
  let current = project;
  for (const one of command.commands) {
    const next = carryOut(current, one);
    if (!next.ok) return next;
    current = next.value;
  }
  return succeed(current);
}
