import type { Curve, Driver } from '../document/schema.ts';
import { prepareMeasured } from '../measured/index.ts';
import type { AirProperties, ModelSpeaker } from './model.ts';

const kept = new WeakMap<Curve, ReturnType<typeof prepareMeasured>>();

/** A curve as the table that the model uses; kept per curve, since minimum phase takes time and curves rarely change. */
function tableOf(curve: Curve, air: AirProperties): ReturnType<typeof prepareMeasured> {
  const known = kept.get(curve);
  if (known !== undefined) return known;
  const table = prepareMeasured(curve, air.soundSpeedMPerS);
  kept.set(curve, table);
  return table;
}

/** The measured tables that a driver carries, or null where it carries none. */
export function measuredOf(driver: Driver, curves: readonly Curve[], air: AirProperties): ModelSpeaker['measured'] {
  if (driver.measured === null) return null;
  const { responseCurveId, impedanceCurveId, blendHz } = driver.measured;
  const response = curves.find((c) => c.id === responseCurveId && c.quantity === 'response');
  const impedance = curves.find((c) => c.id === impedanceCurveId && c.quantity === 'impedance');
  if (response === undefined && impedance === undefined) return null;
  return {
    blendHz,
    response: response === undefined ? null : { ...tableOf(response, air), baffle: response.taken.baffle },
    impedance: impedance === undefined ? null : tableOf(impedance, air),
  };
}
