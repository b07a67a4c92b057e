import { fromZeroRange, type LineStyle } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { outletLook, radiatorsOf } from './outlets.ts';
import { fromBottomUp, greatestOf, short, wayOf } from './viewCurves.ts';

const millimetres = (metres: Float64Array): Float64Array => metres.map((value) => value * 1000);
/** A limit further above the curves than this would press them flat; it is then told in words. */
const IN_SIGHT = 4;

/** What moves: how far each cone and passive radiator moves, one way, peak, with its limit. */
export const travelView: PlotView = {
  id: 'travel',
  question: 'motion',
  button: 'excursion',
  label: 'Excursion of each cone and passive radiator over frequency, one way, peak, with its limit',
  empty: 'No cone moves yet.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { frequenciesHz, speakers } = evaluation.simulation;
    const curve = (id: string, speakerId: string | null, look: Look, excursionPeakM: Float64Array): PictureCurve => ({
      id,
      name: look.name,
      frequenciesHz,
      values: millimetres(excursionPeakM),
      style: look.style,
      axis: 'left',
      speakerId,
      read: true,
    });
    const moving = [
      ...radiatorsOf(project, evaluation.simulation).map(({ id, speakerId, result, ...look }) =>
        curve(id, speakerId, look, result.excursionPeakM),
      ),
      ...fromBottomUp(project, speakers).map(({ partId, excursionPeakM }) =>
        curve(`cone:${partId}`, partId, wayOf(project, partId), excursionPeakM),
      ),
    ];
    const greatest = greatestOf(moving) ?? 0;
    const { excursions, radiatorExcursions } = evaluation.keyFigures;
    const limits = [
      ...excursions.flatMap(({ partId, limitM }) => limitLine(partId, wayOf(project, partId), limitM)),
      ...radiatorExcursions.flatMap(({ id, limitM }) => limitLine(id, outletLook(project, 'radiator', id), limitM)),
    ];
    const shown = limits.filter((limit) => limit.value <= IN_SIGHT * greatest);
    const above = limits.filter((limit) => limit.value > IN_SIGHT * greatest);
    const kept = keptCurves(input, ({ simulation }) =>
      [
        ...simulation.speakers.map(({ partId, excursionPeakM }) => ({ part: partId, excursionPeakM })),
        ...simulation.passiveRadiators.map(({ id, excursionPeakM }) => ({ part: `radiator:${id}`, excursionPeakM })),
      ].map(({ part, excursionPeakM }) => ({ part, values: millimetres(excursionPeakM) })),
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

interface Look {
  readonly name: string;
  readonly style: LineStyle;
}

function limitLine(id: string, { name, style }: Look, limitM: number | null): PictureLine[] {
  if (limitM === null) return [];
  const label = `${name} limit ${short(limitM * 1000)} mm`;
  return [{ id: `limit:${id}`, value: limitM * 1000, label, kind: 'limit', colour: style.colour }];
}
