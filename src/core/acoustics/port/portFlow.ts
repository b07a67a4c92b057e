import type { AirProperties } from '../airProperties.ts';

/** The numbers by which the state of the air in a port is judged. */
export interface PortFlow {
  /** One-way peak of the air's motion, v/ω, m. */
  readonly strokePeakM: number;
  /** v/c. */
  readonly mach: number;
  /** v d/ν on the bore's diameter. */
  readonly reynolds: number;
  /** ω a/v = a/ξ: below about 1 the air moves further than the bore's radius. */
  readonly strouhal: number;
  /** a/δ: the bore's radius in depths of the oscillating boundary layer. */
  readonly stokesNumber: number;
  /** v δ/ν on the depth of that layer. */
  readonly layerReynolds: number;
}

/** Air with its viscosity, Pa·s. */
type Viscous = AirProperties & { readonly viscosityPaS: number };

/** Depth of the oscillating boundary layer, m: δ = √(2ν/ω). */
const layerDepthM = (frequencyHz: number, air: Viscous): number =>
  Math.sqrt((2 * air.viscosityPaS) / (air.densityKgPerM3 * 2 * Math.PI * frequencyHz));

/**
 * Stroke, Mach number, Reynolds numbers and Strouhal number of the air in a bore from its peak mean speed (m/s) at one frequency.
 *
 * `radiusM` of the bore, for a slot that of the circle of equal area. Definitions; what they mean: `PORT_THRESHOLDS`.
 * Source: definitions as in P. Blondeaux, G. Vittori, J. Fluid Mech. 2021 (boundary-layer Reynolds number).
 *
 * Example: 15.6 m/s peak at 30 Hz in 80 mm: stroke 83 mm, Mach 0.045, layer Reynolds 414
 */
export const portFlow = (speedPeakMPerS: number, frequencyHz: number, radiusM: number, air: Viscous): PortFlow => {
  const omega = 2 * Math.PI * frequencyHz;
  const kinematic = air.viscosityPaS / air.densityKgPerM3;
  const depthM = layerDepthM(frequencyHz, air);
  return {
    strokePeakM: speedPeakMPerS / omega,
    mach: speedPeakMPerS / air.soundSpeedMPerS,
    reynolds: (2 * radiusM * speedPeakMPerS) / kinematic,
    strouhal: (omega * radiusM) / speedPeakMPerS,
    stokesNumber: radiusM / depthM,
    layerReynolds: (speedPeakMPerS * depthM) / kinematic,
  };
};

/**
 * Peak air speed at which the oscillating boundary layer has a given Reynolds number, m/s: v = Re √(νω/2), whatever the bore.
 *
 * Example: Re 85 at 35 Hz: 3.46 m/s
 */
export const speedForLayerReynolds = (layerReynolds: number, frequencyHz: number, air: Viscous): number =>
  (layerReynolds * air.viscosityPaS) / (air.densityKgPerM3 * layerDepthM(frequencyHz, air));
