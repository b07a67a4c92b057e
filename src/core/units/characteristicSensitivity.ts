/** 1 W into 8 Ω: the exact voltage behind the trade's "2.83 V", rms. */
export const USUAL_DRIVE_V = Math.sqrt(8);

/** Voltage in V rms that makes 1 W in the rated impedance. Source: IEC 60268-5, characteristic sensitivity (from memory). */
export const voltageFor1WV = (ratedOhm: number): number => Math.sqrt(ratedOhm);

/**
 * Turns a level measured with 2.83 V into the level with 1 W in the rated impedance, dB re 20 µPa both.
 *
 * Source: IEC 60268-5 (from memory): U = sqrt(R · 1 W).
 * Example: `levelFor1WDb(88, 4)` is 84.99.
 */
export const levelFor1WDb = (levelFor2V83Db: number, ratedOhm: number): number =>
  levelFor2V83Db + 20 * Math.log10(voltageFor1WV(ratedOhm) / USUAL_DRIVE_V);
