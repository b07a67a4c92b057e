import { radiatorTuningHz } from '../acoustics/radiatorTuning.ts';
import type { SpeakerModel } from '../speaker/model.ts';

/**
 * How a chamber is tuned: with ports the Helmholtz frequency of its apparent volume and all its ports in parallel,
 * fB = (c/2π) √(Σ(S/L)/V); without them the resonance and total Q of the drivers in it, taken as one driver without
 * crossover on an amplifier without resistance.
 *
 * A passive radiator tunes it where its mass meets the stiffness of the air and its own suspension together; its suspension alone
 * makes the notch below. Nothing is stated for a chamber with inner ports or lines, or between two sides of cones.
 *
 * Lossless formulas; the circuit holds the losses. Several drivers in a chamber count where they are alike and stand on the
 * same two nodes; `sealed` is null for any other mixture, since there is no one resonance to state. Sources: L. L. Beranek, Acoustics, 1954, section 5.4;
 * R. H. Small, "Closed-Box Loudspeaker Systems", 1972, equations for fc and Qtc (both from memory).
 */
export function chamberTuning(
  model: SpeakerModel,
  chamberId: string,
): { readonly tuningHz: number | null; readonly sealed: { readonly fcHz: number; readonly qtc: number } | null } {
  const chamber = model.chambers.find((c) => c.id === chamberId);
  if (chamber === undefined) return { tuningHz: null, sealed: null };
  const { densityKgPerM3, soundSpeedMPerS } = model.air;
  const ports = model.ports.filter((p) => p.chamberId === chamberId);
  const coupled = model.ports.some((p) => p.toChamberId === chamberId || (p.chamberId === chamberId && p.toChamberId));
  const lined = model.lines?.some(
    ({ end, ...line }) => line.chamberId === chamberId || (end.kind === 'chamber' && end.chamberId === chamberId),
  );
  if (coupled || lined) return { tuningHz: null, sealed: null };
  const radiators = model.passiveRadiators.filter((p) => p.chamberId === chamberId);
  if (radiators.length > 0) {
    // Ports beside a radiator, or unlike radiators, have no one tuning.
    const [radiator, another] = radiators;
    if (ports.length > 0 || another !== undefined) return { tuningHz: null, sealed: null };
    return { tuningHz: radiatorTuningHz(radiator!, chamber.volumeM3, model.air), sealed: null };
  }
  if (ports.length > 0) {
    let areaOverLengthM = 0;
    for (const port of ports) areaOverLengthM += port.areaM2 / port.effectiveLengthM;
    const tuningHz = (soundSpeedMPerS / (2 * Math.PI)) * Math.sqrt(areaOverLengthM / chamber.volumeM3);
    return { tuningHz, sealed: null };
  }
  const inside = model.speakers.filter((s) => s.chamberId === chamberId || s.frontChamberId === chamberId);
  // A cone between two chambers feels both.
  if (inside.some((s) => s.frontChamberId)) return { tuningHz: null, sealed: null };
  const first = inside[0];
  if (first === undefined) return { tuningHz: null, sealed: null };
  const nodesOf = (partId: string): string => model.parts.find((p) => p.id === partId)?.nodes.join(' ') ?? '';
  const alike = inside.every((s) => s.parameters === first.parameters && nodesOf(s.partId) === nodesOf(first.partId));
  if (!alike) return { tuningHz: null, sealed: null };
  const { cmsMPerN, mmsKg, rmsKgPerS, blTm, reOhm, sdM2 } = first.parameters;
  const vasM3 = densityKgPerM3 * soundSpeedMPerS ** 2 * sdM2 ** 2 * cmsMPerN * inside.length;
  const rise = Math.sqrt(1 + vasM3 / chamber.volumeM3);
  const omegaS = 1 / Math.sqrt(mmsKg * cmsMPerN);
  const qts = (omegaS * mmsKg) / (rmsKgPerS + blTm ** 2 / reOhm);
  return { tuningHz: null, sealed: { fcHz: (rise * omegaS) / (2 * Math.PI), qtc: rise * qts } };
}
