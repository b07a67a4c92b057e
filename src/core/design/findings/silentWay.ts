import { levelsDbSpl } from '../../speaker/complexCurve.ts';
import { greatestInBand } from '../band.ts';
import type { Check } from './context.ts';

/** A driver that never comes nearer than this to the mean level adds nothing that is heard. Common practice, no source. */
const SILENT_DB = 30;

/** A driver that its crossover, or a wrong value in it, keeps from being heard at all. */
export const silentWay: Check = ({ model, simulation, figures }) => {
  const mean = figures.meanLevelDbSpl;
  if (mean === null || simulation.speakers.length < 2) return [];
  return simulation.speakers.flatMap(({ partId, pressure }) => {
    // A cone before which there is a chamber is heard through that chamber only.
    if (model.speakers.find((speaker) => speaker.partId === partId)?.frontChamberId) return [];
    const loudest = greatestInBand(levelsDbSpl(pressure), simulation.frequenciesHz, 20, 20000);
    if (loudest === null || loudest.value > mean - SILENT_DB) return [];
    return [
      {
        severity: 'warning' as const,
        code: 'finding.silent-way',
        place: { kind: 'part' as const, id: partId },
        values: { belowDb: Math.min(200, mean - loudest.value) },
      },
    ];
  });
};
