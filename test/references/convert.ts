// The only arithmetic that an adapter may do: units, decibels, angles, rms and peak, ratio.

export const asNumber = (x: unknown): number => {
  if (typeof x !== 'number') throw new TypeError(`expected a number, got ${JSON.stringify(x)}`);
  return x;
};
export const asNumbers = (x: unknown): number[] => {
  if (!Array.isArray(x)) throw new TypeError(`expected a list, got ${JSON.stringify(x)}`);
  return x.map(asNumber);
};
export const asText = (x: unknown): string => {
  if (typeof x !== 'string') throw new TypeError(`expected text, got ${JSON.stringify(x)}`);
  return x;
};

/** Decimal prefixes and the like: value times a power of ten. */
export const scaled = (x: number, powerOfTen: number): number =>
  powerOfTen < 0 ? x / 10 ** -powerOfTen : x * 10 ** powerOfTen;
export const litresFromM3 = (m3: number): number => scaled(m3, 3);
export const m3FromLitres = (litres: number): number => scaled(litres, -3);
export const percentFromRatio = (ratio: number): number => scaled(ratio, 2);
export const degFromRad = (rad: number): number => (rad * 180) / Math.PI;
export const radFromDeg = (deg: number): number => (deg * Math.PI) / 180;
/** dB of an amplitude ratio; a ratio below 1e-12 is a perfect null and comes back as null. */
export const dbOfAmplitude = (ratio: number): number | null =>
  Math.abs(ratio) < 1e-12 ? null : 20 * Math.log10(Math.abs(ratio));
export const dbOfPower = (ratio: number): number | null =>
  Math.abs(ratio) < 1e-24 ? null : 10 * Math.log10(Math.abs(ratio));
export const dbSplOfPa = (pressurePa: number): number => 20 * Math.log10(pressurePa / 20e-6);
export const paOfDbSpl = (levelDbSpl: number): number => 20e-6 * 10 ** (levelDbSpl / 20);
export const magnitude = (z: { re: number; im: number }): number => Math.hypot(z.re, z.im);
export const angleDeg = (z: { re: number; im: number }): number => degFromRad(Math.atan2(z.im, z.re));
export const peakFromRms = (rms: number): number => rms * Math.SQRT2;
export const rmsFromPeak = (peak: number): number => peak / Math.SQRT2;
export const ratio = (a: number, b: number): number => a / b;
