import type { Part } from '../../circuit/part.ts';
import type { ModelSpeaker } from '../../speaker/model.ts';

/** A row over the sweep, split. */
export interface Row {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface BuiltPart {
  /** With the nodes and nominal values that it has in this build. */
  readonly part: Part;
  readonly state: 'whole' | 'open' | 'short';
}

export interface BuiltDriver {
  readonly partId: string;
  readonly nodes: readonly [string, string];
  readonly speaker: ModelSpeaker;
  readonly isOpen: boolean;
  /** Coil impedance without its resistance, ohm. */
  readonly coil: Row;
  /** Admittance across its terminals that a measured impedance adds to the model, S; null: none. */
  readonly added: Row | null;
}

/** One branch of the air, between two nodes of it. */
export interface AirBranch {
  readonly id: string;
  readonly nodes: readonly [string, string];
  readonly admittance: Row;
  /** What its unknown scales: all of it, or as of a port the inverse of its reactance, its loss staying as it is. */
  readonly scales: 'admittance' | 'reactance';
  readonly isBlocked: boolean;
}

/**
 * A loudspeaker as it may have been built, laid out for solving many variants of it over one sweep: an electrical network whose
 * drivers are ports, and the air behind and before the cones.
 */
export interface Build {
  readonly omegas: Float64Array;
  /** Where the impedance is taken, plus first. */
  readonly terminals: readonly [string, string];
  readonly parts: readonly BuiltPart[];
  readonly drivers: readonly BuiltDriver[];
  readonly air: readonly AirBranch[];
  /** Leaks that the design does not have, by their chambers; each has an unknown of its own. */
  readonly leaks: readonly ExtraLeak[];
  /** Resistance before the terminals, ohm, to which its unknown refers; 0: none. */
  readonly cableOhm: number;
}

export interface ExtraLeak {
  readonly chamberId: string;
  readonly node: string;
  /** Conductance to which its unknown refers, m³/(s·Pa). */
  readonly conductance: number;
}
