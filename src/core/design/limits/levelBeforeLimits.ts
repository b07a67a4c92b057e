import type { Design } from '../../document/design.ts';
import type { Evaluation } from '../evaluation.ts';
import { type GreatestLevel, greatestLevel } from './greatestLevel.ts';
import type { LimitedCurve } from './limitInput.ts';
import { limitsOf } from './limitsOf.ts';
import { statedLimits } from './statedLimits.ts';

/** How long the sine lasts that heats the coils, s: the minute over which long-term figures are usually stated (from memory). */
export const SINE_LASTS_S = 60;

/**
 * The greatest undistorted level of an evaluated design and what ends it where: excursions, rated powers and amplifiers as the document
 * states them, coils' heat as stated or else usual for their size, and the air in ports and in lines' mouths at the guide value
 * from which it is most likely heard.
 * @example levelBeforeLimits(project, evaluation).bindingBy[0]?.kind
 */
export function levelBeforeLimits(
  design: Design,
  { model, simulation, keyFigures }: Pick<Evaluation, 'model' | 'simulation' | 'keyFigures'>,
): GreatestLevel {
  const stated = statedLimits(design, { portPeakMPerS: null, lastsS: SINE_LASTS_S, withUsualHeat: true });
  const input = limitsOf(model, simulation, design.chain.driveV, stated);
  const air = (
    kind: LimitedCurve['kind'],
    results: readonly { readonly id: string; readonly airSpeedRmsMPerS: Float64Array }[],
    guides: readonly { readonly id: string; readonly loudMPerS: number }[],
  ): LimitedCurve[] =>
    results.map(({ id, airSpeedRmsMPerS }) => ({
      kind,
      id,
      values: airSpeedRmsMPerS.map((v) => Math.SQRT2 * v),
      limit: guides.find((guide) => guide.id === id)!.loudMPerS,
      growsWith: 'drive',
    }));
  return greatestLevel({
    ...input,
    limited: [
      ...input.limited,
      ...air('port-speed', simulation.ports, keyFigures.portSpeeds),
      ...air('mouth-speed', simulation.lines, keyFigures.lineSpeeds),
    ],
  });
}
