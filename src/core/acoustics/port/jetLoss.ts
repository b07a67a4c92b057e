import { findRoot } from '../../math/findRoot.ts';
import type { AirProperties } from '../airProperties.ts';
import { portMassKgPerM4 } from './portAdmittance.ts';

/** Loss factors K of a port, both ends together, in steady flow (from memory; they spread by a third). */
export const JET_LOSS_FACTORS = [
  { ends: 'sharp, straight', least: 1.3, most: 1.5 },
  { ends: 'rounded at one end', least: 1, most: 1 },
  { ends: 'flared at both ends', least: 0.2, most: 0.5 },
] as const;

/** Share of the jet's pressure that falls on the third harmonic, re the first: sin|sin| has no second and a fifth of the third. */
export const JET_THIRD_HARMONIC = 1 / 5;

/**
 * Resistance that the jets at a port's ends have for the first harmonic, per area, Pa·s/m: R = 4/(3π) K ρ v, v the peak speed.
 *
 * From Δp = (Kρ/2) v|v|. Quasi-steady: holds where the stroke is far above the edge's radius. Divide by the section for Pa·s/m³.
 * Source: U. Ingard, H. Ising, "Acoustic nonlinearity of an orifice", J. Acoust. Soc. Am. 42, 1967, 6 (class of result, from memory); derived.
 *
 * Example: K 1.2 at 10 m/s: 6.13 Pa·s/m
 */
export const jetResistancePaSPerM = (lossFactor: number, speedPeakMPerS: number, densityKgPerM3: number): number =>
  (4 / (3 * Math.PI)) * lossFactor * densityKgPerM3 * speedPeakMPerS;

/** The same as an acoustic resistance of a bore, Pa·s/m³. */
export const jetResistancePaSPerM3 = (
  lossFactor: number,
  speedPeakMPerS: number,
  areaM2: number,
  densityKgPerM3: number,
): number => jetResistancePaSPerM(lossFactor, speedPeakMPerS, densityKgPerM3) / areaM2;

/**
 * Loss factor that is left where the stroke hardly passes the edge: 0 up to a stroke of the edge's radius, the whole of it from twice
 * that, in between in proportion. A suggestion of ours, no source; a sharp edge (radius 0) has the whole of it always.
 */
export const blendedLossFactor = (lossFactor: number, strokePeakM: number, edgeRadiusM: number): number => {
  if (edgeRadiusM === 0) return lossFactor;
  return lossFactor * Math.min(Math.max(strokePeakM / edgeRadiusM - 1, 0), 1);
};

export interface JetCompression {
  /** Peak speed with the jets' loss, m/s. */
  readonly speedPeakMPerS: number;
  /** What the port's output at the tuning loses, dB, 0 or more. */
  readonly lossDb: number;
  readonly resistancePaSPerM3: number;
}

/**
 * The most that a port's output at its tuning can lose to the jets at its ends, dB.
 *
 * `losslessPeakMPerS` is the peak speed that the linear circuit gives, `ql` the chamber's leak there. The cone keeps its flow, the
 * jets are quasi-steady: both overstate it. Measured compression of straight and well-flared ports stayed under 2 dB (A. Bezzola
 * 2019/2020): show it as an upper bound. |Up/Uc|⁻² = (1/QL + r)² + (r/QL)², r = R/(ωM), R from the speed itself (solved).
 * Source: circuit and `jetResistancePaSPerM`, derived.
 *
 * Example: see the test (QL 10, 6.5 m/s: about 4 dB with K = 1.2).
 */
export const jetCompression = (
  port: {
    readonly losslessPeakMPerS: number;
    readonly tuningHz: number;
    readonly areaM2: number;
    readonly effectiveLengthM: number;
    readonly lossFactor: number;
    readonly ql: number;
  },
  air: AirProperties,
): JetCompression => {
  const { losslessPeakMPerS, tuningHz, areaM2, effectiveLengthM, lossFactor, ql } = port;
  const reactance = 2 * Math.PI * tuningHz * portMassKgPerM4(areaM2, effectiveLengthM, air);
  const resistanceAt = (speed: number): number => jetResistancePaSPerM3(lossFactor, speed, areaM2, air.densityKgPerM3);
  const fall = (speed: number): number => {
    const r = resistanceAt(speed) / reactance;
    return Math.hypot(1 + r * ql, r);
  };
  const none = { speedPeakMPerS: 0, lossDb: 0, resistancePaSPerM3: 0 };
  if (!(losslessPeakMPerS > 0)) return none;
  const { x } = findRoot((v) => v * fall(v) - losslessPeakMPerS, 0, losslessPeakMPerS, 1e-12 * losslessPeakMPerS);
  return { speedPeakMPerS: x, lossDb: 20 * Math.log10(losslessPeakMPerS / x), resistancePaSPerM3: resistanceAt(x) };
};
