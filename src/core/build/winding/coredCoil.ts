import { MU0 } from '../coils/vacuum.ts';

/** A coil on a core with a gap; the gap's field is taken as confined to the core's section. */
export interface CoredCoil {
  readonly turns: number;
  readonly areaM2: number;
  /** Path in the core, without the gap. */
  readonly coreLengthM: number;
  readonly gapM: number;
  readonly relativePermeability: number;
}

/** Core loss p = k f^a B^b in W/m³, f in Hz, B as a peak in T. */
export interface CoreLoss {
  readonly kWPerM3: number;
  readonly frequencyPower: number;
  readonly fluxPower: number;
}

/**
 * Reluctance of core and gap, A/Wb: (lg + lc/μr)/(μ0 A).
 * @example reluctancePerH(coil)
 */
export const reluctancePerH = ({ areaM2, coreLengthM, gapM, relativePermeability }: CoredCoil): number =>
  (gapM + coreLengthM / relativePermeability) / (MU0 * areaM2);

/** Inductance at small currents, H: N² over the reluctance. Flux that bulges round the gap adds 5 to 20 % (from memory). */
export const coredInductanceH = (coil: CoredCoil): number => coil.turns ** 2 / reluctancePerH(coil);

/** Gap for an inductance, m; negative where the core alone has less. */
export const gapForM = (henry: number, coil: Omit<CoredCoil, 'gapM'>): number =>
  (MU0 * coil.turns ** 2 * coil.areaM2) / henry - coil.coreLengthM / coil.relativePermeability;

/** Peak flux density at a peak current, T, of a core that is not saturated: L I/(N A). */
export const peakFluxT = (coil: CoredCoil, peakA: number): number =>
  (coredInductanceH(coil) * peakA) / (coil.turns * coil.areaM2);

/** Peak current at which the core reaches a flux density, A. */
export const saturationCurrentA = (coil: CoredCoil, saturationT: number): number =>
  (saturationT * coil.turns * coil.areaM2) / coredInductanceH(coil);

/** A cored coil at one frequency and peak current. */
export interface CoredCoilFigures {
  readonly henry: number;
  readonly peakFluxT: number;
  readonly lossW: number;
  /** The loss as a resistance in series, or across the coil, ohm. */
  readonly seriesOhm: number;
  readonly parallelOhm: number;
  readonly q: number;
}

/**
 * What a core costs at a sine of `peakA` and `hz`: flux, loss and the resistance that stands for it; the winding's own is apart.
 *
 * With a flux power of 2 the resistance does not depend on the current; above 2 it grows with it, which is distortion, mainly the third
 * harmonic. Below saturation. Source: C. P. Steinmetz's power law, 1892 (form looked up); Rs = 2P/I², Rp = (ωL)²/Rs.
 * @example coredCoilFigures(coil, { kWPerM3: 3, frequencyPower: 1.2, fluxPower: 2 }, 5, 1000)
 */
export function coredCoilFigures(coil: CoredCoil, loss: CoreLoss, peakA: number, hz: number): CoredCoilFigures {
  const henry = coredInductanceH(coil);
  const flux = peakFluxT(coil, peakA);
  const lossW = loss.kWPerM3 * hz ** loss.frequencyPower * flux ** loss.fluxPower * coil.areaM2 * coil.coreLengthM;
  const seriesOhm = (2 * lossW) / peakA ** 2;
  const reactance = 2 * Math.PI * hz * henry;
  return {
    henry,
    peakFluxT: flux,
    lossW,
    seriesOhm,
    parallelOhm: reactance ** 2 / seriesOhm,
    q: reactance / seriesOhm,
  };
}
