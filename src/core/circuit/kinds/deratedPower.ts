import type { ResistorKind } from './resistorKinds.ts';

/**
 * Power that a resistor of `ratedW` may take for long in air of `airC` (°C), W: all of it up to the knee, straight down to 0.
 *
 * A resistor at its limit is as hot as `zeroAtC`: far beyond what wood, tape and fingers bear. Source: usual derating diagram, from memory.
 * @example deratedPowerW(10, RESISTOR_KINDS['wire-wound'], 70) // 8.2
 */
export function deratedPowerW(
  ratedW: number,
  { flatToC, zeroAtC }: Pick<ResistorKind, 'flatToC' | 'zeroAtC'>,
  airC: number,
): number {
  const share = (zeroAtC - airC) / (zeroAtC - flatToC);
  return ratedW * Math.min(1, Math.max(0, share));
}

/**
 * Temperature of a resistor's hottest place at a power, °C: air plus power over rating of the whole fall of its diagram, the slope
 * of the derating line being its heat resistance.
 * @example resistorTemperatureC(5, 10, RESISTOR_KINDS['wire-wound'], 25) // 150
 */
export const resistorTemperatureC = (
  powerW: number,
  ratedW: number,
  { flatToC, zeroAtC }: Pick<ResistorKind, 'flatToC' | 'zeroAtC'>,
  airC: number,
): number => airC + (powerW / ratedW) * (zeroAtC - flatToC);
