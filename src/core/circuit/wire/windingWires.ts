/** An enamelled wire: bare diameter and greatest diameter with its enamel, m. */
export interface WindingWire {
  readonly bareM: number;
  readonly overEnamelM: number;
}

const mm = (bare: number, over: number): WindingWire => ({ bareM: bare / 1000, overEnamelM: over / 1000 });

/**
 * Enamelled round wires that coils of crossovers are wound of, thinnest first, with the thicker usual enamel.
 *
 * Source: IEC 60317-0-1, grade 2 greatest overall diameters (from memory).
 */
export const WINDING_WIRES: readonly WindingWire[] = [
  mm(0.5, 0.566),
  mm(0.56, 0.63),
  mm(0.63, 0.704),
  mm(0.71, 0.789),
  mm(0.8, 0.884),
  mm(0.9, 0.989),
  mm(1, 1.094),
  mm(1.12, 1.217),
  mm(1.25, 1.349),
  mm(1.4, 1.502),
  mm(1.6, 1.706),
  mm(1.8, 1.909),
  mm(2, 2.112),
  mm(2.24, 2.355),
  mm(2.5, 2.618),
];
