import { levelsDbSpl } from '../../../core/speaker/complexCurve.ts';
import { SUM_STYLE, wrappedPhaseDeg } from '../../../plot/index.ts';
import type { PictureCurve } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { heardCones } from './heard.ts';
import { keptCurves } from './keptCurves.ts';
import { fromBottomUp, wayOf } from './viewCurves.ts';

/** A way this far below the sum has no say in it, and its phase would only confuse. */
const SILENT_DB = 30;

/** When it arrives: phase of the sum and of each way, the delay of the nearest driver taken out. */
export const phaseView: PlotView = {
  id: 'phase',
  question: 'arrival',
  button: 'phase',
  label: 'Phase at the listening point over frequency, of the sum and of each way',
  empty: 'Nothing arrives yet.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, sum, referenceDelayS } = evaluation.simulation;
    const shape = { axis: 'left', period: 360, read: true } as const;
    const loudness = levelsDbSpl(sum);
    const ways = fromBottomUp(project, heardCones(evaluation)).map((speaker): PictureCurve => {
      const levels = levelsDbSpl(speaker.pressure);
      const phases = wrappedPhaseDeg(speaker.pressure, frequenciesHz, referenceDelayS);
      const values = phases.map((degrees, at) =>
        (levels[at] ?? 0) < (loudness[at] ?? 0) - SILENT_DB ? Number.NaN : degrees,
      );
      return {
        ...shape,
        id: `cone:${speaker.partId}`,
        ...wayOf(project, speaker.partId),
        frequenciesHz,
        values,
        speakerId: speaker.partId,
      };
    });
    const kept = keptCurves(
      input,
      ({ simulation: { sum: total, frequenciesHz: atHz, referenceDelayS: delayS } }) => [
        { values: wrappedPhaseDeg(total, atHz, delayS) },
      ],
      'angle',
    );
    const values = wrappedPhaseDeg(sum, frequenciesHz, referenceDelayS);
    const total: PictureCurve = {
      ...shape,
      id: 'sum',
      name: 'sum',
      frequenciesHz,
      values,
      style: SUM_STYLE,
      speakerId: null,
    };
    return {
      left: {
        title: 'phase without the nearest driver’s delay, °',
        unit: '°',
        decimals: 0,
        range: [-180, 180],
        steps: [45, 60, 90, 180],
      },
      right: null,
      curves: [...kept, ...ways, total],
      lines: [],
    };
  },
};
