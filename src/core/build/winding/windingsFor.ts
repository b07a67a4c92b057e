import { type Conductor, type WindingWire, wireFigures } from '../../circuit/wire/index.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { brooksFor } from './brooksCoil.ts';
import { wireLengthM } from './windingSection.ts';
import { type Winding, type WindingStock, windOnBobbin } from './windOnBobbin.ts';

/** What is asked of a coil: inductance, and the most resistance to direct current at the temperature. */
export interface WindingWish {
  readonly henry: number;
  readonly ohm: number;
  /** Wires to choose from, thinnest first. */
  readonly wires: readonly WindingWire[];
  readonly conductor: Conductor;
  readonly temperatureC: number;
}

/** The coil that keeps to the wish with the thinnest wire, and that of the next thinner wire where there is one, which does not. */
export interface WindingOffer {
  readonly chosen: Winding;
  readonly thinner: Winding | null;
}

/**
 * Winds an inductance with the least wire: as near the Brooks shape as whole turns and layers allow.
 *
 * Problems as `windOnBobbin`.
 * @example windCompact(1e-3, { wire: WINDING_WIRES[9]!, conductor: COPPER, temperatureC: 20 })
 */
export function windCompact(henry: number, stock: WindingStock): Result<Winding> {
  const pitchM = stock.wire.overEnamelM;
  const turnsPerLayer = Math.max(1, Math.round(Math.sqrt(brooksFor(henry, pitchM).turns)));
  const sideM = turnsPerLayer * pitchM;
  return windOnBobbin(henry, stock, { innerRadiusM: sideM, lengthM: sideM });
}

/**
 * From the inductance and resistance that are wanted to a coil that can be wound: the thinnest of the wires whose compact coil stays at
 * or below the resistance.
 *
 * Thicker wire costs copper, and above about 2 kHz it loses more by eddy currents (`proximityOhm`). Problems: `winding.no-wire` where the
 * list is empty, `winding.ohm-out-of-reach` where even the thickest wire has more resistance, and those of `windOnBobbin`.
 * @example windingsFor({ henry: 1e-3, ohm: 0.4, wires: WINDING_WIRES, conductor: COPPER, temperatureC: 20 })
 */
export function windingsFor(wish: WindingWish): Result<WindingOffer> {
  const { henry, ohm, wires, conductor, temperatureC } = wish;
  if (wires.length === 0) return fail(problem('winding.no-wire', { kind: 'document' }));
  const wind = (wire: WindingWire): Result<Winding> => windCompact(henry, { wire, conductor, temperatureC });
  // Whole turns change the resistance by a few per cent, so the search begins one wire below the estimate.
  const estimated = wires.findIndex((wire) => compactOhm(henry, wire, conductor, temperatureC) <= ohm);
  let thinner: Winding | null = null;
  for (let n = Math.max(0, (estimated < 0 ? wires.length : estimated) - 2); n < wires.length; n++) {
    const wound = wind(wires[n]!);
    if (!wound.ok) return wound;
    if (wound.value.ohm <= ohm) return succeed({ chosen: wound.value, thinner });
    thinner = wound.value;
  }
  return fail(problem('winding.ohm-out-of-reach', { kind: 'document' }, { henry, ohm, leastOhm: thinner!.ohm }));
}

/** Resistance of the ideal compact coil, ohm. */
export const compactOhm = (henry: number, wire: WindingWire, conductor: Conductor, temperatureC: number): number =>
  wireLengthM(brooksFor(henry, wire.overEnamelM)) * wireFigures(wire.bareM, conductor, temperatureC).ohmPerM;
