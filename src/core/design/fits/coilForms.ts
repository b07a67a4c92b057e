import type { FitParameter } from '../../math/index.ts';

/** How the coil of a driver is entered: an inductance, K (jω)^n, or both in series. */
export type EnteredForm = 'plain' | 'semi' | 'both';
/** 'shunted', an inductance in series with a second one across a resistance, is fitted beside them but cannot be entered. */
export type CoilForm = EnteredForm | 'shunted';
export const ENTERED_FORMS: readonly EnteredForm[] = ['plain', 'semi', 'both'];
export const COIL_FORMS: readonly CoilForm[] = [...ENTERED_FORMS, 'shunted'];

/** K is fitted as the size of K (jω)^n here, where it and n hardly hang together; ω of 1 kHz. */
export const SEMI_AT_OMEGA = 2 * Math.PI * 1000;
const LEAST_EXPONENT = 0.25;
const WIDE = 1e4;

const inductance = (leH: number): FitParameter => ({
  start: leH,
  least: leH / WIDE,
  greatest: leH * WIDE,
  scale: 'log',
});
const size = (ohm: number): FitParameter => ({ start: ohm, least: ohm / WIDE, greatest: ohm * WIDE, scale: 'log' });
const exponent = (n: number): FitParameter => ({ start: n, least: LEAST_EXPONENT, greatest: 1, scale: 'linear' });

/** Starts of a form's parameters, from the coil's reactance at the top of a sweep; several where one could lead astray. */
export function coilStarts(form: CoilForm, reactanceOhm: number, omega: number): FitParameter[][] {
  const semi = (share: number, n: number): FitParameter[] => [
    size((share * reactanceOhm * (SEMI_AT_OMEGA / omega) ** n) / Math.sin((n * Math.PI) / 2)),
    exponent(n),
  ];
  const leH = reactanceOhm / omega;
  if (form === 'plain') return [[inductance(leH)]];
  if (form === 'semi') return [semi(1, 0.65), semi(1, 0.9)];
  if (form === 'shunted') {
    return [
      [inductance(leH / 2), inductance(leH), size(reactanceOhm / 10)],
      [inductance(leH / 4), inductance(2 * leH), size(reactanceOhm / 2)],
    ];
  }
  return [
    [inductance(leH / 2), ...semi(0.5, 0.5)],
    [inductance(leH / 20), ...semi(1, 0.7)],
  ];
}

/** Adds a coil's impedance without Re to `re` and `im`; its values begin at `at` in `values`, in the order of `coilStarts`. */
export function addCoil(
  form: CoilForm,
  values: ArrayLike<number>,
  at: number,
  omegas: Float64Array,
  re: Float64Array,
  im: Float64Array,
): void {
  const leH = form === 'semi' ? 0 : values[at]!;
  if (form === 'plain') {
    for (let i = 0; i < omegas.length; i++) im[i]! += omegas[i]! * leH;
    return;
  }
  if (form === 'shunted') {
    const [shuntH, shuntOhm] = [values[at + 1]!, values[at + 2]!];
    for (let i = 0; i < omegas.length; i++) {
      const reactance = omegas[i]! * shuntH;
      const share = shuntOhm / (reactance ** 2 + shuntOhm ** 2);
      re[i]! += share * reactance ** 2;
      im[i]! += share * shuntOhm * reactance + omegas[i]! * leH;
    }
    return;
  }
  const first = form === 'semi' ? at : at + 1;
  const [ohm, n] = [values[first]!, values[first + 1]!];
  const cosine = ohm * Math.cos((n * Math.PI) / 2);
  const sine = ohm * Math.sin((n * Math.PI) / 2);
  for (let i = 0; i < omegas.length; i++) {
    const power = (omegas[i]! / SEMI_AT_OMEGA) ** n;
    re[i]! += cosine * power;
    im[i]! += sine * power + omegas[i]! * leH;
  }
}

export const COIL_COUNTS: Readonly<Record<CoilForm, number>> = { plain: 1, semi: 2, both: 3, shunted: 3 };
