import { levelsDbSpl } from '../../../core/speaker/complexCurve.ts';
import { levelRange, SUM_STYLE } from '../../../plot/index.ts';
import type { PictureCurve } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { heardCones, heardOutlets } from './heard.ts';
import { keptCurves } from './keptCurves.ts';
import { measuredCurves } from './measuredCurves.ts';
import { conditions, fromBottomUp, greatestOf, wayOf } from './viewCurves.ts';

/** What is heard: the sum at the listening point, and what each cone, port, passive radiator and line gives to it. */
export const responseView: PlotView = {
  id: 'response',
  question: 'heard',
  button: 'response',
  label: 'Level at the listening point over frequency, with the contribution of each way',
  empty: 'Nothing is heard yet: add a way, or open a project.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, sum } = evaluation.simulation;
    const kept = keptCurves(input, ({ simulation }) => [{ values: levelsDbSpl(simulation.sum) }], 'level');
    const outlets = heardOutlets(project, evaluation);
    const fromOutlets = outlets.map(
      ({ id, name, style, speakerId, result }): PictureCurve => ({
        id,
        name,
        style,
        frequenciesHz,
        values: levelsDbSpl(result.pressure),
        axis: 'left',
        speakerId,
        read: true,
      }),
    );
    const fromCones = fromBottomUp(project, heardCones(evaluation)).map((speaker): PictureCurve => {
      const { name, style } = wayOf(project, speaker.partId);
      const hasOutlet = outlets.some(({ speakerId }) => speakerId === speaker.partId);
      return {
        id: `cone:${speaker.partId}`,
        name: hasOutlet ? `${name} cone` : name,
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
      curves: [...kept, ...measuredCurves(project, 'response'), ...fromOutlets, ...fromCones, total],
      lines: [],
    };
  },
};
