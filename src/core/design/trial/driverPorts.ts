import type { Part } from '../../circuit/part.ts';
import { type Result, succeed } from '../../messages/problem.ts';
import { addInto, complexCurve } from '../../speaker/complexCurve.ts';
import type { SpeakerModel } from '../../speaker/model.ts';
import { simulate } from '../../speaker/simulate.ts';
import type { ComplexCurve, Simulation } from '../../speaker/simulation.ts';

// The crossover sees the drivers through their terminals alone, and a driver takes as much current in at one terminal as
// it gives at the other. Box, air and radiation are linear, so all there is to know of them are the currents into every
// pair of terminals, and the pressures, with 1 V at one pair and 0 V at the others: one solve of the whole loudspeaker for
// each driver. Drivers that share no air have no current in one another's columns; drivers of one chamber have.

/** A speaker whose measured response is joined to a cone that other speakers move too: its pressure is not linear in the voltages. */
export interface BlendedCone {
  readonly speaker: number;
  /** Pressure of its cone by the lumped model for 1 V at each speaker, Pa. */
  readonly perVolt: readonly ComplexCurve[];
}

/** What is heard at one point for 1 V rms at each speaker's terminals, the others' held at 0 V, Pa rms. */
export interface HeardPoint {
  readonly model: SpeakerModel;
  readonly perVolt: readonly ComplexCurve[];
  readonly blended: readonly BlendedCone[];
}

/** The drivers in their cabinet as the crossover meets them. First index: where; second: the speaker that has 1 V. */
export interface DriverPorts {
  /** Current into the plus terminal, S. */
  readonly admittances: readonly (readonly ComplexCurve[])[];
  /** Current through the coil, which a measured impedance leaves out, S. */
  readonly coilCurrents: readonly (readonly ComplexCurve[])[];
  readonly points: readonly HeardPoint[];
}

const pairOf = (k: number): string => `@pair:${k}`;

/**
 * Solves the loudspeaker without its crossover, once for each speaker and listening point.
 *
 * `heard`: the same loudspeaker as heard from each point, which differs in its radiation alone. Problems: as `simulate`.
 * @example driverPorts(model, frequenciesHz, [model])
 */
export function driverPorts(
  model: SpeakerModel,
  frequenciesHz: Float64Array,
  heard: readonly SpeakerModel[],
): Result<DriverPorts> {
  const own = unitRuns(model, frequenciesHz);
  if (!own.ok) return own;
  const admittances = own.value.map((_, k) => own.value.map((run) => run.amplifiers[k]!.current));
  const isCoupled = admittances.map((row, k) => row.some((y, j) => j !== k && !isZero(y)));
  const points: HeardPoint[] = [];
  for (const listener of heard) {
    const mixed = listener.speakers.flatMap((s, k) => (isCoupled[k] && s.measured?.response != null ? [k] : []));
    const lumped = mixed.length === 0 ? listener : withoutResponses(listener, mixed);
    const runs = lumped === model ? own : unitRuns(lumped, frequenciesHz);
    if (!runs.ok) return runs;
    points.push({
      model: listener,
      perVolt: runs.value.map((run) => heardIn(run, mixed)),
      blended: mixed.map((speaker) => ({ speaker, perVolt: runs.value.map((run) => run.speakers[speaker]!.pressure) })),
    });
  }
  return succeed({
    admittances,
    coilCurrents: own.value.map((_, k) => own.value.map((run) => run.speakers[k]!.current)),
    points,
  });
}

export const isZero = ({ re, im }: ComplexCurve): boolean => re.every((x) => x === 0) && im.every((x) => x === 0);

function unitRuns(model: SpeakerModel, frequenciesHz: Float64Array): Result<Simulation[]> {
  const runs: Simulation[] = [];
  for (let driven = 0; driven < model.speakers.length; driven++) {
    const run = simulate(atItsOwn(model, driven), frequenciesHz);
    if (!run.ok) return run;
    runs.push(run.value);
  }
  return succeed(runs);
}

/** Every speaker on an ideal source of its own, 1 V for one of them and 0 V for the others. */
function atItsOwn(model: SpeakerModel, driven: number): SpeakerModel {
  const parts = model.speakers.flatMap(({ partId }, k): Part[] => {
    const part = model.parts.find(({ id }) => id === partId);
    if (part?.kind !== 'speaker') throw new RangeError(`The network has no speaker ${partId}.`);
    const nodes = [pairOf(k), '0'] as const;
    return [
      { kind: 'amplifier', id: pairOf(k), nodes, note: '' },
      { ...part, nodes },
    ];
  });
  const amplifiers = model.speakers.map((_, k) => ({
    id: pairOf(k),
    voltageV: k === driven ? 1 : 0,
    resistanceOhm: 0,
  }));
  return { ...model, parts, amplifiers };
}

const withoutResponses = (model: SpeakerModel, which: readonly number[]): SpeakerModel => ({
  ...model,
  speakers: model.speakers.map((speaker, k) =>
    which.includes(k) && speaker.measured !== null
      ? { ...speaker, measured: { ...speaker.measured, response: null } }
      : speaker,
  ),
});

/** The sum without some of the cones. */
function heardIn(run: Simulation, without: readonly number[]): ComplexCurve {
  if (without.length === 0) return run.sum;
  const sum = complexCurve(run.frequenciesHz.length);
  run.speakers.forEach(({ pressure }, k) => {
    if (!without.includes(k)) addInto(sum, pressure);
  });
  for (const outlet of [...run.ports, ...run.lines, ...run.passiveRadiators]) addInto(sum, outlet.pressure);
  return sum;
}
