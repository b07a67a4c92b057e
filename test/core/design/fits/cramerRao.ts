import type { ImpedanceSweep } from '../../../../src/core/design/fits/index.ts';
import { choleskyFactor, choleskyInverse } from '../../../../src/core/math/index.ts';

/**
 * Least possible deviation of ln p for each parameter of a made sweep with noise of deviation `sd` on ln|Z| and phase: the root of
 * the diagonal of the inverse Fisher information (C. R. Rao 1945, H. Cramér 1946). By differences of the made sweep itself.
 */
export function cramerRaoSds(
  make: (logShifts: readonly number[]) => ImpedanceSweep,
  count: number,
  sd: number,
): number[] {
  const step = 1e-4;
  const columns = Array.from({ length: count }, (_, k) => {
    const shifts = (by: number) => Array.from({ length: count }, (_, j) => (j === k ? by : 0));
    const [above, below] = [make(shifts(step)), make(shifts(-step))];
    const slope = (a: Float64Array, b: Float64Array) => [...a].map((x, i) => (x - b[i]!) / (2 * step));
    return [
      ...slope(above.magnitudesOhm.map(Math.log), below.magnitudesOhm.map(Math.log)),
      ...(above.phasesRad === null ? [] : slope(above.phasesRad, below.phasesRad!)),
    ];
  });
  const information = new Float64Array(count * count);
  for (let a = 0; a < count; a++)
    for (let b = 0; b < count; b++)
      information[a * count + b] = columns[a]!.reduce((sum, x, i) => sum + x * columns[b]![i]!, 0);
  const inverse = choleskyInverse(choleskyFactor(information, count, 0)!, count);
  return Array.from({ length: count }, (_, k) => sd * Math.sqrt(inverse[k * count + k]!));
}
