import { PORT_SPEED_CAREFUL_M_PER_S, PORT_SPEED_LOUD_M_PER_S } from '../../../core/design/findings/portSpeed.ts';
import { fromZeroRange } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { greatestOf, portLook, short } from './viewCurves.ts';

const guide = (value: number, colour: string): PictureLine => ({
  id: `guide:${value}`,
  value,
  label: `guide ${value} m/s (from memory, not a limit)`,
  kind: 'guide',
  colour,
});
const GUIDES: readonly PictureLine[] = [
  guide(PORT_SPEED_CAREFUL_M_PER_S, '--caution'),
  guide(PORT_SPEED_LOUD_M_PER_S, '--danger'),
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
    const shown = GUIDES.filter(({ value }) => value <= 3 * greatest);
    const far = shown.length === 0 ? ` (guides ${GUIDES.map(({ value }) => value).join(' and ')} m/s: above)` : '';
    return {
      left: {
        title: `port air for ${short(project.chain.driveV)} V, peak, m/s${far}`,
        unit: ' m/s',
        decimals: 2,
        range: fromZeroRange(Math.max(greatest, ...shown.map(({ value }) => value))),
      },
      right: null,
      curves: [...kept, ...moving],
      lines: shown,
    };
  },
};
