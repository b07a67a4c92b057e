import type { AirProperties } from '../../acoustics/airProperties.ts';
import { chamberComplianceM3PerPa } from '../../acoustics/chamber.ts';
import type { MovingParts } from '../../acoustics/movingParts.ts';
import { radiatorNotchHz, radiatorTuningHz } from '../../acoustics/radiatorTuning.ts';
import { type Complex, divide } from '../../math/complex.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';

/** A passive radiator box in the terms of its alignment: α = Vas/V, δ = radiator's compliance over the air's, driver's fs and QT. */
export interface RadiatorBox {
  readonly fsHz: number;
  readonly qt: number;
  readonly alpha: number;
  readonly delta: number;
  /** Radiator's own resonance, where the sum has its notch, Hz. */
  readonly notchHz: number;
}

/** Tuning of the box from the radiator's own resonance, Hz: fB = fP √(1 + δ). */
export const radiatorBoxTuningHz = (notchHz: number, delta: number): number => notchHz * Math.sqrt(1 + delta);

/** Back again: the resonance that a radiator of relative compliance δ must have for a tuning, Hz. */
export const radiatorNotchForTuningHz = (tuningHz: number, delta: number): number => tuningHz / Math.sqrt(1 + delta);

/**
 * Output of a passive radiator box re its pass band; lossless box and radiator, no coil inductance.
 *
 * With s = jf/fs and m = s² T² + 1/δ, T² = (fs/fP)²/δ: G = s² m/((s² + s/QT + 1)(m + 1) + α m). Exact null at fP; δ → ∞ at a fixed
 * tuning is a vented box. Source: R. H. Small, "Passive-Radiator Loudspeaker Systems", J. Audio Eng. Soc. 22, 1974, part I (form derived).
 *
 * Example: |G| = 0 at the notch
 */
export const radiatorBoxResponse = (box: RadiatorBox, frequencyHz: number): Complex => {
  const x = frequencyHz / box.fsHz;
  const m = (1 - (frequencyHz / box.notchHz) ** 2) / box.delta;
  const driver = { re: 1 - x * x, im: x / box.qt };
  return divide({ re: -x * x * m, im: 0 }, { re: driver.re * (m + 1) + box.alpha * m, im: driver.im * (m + 1) });
};

/** A radiator with what is screwed to it, in a chamber. */
export interface LoadedRadiator {
  readonly notchHz: number;
  readonly tuningHz: number;
  /** Its compliance over that of the chamber's air. */
  readonly delta: number;
}

/**
 * What `count` equal radiators with `addedKg` on each make of a chamber (apparent volume m³): notch, tuning and δ.
 *
 * Source: as `radiatorBoxResponse`. Losses left out.
 *
 * Example: more mass lowers tuning and notch by the same ratio
 */
export const loadedRadiator = (
  radiator: Omit<MovingParts, 'rmsKgPerS'> & { readonly count: number },
  addedKg: number,
  volumeM3: number,
  air: AirProperties,
): LoadedRadiator => {
  const loaded = together(radiator, addedKg);
  return {
    notchHz: radiatorNotchHz(loaded),
    tuningHz: radiatorTuningHz(loaded, volumeM3, air),
    delta: (loaded.cmsMPerN * loaded.sdM2 ** 2) / chamberComplianceM3PerPa(volumeM3, air),
  };
};

/** Equal radiators side by side move as one of their whole area and mass on their springs in parallel. */
const together = (
  { sdM2, mmsKg, cmsMPerN, count }: Omit<MovingParts, 'rmsKgPerS'> & { readonly count: number },
  addedKg: number,
): Omit<MovingParts, 'rmsKgPerS'> => ({
  sdM2: count * sdM2,
  mmsKg: count * (mmsKg + addedKg),
  cmsMPerN: cmsMPerN / count,
});

/**
 * Mass to add to each of `count` radiators so that they tune a chamber (apparent volume m³) to `tuningHz`, kg.
 *
 * From M = (Sd²/Cab + 1/Cms)/(2πfB)². A tuning above what the bare radiators give is the Problem `acoustics.radiator-too-heavy` with the
 * highest tuning. Inverse of `loadedRadiator`.
 *
 * Example: see the test
 */
export const addedMassForTuningKg = (
  radiator: Omit<MovingParts, 'rmsKgPerS'> & { readonly count: number },
  tuningHz: number,
  volumeM3: number,
  air: AirProperties,
): Result<number> => {
  if (!(tuningHz > 0 && volumeM3 > 0 && Number.isFinite(tuningHz) && Number.isFinite(volumeM3))) {
    return fail(problem('acoustics.no-tuning-asked', { kind: 'chamber' }));
  }
  const highestHz = radiatorTuningHz(together(radiator, 0), volumeM3, air);
  const addedKg = radiator.mmsKg * ((highestHz / tuningHz) ** 2 - 1);
  if (addedKg >= 0) return succeed(addedKg);
  return fail(problem('acoustics.radiator-too-heavy', { kind: 'chamber' }, { tuningHz, highestHz }));
};
