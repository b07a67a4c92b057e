import { magnitudes } from '../../../core/speaker/complexCurve.ts';
import { readAt } from '../../../plot/index.ts';
import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why the least impedance is what it is: voltage over current at the terminals, where the current is greatest. */
export function whyLeastImpedance({ evaluation, project }: WhyInput): WhyNote | null {
  const least = evaluation.keyFigures.leastImpedance;
  if (!least) return null;
  const { simulation } = evaluation;
  const amplifier = simulation.amplifiers.find((candidate) => candidate.id === least.amplifierId);
  const settings = project.chain.amplifiers.find((candidate) => candidate.id === least.amplifierId);
  if (!amplifier || !settings) return null;
  const currentA = readAt(simulation.frequenciesHz, magnitudes(amplifier.current), least.atHz) ?? 0;
  return {
    title: 'Why this least impedance?',
    formula: '|Z| = |V / I|, least from 20 Hz to 20 kHz',
    lines: [
      { symbol: 'f', meaning: 'where it is least', value: figure(least.atHz, 'frequency') },
      { symbol: 'V', meaning: 'voltage at the terminals, rms', value: figure(least.ohm * currentA, 'voltage') },
      {
        symbol: 'I',
        meaning: `current of channel ${least.amplifierId}, rms`,
        value: `${Number(currentA.toPrecision(3))} A`,
      },
      {
        symbol: 'Zmin',
        meaning: 'the amplifier’s rated minimum, as its maker states it',
        value: figure(settings.ratedMinimumLoadOhm, 'resistance'),
      },
    ],
    result: { symbol: '|Z|', meaning: 'least impedance', value: figure(least.ohm, 'resistance') },
    holds:
      'The whole circuit is solved at every frequency: parts, coils, cones, chambers and ports. Cable and amplifier resistance are not ' +
      'counted in. A speaker’s own rating may be stated so that the least is at least 80 % of it.',
    source: 'Ohm’s law; the 80 % rule: IEC 60268-5 (from memory)',
  };
}
