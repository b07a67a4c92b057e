import type { ComplexCurve } from '../../speaker/simulation.ts';
import type { Check } from './context.ts';

/** How much louder the sum would have to be with one driver turned round, and how near to each other the two must be. */
const GAIN_DB = 3;
const EQUAL_DB = 1;
/** A crossover counts only where both drivers are within this of the loudest level either reaches there. */
const MATTERS_DB = 10;

/**
 * Two drivers that meet at a crossover and cancel there: at the frequency where they are equally loud the sum would be
 * over 3 dB louder with one of them reversed. Ways that do not meet within 10 dB of the sum's own level are left alone.
 */
export const crossoverPolarity: Check = ({ simulation, figures }) => {
  const mean = figures.meanLevelDbSpl;
  if (mean === null) return [];
  return pairs(simulation.speakers).flatMap(([a, b]) => {
    const at = crossing(a.pressure, b.pressure, simulation.frequenciesHz);
    if (at === null) return [];
    const together = Math.hypot(a.pressure.re[at]! + b.pressure.re[at]!, a.pressure.im[at]! + b.pressure.im[at]!);
    const reversed = Math.hypot(a.pressure.re[at]! - b.pressure.re[at]!, a.pressure.im[at]! - b.pressure.im[at]!);
    const levelDb = 20 * Math.log10(Math.max(sizeAt(a.pressure, at), 1e-12) / 20e-6);
    const gainDb = 20 * Math.log10(Math.max(reversed, 1e-12) / Math.max(together, 1e-12));
    if (levelDb < mean - MATTERS_DB || gainDb < GAIN_DB) return [];
    return [
      {
        severity: 'warning' as const,
        code: 'finding.crossover-polarity',
        place: { kind: 'part' as const, id: b.partId },
        values: {
          first: a.partId,
          second: b.partId,
          atHz: simulation.frequenciesHz[at]!,
          gainDb: Math.min(gainDb, 60),
        },
      },
    ];
  });
};

const pairs = <T>(list: readonly T[]): [T, T][] => list.flatMap((a, i) => list.slice(i + 1).map((b): [T, T] => [a, b]));

const sizeAt = (curve: ComplexCurve, i: number): number => Math.hypot(curve.re[i]!, curve.im[i]!);

/** The loudest point at which two curves cross, null where they do not or never are within 1 dB. */
function crossing(a: ComplexCurve, b: ComplexCurve, frequenciesHz: Float64Array): number | null {
  let best: number | null = null;
  for (let i = 1; i < frequenciesHz.length; i++) {
    const before = sizeAt(a, i - 1) - sizeAt(b, i - 1);
    const now = sizeAt(a, i) - sizeAt(b, i);
    if (before * now > 0) continue;
    const near = Math.abs(20 * Math.log10(sizeAt(a, i) / sizeAt(b, i)));
    if (near > EQUAL_DB) continue;
    if (best === null || sizeAt(a, i) > sizeAt(a, best)) best = i;
  }
  return best;
}
