import { type Conductor, type WindingWire, wireFigures } from '../../circuit/wire/index.ts';
import { fail, problem, type Result, succeed } from '../../messages/problem.ts';
import { layTurns, type TurnLayout } from './turns.ts';
import { growingInductance } from './turnsInductance.ts';

/** What a coil is wound of and how warm it is. */
export interface WindingStock {
  readonly wire: WindingWire;
  readonly conductor: Conductor;
  readonly temperatureC: number;
}

/** A bobbin: radius of its bore's outside and width between its cheeks, m. */
export interface Bobbin {
  readonly innerRadiusM: number;
  readonly lengthM: number;
}

/** An air-core coil as it is wound. */
export interface Winding extends TurnLayout {
  readonly wire: WindingWire;
  readonly layers: number;
  readonly turnsInLastLayer: number;
  readonly outerRadiusM: number;
  /** Of the full layers, along the axis. */
  readonly lengthM: number;
  readonly wireLengthM: number;
  /** To direct current, at the stock's temperature. */
  readonly ohm: number;
  /** Of the bare wire. */
  readonly conductorKg: number;
  /** With whole turns. */
  readonly henry: number;
}

const MOST_TURNS = 1500;

/**
 * Winds an inductance (H) on a bobbin: whole turns in square layers until the inductance is as near as a turn allows (in ratio).
 *
 * Problems: `winding.bobbin-too-narrow` where not one turn fits, `winding.too-many-turns` beyond 1500. Inductance as
 * `turnsInductanceH`; leads are not counted. Throws a RangeError on sizes that are not above 0.
 * @example windOnBobbin(1e-3, stock, { innerRadiusM: 0.0125, lengthM: 0.02 })
 */
export function windOnBobbin(henry: number, stock: WindingStock, bobbin: Bobbin): Result<Winding> {
  const pitchM = stock.wire.overEnamelM;
  if (!(henry > 0 && bobbin.innerRadiusM > 0 && pitchM > 0)) throw new RangeError('a coil needs sizes above 0');
  // A width that is a whole number of wires must not lose one to rounding.
  const turnsPerLayer = Math.floor((bobbin.lengthM / pitchM) * (1 + 1e-9));
  if (turnsPerLayer < 1)
    return fail(problem('winding.bobbin-too-narrow', { kind: 'document' }, { lengthM: bobbin.lengthM, wireM: pitchM }));
  const layout: TurnLayout = { innerRadiusM: bobbin.innerRadiusM, pitchM, turnsPerLayer, turns: MOST_TURNS };
  let turns = 0;
  let below = 0;
  for (const reached of growingInductance(layout, stock.wire.bareM)) {
    if (reached >= henry) {
      const takeLess = below > 0 && henry / below < reached / henry;
      const found = takeLess ? turns : turns + 1;
      return succeed(windingOf({ ...layout, turns: found }, stock, takeLess ? below : reached));
    }
    turns++;
    below = reached;
  }
  return fail(problem('winding.too-many-turns', { kind: 'document' }, { henry, most: MOST_TURNS }));
}

function windingOf(layout: TurnLayout, { wire, conductor, temperatureC }: WindingStock, henry: number): Winding {
  const layers = Math.ceil(layout.turns / layout.turnsPerLayer);
  const wireLengthM = layTurns(layout).reduce((sum, { radiusM }) => sum + 2 * Math.PI * radiusM, 0);
  const figures = wireFigures(wire.bareM, conductor, temperatureC);
  return {
    ...layout,
    wire,
    layers,
    turnsInLastLayer: layout.turns - (layers - 1) * layout.turnsPerLayer,
    outerRadiusM: layout.innerRadiusM + layers * layout.pitchM,
    lengthM: Math.min(layout.turns, layout.turnsPerLayer) * layout.pitchM,
    wireLengthM,
    ohm: wireLengthM * figures.ohmPerM,
    conductorKg: wireLengthM * figures.kgPerM,
    henry,
  };
}
