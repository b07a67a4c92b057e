import { type Problem, problem } from '../../messages/problem.ts';
import type { Part } from '../part.ts';

/**
 * A textbook section as ordinary parts. Its nodes: `@in` towards the source, `@out` towards the speaker, `0` the return,
 * `@1`, `@2` ... inside. A section that only goes across the speaker has no `@in`.
 */
export interface Section {
  readonly parts: readonly Part[];
  /** Where the formulas are from. */
  readonly source: string;
  /** What has to hold for the section to do what its name says. */
  readonly assumes: string;
}

export const IN = '@in';
export const OUT = '@out';

type Nodes = readonly [string, string];

/** Ideal parts: winding and series resistances are entered later, when the part is chosen. */
export const resistorPart = (id: string, nodes: Nodes, ohm: number): Part => ({
  kind: 'resistor',
  id,
  nodes,
  note: '',
  ohm,
  ratedPowerW: null,
});
export const inductorPart = (id: string, nodes: Nodes, henry: number): Part => ({
  kind: 'inductor',
  id,
  nodes,
  note: '',
  henry,
  dcrOhm: 0,
  coreLossTangent: 0,
});
export const capacitorPart = (id: string, nodes: Nodes, farad: number): Part => ({
  kind: 'capacitor',
  id,
  nodes,
  note: '',
  farad,
  esrOhm: 0,
});

/** A Problem for each value that is not a number above 0. */
export const notPositive = (values: Readonly<Record<string, number>>): Problem[] =>
  Object.entries(values).flatMap(([field, value]) =>
    Number.isFinite(value) && value > 0
      ? []
      : [problem('circuit.section-value', { kind: 'field', field }, { field, value: String(value) })],
  );
