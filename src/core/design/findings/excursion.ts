import type { Finding } from '../../messages/problem.ts';
import type { Check } from './context.ts';

/** From here up programme asks for excursion. */
const FROM_HZ = 20;

/** Cones and passive radiators that pass their greatest excursion (one way, peak) at the set drive, with the band in which they do. */
export const excursion: Check = ({ model, figures, simulation }) => [
  ...figures.excursions.flatMap(({ partId, ...travel }) => {
    const inChamber = model.speakers.some((speaker) => speaker.partId === partId && speaker.chamberId !== null);
    return pastLimit(
      {
        ...travel,
        code: 'finding.excursion',
        place: { kind: 'part', id: partId },
        about: { behind: inChamber ? 'chamber' : 'none' },
      },
      simulation.speakers.find((s) => s.partId === partId)!.excursionPeakM,
      simulation.frequenciesHz,
    );
  }),
  ...figures.radiatorExcursions.flatMap(({ id, ...travel }) =>
    pastLimit(
      { ...travel, code: 'finding.radiator-excursion', place: { kind: 'radiator', id } },
      simulation.passiveRadiators.find((r) => r.id === id)!.excursionPeakM,
      simulation.frequenciesHz,
    ),
  ),
];

interface Travel extends Pick<Finding, 'code' | 'place'> {
  readonly peakM: number;
  readonly atHz: number;
  readonly limitM: number | null;
  /** What the sentence has to know besides. */
  readonly about?: Finding['values'];
}

function pastLimit(
  { code, place, peakM, atHz, limitM, about }: Travel,
  excursionPeakM: Float64Array,
  frequenciesHz: Float64Array,
): Finding[] {
  if (limitM === null || peakM <= limitM) return [];
  let lowHz = atHz;
  let highHz = atHz;
  for (let i = 0; i < frequenciesHz.length; i++) {
    const hz = frequenciesHz[i]!;
    if (hz < FROM_HZ || excursionPeakM[i]! <= limitM) continue;
    lowHz = Math.min(lowHz, hz);
    highHz = Math.max(highHz, hz);
  }
  return [
    {
      severity: peakM > 2 * limitM ? 'danger' : 'warning',
      code,
      place,
      values: { ...about, peakM, atHz, limitM, lowHz, highHz },
    },
  ];
}
