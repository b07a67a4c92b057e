import { placesOf } from '../../src/core/design/faults/fault.ts';
import {
  type Fault,
  type FaultKind,
  type FaultReport,
  findFaults,
  type TakenImpedance,
  type TakenResponse,
} from '../../src/core/design/faults/index.ts';
import { nominalBuild } from '../../src/core/design/faults/nominalBuild.ts';
import { singleFaults } from '../../src/core/design/faults/singleFaults.ts';
import { sweepGrid } from '../../src/core/design/sweepGrid.ts';
import { type RandomStream, randomStream } from '../../src/core/math/randomStream.ts';
import { levelsDbSpl } from '../../src/core/speaker/complexCurve.ts';
import type { SpeakerModel } from '../../src/core/speaker/model.ts';
import { simulate } from '../../src/core/speaker/simulate.ts';
import type { Simulation } from '../../src/core/speaker/simulation.ts';
import { healthyBuild } from './healthyBuild.ts';
import { plantedCableOhm, plantFault } from './plantFault.ts';

/** What is planted: a kind of single fault, two at once, or nothing. */
export type PlantKind = FaultKind | 'two at once' | 'healthy';

export interface Plant {
  readonly kind: PlantKind;
  readonly faults: readonly Fault[];
  /** Whether it changes what is measured by more than tolerances do. */
  readonly counts: boolean;
  readonly impedance: TakenImpedance;
  readonly response: TakenResponse | null;
}

const NOISE = 0.01;
const POINTS = 200;
const RESPONSE_POINTS = 150;
/** Builds whose outermost readings are the tolerance band. */
const BAND_BUILDS = 100;
/** A response that changes by less than this nowhere is not worth looking at, dB. */
const HEARD_DB = 3;
const GRID_HZ = sweepGrid(10, 20_000, POINTS);
const RESPONSE_HZ = sweepGrid(60, 18_000, RESPONSE_POINTS);

interface Complex {
  readonly logs: Float64Array;
  readonly phasesRad: Float64Array;
}

/** A design with what its healthy builds can read at most apart from it. */
export interface Bed {
  readonly name: string;
  readonly model: SpeakerModel;
  readonly nominal: Complex;
  readonly band: Float64Array;
  readonly faults: readonly Fault[];
}

const solved = (model: SpeakerModel, hz: Float64Array): Simulation => {
  const result = simulate(model, hz);
  if (!result.ok) throw new Error(JSON.stringify(result.problems));
  return result.value;
};

/** Impedance of a build, with a cable's resistance before it; gear reads from 0.02 Ω to 20 kΩ. */
function impedanceOf(model: SpeakerModel, cableOhm: number): Complex {
  const { re, im } = solved(model, GRID_HZ).amplifiers[0]!.impedance;
  return {
    logs: re.map((x, f) => Math.log(Math.min(2e4, Math.max(0.02, Math.hypot(x + cableOhm, im[f]!))))),
    phasesRad: re.map((x, f) => Math.atan2(im[f]!, x + cableOhm)),
  };
}

const apart = (a: Complex, b: Complex, f: number): number => {
  const turn = a.phasesRad[f]! - b.phasesRad[f]!;
  return Math.hypot(a.logs[f]! - b.logs[f]!, turn - 2 * Math.PI * Math.round(turn / (2 * Math.PI)));
};

export function bedOf(name: string, model: SpeakerModel, seed: number): Bed {
  const random = randomStream(seed);
  const nominal = impedanceOf(model, 0);
  const band = new Float64Array(POINTS);
  for (let build = 0; build < BAND_BUILDS; build++) {
    const healthy = impedanceOf(healthyBuild(model, random), 0);
    for (let f = 0; f < POINTS; f++) band[f] = Math.max(band[f]!, apart(healthy, nominal, f));
  }
  const build = nominalBuild(model, model.amplifiers[0]!.id, GRID_HZ);
  if (!build.ok) throw new Error(JSON.stringify(build.problems));
  return { name, model, nominal, band, faults: singleFaults(model, build.value) };
}

/** Beyond the band, and the noise on top of it, somewhere. */
const isBeyond = ({ band }: Bed, a: Complex, b: Complex): boolean =>
  band.some((limit, f) => apart(a, b, f) > limit + NOISE);

/** Kinds of which a design has at least one. */
export const kindsOf = ({ faults, model }: Bed): PlantKind[] => {
  const kinds = new Set<PlantKind>(faults.map(({ kind }) => kind));
  if (model.speakers.length < 2) kinds.delete('driver-reversed');
  return [...kinds, 'two at once'];
};

