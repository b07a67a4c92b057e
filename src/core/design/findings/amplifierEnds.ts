import type { Finding } from '../../messages/problem.ts';
import type { LimitedCurve } from '../limits/limitInput.ts';
import { limitsOf } from '../limits/limitsOf.ts';
import { type Spare, spareAtDrive } from '../limits/spareAtDrive.ts';
import type { Check } from './context.ts';

const CODES: Partial<Record<LimitedCurve['kind'], string>> = {
  'amplifier-voltage': 'finding.amplifier-voltage',
  'amplifier-current': 'finding.amplifier-current',
};

/** Amplifiers that are asked for more than they can give: they cut the tops off, which also feeds tweeters what they cannot bear. */
export const amplifiersBeyond = (spares: readonly Spare[]): Finding[] =>
  spares.flatMap(({ curve, atHz, value, share }) => {
    const code = CODES[curve.kind];
    if (code === undefined || share <= 1) return [];
    return [
      {
        severity: 'warning' as const,
        code,
        place: { kind: 'part' as const, id: curve.id },
        values: { value, limit: curve.limit, atHz },
      },
    ];
  });

/** Voltage and current (peaks of a sine at the set drive) against what each channel can give, where that is stated. */
export const amplifierEnds: Check = ({ project, model, simulation }) => {
  const { amplifiers, driveV } = project.chain;
  if (amplifiers.every(({ peakVoltageV, peakCurrentA }) => peakVoltageV === null && peakCurrentA === null)) return [];
  const input = limitsOf(model, simulation, driveV, {
    drivers: new Map(),
    radiatorXmaxM: new Map(),
    portPeakMPerS: null,
    amplifiers: new Map(amplifiers.map((amplifier) => [amplifier.id, amplifier])),
    startC: project.air.temperatureC,
    lastsS: Number.POSITIVE_INFINITY,
  });
  return amplifiersBeyond(spareAtDrive(input, 20, 20000));
};
