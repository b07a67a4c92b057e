import { magnitudes } from '../../../core/speaker/complexCurve.ts';
import type { AmplifierResult } from '../../../core/speaker/simulation.ts';
import { fromZeroRange, type LineStyle, SUM_STYLE, wrappedPhaseDeg } from '../../../plot/index.ts';
import type { PictureCurve, PictureLine } from '../picture.ts';
import type { PlotView, ViewInput } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { measuredCurves } from './measuredCurves.ts';
import { greatestOf, short } from './viewCurves.ts';

const DASHES: readonly (readonly number[])[] = [[], [8, 3], [3, 3], [8, 3, 2, 3], [12, 4], [2, 5]];

/** What the amplifier sees: magnitude and phase of the impedance at each channel's terminals. */
export const loadView: PlotView = {
  id: 'load',
  question: 'load',
  button: 'impedance',
  label: 'Impedance that the amplifier sees over frequency, magnitude and phase',
  empty: 'No amplifier sees a load yet.',
  picture(input) {
    const { evaluation, project } = input;
    if (!evaluation || evaluation.simulation.amplifiers.length === 0) return null;
    const { amplifiers, frequenciesHz } = evaluation.simulation;
    const several = amplifiers.length > 1;
    const size = amplifiers.map((amplifier, index): PictureCurve => {
      const style: LineStyle = { ...SUM_STYLE, widthPx: 2, dash: DASHES[index % DASHES.length] ?? [] };
      const name = several ? `impedance ${amplifier.id}` : 'impedance';
      return {
        ...whole,
        id: `ohm:${amplifier.id}`,
        name,
        frequenciesHz,
        values: magnitudes(amplifier.impedance),
        style,
      };
    });
    const phase = amplifiers.map((amplifier): PictureCurve => {
      const values = wrappedPhaseDeg(amplifier.impedance, frequenciesHz, 0);
      const name = several ? `phase ${amplifier.id}` : 'phase';
      const style: LineStyle = { colour: '--soft', dash: [4, 2], widthPx: 1.25 };
      return { ...whole, id: `phase:${amplifier.id}`, name, frequenciesHz, values, style, axis: 'right', period: 360 };
    });
    const kept = keptCurves(input, ({ simulation }) =>
      simulation.amplifiers.slice(0, 1).map((amplifier) => ({ values: magnitudes(amplifier.impedance) })),
    );
    const measured = measuredCurves(project, 'impedance');
    const curves = [...kept, ...phase, ...measured, ...size];
    const greatest = greatestOf([...size, ...measured]);
    return {
      left: { title: 'impedance at the terminals, Ω', unit: ' Ω', decimals: 2, range: fromZeroRange(greatest) },
      right: { title: 'phase, °', unit: '°', decimals: 0, range: [-90, 90], steps: [30, 45, 90] },
      curves,
      lines: ratedMinima(input, amplifiers),
    };
  },
};

const whole = { axis: 'left', speakerId: null, read: true } as const;

function ratedMinima({ project }: ViewInput, amplifiers: readonly AmplifierResult[]): PictureLine[] {
  const rated = project.chain.amplifiers.filter(({ id }) => amplifiers.some((amplifier) => amplifier.id === id));
  return [...new Set(rated.map((amplifier) => amplifier.ratedMinimumLoadOhm))].map((ohm) => ({
    id: `rated:${ohm}`,
    value: ohm,
    label: `rated minimum ${short(ohm)} Ω`,
    kind: 'limit',
    colour: '--danger',
  }));
}
