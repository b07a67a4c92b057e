import { bandEdgesHz, midbandHz, nominalThirdOctaveHz } from '../../units/standardBands.ts';

/** Long-term level of one third-octave band, dB re any common reference. */
export interface ProgrammeBand {
  readonly centreHz: number;
  readonly levelDb: number;
}

const FIRST_INDEX = -17;

/**
 * Third-octave levels of music-like programme from 20 Hz to 20 kHz, dB re the loudest bands.
 *
 * From memory, ±2 dB: -13.5 at 20 Hz, -7.4 at 31.5, -3.3 at 50, -0.5 at 100, 0 from 160 to 630, -0.75 at 1 kHz, -2 at 2 kHz,
 * -5 at 4 kHz, -10 at 8 kHz, -20 at 20 kHz, straight over the logarithm of frequency between them. The shape of a noise that
 * stands for programme, not the table of a standard; a start that the person changes.
 */
export const USUAL_PROGRAMME: readonly ProgrammeBand[] = [
  -13.5, -10.5, -7.4, -5.3, -3.3, -2.4, -1.4, -0.5, -0.3, 0, 0, 0, 0, 0, 0, 0, -0.4, -0.75, -1.2, -1.6, -2, -3, -4, -5,
  -6.7, -8.3, -10, -12.4, -14.9, -17.6, -20,
].map((levelDb, i) => ({ centreHz: nominalThirdOctaveHz(FIRST_INDEX + i), levelDb }));

/** Share of the whole power in each band, adding up to 1. */
export function programmeShares(bands: readonly ProgrammeBand[]): number[] {
  const powers = bands.map(({ levelDb }) => 10 ** (levelDb / 10));
  const total = powers.reduce((sum, power) => sum + power, 0);
  return powers.map((power) => power / total);
}

/** Whole power of the bands in that of a band at 0 dB. */
export const programmeTotal = (bands: readonly ProgrammeBand[]): number =>
  bands.reduce((sum, { levelDb }) => sum + 10 ** (levelDb / 10), 0);

/**
 * Share of the power below, between and above crossover frequencies (Hz, ascending), each band counted whole by its centre.
 * @example programmeSharesBetween(USUAL_PROGRAMME, [450, 2800]) // three shares
 */
export function programmeSharesBetween(bands: readonly ProgrammeBand[], edgesHz: readonly number[]): number[] {
  const sums = new Array<number>(edgesHz.length + 1).fill(0);
  programmeShares(bands).forEach((share, i) => {
    const above = edgesHz.filter((edgeHz) => bands[i]!.centreHz >= edgeHz).length;
    sums[above]! += share;
  });
  return sums;
}

/** Edges of a third-octave band given by its nominal or exact centre, Hz: those of the nearest exact one. */
export const programmeBandEdgesHz = (centreHz: number): readonly [lowHz: number, highHz: number] =>
  bandEdgesHz(midbandHz(Math.round(10 * Math.log10(centreHz / 1000)), 3), 3);
