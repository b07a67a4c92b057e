import type { Complex } from '../../math/complex.ts';
import { reciprocal } from '../../math/complex.ts';
import type { FluidState } from '../fill/equivalentFluid.ts';
import { adiabaticModulusPa, type ViscousAir } from '../viscousAir.ts';
import { type DuctSection, ductAreaM2, ductPerimeterM } from './ductSection.ts';
import { roundWallShare, slitWallShare } from './wallShare.ts';

/** What one metre of duct does: series impedance Z', Pa·s/m⁴, and shunt admittance Y', m²/(Pa·s). */
export interface LineConstants {
  readonly series: Complex;
  readonly shunt: Complex;
}

/**
 * Line constants of a duct with friction and heat at its walls:
 * Z' = jωρ/(S(1 − Fv)), Y' = (jωS/(ρc²))(1 + (γ − 1)Ft).
 *
 * Round and slit exact for plane waves (radius above 10 μm, below the first cross mode). A slot or `any` shape counts as a slit of
 * h = 2S/P with its own area: against the exact rectangle within 0.1 % (Re F) and 1 % (Im F) from 1:1 to 1:10 while every side is
 * far wider than the layer; then F is (1 − j) P d/(2S), as it must be. Smooth rigid walls, no mean flow, no jet.
 * Source: `roundWallShare`.
 *
 * Example: 70 mm bore, 40 Hz: Z' = 789 + j 79412 Pa·s/m⁴.
 */
export const lineConstants = (section: DuctSection, air: ViscousAir, omega: number): LineConstants => {
  const areaM2 = ductAreaM2(section);
  const perLayer = Math.sqrt((omega * air.densityKgPerM3) / air.viscosityPaS);
  const share = section.kind === 'round' ? roundWallShare : slitWallShare;
  const r = perLayer * (section.kind === 'round' ? section.diameterM / 2 : areaM2 / ductPerimeterM(section));
  const viscous = share(r);
  const thermal = share(r * Math.sqrt(air.prandtl));
  const free = reciprocal({ re: 1 - viscous.re, im: -viscous.im });
  const mass = (omega * air.densityKgPerM3) / areaM2;
  const spring = (omega * areaM2) / adiabaticModulusPa(air);
  const heat = air.heatCapacityRatio - 1;
  return {
    series: { re: -mass * free.im, im: mass * free.re },
    shunt: { re: -spring * heat * thermal.im, im: spring * (1 + heat * thermal.re) },
  };
};

/**
 * Line constants of a duct filled with an equivalent fluid: Z' = jωρe/S, Y' = jωS/K. The wall's own layer is left out: the fibres'
 * is far larger.
 */
export const filledLineConstants = (areaM2: number, fluid: FluidState, omega: number): LineConstants => {
  const inverse = reciprocal(fluid.modulusPa);
  const density = fluid.densityKgPerM3;
  return {
    series: { re: (-omega * density.im) / areaM2, im: (omega * density.re) / areaM2 },
    shunt: { re: -omega * areaM2 * inverse.im, im: omega * areaM2 * inverse.re },
  };
};

/** The same line with `count` of them side by side and a resistance spread along each metre, Pa·s/m⁴, in series with them all. */
export const bundledLineConstants = (line: LineConstants, count: number, resistancePerM: number): LineConstants => ({
  series: { re: line.series.re / count + resistancePerM, im: line.series.im / count },
  shunt: { re: line.shunt.re * count, im: line.shunt.im * count },
});
