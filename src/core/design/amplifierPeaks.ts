import type { Chain } from '../document/schema.ts';
import type { SpeakerModel } from '../speaker/model.ts';
import type { Simulation } from '../speaker/simulation.ts';
import type { KeyFigures } from './evaluation.ts';
import { limitsOf } from './limits/limitsOf.ts';
import { spareAtDrive } from './limits/spareAtDrive.ts';

/**
 * Peak voltage and current that each amplifier must give at the set drive, a sine of the worst frequency from 20 Hz to 20 kHz,
 * against what it states that it can; those that state nothing are left out.
 */
export function amplifierPeaks(
  { amplifiers, driveV }: Chain,
  model: SpeakerModel,
  simulation: Simulation,
): KeyFigures['amplifierPeaks'] {
  if (amplifiers.every(({ peakVoltageV, peakCurrentA }) => peakVoltageV === null && peakCurrentA === null)) return [];
  const input = limitsOf(model, simulation, driveV, {
    drivers: new Map(),
    radiatorXmaxM: new Map(),
    portPeakMPerS: null,
    amplifiers: new Map(amplifiers.map((amplifier) => [amplifier.id, amplifier])),
    startC: 0,
    lastsS: Number.POSITIVE_INFINITY,
  });
  return spareAtDrive(input, 20, 20000).map(({ curve, atHz, value }) => ({
    id: curve.id,
    quantity: curve.kind === 'amplifier-voltage' ? ('voltage' as const) : ('current' as const),
    peak: value,
    limit: curve.limit,
    atHz,
  }));
}
