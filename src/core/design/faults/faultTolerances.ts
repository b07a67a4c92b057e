/**
 * How far a healthy build strays from its design, as shares (0.05 for 5 %): each number is the limit that values keep to, spread
 * evenly within it, which a normal spread of limit/√3 stands for.
 */
export interface FaultTolerances {
  /** Resistors, capacitors and coils, unless `ofParts` states another. */
  readonly part: number;
  readonly ofParts: ReadonlyMap<string, number>;
  /** Winding resistance of coils. */
  readonly winding: number;
  readonly coilResistance: number;
  readonly coilInductance: number;
  readonly resonance: number;
  readonly motor: number;
  /** Mechanical loss of a driver, Rms. */
  readonly mechanicalLoss: number;
  readonly chamberVolume: number;
  readonly portLength: number;
  /** Conductance of the leak that a design states. */
  readonly leak: number;
}

/** Parts of 5 %, drivers and boxes as they usually come (drivers and boxes: common practice, no source). */
export const USUAL_TOLERANCES: FaultTolerances = {
  part: 0.05,
  ofParts: new Map(),
  winding: 0.1,
  coilResistance: 0.05,
  coilInductance: 0.15,
  resonance: 0.1,
  motor: 0.05,
  mechanicalLoss: 0.25,
  chamberVolume: 0.05,
  portLength: 0.04,
  leak: 0.4,
};
