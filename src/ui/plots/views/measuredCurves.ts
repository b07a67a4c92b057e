import type { Curve, Project } from '../../../core/document/schema.ts';
import type { PictureCurve } from '../picture.ts';
import { short } from './viewCurves.ts';

/**
 * The measured curves of the whole speaker, laid over the prediction: one line a channel. A response is moved from the
 * drive and distance it was taken at to those that are shown (pressure goes with voltage and falls with distance).
 */
export function measuredCurves(project: Project, quantity: Curve['quantity']): PictureCurve[] {
  return project.curves.flatMap((curve) => {
    if (curve.belongsTo.kind !== 'speaker' || curve.quantity !== quantity) return [];
    const { channel } = curve.belongsTo;
    const gainDb =
      20 *
      Math.log10((project.chain.driveV / curve.taken.voltageV) * (curve.taken.distanceM / project.listening.distanceM));
    const shifted = quantity === 'response';
    const how = shifted && Math.abs(gainDb) >= 0.05 ? `, moved ${short(gainDb)} dB` : '';
    return [
      {
        id: `curve:${curve.id}`,
        name: `${channel}, measured${how}`,
        shortName: channel,
        frequenciesHz: curve.frequenciesHz,
        values: shifted ? curve.magnitudes.map((level) => level + gainDb) : curve.magnitudes,
        style: { colour: '--accent', dash: channel === 'left' ? [] : [5, 3], widthPx: 1.25 },
        axis: 'left' as const,
        speakerId: null,
        read: true,
      },
    ];
  });
}
