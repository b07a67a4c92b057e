import type { Driver } from '../../../core/document/schema.ts';
import type { UnitSystem } from '../../../core/units/quantityKind.ts';
import { figureText } from '../figureText.ts';

/** Which measured curves stand in for a driver's model, and where: "measured response above 300 Hz". */
export function measuredWords(measured: NonNullable<Driver['measured']>, system: UnitSystem): string {
  const what = [
    measured.responseCurveId === null ? '' : 'response',
    measured.impedanceCurveId === null ? '' : 'impedance',
  ].filter((word) => word !== '');
  return `measured ${what.join(' and ')} above ${figureText(measured.blendHz, 'frequency', system)}`;
}
