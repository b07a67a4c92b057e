import { type Estimate, fitEstimate } from '../../math/index.ts';
import type { CoilCandidate } from './coilChoice.ts';
import { SEMI_AT_OMEGA } from './coilForms.ts';
import { COIL_AT } from './driverModel.ts';

/** A coil as fitted: Le, K (jω)^n, an inductance with a resistance across it; null where the form has it not. */
export interface FittedCoil {
  readonly leH: FittedValue | null;
  readonly semiInductance: { readonly kOhmSn: FittedValue; readonly exponent: FittedValue } | null;
  readonly shunt: { readonly inductanceH: FittedValue; readonly resistanceOhm: FittedValue } | null;
}

/** A value with its interval; null for an interval that the data do not give, as where the value rests on a bound of the search. */
export interface FittedValue {
  readonly value: number;
  readonly interval: Estimate | null;
}

const unit = (length: number, ...places: readonly [number, number][]): number[] => {
  const slopes = new Array<number>(length).fill(0);
  for (const [place, slope] of places) slopes[place] = slope;
  return slopes;
};

/** Reads the coil out of a candidate. K is carried from its size at 1 kHz with the exponent's uncertainty. */
export function fittedCoil({ form, result }: CoilCandidate): FittedCoil {
  const { fit, inflation } = result;
  const n = fit.values.length;
  const read = (value: number, slopes: number[]): FittedValue => ({
    value,
    interval: fitEstimate(fit, value, slopes, inflation),
  });
  const leH = form === 'semi' ? null : read(fit.values[COIL_AT]!, unit(n, [COIL_AT, 1]));
  if (form === 'plain') return { leH, semiInductance: null, shunt: null };
  if (form === 'shunted') {
    const [inductanceH, resistanceOhm] = [COIL_AT + 1, COIL_AT + 2].map((at) =>
      read(fit.values[at]!, unit(n, [at, 1])),
    );
    return { leH, semiInductance: null, shunt: { inductanceH: inductanceH!, resistanceOhm: resistanceOhm! } };
  }
  const at = form === 'semi' ? COIL_AT : COIL_AT + 1;
  const exponent = fit.values[at + 1]!;
  const kOhmSn = fit.values[at]! / SEMI_AT_OMEGA ** exponent;
  return {
    leH,
    semiInductance: {
      kOhmSn: read(kOhmSn, unit(n, [at, 1], [at + 1, -Math.log(SEMI_AT_OMEGA)])),
      exponent: read(exponent, unit(n, [at + 1, 1 / exponent])),
    },
    shunt: null,
  };
}
