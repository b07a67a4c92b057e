import { helmholtzNeckM } from '../acoustics/port/helmholtz.ts';
import { type PortGeometry, portEndCorrectionsM } from '../acoustics/port/portEffectiveLength.ts';
import { portSectionM2 } from '../acoustics/port/portShape.ts';
import { type PortGroup, portLengthForTuning } from '../acoustics/port/portTuning.ts';
import { type Problem, problem } from '../messages/problem.ts';
import type { DriverNumbers } from './alignments/driverNumbers.ts';
import { sealedForQtc } from './alignments/sealedAlignment.ts';

/** What somebody asks of a chamber. Volumes apparent, lengths m. */
export type BoxWish =
  | { readonly kind: 'sealed'; readonly driver: DriverNumbers; readonly qtc: number }
  | {
      readonly kind: 'vented';
      /** Net volume; 0 or less where drivers, ports and braces take all. */
      readonly volumeM3: number;
      readonly tuningHz: number;
      readonly port: Omit<PortGeometry, 'lengthM'> & PortGroup;
      /** Longest straight port that leaves its inner end free; null: not known. */
      readonly insideM: number | null;
    };

/** Frequency at which a port that opens into no volume at all is a quarter of a wave long, Hz: c/(4 L). */
export const portQuarterWaveHz = (effectiveLengthM: number, soundSpeedMPerS: number): number =>
  soundSpeedMPerS / (4 * effectiveLengthM);

/**
 * Why a wish for a box cannot come true; none where it can. Never throws and never answers with NaN, whatever the numbers.
 *
 * Sealed: `acoustics.qtc-not-above-qts`. Vented: `design.no-air-left`, `acoustics.no-tuning-asked`, `acoustics.port-too-wide`,
 * `design.tuning-above-pipe` and `design.port-longer-than-box`. A pipe of effective length L on a volume V resonates where cot(kL) = kV/S,
 * which lies below kL = π/2 for every V: a tuning for which the lumped formula asks for more than a quarter wave is out of reach of any length
 * (derived; lossless, end corrections as at low frequencies).
 *
 * Example: boxWishProblems({ kind: 'sealed', driver: { fsHz: 30, qts: 0.8, vasM3: 0.05 }, qtc: 0.7 }, 343)
 */
export const boxWishProblems = (wish: BoxWish, soundSpeedMPerS: number): Problem[] => {
  if (wish.kind === 'sealed') {
    if (![wish.driver.qts, wish.driver.fsHz, wish.driver.vasM3, wish.qtc].every(isPositive)) return [unreadable()];
    const found = sealedForQtc(wish.driver, wish.qtc);
    return found.ok ? [] : [...found.problems];
  }
  const { volumeM3, tuningHz, port, insideM } = wish;
  const areaM2 = port.count * portSectionM2(port.shape);
  if (!isPositive(areaM2) || !isPositive(soundSpeedMPerS)) return [unreadable()];
  if (!(volumeM3 > 0)) {
    return [problem('design.no-air-left', { kind: 'chamber' }, Number.isFinite(volumeM3) ? { volumeM3 } : {})];
  }
  const length = portLengthForTuning(port, tuningHz, volumeM3, soundSpeedMPerS);
  if (!length.ok) return [...length.problems];
  const problems: Problem[] = [];
  const effectiveM = helmholtzNeckM({ areaM2, tuningHz, volumeM3 }, soundSpeedMPerS);
  const lengthM = effectiveM - portEndCorrectionsM(port, port.neighbourDistancesM);
  if (!Number.isFinite(lengthM)) return [unreadable()];
  const pipeHz = portQuarterWaveHz(effectiveM, soundSpeedMPerS);
  if (tuningHz >= pipeHz) {
    problems.push(problem('design.tuning-above-pipe', { kind: 'port' }, { tuningHz, pipeHz, lengthM }));
  }
  if (insideM !== null && lengthM > insideM) {
    problems.push(problem('design.port-longer-than-box', { kind: 'port' }, { tuningHz, lengthM, insideM }));
  }
  return problems;
};

const isPositive = (value: number): boolean => value > 0 && Number.isFinite(value);
const unreadable = (): Problem => problem('design.map-unreadable', { kind: 'driver' });
