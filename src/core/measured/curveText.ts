import type { MeasuredCurve } from './curveTable.ts';

const DIGITS = 9;
const written = (value: number): string => String(Number(value.toPrecision(DIGITS)));

/**
 * Writes a curve as columns with a plain header: frequency, level or impedance and, where there is one, phase; tabs
 * between, decimal points, nine digits. `readColumns` reads it back.
 *
 * Example: `curveText(curve)` begins with '# Taken with 2.83 V rms at 1 m'.
 */
export function curveText(curve: MeasuredCurve): string {
  const { quantity, frequenciesHz, magnitudes, phasesDeg, taken } = curve;
  const response = quantity === 'response';
  const header = ['Frequency (Hz)', response ? 'Level (dB re 20 µPa)' : 'Impedance (ohm)'];
  if (phasesDeg !== null) header.push('Phase (deg)');
  const rows = frequenciesHz.map((f, i) =>
    [f, magnitudes[i]!, ...(phasesDeg === null ? [] : [phasesDeg[i]!])].map(written).join('\t'),
  );
  const comment = response
    ? [`# Taken with ${written(taken.voltageV)} V rms at ${written(taken.distanceM)} m`]
    : ['# Modulus of the impedance'];
  return [...comment, header.join('\t'), ...rows, ''].join('\n');
}
