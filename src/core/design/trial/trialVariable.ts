import type { Capacitor, Inductor, Part, Resistor } from '../../circuit/part.ts';

/** The parts whose values can be tried out. */
export type ValuedPart = Resistor | Capacitor | Inductor;

/** A part whose value is varied: ohm, farad or henry by its kind. */
export interface TrialVariable {
  readonly partId: string;
  /** An inductor's resistance follows its inductance to this power; absent or 0: it stays what it is. */
  readonly dcrExponent?: number;
}

export const isValued = (part: Part): part is ValuedPart =>
  part.kind === 'resistor' || part.kind === 'capacitor' || part.kind === 'inductor';

/** The value of a part in its unit: ohm, farad or henry. */
export function partValue(part: ValuedPart): number {
  if (part.kind === 'resistor') return part.ohm;
  return part.kind === 'capacitor' ? part.farad : part.henry;
}

/** The part with another value; an inductor's resistance follows by `dcrExponent`. */
export function withValue(part: ValuedPart, value: number, dcrExponent = 0): ValuedPart {
  if (part.kind === 'resistor') return { ...part, ohm: value };
  if (part.kind === 'capacitor') return { ...part, farad: value };
  const dcrOhm = dcrExponent === 0 ? part.dcrOhm : part.dcrOhm * (value / part.henry) ** dcrExponent;
  return { ...part, henry: value, dcrOhm };
}

/**
 * Every resistor, capacitor and inductor as a variable.
 * @example variablesOf(model.parts)
 */
export const variablesOf = (parts: readonly Part[]): TrialVariable[] =>
  parts.filter(isValued).map(({ id }) => ({ partId: id }));
