import type { Part } from '../../../circuit/part.ts';
import { fail, problem, succeed } from '../../../messages/problem.ts';
import { findSpeaker } from '../../graph/findPart.ts';
import { isFed } from '../../graph/isFed.ts';
import { joinNodes } from '../../graph/joinNodes.ts';
import { partsFeedingAlone } from '../../graph/partsFeedingAlone.ts';
import type { Project } from '../../schema.ts';
import type { Applier } from '../applier.ts';
import { withParts } from '../network/withParts.ts';
import { withoutDriver } from './withoutDriver.ts';

export const removeWay: Applier<'remove-way'> = (project, { speakerId }) => {
  const found = findSpeaker(project, speakerId);
  if (!found.ok) return found;
  const speaker = found.value;
  const { parts } = project.network;
  if (parts.filter((part) => part.kind === 'speaker').length === 1) {
    return fail(problem('document.last-way', { kind: 'part', id: speakerId }));
  }
  const rest = withoutSpeaker(parts, speaker);
  const wired = withParts(project, rest);
  const kept = new Set(rest.map((part) => part.id));
  const amplifiers = wired.chain.amplifiers.filter((amplifier) => kept.has(amplifier.id));
  const { enclosure, chain } = wired;
  const removed: Project = {
    ...wired,
    enclosure: { ...enclosure, mounts: enclosure.mounts.filter((mount) => mount.partId !== speakerId) },
    chain: amplifiers.length === chain.amplifiers.length ? chain : { ...chain, amplifiers },
  };
  const used = rest.some((part) => part.kind === 'speaker' && part.driverId === speaker.driverId);
  return succeed(used ? removed : withoutDriver(removed, speaker.driverId));
};

/**
 * Where the speaker stood in series with others, its place is closed up, and what lay across it goes too. Closing up
 * shorts nothing: a speaker across the same nodes would have kept the others fed.
 */
function withoutSpeaker(parts: readonly Part[], speaker: Part): readonly Part[] {
  const own = new Set([speaker, ...partsFeedingAlone(parts, speaker)]);
  const open = parts.filter((part) => !own.has(part));
  const others = parts.filter((part) => part.kind === 'speaker' && part !== speaker && isFed(parts, part.id));
  if (others.every((other) => isFed(open, other.id))) return open;

  const [a, b] = speaker.nodes;
  const across = (part: Part) => part.nodes.includes(a) && part.nodes.includes(b) && isPassive(part);
  return joinNodes(
    open.filter((part) => !across(part)),
    a,
    b,
  );
}

const isPassive = (part: Part) => part.kind !== 'speaker' && part.kind !== 'amplifier';
