import { fromZeroRange } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { greatestOf, portLook, short } from './viewCurves.ts';

/** Peak speeds in a port to keep in mind. Common practice, no source. */
const GUIDES: readonly PictureLine[] = [
  { id: 'guide:10', value: 10, label: '10 m/s: aim for less (common practice)', kind: 'guide', colour: '--caution' },
  { id: 'guide:17', value: 17, label: '17 m/s: usual ceiling (common practice)', kind: 'guide', colour: '--danger' },
];
const peak = (rms: Float64Array): Float64Array => rms.map((value) => value * Math.SQRT2);

/** What moves: the air in each port, mean speed over the bore, peak. */
export const portAirView: PlotView = {
  id: 'port-air',
  question: 'motion',
  button: 'port air',
  label: 'Speed of the air in each port over frequency, peak',
  empty: 'No port: this enclosure is closed.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation || evaluation.simulation.ports.length === 0) return null;
    const { frequenciesHz, ports } = evaluation.simulation;
    const moving = ports.map((port): PictureCurve => {
      const { name, style, speakerId } = portLook(project, port.id);
      const values = peak(port.airSpeedRmsMPerS);
      return {
        id: `port:${port.id}`,
        name,
        frequenciesHz,
        values,
        style: { ...style, dash: [] },
        axis: 'left',
        speakerId,
        read: true,
      };
    });
    const kept = keptCurves(input, (simulation) =>
      simulation.ports.map(({ id, airSpeedRmsMPerS }) => ({
        part: id,
        values: peak(airSpeedRmsMPerS),
      })),
    );
    const greatest = greatestOf(moving) ?? 0;
    const shown = GUIDES.filter((guide) => guide.value <= 3 * greatest);
    const far = shown.length === 0 ? ' (10 and 17 m/s: above)' : '';
    return {
      left: {
        title: `port air for ${short(project.chain.driveV)} V, peak, m/s${far}`,
        unit: ' m/s',
        decimals: 2,
        range: fromZeroRange(Math.max(greatest, ...shown.map((guide) => guide.value))),
      },
      right: null,
      curves: [...kept, ...moving],
      lines: shown,
    };
  },
};
