import type { Check } from './context.ts';

/** A cone that passes its linear excursion (one way, peak) at the set drive, with the band in which it does. */
export const excursion: Check = ({ figures, simulation }) =>
  figures.excursions.flatMap(({ partId, peakM, atHz, limitM }) => {
    if (limitM === null || peakM <= limitM) return [];
    const speaker = simulation.speakers.find((s) => s.partId === partId)!;
    let lowHz = atHz;
    let highHz = atHz;
    for (let i = 0; i < simulation.frequenciesHz.length; i++) {
      const hz = simulation.frequenciesHz[i]!;
      if (hz < 20 || speaker.excursionPeakM[i]! <= limitM) continue;
      lowHz = Math.min(lowHz, hz);
      highHz = Math.max(highHz, hz);
    }
    return [
      {
        severity: peakM > 2 * limitM ? ('danger' as const) : ('warning' as const),
        code: 'finding.excursion',
        place: { kind: 'part' as const, id: partId },
        values: { peakM, atHz, limitM, lowHz, highHz },
      },
    ];
  });
