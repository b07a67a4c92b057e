import type { AdmittanceBranch } from '../branch.ts';

/**
 * A coil: z = r + ωL tanδ + jωL, with the winding's resistance r and the loss tangent of a core at small signals
 * (0 for an air coil).
 * Source: the series form of a magnetic core's loss tangent, tanδ = R/(ωL) (IEC 60205/62044 usage, from memory).
 * @example inductor('L1', ['a', 'b'], { henry: 1e-3, dcrOhm: 0.3, coreLossTangent: 0 })
 */
export function inductor(
  id: string,
  nodes: readonly [string, string],
  values: { readonly henry: number; readonly dcrOhm: number; readonly coreLossTangent: number },
): AdmittanceBranch {
  const { henry, dcrOhm, coreLossTangent } = values;
  /** Writes -y² times (a + ω (b + jc)): the derivative of y = 1/z where dz is that. */
  const derivative =
    (a: number, b: number, c: number) =>
    (omegas: Float64Array, outRe: Float64Array, outIm: Float64Array): void => {
      for (let f = 0; f < omegas.length; f++) {
        const omega = omegas[f]!;
        const r = dcrOhm + omega * henry * coreLossTangent;
        const x = omega * henry;
        const squared = r * r + x * x;
        const yRe = r / squared;
        const yIm = -x / squared;
        const yyRe = yRe * yRe - yIm * yIm;
        const yyIm = 2 * yRe * yIm;
        const dRe = a + omega * b;
        const dIm = omega * c;
        outRe[f] = yyIm * dIm - yyRe * dRe;
        outIm[f] = -yyRe * dIm - yyIm * dRe;
      }
    };
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (omegas, outRe, outIm) => {
      for (let f = 0; f < omegas.length; f++) {
        const x = omegas[f]! * henry;
        const r = dcrOhm + x * coreLossTangent;
        const scale = 1 / (r * r + x * x);
        outRe[f] = r * scale;
        outIm[f] = -x * scale;
      }
    },
    derivatives: {
      henry: { value: henry, derivative: derivative(0, coreLossTangent, 1) },
      dcrOhm: { value: dcrOhm, derivative: derivative(1, 0, 0) },
      coreLossTangent: { value: coreLossTangent, derivative: derivative(0, henry, 0) },
    },
  };
}
