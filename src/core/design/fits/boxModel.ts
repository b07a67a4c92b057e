import type { ConeLoad } from './driverModel.ts';

export type BoxLoss = 'leak' | 'absorption' | 'port';

/** A box behind a driver in numbers without unit. */
export interface BoxNumbers {
  /** Moving mass in the box over that in free air. */
  readonly mass: number;
  /** Compliance of the driver over that of the box. */
  readonly alpha: number;
  /** Tuning over the driver's free-air resonance; null: closed. */
  readonly tuning: number | null;
  /** Q of each loss at the tuning, of a closed box at its resonance √((1 + α)/mass); null: none. */
  readonly leak: number | null;
  readonly absorption: number | null;
  readonly port: number | null;
}

/**
 * The air of a box as a mechanical impedance on the cone over ωs Mms: α/(leak + chamber + port), each an admittance over ωs Cab.
 *
 * Chamber jx/(1 + jx r), r = 1/(h QA); leak h/QL; port 1/(jx/h² + 1/(h QP)); h tuning over fs. The losses as `chamberAdmittance`,
 * `leakAdmittance` and `portAdmittance` state them. Source: R. H. Small, J. Audio Eng. Soc. 21 (1973), part I (from memory).
 */
export function boxLoad({ mass, alpha, tuning, leak, absorption, port }: BoxNumbers): ConeLoad {
  const at = tuning ?? Math.sqrt((1 + alpha) / mass);
  const r = absorption === null ? 0 : 1 / (at * absorption);
  const g = leak === null ? 0 : at / leak;
  const resistance = port === null ? 0 : 1 / (at * port);
  return {
    mass,
    air: (x) => {
      const chamber = 1 + (x * r) ** 2;
      let re = g + (x * x * r) / chamber;
      let im = x / chamber;
      if (tuning !== null) {
        const reactance = x / tuning ** 2;
        const square = resistance ** 2 + reactance ** 2;
        re += resistance / square;
        im -= reactance / square;
      }
      const square = re * re + im * im;
      // Lossless at its tuning the box is rigid: a very stiff one in the stead of a division by zero.
      const factor = alpha / Math.max(square, 1e-24);
      return { re: factor * re, im: -factor * im };
    },
  };
}
