import type { Curve, Driver } from '../document/schema.ts';
import { prepareMeasured } from '../measured/prepareMeasured.ts';
import type { Finding } from '../messages/problem.ts';
import { measuredRemarks } from './measuredRemarks.ts';
import type { AirProperties, ModelSpeaker } from './model.ts';

type Table = ReturnType<typeof prepareMeasured> & { readonly baffle: Curve['taken']['baffle'] };

const kept = new WeakMap<Curve, Table>();

/** A curve as the table that the model uses; kept per curve, since minimum phase takes time and curves rarely change. */
function tableOf(curve: Curve, air: AirProperties): Table {
  const known = kept.get(curve);
  if (known !== undefined) return known;
  const table = { ...prepareMeasured(curve, air.soundSpeedMPerS), baffle: curve.taken.baffle };
  kept.set(curve, table);
  return table;
}

/** The measured tables that a driver carries, or null where it carries none; what is doubtful about them is added to `findings`. */
export function measuredOf(
  driver: Driver,
  curves: readonly Curve[],
  air: AirProperties,
  findings: Finding[],
): ModelSpeaker['measured'] {
  if (driver.measured === null) return null;
  const { responseCurveId, impedanceCurveId, blendHz } = driver.measured;
  const found = (id: string | null, quantity: Curve['quantity']): Table | null => {
    const curve = curves.find((c) => c.id === id && c.quantity === quantity);
    if (curve === undefined) return null;
    const table = tableOf(curve, air);
    findings.push(...measuredRemarks(curve, table, blendHz));
    return table;
  };
  const response = found(responseCurveId, 'response');
  const impedance = found(impedanceCurveId, 'impedance');
  return response === null && impedance === null ? null : { blendHz, response, impedance };
}
