// People's units for sentences: SI in, short text out.

const digits = (value: number, significant: number): string => {
  const text = Number(value.toPrecision(significant)).toString();
  return text.replace('-', '−');
};
const numeric = (value: string | number | undefined): number => (typeof value === 'number' ? value : Number.NaN);

export const hertz = (value: string | number | undefined): string => {
  const hz = numeric(value);
  return hz >= 1000 ? `${digits(hz / 1000, 3)} kHz` : `${digits(hz, 3)} Hz`;
};
export const millimetres = (value: string | number | undefined): string => {
  const mm = numeric(value) * 1000;
  return `${digits(mm, Math.abs(mm) < 10 ? 2 : 3)} mm`;
};
export const litres = (value: string | number | undefined): string => `${digits(numeric(value) * 1000, 3)} L`;
export const ohms = (value: string | number | undefined): string => `${digits(numeric(value), 2)} Ω`;
export const watts = (value: string | number | undefined): string => `${digits(numeric(value), 2)} W`;
export const metresPerSecond = (value: string | number | undefined): string => `${digits(numeric(value), 2)} m/s`;
export const decibels = (value: string | number | undefined): string => `${digits(numeric(value), 2)} dB`;
export const volts = (value: string | number | undefined): string => `${digits(numeric(value), 3)} V`;
export const amperes = (value: string | number | undefined): string => `${digits(numeric(value), 2)} A`;
export const degreesC = (value: string | number | undefined): string => `${digits(numeric(value), 3)} °C`;
/** A stretch of a day in hours, minutes or seconds. */
export const dayTime = (value: string | number | undefined): string => {
  const s = numeric(value);
  if (s >= 3600) return `${digits(s / 3600, 2)} h`;
  return s >= 60 ? `${digits(s / 60, 2)} min` : `${digits(s, 2)} s`;
};
