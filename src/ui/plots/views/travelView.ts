import { fromZeroRange } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { fromBottomUp, greatestOf, short, wayOf } from './viewCurves.ts';

const millimetres = (metres: Float64Array): Float64Array => metres.map((value) => value * 1000);
/** A limit further above the curves than this would press them flat; it is then told in words. */
const IN_SIGHT = 4;

/** What moves: how far each cone moves, one way, peak, with its linear limit. */
export const travelView: PlotView = {
  id: 'travel',
  question: 'motion',
  button: 'excursion',
  label: 'Excursion of each cone over frequency, one way, peak, with its limit',
  empty: 'No cone moves yet.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, speakers } = evaluation.simulation;
    const moving = fromBottomUp(project, speakers).map((speaker): PictureCurve => {
      const { name, style } = wayOf(project, speaker.partId);
      const values = millimetres(speaker.excursionPeakM);
      return {
        id: `cone:${speaker.partId}`,
        name,
        frequenciesHz,
        values,
        style,
        axis: 'left',
        speakerId: speaker.partId,
        read: true,
      };
    });
    const greatest = greatestOf(moving) ?? 0;
    const limits: PictureLine[] = evaluation.keyFigures.excursions.flatMap(({ partId, limitM }) => {
      if (limitM === null) return [];
      const { name, style } = wayOf(project, partId);
      const label = `${name} limit ${short(limitM * 1000)} mm`;
      return [{ id: `limit:${partId}`, value: limitM * 1000, label, kind: 'limit' as const, colour: style.colour }];
    });
    const shown = limits.filter((limit) => limit.value <= IN_SIGHT * greatest);
    const above = limits.filter((limit) => limit.value > IN_SIGHT * greatest);
    const kept = keptCurves(input, (simulation) =>
      simulation.speakers.map(({ partId, excursionPeakM }) => ({
        part: partId,
        values: millimetres(excursionPeakM),
      })),
    );
    const far = above.length > 0 ? ` (${above.map((limit) => limit.label).join(', ')}: above)` : '';
    return {
      left: {
        title: `excursion for ${short(project.chain.driveV)} V, one way, peak, mm${far}`,
        unit: ' mm',
        decimals: greatest < 1 ? 3 : 2,
        range: fromZeroRange(Math.max(greatest, ...shown.map((limit) => limit.value))),
      },
      right: null,
      curves: [...kept, ...moving],
      lines: shown,
    };
  },
};
