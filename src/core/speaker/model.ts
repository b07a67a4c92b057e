import type { DuctSection, OpenEnd } from '../acoustics/duct/index.ts';
import type { FibreFill } from '../acoustics/fill/index.ts';
import type { AirProperties, DriverParameters, EdgePaths, OpenBafflePaths, StatedLoss } from '../acoustics/index.ts';
import type { Admittance } from '../circuit/branch.ts';
import type { Part } from '../circuit/part.ts';

export type { AirProperties, DriverParameters, EdgePaths, OpenBafflePaths, StatedLoss };

// The physical model that everything is computed from: what `readModel(document)` makes of a document, and what a
// test or a script can write down directly. SI throughout.

export interface ModelChamber {
  readonly id: string;
  /** Apparent volume: net times what the filling gains; at 50 Hz where the filling's effect is computed. */
  readonly volumeM3: number;
  readonly leak: StatedLoss | null;
  readonly absorption: StatedLoss | null;
  /** Absent: `volumeM3` and `absorption` say it all. */
  readonly filling?: ChamberFilling;
}

/** Fibre in a chamber: stuffed into a share of it, before the wall behind `depthM`, or as sheets on its walls. */
export interface ChamberFilling {
  readonly netM3: number;
  readonly fill: FibreFill;
  readonly placing:
    | { readonly kind: 'stuffed'; readonly share: number; readonly depthM: number }
    | { readonly kind: 'lined'; readonly areaM2: number; readonly thicknessM: number };
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
  /** Set for a cone whose back radiates too, on an open baffle: it stands in the place of `edges` in every view. */
  readonly dipole?: OpenBafflePaths;
}

export interface ModelPort {
  readonly id: string;
  readonly chamberId: string;
  /** The chamber at its other end; absent or null: the air outside, into which it radiates. */
  readonly toChamberId?: string | null;
  /** One port's area times their number. */
  readonly areaM2: number;
  /** Length with end corrections. */
  readonly effectiveLengthM: number;
  readonly loss: StatedLoss | null;
  /** Resistance of a filling in the bore, Pa·s/m³; absent: none. */
  readonly stuffingPaSPerM3?: number;
  /** Set where the bore is a pipe with standing waves of its own, not a mass alone. */
  readonly pipe?: { readonly section: DuctSection; readonly count: number; readonly outerEnd: OpenEnd };
  readonly radiation: Radiation;
}

export interface ModelPassiveRadiator {
  readonly id: string;
  readonly chamberId: string;
  readonly sdM2: number;
  /** With the added mass. */
  readonly mmsKg: number;
  readonly cmsMPerN: number;
  readonly rmsKgPerS: number;
  readonly radiation: Radiation;
}

/** A duct from a chamber, straight or tapered along straight lines, its first stretch filled or all of it empty. */
export interface ModelLine {
  readonly id: string;
  readonly chamberId: string;
  readonly lengthM: number;
  readonly startAreaM2: number;
  readonly endAreaM2: number;
  readonly filled: { readonly share: number; readonly fill: FibreFill } | null;
  /** Where it ends: shut, in another chamber, or in the open, from where it radiates. */
  readonly end:
    | { readonly kind: 'closed' }
    | { readonly kind: 'chamber'; readonly chamberId: string }
    | { readonly kind: 'open'; readonly radiation: Radiation };
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
  /** The chamber behind it; null: none, its back is closed or in the open. */
  readonly chamberId: string | null;
  /** The chamber in front of it; absent or null: the air outside, into which it radiates. */
  readonly frontChamberId?: string | null;
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
  /** Complex factor on its voltage over the sweep: the active filters before it; absent: 1. */
  readonly drive?: Admittance;
}

export interface SpeakerModel {
  readonly air: AirProperties;
  /** For the viscosity of the air in pipes and lines; 20 where absent. */
  readonly airTemperatureC?: number;
  readonly amplifiers: readonly ModelAmplifier[];
  /** The network's parts, speakers and amplifiers included. */
  readonly parts: readonly Part[];
  readonly speakers: readonly ModelSpeaker[];
  readonly chambers: readonly ModelChamber[];
  readonly ports: readonly ModelPort[];
  readonly passiveRadiators: readonly ModelPassiveRadiator[];
  readonly lines?: readonly ModelLine[];
  /** `full-space` halves every pressure; `half-space` and `baffle-step` differ by the `edges` of each radiation. */
  readonly radiation: 'baffle-step' | 'half-space' | 'full-space';
}
