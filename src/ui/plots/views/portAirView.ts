import type { KeyFigures } from '../../../core/design/evaluation.ts';
import { PORT_SPEED_CAREFUL_M_PER_S } from '../../../core/design/findings/portSpeed.ts';
import { fromZeroRange } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { linesOf, portsOf } from './outlets.ts';
import { roundedEndsWords } from './roundedEndsWords.ts';
import { greatestOf, short } from './viewCurves.ts';

const peak = (rms: Float64Array): Float64Array => rms.map((value) => value * Math.SQRT2);

/** What moves: the air in each port and each line's mouth, mean speed over its area, peak. */
export const portAirView: PlotView = {
  id: 'port-air',
  question: 'motion',
  button: 'port air',
  label: 'Speed of the air in each port and line’s mouth over frequency, peak',
  empty: 'No port and no open line: no air streams out of this enclosure.',
  picture(input) {
    const { project, evaluation } = input;
    if (!evaluation) return null;
    const { simulation, keyFigures } = evaluation;
    const outlets = [...portsOf(project, simulation), ...linesOf(project, simulation)];
    if (outlets.length === 0) return null;
    const moving = outlets.map(({ kind, id, name, style, speakerId, result }): PictureCurve => {
      const figure = kind === 'port' ? keyFigures.portSpeeds.find((port) => port.id === result.id) : undefined;
      const verdict = figure?.stroke ? `, rounded ends: ${roundedEndsWords(figure)}` : '';
      return {
        id,
        name: `${name}${verdict}`,
        shortName: name,
        frequenciesHz: simulation.frequenciesHz,
        values: peak(result.airSpeedRmsMPerS),
        style: { ...style, dash: kind === 'port' ? [] : style.dash },
        axis: 'left',
        speakerId,
        read: true,
      };
    });
    const kept = keptCurves(input, ({ simulation: { ports, lines } }) =>
      [...ports, ...lines].map(({ id, airSpeedRmsMPerS }) => ({ part: id, values: peak(airSpeedRmsMPerS) })),
    );
    const greatest = greatestOf(moving) ?? 0;
    const guides = guidesOf(keyFigures);
    const shown = guides.filter(({ value }) => value <= 3 * greatest);
    const far = shown.length === 0 ? ` (guides ${guides.map(({ value }) => value).join(' and ')} m/s: above)` : '';
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

/** The guide values that hold for the openings of this enclosure, each once, from the lowest up. */
function guidesOf({ portSpeeds, lineSpeeds }: KeyFigures): PictureLine[] {
  const openings = [...portSpeeds, ...lineSpeeds];
  const mixed = new Set(openings.map(({ carefulMPerS }) => carefulMPerS)).size > 1;
  const lines = new Map<number, PictureLine>();
  for (const { carefulMPerS, loudMPerS } of openings) {
    const straight = carefulMPerS === PORT_SPEED_CAREFUL_M_PER_S;
    const ends = mixed ? (straight ? ', straight ends' : ', rounded ends') : '';
    for (const [value, colour] of [
      [carefulMPerS, '--caution'],
      [loudMPerS, '--danger'],
    ] as const) {
      const label = `guide ${value} m/s${ends} (from memory, not a limit)`;
      lines.set(value, { id: `guide:${value}`, value, label, kind: 'guide', colour });
    }
  }
  return [...lines.values()].sort((a, b) => a.value - b.value);
}