/** Builds a healthy loudspeaker, plants a fault of a kind into it and measures it: impedance with 1 % noise, a response where it serves. */
export function plant(bed: Bed, kind: PlantKind, seed: number): Plant {
  const random = randomStream(seed);
  const faults = chosen(bed, kind, random);
  const size = random.uniform();
  const again = (): RandomStream => randomStream(seed + Math.floor(size * 1e6));
  const planted = (of: readonly Fault[], base: SpeakerModel): { model: SpeakerModel; cableOhm: number } => {
    const sizes = again();
    let cableOhm = 0;
    let model = base;
    for (const fault of faults) {
      // Sizes are drawn for all, so that each is the same with and without the other.
      const own = randomStream(Math.floor(sizes.uniform() * 2 ** 31));
      if (!of.includes(fault)) continue;
      if (fault.kind === 'cable') cableOhm = plantedCableOhm(own);
      else model = plantFault(model, fault, own, bed.model);
    }
    return { model, cableOhm };
  };
  const built = planted(faults, healthyBuild(bed.model, random));
  const withResponse = kind === 'driver-reversed' || (kind === 'healthy' && random.uniform() < 0.5);
  const response = withResponse ? responseOf(built.model, bed.model, random) : null;
  const nominalZ = (of: readonly Fault[]): Complex => {
    const { model, cableOhm } = planted(of, bed.model);
    return impedanceOf(model, cableOhm);
  };
  const whole = nominalZ(faults);
  const counts =
    kind === 'driver-reversed'
      ? isHeard(bed.model, planted(faults, bed.model).model)
      : faults.every((fault) => isBeyond(bed, whole, nominalZ(faults.filter((other) => other !== fault))));
  const { logs, phasesRad } = impedanceOf(built.model, built.cableOhm);
  return {
    kind,
    faults,
    counts,
    impedance: {
      frequenciesHz: GRID_HZ,
      magnitudesOhm: logs.map((log) => Math.exp(log) * (1 + NOISE * random.normal())),
      phasesDeg: phasesRad.map((phase) => ((phase + NOISE * random.normal()) * 180) / Math.PI),
      noiseShare: NOISE,
    },
    response,
  };
}

function chosen({ faults }: Bed, kind: PlantKind, random: RandomStream): Fault[] {
  const draw = (from: readonly Fault[]): Fault => from[Math.floor(random.uniform() * from.length)]!;
  if (kind === 'healthy') return [];
  if (kind !== 'two at once') return [draw(faults.filter((fault) => fault.kind === kind))];
  const shown = faults.filter((fault) => fault.kind !== 'driver-reversed');
  const kinds = [...new Set(shown.map((fault) => fault.kind))];
  const one = (): Fault => {
    const of = kinds[Math.floor(random.uniform() * kinds.length)]!;
    return draw(shown.filter((fault) => fault.kind === of));
  };
  const first = one();
  for (;;) {
    const second = one();
    if (!placesOf(second).some((place) => placesOf(first).includes(place))) return [first, second];
  }
}

const isHeard = (healthy: SpeakerModel, faulty: SpeakerModel): boolean => {
  const [a, b] = [healthy, faulty].map((model) => levelsDbSpl(solved(model, RESPONSE_HZ).sum)) as [
    Float64Array,
    Float64Array,
  ];
  return a.some((level, f) => Math.abs(level - b[f]!) > HEARD_DB);
};

/** A response with slow ripple of about 1 dB as break-up and reflections leave it, a level off by about 1 dB, and noise. */
function responseOf(built: SpeakerModel, model: SpeakerModel, random: RandomStream): TakenResponse {
  const levels = levelsDbSpl(solved(built, RESPONSE_HZ).sum);
  const shift = random.normal();
  const bumps = Array.from({ length: 9 }, () => ({
    at: Math.log(200) + random.uniform() * Math.log(90),
    width: 0.08 + 0.25 * random.uniform(),
    db: random.normal(),
  }));
  const ripple = (hz: number): number =>
    bumps.reduce((sum, { at, width, db }) => sum + db * Math.exp(-0.5 * ((Math.log(hz) - at) / width) ** 2), 0);
  const levelsDb = levels.map((level, f) => level + shift + ripple(RESPONSE_HZ[f]!) + 0.2 * random.normal());
  return { frequenciesHz: RESPONSE_HZ, levelsDb, model };
}

/** Where the truth stands among the groups found, from 0; -1: nowhere, or in one group with healthy builds. */
export function placeOfTruth({ faults }: Plant, { groups }: FaultReport): number {
  return groups.findIndex(
    ({ members }) =>
      members.some((member) => isSame(member.faults, faults)) && members.every((member) => member.faults.length > 0),
  );
}

/** The same set of faults, in whatever order; a value off by a decade is also a value that was fitted. */
function isSame(found: readonly Fault[], truth: readonly Fault[]): boolean {
  const names = (faults: readonly Fault[]): string =>
    faults
      .map((fault) => {
        if (fault.kind === 'part-decade' || fault.kind === 'part-value') return `value ${fault.partId}`;
        if (fault.kind === 'exchanged') return `exchanged ${[...fault.partIds].sort().join()}`;
        return JSON.stringify(Object.entries(fault).sort());
      })
      .sort()
      .join();
  return names(found) === names(truth);
}

export function search(bed: Bed, { impedance, response }: Plant): FaultReport {
  const found = findFaults({ model: bed.model, impedance, response });
  if (!found.ok) throw new Error(JSON.stringify(found.problems));
  return found.value;
}
