import type { Admittance } from '../admittance.ts';
import { seriesResonator } from '../seriesResonator.ts';

/** One wall of a cabinet between its edges. */
export interface WallPanel {
  readonly widthM: number;
  readonly heightM: number;
  readonly thicknessM: number;
  readonly youngPa: number;
  readonly poisson: number;
  readonly densityKgPerM3: number;
}

/** First bending mode of a wall as acoustical elements at its chamber's node. */
export interface PanelMode {
  readonly resonanceHz: number;
  readonly complianceM3PerPa: number;
  readonly massKgPerM4: number;
  /** Static compliance of all modes together, m³/Pa. */
  readonly staticComplianceM3PerPa: number;
}

/** Odd modes each way in the static sum: the rest is below 1e-6 of it. */
const MODES = 101;

/**
 * First mode of a simply supported wall: D = E t³/(12(1 − ν²)), f = (π/2) √(D/(ρt)) (1/a² + 1/b²),
 * C = 64ab/(π⁸ D (1/a² + 1/b²)²), M = π⁴ρt/(64ab).
 *
 * Thin isotropic plate (thickness below a tenth of the shorter side), uniform pressure. Clamped edges: f × 1.8 to 1.9; a real cabinet lies between.
 * Its static compliance is some per cent of the chamber's, its resonance is what counts. Source: Navier's series (S. Timoshenko,
 * Theory of Plates and Shells; derived anew).
 *
 * Example: 350 × 500 × 18 mm, 3.5 GPa, 700 kg/m³: 233 Hz
 */
export const panelMode = (panel: WallPanel): PanelMode => {
  const { widthM: a, heightM: b, thicknessM: t } = panel;
  const stiffness = (panel.youngPa * t ** 3) / (12 * (1 - panel.poisson ** 2));
  const first = 1 / a ** 2 + 1 / b ** 2;
  const complianceM3PerPa = (64 * a * b) / (Math.PI ** 8 * stiffness * first ** 2);
  let sum = 0;
  for (let m = 1; m <= MODES; m += 2)
    for (let n = 1; n <= MODES; n += 2) sum += first ** 2 / (m * m * n * n * (m ** 2 / a ** 2 + n ** 2 / b ** 2) ** 2);
  return {
    resonanceHz: (Math.PI / 2) * Math.sqrt(stiffness / (panel.densityKgPerM3 * t)) * first,
    complianceM3PerPa,
    massKgPerM4: (Math.PI ** 4 * panel.densityKgPerM3 * t) / (64 * a * b),
    staticComplianceM3PerPa: complianceM3PerPa * sum,
  };
};

/**
 * A wall's first mode from its chamber's node to still air: R = ω11 M η, M and C in series, m³/(s·Pa).
 *
 * Loss factor η: 0.01 to 0.03 for plain board, 0.1 and more with damping on it (from memory).
 */
export const panelAdmittance = (mode: PanelMode, lossFactor: number): Admittance =>
  seriesResonator({
    resistance: 2 * Math.PI * mode.resonanceHz * mode.massKgPerM4 * lossFactor,
    mass: mode.massKgPerM4,
    compliance: mode.complianceM3PerPa,
  });
