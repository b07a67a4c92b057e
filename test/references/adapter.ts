/** Inputs and outputs of a case are plain JSON: numbers, strings, null, lists and records of them. */
export type Json = number | string | boolean | null | readonly Json[] | { readonly [key: string]: Json };
export type Inputs = { readonly [key: string]: Json };

/**
 * Maps a family of cases with a set of input keys to calls into the public core. It computes nothing itself: it selects,
 * reshapes and converts (through convert.ts alone). A missing optional key is simply absent from `inputs`.
 */
export interface Adapter {
  readonly family: string;
  /** Every one of these must be among the case's inputs ... */
  readonly requires: readonly string[];
  /** ... and no other than these and the required ones. */
  readonly allows?: readonly string[];
  /** Same nesting and key names as the case's `expected`; null for a perfect null. */
  run(inputs: Inputs): Json;
}
