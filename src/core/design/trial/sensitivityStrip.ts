import { bandIndices } from '../band.ts';
import type { Tried } from './crossoverTrial.ts';
import { type TrialCurve, trialLevelGradient } from './trialCurve.ts';

/** What one part does to a curve, over the sweep. */
export interface PartSensitivity {
  readonly partId: string;
  /** dB per unit of ln value; 1 % more is a hundredth of it. */
  readonly dbPerLn: Float64Array;
  /** Root mean square of it over the band. */
  readonly rmsDbPerLn: number;
  /** Greatest magnitude within the band and where. */
  readonly greatest: { readonly dbPerLn: number; readonly atHz: number } | null;
}

/**
 * How much a curve moves with each part's value at each frequency, parts in order of what they do within the band. By the
 * adjoint: one solve for all parts. First order: to 0.1 dB for changes of a few per cent.
 * @example sensitivityStrip(tried, { kind: 'sum', points: [0] }, { fromHz: 100, toHz: 10000 })[0].partId
 */
export function sensitivityStrip(
  tried: Tried,
  curve: TrialCurve,
  band: { readonly fromHz: number; readonly toHz: number },
): PartSensitivity[] {
  const { frequenciesHz, variables } = tried.trial;
  const { derivatives } = trialLevelGradient(tried, curve);
  const { from, to } = bandIndices(frequenciesHz, band.fromHz, band.toHz);
  return variables
    .map(({ partId }, i): PartSensitivity => {
      const dbPerLn = derivatives[i]!;
      let squares = 0;
      let at = -1;
      for (let f = from; f < to; f++) {
        squares += dbPerLn[f]! ** 2;
        if (at < 0 || Math.abs(dbPerLn[f]!) > Math.abs(dbPerLn[at]!)) at = f;
      }
      return {
        partId,
        dbPerLn,
        rmsDbPerLn: to > from ? Math.sqrt(squares / (to - from)) : 0,
        greatest: at < 0 ? null : { dbPerLn: dbPerLn[at]!, atHz: frequenciesHz[at]! },
      };
    })
    .sort((a, b) => b.rmsDbPerLn - a.rmsDbPerLn);
}

/** Names of the parts at one frequency, the one that moves the curve most first. */
export const strongestAt = (strip: readonly PartSensitivity[], frequencyIndex: number): readonly string[] =>
  strip
    .toSorted((a, b) => Math.abs(b.dbPerLn[frequencyIndex]!) - Math.abs(a.dbPerLn[frequencyIndex]!))
    .map(({ partId }) => partId);
