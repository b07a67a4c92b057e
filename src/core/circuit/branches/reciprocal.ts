import type { Admittance } from '../branch.ts';

/** Turns impedances in place into admittances: y = 1/z. */
export function reciprocal(re: Float64Array, im: Float64Array): void {
  for (let f = 0; f < re.length; f++) {
    const r = re[f]!;
    const x = im[f]!;
    const scale = 1 / (r * r + x * x);
    re[f] = r * scale;
    im[f] = -x * scale;
  }
}

/** From the impedance z and its derivative dz, both over the sweep, the admittance's derivative -dz / z². */
export const reciprocalDerivative =
  (impedance: Admittance, derivative: Admittance): Admittance =>
  (omegas, outRe, outIm) => {
    const zRe = new Float64Array(omegas.length);
    const zIm = new Float64Array(omegas.length);
    impedance(omegas, zRe, zIm);
    derivative(omegas, outRe, outIm);
    reciprocal(zRe, zIm);
    for (let f = 0; f < omegas.length; f++) {
      const a = zRe[f]!;
      const b = zIm[f]!;
      const squareRe = a * a - b * b;
      const squareIm = 2 * a * b;
      const dRe = outRe[f]!;
      const dIm = outIm[f]!;
      outRe[f] = squareIm * dIm - squareRe * dRe;
      outIm[f] = -squareRe * dIm - squareIm * dRe;
    }
  };
