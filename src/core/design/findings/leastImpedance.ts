import { magnitudes } from '../../speaker/complexCurve.ts';
import { leastInBand } from '../band.ts';
import type { Check } from './context.ts';

/**
 * The least impedance each amplifier channel sees from 20 Hz to 20 kHz, against the channel's own rated minimum as it stands.
 * Below half of that minimum the amplifier is in danger. Common practice, no source.
 */
export const leastImpedance: Check = ({ project, simulation }) =>
  simulation.amplifiers.flatMap((amplifier) => {
    const rated = project.chain.amplifiers.find((a) => a.id === amplifier.id)?.ratedMinimumLoadOhm;
    const least = leastInBand(magnitudes(amplifier.impedance), simulation.frequenciesHz, 20, 20000);
    if (rated === undefined || least === null || least.value >= rated) return [];
    return [
      {
        severity: least.value < rated / 2 ? ('danger' as const) : ('warning' as const),
        code: 'finding.least-impedance',
        place: { kind: 'part' as const, id: amplifier.id },
        values: { ohm: least.value, atHz: least.atHz, ratedOhm: rated },
      },
    ];
  });
