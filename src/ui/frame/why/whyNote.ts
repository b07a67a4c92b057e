import type { Evaluation } from '../../../core/design/evaluation.ts';
import type { Project } from '../../../core/document/schema.ts';
import { formatQuantity, quantityText } from '../../../core/units/formatQuantity.ts';
import type { QuantityKind, UnitSystem } from '../../../core/units/quantityKind.ts';

/** One quantity of a formula with its present value. */
export interface WhyLine {
  readonly symbol: string;
  readonly meaning: string;
  readonly value: string;
}

/** The answer to "why?": a formula, what stands in it now, what comes out, how far it holds and where it is from. */
export interface WhyNote {
  readonly title: string;
  readonly formula: string;
  readonly lines: readonly WhyLine[];
  /** The value that the formula gives, as the strip shows it. */
  readonly result: WhyLine;
  readonly holds: string;
  readonly source: string;
}

/** What a note may look at. */
export interface WhyInput {
  readonly project: Project;
  readonly evaluation: Evaluation;
  readonly units: UnitSystem;
}

/** A quantity with its unit, as text: three significant digits unless asked for more. */
export const figure = (value: number, kind: QuantityKind, units: UnitSystem = 'metric', digits = 3): string =>
  quantityText(formatQuantity(value, kind, units, digits));
