import type { Finding } from '../messages/problem.ts';
import type { SpeakerModel } from '../speaker/model.ts';
import type { Simulation } from '../speaker/simulation.ts';
import type { MusicHeat } from './limits/musicHeat.ts';

/** The numbers of the strip below the plots. null: not defined for this design (say, no level that is 3 dB down). */
export interface KeyFigures {
  /** Lower and upper -3 dB points re the mean level from 200 Hz to 2 kHz. */
  readonly lowMinus3Hz: number | null;
  readonly highMinus3Hz: number | null;
  /** Mean level 200 Hz to 2 kHz at the listening point at the set drive, dB re 20 µPa. */
  readonly meanLevelDbSpl: number | null;
  /** The same for 2.83 V at 1 m on axis of the tweeter's height. */
  readonly sensitivityDbSpl: number | null;
  /** Half of greatest minus least, 200 Hz to 10 kHz. */
  readonly rippleDb: number | null;
  readonly leastImpedance: { readonly ohm: number; readonly atHz: number; readonly amplifierId: string } | null;
  /** Per speaker: greatest one-way peak excursion at the set drive, with its limit (null: the driver states none). */
  readonly excursions: readonly {
    readonly partId: string;
    readonly peakM: number;
    readonly atHz: number;
    readonly limitM: number | null;
  }[];
  /** Per kind of passive radiator: as `excursions`. */
  readonly radiatorExcursions: readonly {
    readonly id: string;
    readonly peakM: number;
    readonly atHz: number;
    readonly limitM: number | null;
  }[];
  /** Per port: greatest peak air speed at the set drive. */
  readonly portSpeeds: readonly (MouthAir & {
    /** Where both ends are rounded generously: the air's worst one-way peak motion over their radius; null elsewhere. */
    readonly stroke: {
      readonly overEdge: number;
      readonly edgeRadiusM: number;
      readonly atHz: number;
      readonly concern: 'quiet' | 'watch' | 'audible';
    } | null;
  })[];
  /** Per line that ends in the open: the same in its mouth. */
  readonly lineSpeeds: readonly MouthAir[];
  /** Per chamber: net and apparent volume, and its tuning where it has ports. */
  readonly chambers: readonly {
    readonly id: string;
    readonly grossM3: number;
    readonly netM3: number;
    readonly apparentM3: number;
    readonly tuningHz: number | null;
    /** Sealed chamber with drivers: resonance and total Q of the first driver in it. */
    readonly sealed: { readonly fcHz: number; readonly qtc: number } | null;
  }[];
  /** Per speaker: dissipation in its coil at the set drive with a sine, greatest over frequency. */
  readonly coilPowers: readonly {
    readonly partId: string;
    readonly powerW: number;
    readonly atHz: number;
    readonly ratedW: number | null;
  }[];
  /** Per speaker: its coil in the long run of music whose peaks are those of the sine at the set drive. */
  readonly coilHeats: readonly MusicHeat[];
  /** Peak that a sine at the set drive asks of an amplifier at its worst frequency, V or A; where the amplifier states what it can give. */
  readonly amplifierPeaks: readonly {
    readonly id: string;
    readonly quantity: 'voltage' | 'current';
    readonly peak: number;
    readonly limit: number;
    readonly atHz: number;
  }[];
}

/** Greatest peak air speed in an opening, with the guide values for the shape of its ends (from memory, not limits). */
interface MouthAir {
  readonly id: string;
  readonly peakMPerS: number;
  readonly atHz: number;
  /** From here it is often heard, from there most likely. */
  readonly carefulMPerS: number;
  readonly loudMPerS: number;
}

/** All that the screen shows of one document. Kept as results, never saved. */
export interface Evaluation {
  readonly model: SpeakerModel;
  readonly simulation: Simulation;
  readonly keyFigures: KeyFigures;
  readonly findings: readonly Finding[];
}
