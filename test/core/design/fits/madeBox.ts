import { AIR, type Made, madeSweep } from './madeSweep.ts';

export const TUNING_HZ = 34;
export const VOLUME_M3 = 0.03;

export const stated = (q: number | undefined, atHz: number) => (q === undefined ? null : { q, atHz });
/** The invented woofer in a vented box with losses stated at its tuning. */
export const vented = (
  { leak, absorption, port }: { leak?: number; absorption?: number; port?: number },
  volumeM3 = VOLUME_M3,
  further: Partial<Made> = {},
) => {
  const areaM2 = 0.004;
  // Length that tunes the box by ω² = ρc²S/(ρ L V) = c²S/(L V).
  const effectiveLengthM = (AIR.soundSpeedMPerS ** 2 * areaM2) / ((2 * Math.PI * TUNING_HZ) ** 2 * VOLUME_M3);
  return madeSweep({
    chamber: { volumeM3, leak: stated(leak, TUNING_HZ), absorption: stated(absorption, TUNING_HZ) },
    port: { areaM2, effectiveLengthM, loss: stated(port, TUNING_HZ) },
    countPoints: 150,
    fromHz: 8,
    ...further,
  });
};
