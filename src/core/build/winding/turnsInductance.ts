import { ringMutualH } from '../coils/ringMutual.ts';
import { MU0 } from '../coils/vacuum.ts';
import type { Turn, TurnLayout } from './turns.ts';
import { layTurns } from './turns.ts';

/**
 * Inductance of one turn of round wire, H: μ0 a (ln(8a/r) − 7/4), current spread evenly; radius of the turn and of the wire, m.
 *
 * Error of order (r/a)². Source: J. C. Maxwell and Lord Rayleigh, as in F. W. Grover, Inductance Calculations, 1946 (from memory).
 */
export const turnInductanceH = (radiusM: number, wireRadiusM: number): number =>
  MU0 * radiusM * (Math.log((8 * radiusM) / wireRadiusM) - 1.75);

/**
 * Gives the inductance of the first n turns of a layout for n = 1, 2, ..., H: each turn's own and twice its mutual with all before.
 * A generator, so that a search stops at the turns that it needs.
 */
export function* growingInductance(layout: TurnLayout, wireM: number): Generator<number> {
  const mutuals = new Map<number, number>();
  const layers = Math.ceil(layout.turns / layout.turnsPerLayer);
  const mutual = (a: Turn, layerA: number, b: Turn, layerB: number, apart: number): number => {
    const key = (layerA * layers + layerB) * layout.turnsPerLayer + apart;
    const known = mutuals.get(key);
    if (known !== undefined) return known;
    const found = ringMutualH(a.radiusM, b.radiusM, apart * layout.pitchM);
    mutuals.set(key, found);
    return found;
  };
  const turns = layTurns(layout);
  const layerOf = (n: number): number => Math.floor(n / layout.turnsPerLayer);
  let henry = 0;
  for (let n = 0; n < turns.length; n++) {
    const turn = turns[n]!;
    henry += turnInductanceH(turn.radiusM, wireM / 2);
    for (let other = 0; other < n; other++) {
      const apart = Math.abs((n % layout.turnsPerLayer) - (other % layout.turnsPerLayer));
      henry += 2 * mutual(turn, layerOf(n), turns[other]!, layerOf(other), apart);
    }
    yield henry;
  }
}

/**
 * Inductance of a coil turn by turn as circles of round wire (bare diameter `wireM`, m), H: what the wound coil has at low frequencies, within 0.2 %
 * of the helix. Own inductance of each circle and the mutual of every pair.
 * @example turnsInductanceH({ innerRadiusM: 0.014, pitchM: 1.08e-3, turnsPerLayer: 13, turns: 169 }, 1e-3)
 */
export function turnsInductanceH(layout: TurnLayout, wireM: number): number {
  let henry = 0;
  for (const value of growingInductance(layout, wireM)) henry = value;
  return henry;
}
