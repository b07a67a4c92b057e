import type { AdmittanceBranch } from '../branch.ts';

/**
 * A capacitor with its series resistance: y = jωC / (1 + jωCr).
 * @example capacitor('C1', ['a', '0'], { farad: 10e-6, esrOhm: 0.05 })
 */
export function capacitor(
  id: string,
  nodes: readonly [string, string],
  values: { readonly farad: number; readonly esrOhm: number },
): AdmittanceBranch {
  const { farad, esrOhm } = values;
  return {
    kind: 'admittance',
    id,
    nodes,
    admittance: (omegas, outRe, outIm) => {
      if (esrOhm === 0) {
        outRe.fill(0);
        for (let f = 0; f < omegas.length; f++) outIm[f] = omegas[f]! * farad;
        return;
      }
      for (let f = 0; f < omegas.length; f++) {
        const b = omegas[f]! * farad;
        const t = b * esrOhm;
        const scale = b / (1 + t * t);
        outRe[f] = t * scale;
        outIm[f] = scale;
      }
    },
    derivatives: {
      // dy/dC = jω / (1 + jt)², t = ωCr
      farad: {
        value: farad,
        derivative: (omegas, outRe, outIm) => {
          for (let f = 0; f < omegas.length; f++) {
            const omega = omegas[f]!;
            const t = omega * farad * esrOhm;
            const scale = omega / ((1 + t * t) * (1 + t * t));
            outRe[f] = 2 * t * scale;
            outIm[f] = (1 - t * t) * scale;
          }
        },
      },
      // dy/dr = -y² = (ωC)² / (1 + jt)²
      esrOhm: {
        value: esrOhm,
        derivative: (omegas, outRe, outIm) => {
          for (let f = 0; f < omegas.length; f++) {
            const b = omegas[f]! * farad;
            const t = b * esrOhm;
            const scale = (b * b) / ((1 + t * t) * (1 + t * t));
            outRe[f] = (1 - t * t) * scale;
            outIm[f] = -2 * t * scale;
          }
        },
      },
    },
  };
}
