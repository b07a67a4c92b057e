import type { ComplexCurve } from './simulation.ts';

export const complexCurve = (length: number): ComplexCurve => ({
  re: new Float64Array(length),
  im: new Float64Array(length),
});

/** Adds `curve` to `sum` in place. */
export function addInto(sum: ComplexCurve, curve: ComplexCurve): void {
  for (let i = 0; i < sum.re.length; i++) {
    sum.re[i] = sum.re[i]! + curve.re[i]!;
    sum.im[i] = sum.im[i]! + curve.im[i]!;
  }
}

/** Magnitudes, same unit. */
export function magnitudes(curve: ComplexCurve): Float64Array {
  const out = new Float64Array(curve.re.length);
  for (let i = 0; i < out.length; i++) out[i] = Math.sqrt(curve.re[i]! ** 2 + curve.im[i]! ** 2);
  return out;
}

/** Angles, radians, from -π to π. */
export function anglesRad(curve: ComplexCurve): Float64Array {
  const out = new Float64Array(curve.re.length);
  for (let i = 0; i < out.length; i++) out[i] = Math.atan2(curve.im[i]!, curve.re[i]!);
  return out;
}

export const REFERENCE_PRESSURE_PA = 20e-6;

/** Levels, dB re 20 µPa, of pressures in Pa rms. A silent point is -400 dB, so that no infinity leaves. */
export function levelsDbSpl(pressure: ComplexCurve): Float64Array {
  const out = new Float64Array(pressure.re.length);
  for (let i = 0; i < out.length; i++) {
    const square = (pressure.re[i]! ** 2 + pressure.im[i]! ** 2) / REFERENCE_PRESSURE_PA ** 2;
    out[i] = square > 1e-40 ? 10 * Math.log10(square) : -400;
  }
  return out;
}
