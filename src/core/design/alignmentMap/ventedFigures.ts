import { positiveRoots } from '../../math/positiveRoots.ts';
import { stationaryPoints } from '../../math/stationaryPoints.ts';
import type { LossesAtTuning } from './mapLosses.ts';

/** A vented box by h = fB/fs, α = Vas/V, QT of the driver, and its losses at the tuning. */
export interface LossyVentedBox {
  readonly h: number;
  readonly alpha: number;
  readonly qt: number;
  readonly losses: LossesAtTuning;
}

/** What a vented box does, in its own units. */
export interface VentedFigures {
  /** −3 dB (half-power) point above which the response stays, re the pass band; over the tuning. */
  readonly cutOffOverTuning: number;
  /** Highest level above the cut-off over the pass band, 0 where nothing rises above it. */
  readonly peakDb: number;
  /** Highest less lowest level of what swings between the cut-off and the pass band, which counts with its 0 dB; 0 without swing. */
  readonly rippleDb: number;
  /** Greatest cone excursion at and above the cut-off re that at zero frequency without box. */
  readonly excursionRatio: number;
  /** Greatest flow through the port from the lowest frequency asked for upwards, in units of ωB Sd times that excursion. */
  readonly portFlowRatio: number;
}

// One fourth-order system with all three losses, in x = s/ωB; a = 1/QA, l = 1/QL, p = 1/QP, impedances in units of 1/(ωB Cab):
//   air behind the cone  Zb = (1 + ax)(x + p)/P,  P = (1 + al) x² + (l + p + a(1 + lp)) x + 1 + lp
//   moving parts         (x² + x/(h QT) + 1/h²)/x in units of ωB Mas, against which 1/(ωB Cab) is α/h²
//   D = (x² + x/(h QT) + 1/h²) P + (α/h²) x (1 + ax)(x + p)
//   net output  G = x³ (x + p)/D      excursion re that of a free cone at rest  X = P/(h² D)
//   port flow   U = x (1 + ax)/(h² D) in units of ωB Sd X(0)
// Without a and p, G is `ventedTransfer`. Magnitudes squared are quotients of polynomials in w = ν², or in u = 1/ν², in which
// the pass band lies at u = 0: their stationary points and half-power points are roots of polynomials, none of which a grid can miss.

const HIGHEST_U = 1e24;

/**
 * Cut-off, ripple, excursion and port flow of a vented box with leakage, absorption and port losses, exact.
 *
 * Coil inductance is left out (it acts above the cut-off: for a coil of 1 mH on 5.6 Ω below some 200 Hz a few per cent), the port is a
 * mass; amplifier and cable count into QT. null where the numbers are so extreme that one of them overflows. `lowestOverTuning`: where the flow
 * begins to count, over the tuning. Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part I (circuit,
 * from memory); polynomials derived above, checked against the nodal solution.
 *
 * Example: B4 with QL = 7 has cut-off 1, ripple 0.
 */
export const ventedFigures = (box: LossyVentedBox, lowestOverTuning: number): VentedFigures | null => {
  const { h, alpha, qt } = box;
  const { leak: l, absorption: a, port: p } = box.losses;
  const p2 = 1 + a * l;
  const p1 = l + p + a * (1 + l * p);
  const p0 = 1 + l * p;
  const damping = 1 / (h * qt);
  const spring = 1 / (h * h);
  const air = alpha * spring;
  const d4 = p2;
  const d3 = p1 + p2 * damping + air * a;
  const d2 = p0 + p1 * damping + p2 * spring + air * (1 + a * p);
  const d1 = p0 * damping + p1 * spring + air * p;
  const d0 = p0 * spring;
  // |D|² over ν⁸ d4², ascending in u
  const q = [
    1,
    (d3 * d3 - 2 * d2 * d4) / d4 ** 2,
    (d2 * d2 + 2 * d0 * d4 - 2 * d1 * d3) / d4 ** 2,
    (d1 * d1 - 2 * d0 * d2) / d4 ** 2,
    (d0 / d4) ** 2,
  ];
  if (!q.every(Number.isFinite)) return null;

  const response = [1, p * p];
  const uCut = halfPower(q, p * p);
  if (uCut === null) return null;
  let highest = 1;
  let lowest = 1;
  for (const u of stationaryPoints(response, q, uCut)) {
    const power = at(response, u) / at(q, u);
    highest = Math.max(highest, power);
    lowest = Math.min(lowest, power);
  }

  const motion = [0, 0, p2 * p2, p1 * p1 - 2 * p0 * p2, p0 * p0];
  const flow = [0, 0, a * a, 1];
  const excursion = Math.sqrt(greatest(motion, q, uCut)) * spring;
  const portFlow = Math.sqrt(greatest(flow, q, 1 / lowestOverTuning ** 2)) * spring;
  const figures = {
    cutOffOverTuning: 1 / Math.sqrt(uCut),
    peakDb: 10 * Math.log10(highest),
    rippleDb: 10 * Math.log10(highest / lowest),
    excursionRatio: excursion / d4,
    portFlowRatio: portFlow / d4,
  };
  return Object.values(figures).every(Number.isFinite) ? figures : null;
};

const at = (coefficients: readonly number[], x: number): number => {
  let sum = 0;
  for (let k = coefficients.length - 1; k >= 0; k--) sum = sum * x + coefficients[k]!;
  return sum;
};

/** The smallest u with q(u) = 2 (1 + p² u); below it (at higher frequencies) the response is above half power. */
const halfPower = (q: readonly number[], portSquare: number): number | null => {
  const below = [-1, q[1]! - 2 * portSquare, q[2]!, q[3]!, q[4]!];
  let to = 1e-6;
  while (at(below, to) <= 0) {
    to *= 8;
    if (to > HIGHEST_U) return null;
  }
  return positiveRoots(below, to)[0] ?? null;
};

const greatest = (numerator: readonly number[], q: readonly number[], to: number): number => {
  let most = at(numerator, to) / at(q, to);
  for (const u of stationaryPoints(numerator, q, to)) most = Math.max(most, at(numerator, u) / at(q, u));
  return most;
};
