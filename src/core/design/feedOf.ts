import { RETURN } from '../circuit/branch.ts';
import type { Part } from '../circuit/part.ts';
import type { Project } from '../document/schema.ts';

/** How a speaker is fed at low frequencies. */
export interface Feed {
  /** Between amplifier and coil, for each driver of those in series: output resistance, cable, DCR of coils, resistors. */
  readonly seriesOhm: number;
  /** Voltage share of each of the equal drivers in series: 1 alone, 1/2 for two. */
  readonly share: number;
}

/**
 * What lies in series with a speaker, along the way on which the bass reaches it: the shortest one over coils, resistors and speakers with the
 * same driver, to an amplifier on one side and to the return on the other. What hangs across is left out; null where a capacitor or nothing
 * leads there.
 * @example feedOf(project, 'LS1') // { seriesOhm: 0.4, share: 1 }
 */
export function feedOf({ network, chain }: Project, speakerId: string): Feed | null {
  const speaker = network.parts.find(({ id }) => id === speakerId);
  if (speaker?.kind !== 'speaker') return null;
  const others = network.parts.filter((part) => part !== speaker);
  const [plus, minus] = speaker.nodes;
  for (const [hot, cold] of [
    [plus, minus],
    [minus, plus],
  ] as const) {
    const back = wayTo(cold, (node) => node === RETURN, others, speaker.driverId);
    const there = wayTo(hot, (node) => amplifierAt(node, others) !== undefined, others, speaker.driverId);
    if (back === null || there === null) continue;
    const settings = chain.amplifiers.find(({ id }) => id === amplifierAt(there.end, others)?.id);
    if (settings === undefined) continue;
    const equal = 1 + there.speakers + back.speakers;
    const ohm = there.ohm + back.ohm + settings.outputResistanceOhm + settings.cableOhm;
    return { seriesOhm: ohm / equal, share: 1 / equal };
  }
  return null;
}

const amplifierAt = (node: string, parts: readonly Part[]): Part | undefined =>
  parts.find((part) => part.kind === 'amplifier' && part.nodes[0] === node);

interface Way {
  readonly end: string;
  readonly ohm: number;
  readonly speakers: number;
}

function wayTo(from: string, isThere: (node: string) => boolean, parts: readonly Part[], driverId: string): Way | null {
  const seen = new Set([from]);
  const waiting: Way[] = [{ end: from, ohm: 0, speakers: 0 }];
  for (let way = waiting.shift(); way !== undefined; way = waiting.shift()) {
    if (isThere(way.end)) return way;
    // Beyond the return every branch of the circuit begins.
    if (way.end === RETURN) continue;
    for (const part of parts) {
      const step = stepOver(part, driverId);
      const at = part.nodes.indexOf(way.end);
      const end = part.nodes[1 - at];
      if (step === null || at < 0 || end === undefined || seen.has(end)) continue;
      seen.add(end);
      waiting.push({ end, ohm: way.ohm + step.ohm, speakers: way.speakers + step.speakers });
    }
  }
  return null;
}

function stepOver(part: Part, driverId: string): { readonly ohm: number; readonly speakers: number } | null {
  switch (part.kind) {
    case 'resistor':
      return { ohm: part.ohm, speakers: 0 };
    case 'inductor':
      return { ohm: part.dcrOhm, speakers: 0 };
    case 'jumper':
      return { ohm: 0, speakers: 0 };
    case 'speaker':
      return part.driverId === driverId ? { ohm: 0, speakers: 1 } : null;
    default:
      return null;
  }
}
