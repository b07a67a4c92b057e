/**
 * Highest temperatures of what carries a coil, and of the magnet beside it, °C, as ranges over makes and grades. From memory: a
 * default that the person changes, the lower end being the careful one. A maker's own figure rules.
 */
export const HEAT_LIMITS_C = {
  paper: [100, 120],
  polyimide: [180, 250],
  aluminium: [180, 250],
  neodymiumMagnet: [80, 150],
} as const satisfies Readonly<Record<string, readonly [lowC: number, highC: number]>>;
