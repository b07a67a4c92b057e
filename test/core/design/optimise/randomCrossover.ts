import type { Part } from '../../../../src/core/circuit/part.ts';
import type { RandomStream } from '../../../../src/core/math/randomStream.ts';
import type { SpeakerModel } from '../../../../src/core/speaker/model.ts';
import { amplifierPart, speakerPart, twoWay } from '../../speaker/fixture.ts';

/** A two-way of random order, corner and pad: 6 to 10 parts with values a builder would meet. */
export function randomCrossover(random: RandomStream): SpeakerModel {
  const between = (low: number, high: number): number => low * (high / low) ** random.uniform();
  const cornerHz = between(1200, 3500);
  const omega = 2 * Math.PI * cornerHz;
  const coil = (id: string, nodes: readonly [string, string]): Part => ({
    kind: 'inductor',
    id,
    nodes,
    note: '',
    henry: (between(0.6, 2) * 6) / omega,
    dcrOhm: between(0.1, 0.5),
    coreLossTangent: 0,
  });
  const capacitor = (id: string, nodes: readonly [string, string]): Part => ({
    kind: 'capacitor',
    id,
    nodes,
    note: '',
    farad: between(0.6, 2) / (6 * omega),
    esrOhm: 0.03,
  });
  const resistor = (id: string, nodes: readonly [string, string], low: number, high: number): Part => ({
    kind: 'resistor',
    id,
    nodes,
    note: '',
    ohm: between(low, high),
    ratedPowerW: 10,
  });
  const parts: Part[] = [coil('L1', ['in', 'w1']), capacitor('C1', ['w1', '0'])];
  const lowEnd = random.uniform() < 0.5 ? 'w2' : 'w1';
  if (lowEnd === 'w2') parts.push(coil('L2', ['w1', 'w2']), resistor('R1', ['w1', '0'], 15, 60));
  parts.push(capacitor('C2', ['in', 't1']), coil('L3', ['t1', '0']));
  const highEnd = random.uniform() < 0.5 ? 't2' : 't1';
  if (highEnd === 't2') parts.push(capacitor('C3', ['t1', 't2']));
  parts.push(resistor('R2', [highEnd, 't3'], 1, 5), resistor('R3', ['t3', '0'], 6, 30));
  const reversed = random.uniform() < 0.5;
  return {
    ...twoWay,
    parts: [
      amplifierPart,
      ...parts,
      speakerPart('LS1', lowEnd, '0'),
      reversed ? speakerPart('LS2', '0', 't3') : speakerPart('LS2', 't3', '0'),
    ],
  };
}
