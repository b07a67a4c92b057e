/** One turn as a circle: radius to the middle of the wire and place along the axis, m. */
export interface Turn {
  readonly radiusM: number;
  readonly alongM: number;
}

/** How turns lie: in full layers from one end, each turn a square of the wire's width over its enamel. */
export interface TurnLayout {
  readonly innerRadiusM: number;
  readonly pitchM: number;
  readonly turnsPerLayer: number;
  readonly turns: number;
}

/**
 * The turns of a coil wound layer by layer, the last layer perhaps not full. Square packing: hand-wound coils lie about so; turns
 * bedded in the grooves of the layer below would take 13 % less depth.
 * @example layTurns({ innerRadiusM: 0.014, pitchM: 1.08e-3, turnsPerLayer: 13, turns: 169 })
 */
export const layTurns = ({ innerRadiusM, pitchM, turnsPerLayer, turns }: TurnLayout): Turn[] =>
  Array.from({ length: turns }, (_, n) => ({
    radiusM: innerRadiusM + (Math.floor(n / turnsPerLayer) + 0.5) * pitchM,
    alongM: ((n % turnsPerLayer) + 0.5) * pitchM,
  }));
