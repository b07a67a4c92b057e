import type { AirProperties, DriverParameters, EdgePaths, StatedLoss } from '../acoustics/index.ts';
import type { Part } from '../circuit/part.ts';

export type { AirProperties, DriverParameters, EdgePaths, StatedLoss };

// The physical model that everything is computed from: what `readModel(document)` makes of a document, and what a
// test or a script can write down directly. SI throughout.

export interface ModelChamber {
  readonly id: string;
  /** Apparent volume: net times what the filling gains. */
  readonly volumeM3: number;
  readonly leak: StatedLoss | null;
  readonly absorption: StatedLoss | null;
}

/** A source of sound on the cabinet: where it is and how it radiates. */
export interface Radiation {
  /** Exact path length to the listening point, m. */
  readonly distanceM: number;
  /** Radius of the equivalent flat piston for directivity; 0 for a point source. */
  readonly pistonRadiusM: number;
  /** Angle between the front's normal and the path, degrees. */
  readonly offAxisDeg: number;
  /** Lengths of the detour over the cabinet's edges and their weights (sum 1); null for pure half space. */
  readonly edges: EdgePaths | null;
}

export interface ModelPort {
  readonly id: string;
  readonly chamberId: string;
  /** One port's area times their number. */
  readonly areaM2: number;
  /** Length with end corrections. */
  readonly effectiveLengthM: number;
  readonly loss: StatedLoss | null;
  readonly radiation: Radiation;
}

export interface ModelPassiveRadiator {
  readonly id: string;
  readonly chamberId: string;
  readonly sdM2: number;
  readonly mmsKg: number;
  readonly cmsMPerN: number;
  readonly rmsKgPerS: number;
  readonly radiation: Radiation;
}

/** A measured table for one driver, already on what `blendHz` needs: ascending frequencies. */
export interface MeasuredTable {
  readonly frequenciesHz: Float64Array;
  readonly magnitudes: Float64Array;
  /** Unwrapped, radians; for a response the propagation delay is taken out. */
  readonly phasesRad: Float64Array;
}

export interface ModelSpeaker {
  /** Id of the speaker part in the network, `LS1`. */
  readonly partId: string;
  readonly parameters: DriverParameters;
  readonly chamberId: string | null;
  readonly radiation: Radiation;
  readonly measured: {
    readonly blendHz: number;
    /** Pressure (Pa rms) per volt at the terminals at 1 m, its delay removed; null: the model all the way. */
    readonly response: (MeasuredTable & { readonly baffle: 'own' | 'infinite' }) | null;
    /** Impedance in ohm; null: the model all the way. */
    readonly impedance: MeasuredTable | null;
  } | null;
}

export interface ModelAmplifier {
  readonly id: string;
  readonly voltageV: number;
  /** Output resistance plus cable, both ways. */
  readonly resistanceOhm: number;
}

export interface SpeakerModel {
  readonly air: AirProperties;
  readonly amplifiers: readonly ModelAmplifier[];
  /** The network's parts, speakers and amplifiers included. */
  readonly parts: readonly Part[];
  readonly speakers: readonly ModelSpeaker[];
  readonly chambers: readonly ModelChamber[];
  readonly ports: readonly ModelPort[];
  readonly passiveRadiators: readonly ModelPassiveRadiator[];
  /** `full-space` halves every pressure; `half-space` and `baffle-step` differ by the `edges` of each radiation. */
  readonly radiation: 'baffle-step' | 'half-space' | 'full-space';
}
