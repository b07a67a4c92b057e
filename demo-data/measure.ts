import { readFileSync, writeFileSync } from 'node:fs';
import {
  anglesRad,
  levelsDbSpl,
  magnitudes,
  type Part,
  type Project,
  readModel,
  readProject,
  type Simulation,
  simulate,
  sweepGrid,
} from '../src/core/index.ts';
import { type RandomStream, randomStream } from '../src/core/math/index.ts';

// Invented measurements: the core's own prediction of a stated, slightly different loudspeaker, plus ripple and noise from a seed.

/** The demo project of a folder, as saved. */
export function demo(name: string): Project {
  const read = readProject(readFileSync(new URL(`./${name}/${name}.conewright.json`, import.meta.url), 'utf8'));
  if (!read.ok) throw new Error(JSON.stringify(read.problems));
  return read.value;
}

/** Values of parts as built: factors on the nominal ones, by part id. */
export function asBuilt(project: Project, factors: Readonly<Record<string, number>>): Project {
  const parts = project.network.parts.map((part): Part => {
    const factor = factors[part.id] ?? 1;
    if (part.kind === 'resistor') return { ...part, ohm: part.ohm * factor };
    if (part.kind === 'capacitor') return { ...part, farad: part.farad * factor };
    if (part.kind === 'inductor') return { ...part, henry: part.henry * factor };
    return part;
  });
  return { ...project, network: { parts } };
}

/** One driver alone on its cabinet, straight on the amplifier. */
export function driverAlone(project: Project, partId: string): Project {
  const parts = project.network.parts.flatMap((part): Part[] => {
    if (part.kind === 'amplifier') return [part];
    return part.id === partId ? [{ ...part, nodes: [driven(project), '0'] }] : [];
  });
  const mounts = project.enclosure.mounts.filter((m) => m.partId === partId);
  return { ...project, network: { parts }, enclosure: { ...project.enclosure, mounts } };
}
/** The node that the amplifier drives. */
const driven = (project: Project): string => project.network.parts.find((p) => p.kind === 'amplifier')!.nodes[0];

/** The microphone at a distance straight in front of a driver. */
export function heardFrom(project: Project, partId: string, distanceM: number): Project {
  const mount = project.enclosure.mounts.find((m) => m.partId === partId)!;
  const heightM = project.listening.standHeightM + mount.yM;
  return { ...project, listening: { ...project.listening, distanceM, heightM, horizontalDeg: 0, verticalDeg: 0 } };
}

export function simulated(project: Project, fromHz: number, toHz: number, count: number): Simulation {
  const model = readModel(project);
  if (!model.ok) throw new Error(JSON.stringify(model.problems));
  const simulation = simulate(model.value.model, sweepGrid(fromHz, toHz, count));
  if (!simulation.ok) throw new Error(JSON.stringify(simulation.problems));
  return simulation.value;
}

/** Slow ripple as reflections and break-up leave it: a few smooth bumps of up to `depthDb`, growing towards the top. */
function ripple(random: RandomStream, depthDb: number): (hz: number) => number {
  const bumps = Array.from({ length: 9 }, () => ({
    at: Math.log(300) + random.uniform() * Math.log(60),
    width: 0.08 + 0.25 * random.uniform(),
    height: depthDb * random.normal() * 0.6,
  }));
  return (hz) => bumps.reduce((sum, b) => sum + b.height * Math.exp(-0.5 * ((Math.log(hz) - b.at) / b.width) ** 2), 0);
}

export interface Row {
  readonly hz: number;
  readonly magnitude: number;
  readonly phaseDeg: number;
}

/** Level and phase with ripple of `rippleDb` and noise of `noiseDb` standard deviation. */
export function measuredResponse(simulation: Simulation, seed: number, rippleDb: number, noiseDb: number): Row[] {
  const random = randomStream(seed);
  const bend = ripple(random, rippleDb);
  const levels = levelsDbSpl(simulation.sum);
  const phases = anglesRad(simulation.sum);
  return Array.from(simulation.frequenciesHz, (hz, i) => ({
    hz,
    magnitude: levels[i]! + bend(hz) + noiseDb * random.normal(),
    phaseDeg: (phases[i]! * 180) / Math.PI + noiseDb * 4 * random.normal(),
  }));
}

/** Impedance with a relative noise. */
export function measuredImpedance(simulation: Simulation, seed: number, relativeNoise: number): Row[] {
  const random = randomStream(seed);
  const { impedance } = simulation.amplifiers[0]!;
  const sizes = magnitudes(impedance);
  const phases = anglesRad(impedance);
  return Array.from(simulation.frequenciesHz, (hz, i) => ({
    hz,
    magnitude: sizes[i]! * (1 + relativeNoise * random.normal()),
    phaseDeg: (phases[i]! * 180) / Math.PI + ((relativeNoise * 180) / Math.PI) * random.normal(),
  }));
}

export interface Layout {
  readonly separator: string;
  readonly decimalComma?: boolean;
  readonly header: readonly string[];
  readonly withPhase: boolean;
}

/** Writes rows as columns of text, after comment lines that say they are invented. */
export function writeColumns(path: string, rows: readonly Row[], layout: Layout): void {
  const number = (value: number, digits: number): string => {
    const text = value.toFixed(digits);
    return layout.decimalComma ? text.replace('.', ',') : text;
  };
  const lines = rows.map(({ hz, magnitude, phaseDeg }) => {
    const wrapped = ((((phaseDeg + 180) % 360) + 360) % 360) - 180;
    const cells = [number(hz, 2), number(magnitude, 3), ...(layout.withPhase ? [number(wrapped, 2)] : [])];
    return cells.join(layout.separator);
  });
  writeFileSync(new URL(path, import.meta.url), `${[...layout.header, ...lines].join('\n')}\n`);
}
