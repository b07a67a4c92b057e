import { groupDelay } from '../../../core/measured/groupDelay.ts';
import { unwrapPhase } from '../../../core/measured/unwrapPhase.ts';
import type { Simulation } from '../../../core/speaker/simulation.ts';
import { fromZeroRange, SUM_STYLE, wrappedPhaseDeg } from '../../../plot/index.ts';
import type { PictureCurve } from '../picture.ts';
import type { PlotView } from '../view.ts';
import { keptCurves } from './keptCurves.ts';
import { greatestOf } from './viewCurves.ts';

/** Group delay of the sum, the nearest driver's delay taken out, in milliseconds. */
function milliseconds({ sum, frequenciesHz, referenceDelayS }: Simulation): Float64Array {
  const phasesRad = wrappedPhaseDeg(sum, frequenciesHz, referenceDelayS).map((degrees) => (degrees * Math.PI) / 180);
  return groupDelay(frequenciesHz, unwrapPhase(phasesRad)).map((seconds) => seconds * 1000);
}

/** When it arrives: group delay of the sum, the delay of the nearest driver taken out. */
export const delayView: PlotView = {
  id: 'delay',
  question: 'arrival',
  button: 'group delay',
  label: 'Group delay of the sum over frequency',
  empty: 'Nothing arrives yet.',
  picture(input) {
    const { evaluation } = input;
    if (!evaluation || evaluation.simulation.speakers.length === 0) return null;
    const { simulation } = evaluation;
    const total: PictureCurve = {
      id: 'sum',
      name: 'sum',
      frequenciesHz: simulation.frequenciesHz,
      values: milliseconds(simulation),
      style: SUM_STYLE,
      axis: 'left',
      speakerId: null,
      read: true,
    };
    return {
      left: {
        title: 'group delay without the nearest driver’s delay, ms',
        unit: ' ms',
        decimals: 2,
        range: fromZeroRange(greatestOf([total])),
      },
      right: null,
      curves: [...keptCurves(input, (kept) => [{ values: milliseconds(kept.simulation) }]), total],
      lines: [],
    };
  },
};
