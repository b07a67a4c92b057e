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
import { besideCone } from './driverBranches.ts';
import { correctionBranches } from './measuredImpedance.ts';
import { blendMeasuredPressure } from './measuredPressure.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import { coneNode, emfNode, lineMouthBranch, portBranch, radiatorBranch } from './nodeNames.ts';
import { outletResult } from './outletResult.ts';
import { partPowers } from './partPowers.ts';
import { radiateInto } from './radiate.ts';
import type { AmplifierResult, ComplexCurve, Simulation, SpeakerResult } from './simulation.ts';
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
  const passiveRadiators = model.passiveRadiators.map((radiator) => {
    const outlet = outletResult(
      model,
      { ...radiator, branch: radiatorBranch(radiator.id) },
      radiator.sdM2,
      solved,
      omegas,
    );
    return { ...outlet, excursionPeakM: excursionOf(outlet.volumeVelocity, radiator.sdM2, omegas) };
  });
  const lines = (model.lines ?? []).flatMap((line) => {
    if (line.end.kind !== 'open') return [];
    const outlet = { id: line.id, branch: lineMouthBranch(line.id), radiation: line.end.radiation };
    return [outletResult(model, outlet, line.endAreaM2, solved, omegas)];
  });
  const sum = complexCurve(omegas.length);
  for (const source of [...speakers, ...ports, ...lines, ...passiveRadiators]) addInto(sum, source.pressure);
  let nearestM = Number.POSITIVE_INFINITY;
  for (const speaker of model.speakers) nearestM = Math.min(nearestM, speaker.radiation.distanceM);
  return succeed({
    frequenciesHz,
    air: model.air,
    amplifiers: model.amplifiers.map(({ id }) => amplifierResult(id, solved)),
    speakers,
    ports,
    passiveRadiators,
    lines,
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
  const { partId, parameters, radiation } = speaker;
  const part = model.parts.find((p) => p.id === partId);
  if (part === undefined) throw new RangeError(`The network has no speaker ${partId}.`);
  const [plus, minus] = part.nodes;
  const gyrationS = parameters.sdM2 / parameters.blTm;
  const terminalVoltage = difference(solution, plus, minus, 1);
  const volumeVelocity = difference(solution, emfNode(partId), minus, gyrationS);
  const current = difference(solution, coneNode(partId), besideCone(speaker.chamberId), gyrationS);
  const excursionPeakM = excursionOf(volumeVelocity, parameters.sdM2, omegas);
  const pressure = complexCurve(omegas.length);
  // A cone in front of which there is a chamber is heard through that chamber's ports only.
  if (speaker.frontChamberId) return { partId, terminalVoltage, current, volumeVelocity, excursionPeakM, pressure };
  radiateInto(pressure, volumeVelocity, radiation, model, omegas);
  if (speaker.measured?.response != null) {
    blendMeasuredPressure(pressure, speaker, terminalVoltage, model, omegas);
  }
  return { partId, terminalVoltage, current, volumeVelocity, excursionPeakM, pressure };
}

/** One-way peak of what moves an area at a volume velocity (rms), m. */
function excursionOf(volumeVelocity: ComplexCurve, sdM2: number, omegas: Float64Array): Float64Array {
  return omegas.map((omega, i) => {
    const flow = Math.sqrt(volumeVelocity.re[i]! ** 2 + volumeVelocity.im[i]! ** 2);
    return (Math.SQRT2 * flow) / (sdM2 * omega);
  });
}

/** What an amplifier channel drives behind its own resistance and cable. */
function amplifierResult(id: string, { solution }: Solved): AmplifierResult {
  return { id, impedance: inputImpedance(solution, id), current: sourceCurrent(solution, id) };
}
