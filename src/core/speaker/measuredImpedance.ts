import { type Branch, compileCircuit, inputImpedance, solveCircuit, tabulateAdmittances } from '../circuit/index.ts';
import { blendWeight } from '../measured/blendCurves.ts';
import { unwrapPhase } from '../measured/unwrapPhase.ts';
import { type Result, succeed } from '../messages/problem.ts';
import { airBranches } from './airBranches.ts';
import { driverBranches } from './driverBranches.ts';
import type { ModelSpeaker, SpeakerModel } from './model.ts';
import { tableBranch } from './nodeNames.ts';
import { tableOnGrid } from './tableOnGrid.ts';

/**
 * For each speaker that carries a measured impedance, one branch across its terminals that makes up the difference
 * between the blended admittance and the lumped model's own, so that the network sees the blend while cone and box keep
 * their model. The model's own admittance is that of the driver alone in its chamber.
 *
 * Holds where the blend lies well above the box's resonances, since the other drivers of a shared chamber are left out.
 */
export function correctionBranches(model: SpeakerModel, omegas: Float64Array): Result<Branch[]> {
  const branches: Branch[] = [];
  for (const speaker of model.speakers) {
    if (speaker.measured?.impedance == null) continue;
    const own = ownImpedance(model, speaker, omegas);
    if (!own.ok) return own;
    const part = model.parts.find((p) => p.id === speaker.partId)!;
    const { re, im } = difference(speaker, own.value, omegas);
    branches.push({
      kind: 'admittance',
      id: tableBranch(speaker.partId),
      nodes: part.nodes,
      admittance: (_omegas, outRe, outIm) => {
        outRe.set(re);
        outIm.set(im);
      },
    });
  }
  return succeed(branches);
}

interface Impedance {
  readonly re: Float64Array;
  readonly im: Float64Array;
}

/** Impedance of one driver in its cabinet with all others taken out, by the model alone. */
function ownImpedance(model: SpeakerModel, speaker: ModelSpeaker, omegas: Float64Array): Result<Impedance> {
  const compiled = compileCircuit([
    { kind: 'source', id: 'test', nodes: ['t', '0'], voltageV: 1, resistanceOhm: 0 },
    ...driverBranches(speaker, 't', '0'),
    ...airBranches(model),
  ]);
  if (!compiled.ok) return compiled;
  const solved = solveCircuit(compiled.value, tabulateAdmittances(compiled.value, omegas));
  return solved.ok ? succeed(inputImpedance(solved.value, 'test')) : solved;
}

/** Blended admittance less the model's own, siemens. */
function difference(speaker: ModelSpeaker, own: Impedance, omegas: Float64Array): Impedance {
  const { blendHz, impedance } = speaker.measured!;
  const table = tableOnGrid(impedance!, omegas);
  const phases = unwrapPhase(own.re.map((re, i) => Math.atan2(own.im[i]!, re)));
  const re = new Float64Array(omegas.length);
  const im = new Float64Array(omegas.length);
  for (let i = 0; i < omegas.length; i++) {
    const weight = blendWeight(omegas[i]! / (2 * Math.PI), blendHz);
    if (weight === 0) continue;
    const square = own.re[i]! ** 2 + own.im[i]! ** 2;
    const size = Math.exp(0.5 * Math.log(square) * (1 - weight) + table.logMagnitudes[i]! * weight);
    const phase = phases[i]! * (1 - weight) + table.phasesRad[i]! * weight;
    re[i] = Math.cos(phase) / size - own.re[i]! / square;
    im[i] = -Math.sin(phase) / size + own.im[i]! / square;
  }
  return { re, im };
}
