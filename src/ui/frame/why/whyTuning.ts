import { portName } from '../../../core/document/describe/portName.ts';
import { figure, type WhyInput, type WhyNote } from './whyNote.ts';

/** Why a ported chamber is tuned where it is: its air as a spring, the air in its ports as a mass. */
export function whyTuning({ evaluation, units }: WhyInput, chamberId: string): WhyNote | null {
  const { model, keyFigures } = evaluation;
  const chamber = model.chambers.find((candidate) => candidate.id === chamberId);
  const tuningHz = keyFigures.chambers.find((candidate) => candidate.id === chamberId)?.tuningHz;
  const ports = model.ports.filter((port) => port.chamberId === chamberId);
  if (!chamber || tuningHz === null || tuningHz === undefined || ports.length === 0) return null;
  return {
    title: 'Why this tuning?',
    formula: ports.length === 1 ? 'fB = (c / 2π) · √( S / (Lₑ · V) )' : 'fB = (c / 2π) · √( Σ(S / Lₑ) / V )',
    lines: [
      { symbol: 'c', meaning: 'speed of sound', value: figure(model.air.soundSpeedMPerS, 'speed', units, 4) },
      { symbol: 'V', meaning: 'apparent volume of air', value: figure(chamber.volumeM3, 'volume', units) },
      ...ports.flatMap((port) => [
        {
          symbol: 'S',
          meaning: `cross-section of ${portName(port.id)}, all together`,
          value: figure(port.areaM2, 'area', units),
        },
        {
          symbol: 'Lₑ',
          meaning: 'its length with end corrections',
          value: figure(port.effectiveLengthM, 'length', units),
        },
      ]),
    ],
    result: { symbol: 'fB', meaning: 'tuning', value: figure(tuningHz, 'frequency') },
    holds:
      'Holds while the chamber and the port are small against the wavelength, without losses. The dip between the two impedance ' +
      'peaks lies close to it; leaks, filling and coils in series move it; a large crossover coil by ten per cent or so.',
    source: 'L. L. Beranek, Acoustics, 1954, section 5.4 (Helmholtz resonator; from memory)',
  };
}
