import { type RandomStream, randomStream } from '../../math/randomStream.ts';
import type { CrossoverTrial } from '../trial/index.ts';
import { halfMatch } from './spreadDeviation.ts';
import type { PartTolerance, Spread, ToleranceSpec } from './toleranceSpec.ts';

/** Values of the left and the right loudspeaker of a pair, in the order of the trial's variables. */
export interface DrawnPair {
  readonly left: Float64Array;
  readonly right: Float64Array;
}

/**
 * The pair of a number: the same for the same seed, whichever pairs are drawn besides, so that work can be shared out.
 * @example drawPair(trial, spec, 0).left
 */
export function drawPair(trial: CrossoverTrial, { parts, seed }: ToleranceSpec, pair: number): DrawnPair {
  // Neighbouring seeds would give streams that overlap: the number is spread over all 32 bits first.
  const random = randomStream(Math.imul(pair + 1, 0x9e3779b1) ^ seed);
  const left = trial.start.slice();
  const right = trial.start.slice();
  for (const part of parts) {
    const i = trial.variables.findIndex(({ partId }) => partId === part.partId);
    if (i < 0) throw new RangeError(`The trial does not vary ${part.partId}.`);
    const [a, b] = departures(part, random);
    left[i]! *= 1 + a;
    right[i]! *= 1 + b;
  }
  return { left, right };
}

function departures(part: PartTolerance, random: RandomStream): readonly [number, number] {
  const half = halfMatch(part);
  if (half === null) {
    return [part.tolerance * draw(part.spread, random), part.tolerance * draw(part.spread, random)];
  }
  const centre = (part.tolerance - half) * draw(part.spread, random);
  const apart = half * (2 * random.uniform() - 1);
  return [centre + apart, centre - apart];
}

/** A departure within ±1. */
function draw(spread: Spread, random: RandomStream): number {
  if (spread.kind === 'uniform') return 2 * random.uniform() - 1;
  for (;;) {
    const x = random.normal();
    if (Math.abs(x) <= spread.sigmas) return x / spread.sigmas;
  }
}
