import type { LinkedField } from './driverEntered.ts';

/** The linked fields and z, the characteristic resistance of mass and spring: z = ωs Mms = 1/(ωs Cms) = √(Mms/Cms), kg/s. */
export type DriverQuantity = LinkedField | 'z';
type Numbers = Readonly<Record<DriverQuantity, number>>;

/** How one quantity follows from others; `bulk` is ρc² of the sheet's air, Pa. */
export interface DriverRule {
  readonly gives: DriverQuantity;
  readonly needs: readonly DriverQuantity[];
  readonly value: (n: Numbers, bulkPa: number) => number;
}

const rule = (
  gives: DriverQuantity,
  needs: readonly DriverQuantity[],
  value: (n: Numbers, bulkPa: number) => number,
): DriverRule => ({ gives, needs, value });

const TURN = 2 * Math.PI;

/**
 * Thiele and Small's relations, solved for each quantity in turn: Qms = z/Rms, Qes = z Re/Bl², Qts = z/(Rms + Bl²/Re),
 * 1/Qts = 1/Qms + 1/Qes, Vas = ρc² Sd² Cms.
 *
 * Source: R. H. Small, "Direct-Radiator Loudspeaker System Analysis", J. Audio Eng. Soc. 20, 1972, 383 (from memory).
 */
export const DRIVER_RULES: readonly DriverRule[] = [
  rule('z', ['fsHz', 'mmsKg'], (n) => TURN * n.fsHz * n.mmsKg),
  rule('z', ['fsHz', 'cmsMPerN'], (n) => 1 / (TURN * n.fsHz * n.cmsMPerN)),
  rule('z', ['mmsKg', 'cmsMPerN'], (n) => Math.sqrt(n.mmsKg / n.cmsMPerN)),
  rule('z', ['qms', 'rmsKgPerS'], (n) => n.qms * n.rmsKgPerS),
  rule('z', ['qes', 'blTm', 'reOhm'], (n) => (n.qes * n.blTm ** 2) / n.reOhm),
  rule('z', ['qts', 'rmsKgPerS', 'blTm', 'reOhm'], (n) => n.qts * (n.rmsKgPerS + n.blTm ** 2 / n.reOhm)),
  rule('fsHz', ['z', 'mmsKg'], (n) => n.z / (TURN * n.mmsKg)),
  rule('fsHz', ['z', 'cmsMPerN'], (n) => 1 / (TURN * n.z * n.cmsMPerN)),
  rule('mmsKg', ['z', 'fsHz'], (n) => n.z / (TURN * n.fsHz)),
  rule('mmsKg', ['z', 'cmsMPerN'], (n) => n.z ** 2 * n.cmsMPerN),
  rule('cmsMPerN', ['vasM3', 'sdM2'], (n, bulkPa) => n.vasM3 / (bulkPa * n.sdM2 ** 2)),
  rule('cmsMPerN', ['z', 'fsHz'], (n) => 1 / (TURN * n.fsHz * n.z)),
  rule('cmsMPerN', ['z', 'mmsKg'], (n) => n.mmsKg / n.z ** 2),
  rule('rmsKgPerS', ['z', 'qms'], (n) => n.z / n.qms),
  rule('qms', ['z', 'rmsKgPerS'], (n) => n.z / n.rmsKgPerS),
  rule('qms', ['qts', 'qes'], (n) => 1 / (1 / n.qts - 1 / n.qes)),
  rule('qes', ['z', 'blTm', 'reOhm'], (n) => (n.z * n.reOhm) / n.blTm ** 2),
  rule('qes', ['qts', 'qms'], (n) => 1 / (1 / n.qts - 1 / n.qms)),
  rule('qts', ['qms', 'qes'], (n) => 1 / (1 / n.qms + 1 / n.qes)),
  rule('blTm', ['z', 'qes', 'reOhm'], (n) => Math.sqrt((n.z * n.reOhm) / n.qes)),
  rule('reOhm', ['z', 'qes', 'blTm'], (n) => (n.qes * n.blTm ** 2) / n.z),
  rule('vasM3', ['cmsMPerN', 'sdM2'], (n, bulkPa) => bulkPa * n.sdM2 ** 2 * n.cmsMPerN),
  rule('sdM2', ['vasM3', 'cmsMPerN'], (n, bulkPa) => Math.sqrt(n.vasM3 / (bulkPa * n.cmsMPerN))),
];
