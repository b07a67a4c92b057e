import { plainAmplifier } from './plain.ts';
import type { Air, Chain, Chamber, Listening, Port } from './schema.ts';

/** A room at rest: 20 °C at standard sea-level pressure, half-way humidity. */
export const defaultAir: Air = { temperatureC: 20, pressurePa: 101_325, humidityFraction: 0.5 };

/**
 * Losses that a box starts with, each a quality factor at the frequency where it holds.
 * Leakage: 7 is the usual assumption for a well-made box in which nothing was measured (common practice, no source).
 * Absorption: walls without filling take very little; 100 is the customary figure for an unlined box (common practice, no source).
 * Port: 100 stands for a smooth tube without sharp bends (common practice, no source).
 */
export const defaultLossQ = { leak: 7, absorption: 100, port: 100 } as const;

/** Where the starting losses hold until a tuning is known: near the low end of a small box. */
export const defaultLossHz = 40;

export const defaultLeak: NonNullable<Chamber['leak']> = { q: defaultLossQ.leak, atHz: defaultLossHz };
export const defaultAbsorption: NonNullable<Chamber['absorption']> = {
  q: defaultLossQ.absorption,
  atHz: defaultLossHz,
};
export const defaultPortLoss: NonNullable<Port['loss']> = { q: defaultLossQ.port, atHz: defaultLossHz };

/** 2.83 V is 1 W into 8 Ω: the voltage at which sensitivities are stated. */
export const defaultDriveV = 2.83;

/** A modern amplifier: an output resistance that is low against any load, rated for 4 Ω; 0.05 Ω is about 3.5 m of 2 × 2.5 mm² copper, both ways. */
export const defaultAmplifier: Omit<Chain['amplifiers'][number], 'id'> = {
  outputResistanceOhm: 0.05,
  ratedMinimumLoadOhm: 4,
  cableOhm: 0.05,
  ...plainAmplifier,
};

/** A seat at home: 2 m away, ears 1 m above the floor, on axis, the cabinet on the floor. */
export const defaultListening: Listening = {
  distanceM: 2,
  heightM: 1,
  horizontalDeg: 0,
  verticalDeg: 0,
  standHeightM: 0,
  radiation: 'baffle-step',
};

/** Between the middle of the box model's range and the lowest crossovers, where both model and measurement can be trusted. */
export const defaultBlendHz = 300;
