import {
  compileCircuit,
  inputImpedance,
  type NodeSolution,
  solveCircuit,
  solveInto,
  sourceCurrent,
  tabulateAdmittances,
} from '../circuit/index.ts';
import { type Result, succeed } from '../messages/problem.ts';
import { assembleCircuit } from './assemble.ts';
import { addInto, complexCurve } from './complexCurve.ts';
import { correctionBranches } from './measuredImpedance.ts';
import { blendMeasuredPressure } from './measuredPressure.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import { airNode, coneNode, emfNode, portBranch, radiatorBranch } from './nodeNames.ts';
import { partPowers } from './partPowers.ts';
import { radiateInto } from './radiate.ts';
import type { AmplifierResult, ComplexCurve, PortResult, Simulation, SpeakerResult } from './simulation.ts';
import type { Solved } from './solved.ts';

/**
 * Solves the whole loudspeaker over a sweep: electrical, mechanical and acoustical side as one circuit, then the
 * pressure of every cone and port at the listening point and their sum.
 *
 * `frequenciesHz`: ascending, above 0. Voltages, currents, volume velocities and pressures are rms, excursion one-way peak.
 * Holds for small signals, while cones move as one piece and chambers and ports are small against the wavelength.
 * `previous` lends its topology, tables and buffers: its own solution is void afterwards, all else of it stays.
 * Problems: those of `compileCircuit` and `solveCircuit`, which name the node or part.
 * @example simulate(model, logFrequencies(20, 20000, 1000))
 */
export function simulate(
  model: SpeakerModel,
  frequenciesHz: Float64Array,
  previous?: Solved,
): Result<Simulation & { readonly solved: Solved }> {
  const omegas = new Float64Array(frequenciesHz.length);
  for (let i = 0; i < omegas.length; i++) omegas[i] = 2 * Math.PI * frequenciesHz[i]!;
  const corrections = correctionBranches(model, omegas);
  if (!corrections.ok) return corrections;
  const compiled = compileCircuit([...assembleCircuit(model), ...corrections.value], previous?.compiled);
  if (!compiled.ok) return compiled;
  const table = tabulateAdmittances(compiled.value, omegas, previous?.table);
  const solution =
    previous === undefined ? solveCircuit(compiled.value, table) : solveInto(previous.solution, compiled.value, table);
  if (!solution.ok) return solution;
  const solved: Solved = { compiled: compiled.value, table, solution: solution.value };

  const speakers = model.speakers.map((speaker) => speakerResult(model, speaker, solved, omegas));
  const ports = model.ports.map((port) =>
    outletResult(model, { ...port, branch: portBranch(port.id) }, port.areaM2, solved, omegas),
  );
  const passiveRadiators = model.passiveRadiators.map((radiator) =>
    outletResult(model, { ...radiator, branch: radiatorBranch(radiator.id) }, radiator.sdM2, solved, omegas),
  );
  const sum = complexCurve(omegas.length);
  for (const source of [...speakers, ...ports, ...passiveRadiators]) addInto(sum, source.pressure);
  let nearestM = Number.POSITIVE_INFINITY;
  for (const speaker of model.speakers) nearestM = Math.min(nearestM, speaker.radiation.distanceM);
  return succeed({
    frequenciesHz,
    air: model.air,
    amplifiers: model.amplifiers.map(({ id }) => amplifierResult(id, solved)),
    speakers,
    ports,
    passiveRadiators,
    sum,
    partPowersW: partPowers(model, solved, speakers),
    referenceDelayS: Number.isFinite(nearestM) ? nearestM / model.air.soundSpeedMPerS : 0,
    solved,
  });
}

function difference(solution: NodeSolution, from: string, to: string, factor: number): ComplexCurve {
  const a = solution.potential(from);
  const b = solution.potential(to);
  const out = complexCurve(a.re.length);
  for (let i = 0; i < out.re.length; i++) {
    out.re[i] = factor * (a.re[i]! - b.re[i]!);
    out.im[i] = factor * (a.im[i]! - b.im[i]!);
  }
  return out;
}

function speakerResult(
  model: SpeakerModel,
  speaker: ModelSpeaker,
  { solution }: Solved,
  omegas: Float64Array,
): SpeakerResult {
  const { partId, parameters, chamberId, radiation } = speaker;
  const part = model.parts.find((p) => p.id === partId);
  if (part === undefined) throw new RangeError(`The network has no speaker ${partId}.`);
  const [plus, minus] = part.nodes;
  const gyrationS = parameters.sdM2 / parameters.blTm;
  const terminalVoltage = difference(solution, plus, minus, 1);
  const volumeVelocity = difference(solution, emfNode(partId), minus, gyrationS);
  const behind = chamberId === null ? '0' : airNode(chamberId);
  const current = difference(solution, coneNode(partId), behind, gyrationS);
  const excursionPeakM = new Float64Array(omegas.length);
  for (let i = 0; i < omegas.length; i++) {
    const flow = Math.sqrt(volumeVelocity.re[i]! ** 2 + volumeVelocity.im[i]! ** 2);
    excursionPeakM[i] = (Math.SQRT2 * flow) / (parameters.sdM2 * omegas[i]!);
  }
  const pressure = complexCurve(omegas.length);
  radiateInto(pressure, volumeVelocity, radiation, model, omegas);
  if (speaker.measured?.response != null) {
    blendMeasuredPressure(pressure, speaker, terminalVoltage, model, omegas);
  }
  return { partId, terminalVoltage, current, volumeVelocity, excursionPeakM, pressure };
}

interface Outlet {
  readonly id: string;
  readonly chamberId: string;
  readonly branch: string;
  readonly radiation: ModelSpeaker['radiation'];
}

/** Flow through a port or passive radiator: chamber pressure times its admittance. */
function outletResult(
  model: SpeakerModel,
  outlet: Outlet,
  areaM2: number,
  solved: Solved,
  omegas: Float64Array,
): PortResult {
  const { compiled, table, solution } = solved;
  const row = table.rows[compiled.indexOf.get(outlet.branch)!]!;
  const inside = solution.potential(airNode(outlet.chamberId));
  const volumeVelocity = complexCurve(omegas.length);
  const airSpeedRmsMPerS = new Float64Array(omegas.length);
  for (let i = 0; i < omegas.length; i++) {
    const re = inside.re[i]! * row.re[i]! - inside.im[i]! * row.im[i]!;
    const im = inside.re[i]! * row.im[i]! + inside.im[i]! * row.re[i]!;
    volumeVelocity.re[i] = re;
    volumeVelocity.im[i] = im;
    airSpeedRmsMPerS[i] = Math.sqrt(re * re + im * im) / areaM2;
  }
  const pressure = complexCurve(omegas.length);
  radiateInto(pressure, volumeVelocity, outlet.radiation, model, omegas);
  return { id: outlet.id, volumeVelocity, airSpeedRmsMPerS, pressure };
}

/** What an amplifier channel drives behind its own resistance and cable. */
function amplifierResult(id: string, { solution }: Solved): AmplifierResult {
  return { id, impedance: inputImpedance(solution, id), current: sourceCurrent(solution, id) };
}
