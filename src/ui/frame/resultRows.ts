import type { KeyFigures } from '../../core/design/evaluation.ts';
import type { UnitSystem } from '../../core/units/quantityKind.ts';
import { figure } from './why/index.ts';

/** One result before and now, in words; a dash where it is not defined. */
export interface ResultRow {
  readonly words: string;
  readonly before: string;
  readonly now: string;
}

/** What two designs come to, side by side, in the order of the key strip. */
export function resultRows(before: KeyFigures, now: KeyFigures, units: UnitSystem): readonly ResultRow[] {
  return RESULTS.map(({ words, of }) => ({ words, before: of(before, units) ?? '–', now: of(now, units) ?? '–' }));
}

const RESULTS: readonly {
  readonly words: string;
  readonly of: (figures: KeyFigures, units: UnitSystem) => string | null;
}[] = [
  {
    words: 'mean level, 200 Hz to 2 kHz',
    of: ({ meanLevelDbSpl }) => (meanLevelDbSpl === null ? null : `${meanLevelDbSpl.toFixed(1)} dB`),
  },
  {
    words: '−3 dB re mean, 200 Hz to 2 kHz',
    of: ({ lowMinus3Hz }) => (lowMinus3Hz === null ? null : figure(lowMinus3Hz, 'frequency')),
  },
  {
    words: '200 Hz to 10 kHz, half of greatest minus least',
    of: ({ rippleDb }) => (rippleDb === null ? null : `±${rippleDb.toFixed(1)} dB`),
  },
  {
    words: 'least impedance',
    of: ({ leastImpedance: least }) =>
      least && `${figure(least.ohm, 'resistance')} at ${figure(least.atHz, 'frequency')}`,
  },
  {
    words: 'greatest excursion, one way, peak',
    of: ({ excursions }) => {
      const most = greatest(excursions, ({ peakM }) => peakM);
      return most && `${Number((most.peakM * 1000).toPrecision(2))} mm, ${most.partId}`;
    },
  },
  {
    words: 'port air, peak',
    of: ({ portSpeeds }, units) => {
      const most = greatest(portSpeeds, ({ peakMPerS }) => peakMPerS);
      return most && figure(most.peakMPerS, 'speed', units, 2);
    },
  },
];

const greatest = <T>(list: readonly T[], of: (one: T) => number): T | null =>
  list.reduce<T | null>((most, one) => (most === null || of(one) > of(most) ? one : most), null);
