import type { CapacitorKind } from './capacitorKinds.ts';

/** A series resistance with the range that makes of one kind span, ohm. */
export interface SeriesResistance {
  readonly usualOhm: number;
  readonly leastOhm: number;
  readonly mostOhm: number;
}

/**
 * Series resistance of a capacitor's dielectric from its loss tangent, ohm: tan δ/(ωC).
 *
 * Source: definition of the loss tangent of a series equivalent.
 * @example dielectricOhm(10e-6, 1000, 0.005) // 0.0796
 */
export const dielectricOhm = (farad: number, hz: number, lossTangent: number): number =>
  lossTangent / (2 * Math.PI * hz * farad);

/**
 * Series resistance of a capacitor of a kind, `leadsOhm` of its leads added, at the frequency that matters: a tangent straight over
 * lg f between the kind's points, held beyond them. As one resistance it is right near `hz` alone: loss tangents change slowly, so
 * the resistance falls about as 1/f.
 * @example capacitorSeriesOhm(CAPACITOR_KINDS.polyester, 10e-6, 1000, 0).usualOhm // 0.0796
 */
export function capacitorSeriesOhm(kind: CapacitorKind, farad: number, hz: number, leadsOhm: number): SeriesResistance {
  const at = (which: 'least' | 'usual' | 'most'): number =>
    dielectricOhm(farad, hz, tangentAt(kind, hz, which)) + leadsOhm;
  return { usualOhm: at('usual'), leastOhm: at('least'), mostOhm: at('most') };
}

function tangentAt({ losses }: CapacitorKind, hz: number, which: 'least' | 'usual' | 'most'): number {
  const above = losses.findIndex((point) => point.hz >= hz);
  if (above === 0) return losses[0]![which];
  if (above < 0) return losses.at(-1)![which];
  const [low, high] = [losses[above - 1]!, losses[above]!];
  const share = Math.log(hz / low.hz) / Math.log(high.hz / low.hz);
  return low[which] + share * (high[which] - low[which]);
}
