import { FREE_END_RADII_PRINTED, PISTON_END_RADII } from './openEndFactors.ts';

/** Speeds of sound at which the two handbook forms reproduce their printed constants, m/s. */
const INCH_FORM_SOUND_SPEED = 344.4;
const CENTIMETRE_FORM_SOUND_SPEED = 344.13;
const INCH_M = 0.0254;

/** L[in] = constant · R²/(fB² V) − sum · R, R in inches, V in cubic inches; the constant is c²/(4π) in inches. Printed: 1.463e7. */
export const handbookInchConstant = (soundSpeedMPerS: number = INCH_FORM_SOUND_SPEED): number =>
  (soundSpeedMPerS / INCH_M) ** 2 / (4 * Math.PI);

/** L[cm] = constant · d²/(fB² V) − sum/2 · d, d in cm, V in litres; the constant is c²/(16π)/1000 in cm. Printed: 23562.5. */
export const handbookCentimetreConstant = (soundSpeedMPerS: number = CENTIMETRE_FORM_SOUND_SPEED): number =>
  (soundSpeedMPerS * 100) ** 2 / (16 * Math.PI) / 1000;

/** Both ends together in radii as the handbooks count them: a piston in a baffle and a free end as printed. Printed: 1.463. */
export const HANDBOOK_END_RADII = PISTON_END_RADII + FREE_END_RADII_PRINTED;
