import type { Part } from '../../src/core/circuit/part.ts';
import type { Fault } from '../../src/core/design/faults/index.ts';
import type { RandomStream } from '../../src/core/math/randomStream.ts';
import type { SpeakerModel } from '../../src/core/speaker/model.ts';

const OPEN_OHM = 1e9;
const BRIDGED_OHM = 0.002;

/** Up or down by a factor between `least` and `most`. */
const astray = (random: RandomStream, least: number, most: number): number => {
  const factor = least * (most / least) ** random.uniform();
  return random.uniform() < 0.5 ? factor : 1 / factor;
};

const resistorFor = (part: Part, ohm: number): Part => ({
  kind: 'resistor',
  id: part.id,
  nodes: part.nodes,
  note: '',
  ohm,
  ratedPowerW: null,
});

/**
 * Puts a fault into a build, in the model itself and not by the finder's own means; a cable's resistance is put before the
 * terminals by `plantedCableOhm`. What has a size gets one beyond tolerance, off what `design` says: parts by 1.3 to 5, resonances by 1.25
 * to 1.8, port lengths by 1.3 to 2; a leak of Q 1.5 to 7.
 */
export function plantFault(
  model: SpeakerModel,
  fault: Fault,
  random: RandomStream,
  design: SpeakerModel = model,
): SpeakerModel {
  const withPart = (id: string, change: (part: Part) => Part): SpeakerModel => ({
    ...model,
    parts: model.parts.map((part) => (part.id === id ? change(part) : part)),
  });
  switch (fault.kind) {
    case 'part-open':
    case 'link-missing':
      return withPart(fault.partId, (part) => resistorFor(part, OPEN_OHM));
    case 'part-short':
      return withPart(fault.partId, (part) => resistorFor(part, BRIDGED_OHM));
    case 'part-value':
      return withPart(fault.partId, (part) => {
        const { nodes } = part;
        return { ...scaled(design.parts.find(({ id }) => id === part.id)!, astray(random, 1.3, 5), 0), nodes };
      });
    case 'part-decade':
      return withPart(fault.partId, (part) => scaled(part, fault.factor, 0.3 + 0.4 * random.uniform()));
    case 'exchanged': {
      const [a, b] = fault.partIds.map((id) => model.parts.find((part) => part.id === id)!) as [Part, Part];
      const nodesOf = new Map([
        [a.id, b.nodes],
        [b.id, a.nodes],
      ]);
      return { ...model, parts: model.parts.map((part) => ({ ...part, nodes: nodesOf.get(part.id) ?? part.nodes })) };
    }
    case 'wrong-node':
      return withPart(fault.partId, (part) => ({
        ...part,
        nodes: fault.end === 0 ? [fault.node, part.nodes[1]] : [part.nodes[0], fault.node],
      }));
    case 'driver-reversed':
      return withPart(fault.partId, (part) => ({ ...part, nodes: [part.nodes[1], part.nodes[0]] }));
    case 'driver-open': {
      const lead = `lead.${fault.partId}`;
      const cut = withPart(fault.partId, (part) => ({ ...part, nodes: [lead, part.nodes[1]] }));
      const driver = model.parts.find(({ id }) => id === fault.partId)!;
      return {
        ...cut,
        parts: [...cut.parts, { ...resistorFor(driver, OPEN_OHM), id: lead, nodes: [driver.nodes[0], lead] }],
      };
    }
    case 'driver-resonance': {
      const factor = astray(random, 1.25, 1.8);
      return {
        ...model,
        speakers: model.speakers.map((speaker) => {
          if (speaker.partId !== fault.partId) return speaker;
          const { cmsMPerN } = design.speakers.find(({ partId }) => partId === fault.partId)!.parameters;
          return { ...speaker, parameters: { ...speaker.parameters, cmsMPerN: cmsMPerN / factor ** 2 } };
        }),
      };
    }
    case 'leak': {
      const q = 1.5 * (7 / 1.5) ** random.uniform();
      return {
        ...model,
        chambers: model.chambers.map((chamber) => {
          if (chamber.id !== fault.chamberId) return chamber;
          const atHz = chamber.leak?.atHz ?? 100;
          return { ...chamber, leak: { atHz, q: 1 / (1 / q + 1 / (chamber.leak?.q ?? 1e6)) } };
        }),
      };
    }
    case 'port-blocked':
      return { ...model, ports: model.ports.filter(({ id }) => id !== fault.portId) };
    case 'port-length': {
      const factor = astray(random, 1.3, 2);
      return {
        ...model,
        ports: model.ports.map((port) =>
          port.id === fault.portId
            ? { ...port, effectiveLengthM: design.ports.find(({ id }) => id === port.id)!.effectiveLengthM * factor }
            : port,
        ),
      };
    }
    case 'cable':
      return model;
  }
}

/** Resistance that a cable fault puts before the terminals, ohm. */
export const plantedCableOhm = (random: RandomStream): number => 0.3 * (2 / 0.3) ** random.uniform();

function scaled(part: Part, factor: number, windingExponent: number): Part {
  if (part.kind === 'resistor') return { ...part, ohm: part.ohm * factor };
  if (part.kind === 'capacitor') return { ...part, farad: part.farad * factor };
  if (part.kind === 'inductor') {
    return { ...part, henry: part.henry * factor, dcrOhm: part.dcrOhm * factor ** windingExponent };
  }
  return part;
}
