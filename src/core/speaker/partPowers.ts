import type { SpeakerModel } from './model.ts';
import type { SpeakerResult } from './simulation.ts';
import type { Solved } from './solved.ts';

/**
 * Power lost in each part over the sweep, W, by part id: |v|² Re y for resistors, capacitors (ESR) and inductors (DCR and
 * core), |i|² Re for the coil of each speaker. Voltages are rms, so these are mean powers of a sine at the set drive.
 */
export function partPowers(
  model: SpeakerModel,
  { compiled, table, solution }: Solved,
  speakers: readonly SpeakerResult[],
): ReadonlyMap<string, Float64Array> {
  const powers = new Map<string, Float64Array>();
  const count = table.omegas.length;
  for (const part of model.parts) {
    const index = compiled.indexOf.get(part.id);
    const row = index === undefined ? null : table.rows[index];
    if (row === null || row === undefined || part.kind === 'jumper') continue;
    const a = solution.potential(part.nodes[0]);
    const b = solution.potential(part.nodes[1]);
    const power = new Float64Array(count);
    for (let i = 0; i < count; i++) {
      const re = a.re[i]! - b.re[i]!;
      const im = a.im[i]! - b.im[i]!;
      power[i] = (re * re + im * im) * row.re[i]!;
    }
    powers.set(part.id, power);
  }
  for (const result of speakers) {
    const speaker = model.speakers.find((s) => s.partId === result.partId)!;
    const { re, im } = result.current;
    const power = new Float64Array(count);
    for (let i = 0; i < count; i++) power[i] = (re[i]! * re[i]! + im[i]! * im[i]!) * speaker.parameters.reOhm;
    powers.set(result.partId, power);
  }
  return powers;
}
