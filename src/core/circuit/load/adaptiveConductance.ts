import type { Admittance } from '../branch.ts';

/** Conductance (S) over angular frequency, dense where it bends. */
export interface ConductanceCurve {
  readonly omegas: number[];
  readonly conductances: number[];
}

const START_PER_DECADE = 40;
const MOST_ROUNDS = 8;
/** A straight line between points may miss the curve by this share of the greatest conductance. */
const BEND = 1e-5;

/**
 * Samples the real part of an admittance between two angular frequencies so that straight lines between the points follow
 * it: halves every interval whose middle is off by more than 1e-5 of the greatest, up to 8 times.
 */
export function adaptiveConductance(admittance: Admittance, from: number, to: number): ConductanceCurve {
  const count = Math.ceil(Math.log10(to / from) * START_PER_DECADE);
  let omegas = Array.from({ length: count + 1 }, (_, k) => from * (to / from) ** (k / count));
  let conductances = conductancesAt(admittance, omegas);
  let isOpen = omegas.map((_, k) => k < count);
  for (let round = 0; round < MOST_ROUNDS; round++) {
    const open = isOpen.flatMap((is, k) => (is ? [k] : []));
    if (open.length === 0) break;
    const middles = open.map((k) => Math.sqrt(omegas[k]! * omegas[k + 1]!));
    const found = conductancesAt(admittance, middles);
    const limit = BEND * Math.max(...conductances.map(Math.abs));
    const next: [number, number, boolean][] = [];
    let taken = 0;
    omegas.forEach((omega, k) => {
      if (!isOpen[k]) {
        next.push([omega, conductances[k]!, false]);
        return;
      }
      const [middle, value] = [middles[taken]!, found[taken]!];
      taken++;
      const share = (middle - omega) / (omegas[k + 1]! - omega);
      const off = Math.abs(value - conductances[k]! - share * (conductances[k + 1]! - conductances[k]!)) > limit;
      next.push([omega, conductances[k]!, off], [middle, value, off]);
    });
    omegas = next.map(([omega]) => omega);
    conductances = next.map(([, value]) => value);
    isOpen = next.map(([, , is]) => is);
  }
  return { omegas, conductances };
}

function conductancesAt(admittance: Admittance, omegas: readonly number[]): number[] {
  const re = new Float64Array(omegas.length);
  admittance(Float64Array.from(omegas), re, new Float64Array(omegas.length));
  return [...re];
}
