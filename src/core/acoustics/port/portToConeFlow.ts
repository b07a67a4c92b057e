import { type Complex, reciprocal } from '../../math/complex.ts';

/**
 * Volume velocity out of a port over that of the cone into the chamber: 1/(1 + (jν)/QL + (jν)²), ν = f/fB.
 *
 * Chamber with leakage QL (null: none) and a lossless port tuned to fB; at the tuning the ratio is −j QL, for QL null unbounded.
 * Source: R. H. Small, "Vented-Box Loudspeaker Systems", J. Audio Eng. Soc. 21, 1973, part I (circuit, from memory).
 *
 * Example: |portToConeFlow(1, 7)| = 7
 */
export const portToConeFlow = (frequencyOverTuning: number, ql: number | null): Complex =>
  reciprocal({ re: 1 - frequencyOverTuning ** 2, im: ql === null ? 0 : frequencyOverTuning / ql });
