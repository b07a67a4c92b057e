import type { SemiInductanceValues } from '../branches/semiInductance.ts';

/** Resistors and coils whose impedance follows K (jω)^n: one resistor and coil in series, then coils each across a resistor. */
export interface Ladder {
  readonly seriesOhm: number;
  readonly seriesHenry: number;
  readonly sections: readonly { readonly ohm: number; readonly henry: number }[];
  /** Greatest |error| of the impedance relative to its magnitude within the band. */
  readonly greatestError: number;
}

/** Width of a section on the logarithm of the frequency, and how far the sections reach beyond the band. */
const WIDTH = 1.5;
const MARGIN = 30;

/**
 * An R-L ladder for a semi-inductance in a band, at most 0.5 % off for exponents from 0.3 to 0.9.
 * s^n = (sin nπ / π) ∫ s/(s+p) p^(n-1) dp for 0 < n < 1 (a Stieltjes integral, from memory); the midpoint rule on ln p turns
 * it into sections with corner p, and what lies outside the sections is a resistance below and an inductance above.
 * Returns null for other exponents.
 * @example semiInductanceLadder({ kOhmSn: 0.03, exponent: 0.6 }, 20, 20000)
 */
export function semiInductanceLadder(values: SemiInductanceValues, lowHz: number, highHz: number): Ladder | null {
  const { kOhmSn, exponent: n } = values;
  if (!(n > 0 && n < 1)) return null;
  const low = (2 * Math.PI * lowHz) / MARGIN;
  const count = Math.ceil(Math.log((2 * Math.PI * highHz * MARGIN) / low) / WIDTH);
  const high = low * Math.exp(count * WIDTH);
  const factor = (kOhmSn * Math.sin(n * Math.PI)) / Math.PI;
  const ladder = {
    seriesOhm: (factor * low ** n) / n,
    seriesHenry: (factor * high ** (n - 1)) / (1 - n),
    sections: Array.from({ length: count }, (_, i) => {
      const corner = low * Math.exp((i + 0.5) * WIDTH);
      const ohm = factor * corner ** n * WIDTH;
      return { ohm, henry: ohm / corner };
    }),
  };
  return { ...ladder, greatestError: greatestError(values, ladder, lowHz, highHz) };
}

function greatestError(
  { kOhmSn, exponent }: SemiInductanceValues,
  ladder: Omit<Ladder, 'greatestError'>,
  lowHz: number,
  highHz: number,
): number {
  const points = 200;
  let greatest = 0;
  for (let i = 0; i <= points; i++) {
    const omega = 2 * Math.PI * lowHz * (highHz / lowHz) ** (i / points);
    const magnitude = kOhmSn * omega ** exponent;
    let re = ladder.seriesOhm - magnitude * Math.cos((exponent * Math.PI) / 2);
    let im = omega * ladder.seriesHenry - magnitude * Math.sin((exponent * Math.PI) / 2);
    for (const { ohm, henry } of ladder.sections) {
      const t = (omega * henry) / ohm;
      re += (ohm * t * t) / (1 + t * t);
      im += (ohm * t) / (1 + t * t);
    }
    greatest = Math.max(greatest, Math.hypot(re, im) / magnitude);
  }
  return greatest;
}
