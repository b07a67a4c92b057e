import { heatResponseKPerW } from '../../acoustics/driver/heat/heatPath.ts';
import type { CoilHeat } from '../../acoustics/index.ts';
import { levelsDbSpl, magnitudes } from '../../speaker/complexCurve.ts';
import type { ModelAmplifier, SpeakerModel } from '../../speaker/model.ts';
import type { Simulation } from '../../speaker/simulation.ts';
import type { LimitedCurve, LimitInput, LimitKind } from './limitInput.ts';

/** What is known of the limits, each by its element's id; absent or null: not known, so no limit. */
export interface LimitStatements {
  /** By part of the network, `LS1`. Excursion one-way peak, m; long-term power, W. */
  readonly drivers: ReadonlyMap<
    string,
    { readonly xmaxM: number | null; readonly ratedPowerW: number | null; readonly heat: CoilHeat | null }
  >;
  /** One-way peak, m. */
  readonly radiatorXmaxM: ReadonlyMap<string, number | null>;
  /** Peak air speed that is still allowed in a port, m/s; null: ports do not limit. */
  readonly portPeakMPerS: number | null;
  readonly amplifiers: ReadonlyMap<
    string,
    { readonly peakVoltageV: number | null; readonly peakCurrentA: number | null }
  >;
  /** Temperature from which coils start, °C, and how long a sine lasts, s (Infinity: until it has settled). */
  readonly startC: number;
  readonly lastsS: number;
}

const LEAST_RISE_K = 1;

/**
 * Reads the limited quantities out of a simulation at its set drive.
 *
 * A coil's heat is a limit of the power in its resistance: the power that brings it from `startC` to its limit within `lastsS`.
 * The simulation's resistance is cold; a coil near its limit takes less from a voltage source in the middle of its band, so
 * that there the limit is on the careful side. Solve the model with hot resistances (`hotModel`) for what is left then.
 * A coil that may not rise by 1 K is held to 1 K, so that a level remains to be shown. Throws for other limits not above 0.
 */
export function limitsOf(
  model: SpeakerModel,
  simulation: Simulation,
  driveV: number,
  statements: LimitStatements,
): LimitInput {
  const limited: LimitedCurve[] = [];
  const add = (kind: LimitKind, id: string, limit: number | null | undefined, values: () => Float64Array): void => {
    if (limit === null || limit === undefined) return;
    if (!(limit > 0)) throw new RangeError(`The limit ${kind} of ${id} is ${limit}.`);
    const growsWith = kind === 'coil-heat' || kind === 'rated-power' ? 'square' : 'drive';
    limited.push({ kind, id, values: values(), limit, growsWith });
  };
  for (const speaker of simulation.speakers) {
    const known = statements.drivers.get(speaker.partId);
    const power = (): Float64Array => simulation.partPowersW.get(speaker.partId)!;
    add('excursion', speaker.partId, known?.xmaxM, () => speaker.excursionPeakM);
    add('rated-power', speaker.partId, known?.ratedPowerW, power);
    if (known?.heat == null) continue;
    const riseK = Math.max(known.heat.limitC - statements.startC, LEAST_RISE_K);
    add('coil-heat', speaker.partId, riseK / heatResponseKPerW(known.heat.path, statements.lastsS), power);
  }
  for (const radiator of simulation.passiveRadiators) {
    add('radiator-excursion', radiator.id, statements.radiatorXmaxM.get(radiator.id), () => radiator.excursionPeakM);
  }
  for (const port of simulation.ports) {
    add('port-speed', port.id, statements.portPeakMPerS, () => port.airSpeedRmsMPerS.map((v) => Math.SQRT2 * v));
  }
  for (const amplifier of simulation.amplifiers) {
    const known = statements.amplifiers.get(amplifier.id);
    const source = model.amplifiers.find(({ id }) => id === amplifier.id);
    if (source === undefined) throw new RangeError(`The model has no amplifier ${amplifier.id}.`);
    add('amplifier-voltage', amplifier.id, known?.peakVoltageV, () => sourcePeakV(source, simulation.frequenciesHz));
    add('amplifier-current', amplifier.id, known?.peakCurrentA, () =>
      magnitudes(amplifier.current).map((i) => Math.SQRT2 * i),
    );
  }
  return { frequenciesHz: simulation.frequenciesHz, driveV, levelsDb: levelsDbSpl(simulation.sum), limited };
}

/** Peak of what the amplifier must put out before its own resistance and the cable, V. */
function sourcePeakV({ voltageV, drive }: ModelAmplifier, frequenciesHz: Float64Array): Float64Array {
  const re = new Float64Array(frequenciesHz.length).fill(1);
  const im = new Float64Array(frequenciesHz.length);
  drive?.(
    frequenciesHz.map((f) => 2 * Math.PI * f),
    re,
    im,
  );
  return re.map((x, i) => Math.SQRT2 * Math.abs(voltageV) * Math.hypot(x, im[i]!));
}
