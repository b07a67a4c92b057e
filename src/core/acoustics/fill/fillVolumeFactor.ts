import { type Complex, divide } from '../../math/complex.ts';
import { adiabaticModulusPa, type ViscousAir } from '../viscousAir.ts';
import type { FibreFill } from './fibreFill.ts';
import { fibreHeat } from './fibreHeat.ts';

/**
 * Compliance of a filled space over that of the same space of plain air, complex: (1 − s)[1 + (γ − 1)/(1 + r + jωτ)].
 *
 * τ = 1/(2π corner), r = `airOverFibre` (fibres that warm up: they lower the gain and raise the corner by 1 + r). Real part: the
 * apparent volume; imaginary part (below 0): the loss that goes with it. One pole, fibres at rest, no friction (`filledChamberAdmittance`
 * adds it from the same σ). Source: two heat capacities with one exchange (derived here).
 *
 * Example: polyester with its corner at 61 Hz: about 1.29 at 30 Hz.
 */
export const fillVolumeFactor = (fill: FibreFill, air: ViscousAir, omega: number): Complex => {
  const heat = fibreHeat(fill, air);
  const relaxed = thermalRelaxation(omega / (2 * Math.PI * fill.thermalCornerHz), heat.airOverFibre, air);
  const free = 1 - heat.solidFraction;
  return { re: free * relaxed.re, im: free * relaxed.im };
};

/** 1 + (γ − 1)/(1 + r + jx): x frequency over corner, r air's heat capacity over the fibres' (0: fibres that never warm up). */
export const thermalRelaxation = (x: number, airOverFibre: number, air: ViscousAir): Complex => {
  const part = divide({ re: air.heatCapacityRatio - 1, im: 0 }, { re: 1 + airOverFibre, im: x });
  return { re: 1 + part.re, im: part.im };
};

/** Compliance C(ω) of a volume whose air exchanges heat with time constant τ (solid volume left out), m³/Pa: admittance jωC. */
export const relaxingComplianceM3PerPa = (volumeM3: number, timeS: number, air: ViscousAir, omega: number): Complex => {
  const factor = thermalRelaxation(omega * timeS, 0, air);
  const plain = volumeM3 / adiabaticModulusPa(air);
  return { re: plain * factor.re, im: plain * factor.im };
};

/** Quality factor of a lossy compliance, −Re C/Im C. */
export const complianceQ = (compliance: Complex): number => -compliance.re / compliance.im;
