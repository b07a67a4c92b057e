import type { Part } from '../../src/core/circuit/part.ts';
import { USUAL_TOLERANCES } from '../../src/core/design/faults/index.ts';
import type { RandomStream } from '../../src/core/math/randomStream.ts';
import type { SpeakerModel } from '../../src/core/speaker/model.ts';

/** A build of a design within its tolerances: every value drawn evenly between its limits, parts ±5 %. */
export function healthyBuild(model: SpeakerModel, random: RandomStream): SpeakerModel {
  const within = (limit: number): number => 1 + limit * (2 * random.uniform() - 1);
  const t = USUAL_TOLERANCES;
  return {
    ...model,
    parts: model.parts.map((part): Part => {
      if (part.kind === 'resistor') return { ...part, ohm: part.ohm * within(t.part) };
      if (part.kind === 'capacitor') return { ...part, farad: part.farad * within(t.part) };
      if (part.kind === 'inductor') {
        return { ...part, henry: part.henry * within(t.part), dcrOhm: part.dcrOhm * within(t.winding) };
      }
      return part;
    }),
    speakers: model.speakers.map((speaker) => {
      const p = speaker.parameters;
      const inductance = within(t.coilInductance);
      return {
        ...speaker,
        parameters: {
          ...p,
          reOhm: p.reOhm * within(t.coilResistance),
          leH: p.leH * inductance,
          semiInductance: p.semiInductance && { ...p.semiInductance, kOhmSn: p.semiInductance.kOhmSn * inductance },
          blTm: p.blTm * within(t.motor),
          cmsMPerN: p.cmsMPerN / within(t.resonance) ** 2,
          rmsKgPerS: p.rmsKgPerS * within(t.mechanicalLoss),
        },
      };
    }),
    chambers: model.chambers.map((chamber) => ({
      ...chamber,
      volumeM3: chamber.volumeM3 * within(t.chamberVolume),
      leak: chamber.leak && { ...chamber.leak, q: chamber.leak.q / within(t.leak) },
    })),
    ports: model.ports.map((port) => ({ ...port, effectiveLengthM: port.effectiveLengthM * within(t.portLength) })),
  };
}
