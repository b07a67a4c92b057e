/**
 * Admittance of a two-node branch over a sweep: writes real and imaginary parts (siemens) for every angular
 * frequency (rad/s, ascending, all above 0) into the caller's buffers of the same length.
 */
export type Admittance = (omegas: Float64Array, outRe: Float64Array, outIm: Float64Array) => void;

/** Derivative of the admittance with respect to one value of a branch, in the same way. */
export type AdmittanceDerivative = Admittance;

export interface AdmittanceBranch {
  readonly kind: 'admittance';
  readonly id: string;
  /** Current counts as positive from the first node to the second, through the branch. */
  readonly nodes: readonly [string, string];
  readonly admittance: Admittance;
  /** Set where the branch is as good as a wire: a link, or a resistance raised to the least that the solver takes. */
  readonly short?: 'link' | 'floored';
  /** Set where the admittance is this real number at every frequency, siemens. */
  readonly conductanceS?: number;
  /** By name of the value (`ohm`, `henry`, `dcrOhm`, ...): used by the adjoint, absent where a branch has no values to vary. */
  readonly derivatives?: Readonly<
    Record<string, { readonly value: number; readonly derivative: AdmittanceDerivative }>
  >;
}

/**
 * A gyrator between two node pairs: i1 = g v2, i2 = -g v1, currents into the plus nodes; lossless.
 * Four real entries of opposite sign across the diagonal.
 */
export interface GyratorBranch {
  readonly kind: 'gyrator';
  readonly id: string;
  readonly primary: readonly [string, string];
  readonly secondary: readonly [string, string];
  readonly gyrationS: number;
}

/** A voltage source with a series resistance (0 allowed: then its plus node has a known voltage re the return). */
export interface SourceBranch {
  readonly kind: 'source';
  readonly id: string;
  /** plus, minus; minus must be the return '0' when the resistance is 0. */
  readonly nodes: readonly [string, string];
  readonly voltageV: number;
  readonly resistanceOhm: number;
  /** Complex factor on the voltage over the sweep, as of a filter before the amplifier; absent: 1. */
  readonly drive?: Admittance;
}

export type Branch = AdmittanceBranch | GyratorBranch | SourceBranch;

/** The reference node of every circuit, electrical return and still air alike. */
export const RETURN = '0';
