import { levelsDbSpl } from '../../../core/speaker/complexCurve.ts';
import { levelRange, SUM_STYLE } from '../../../plot/index.ts';
import type { PictureCurve } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { measuredCurves } from './measuredCurves.ts';
import { conditions, fromBottomUp, greatestOf, isVented, portLook, wayOf } from './viewCurves.ts';

/** What is heard: the sum at the listening point, and what each cone and port gives to it. */
export const responseView: PlotView = {
  id: 'response',
  question: 'heard',
  button: 'response',
  label: 'Level at the listening point over frequency, with the contribution of each way',
  empty: 'Nothing is heard yet: add a way, or open a project.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, speakers, ports, sum } = evaluation.simulation;
    const kept = keptCurves(input, (simulation) => [{ values: levelsDbSpl(simulation.sum) }], 'level');
    const fromPorts: PictureCurve[] = ports.map((port) => ({
      id: `port:${port.id}`,
      ...portLook(project, port.id),
      frequenciesHz,
      values: levelsDbSpl(port.pressure),
      axis: 'left',
      read: true,
    }));
    const fromCones: PictureCurve[] = fromBottomUp(project, speakers).map((speaker) => {
      const { name, style } = wayOf(project, speaker.partId);
      return {
        id: `cone:${speaker.partId}`,
        name: isVented(project, speaker.partId) ? `${name} cone` : name,
        style,
        frequenciesHz,
        values: levelsDbSpl(speaker.pressure),
        axis: 'left',
        speakerId: speaker.partId,
        read: true,
      };
    });
    const total: PictureCurve = {
      id: 'sum',
      name: 'sum',
      frequenciesHz,
      values: levelsDbSpl(sum),
      style: SUM_STYLE,
      axis: 'left',
      speakerId: null,
      read: true,
    };
    return {
      left: {
        title: `level ${conditions(input)}, dB re 20 µPa`,
        unit: ' dB',
        decimals: 1,
        range: levelRange(greatestOf([total])),
        steps: [5, 10, 25],
      },
      right: null,
      curves: [...kept, ...measuredCurves(project, 'response'), ...fromPorts, ...fromCones, total],
      lines: [],
    };
  },
};
