import type { AirProperties } from './model.ts';

/** A complex quantity over the sweep, split. */
export interface ComplexCurve {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

export interface SpeakerResult {
  readonly partId: string;
  /** V rms across its terminals. */
  readonly terminalVoltage: ComplexCurve;
  /** Coil current, A rms. */
  readonly current: ComplexCurve;
  /** Volume velocity of the cone forwards, m3/s rms, by the lumped model. */
  readonly volumeVelocity: ComplexCurve;
  /** One-way peak, m. */
  readonly excursionPeakM: Float64Array;
  /** Pa rms at the listening point, propagation included. */
  readonly pressure: ComplexCurve;
}

export interface PortResult {
  readonly id: string;
  /** Outwards, all ports of this kind together, m3/s rms. */
  readonly volumeVelocity: ComplexCurve;
  /** Mean air speed in the bore, m/s rms. Shown as peak: times the square root of 2. */
  readonly airSpeedRmsMPerS: Float64Array;
  readonly pressure: ComplexCurve;
}

export interface PassiveRadiatorResult extends PortResult {
  /** One-way peak, m. */
  readonly excursionPeakM: Float64Array;
}

export interface AmplifierResult {
  readonly id: string;
  /** v / i at the speaker's terminals, ohm: output resistance and cable not included. */
  readonly impedance: ComplexCurve;
  readonly current: ComplexCurve;
}

/** What one solve of the whole loudspeaker yields. Levels: 20 log10(|pressure| / 20 µPa). */
export interface Simulation {
  readonly frequenciesHz: Float64Array;
  readonly air: AirProperties;
  readonly amplifiers: readonly AmplifierResult[];
  readonly speakers: readonly SpeakerResult[];
  readonly ports: readonly PortResult[];
  readonly passiveRadiators: readonly PassiveRadiatorResult[];
  /** Of each line that ends in the open, its mouth. */
  readonly lines: readonly PortResult[];
  /** Sum of all pressures at the listening point. */
  readonly sum: ComplexCurve;
  /** Dissipated in each resistor, capacitor (ESR), inductor (DCR and core) and coil resistance, W, by part id. */
  readonly partPowersW: ReadonlyMap<string, Float64Array>;
  /** Delay of the nearest driver, s: taken out of phase plots. */
  readonly referenceDelayS: number;
}
