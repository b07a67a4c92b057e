import type { Admittance } from '../admittance.ts';
import { FREE_END_RADII, PISTON_END_RADII } from '../port/openEndFactors.ts';
import type { ViscousAir } from '../viscousAir.ts';
import { type DuctBranches, twoPortBranches } from './ductBranches.ts';
import { type DuctSection, ductAreaM2, ductRadiusM } from './ductSection.ts';
import { bundledLineConstants, lineConstants } from './lineConstants.ts';
import { type OpenEnd, openEnd, openEndAdmittance } from './openEnd.ts';
import { uniformPiForm } from './piForm.ts';
import { propagation } from './propagation.ts';

/** Equal ports side by side as pipes. */
export interface PipePort {
  /** Of one port. */
  readonly section: DuctSection;
  readonly count: number;
  /** Length with both low-frequency end corrections, as the lumped port has it (`portEffectiveLengthM`). */
  readonly effectiveLengthM: number;
  readonly outerEnd: OpenEnd;
  /** Loss in series with all of them together besides the walls' own (`portLossResistancePaSPerM3`), Pa·s/m³; 0: none. */
  readonly resistancePaSPerM3: number;
}

export interface LossyPipe {
  /** From the chamber's node (near) to the mouth's own node (far). */
  readonly duct: DuctBranches;
  /** From the mouth's node to still air; its flow is what the port radiates. */
  readonly mouth: Admittance;
}

/** What the mouth's own load already adds at low frequencies, m. */
const mouthLengthM = (pipe: Pick<PipePort, 'section' | 'outerEnd'>): number =>
  (pipe.outerEnd === 'free' ? FREE_END_RADII : PISTON_END_RADII) * ductRadiusM(pipe.section);

/**
 * Ports as lossy pipes between the chamber's node and their radiation load, so that pipe resonances show; one node of their own.
 *
 * The pipe is as long as the effective length less what the mouth adds by itself: well below c/(2L) the whole is the lumped
 * `portAdmittance` (mass to (kL)²/3, tuning the same but for the walls' own 1 %), with the walls' loss on top. The inner end's correction stays at its
 * low-frequency length (resonances some 1 % low); the chamber's own standing waves are not in it. The stated loss is spread
 * evenly along the pipe. Null where the mouth alone is as long as the port is stated to be (a hole): then the lumped port is all.
 *
 * Example: lossyPipe({ section: { kind: 'round', diameterM: 0.07 }, count: 1, effectiveLengthM: 0.2511, outerEnd: 'flanged',
 * resistancePaSPerM3: 0 }, air) resonates near 690 Hz.
 */
export const lossyPipe = (pipe: PipePort, air: ViscousAir): LossyPipe | null => {
  const { section, count, outerEnd, resistancePaSPerM3 } = pipe;
  const lengthM = pipe.effectiveLengthM - mouthLengthM(pipe);
  if (!(lengthM > 0)) return null;
  const piAt = (omega: number) =>
    uniformPiForm(
      propagation(bundledLineConstants(lineConstants(section, air, omega), count, resistancePaSPerM3 / lengthM)),
      lengthM,
    );
  return {
    duct: twoPortBranches(piAt),
    mouth: openEndAdmittance({ end: outerEnd, areaM2: ductAreaM2(section), count }, air),
  };
};

const STEPS = 60;

/**
 * Frequencies at which a pipe open at both ends resonates by itself, Hz, the lowest `count`: f = cn/(2(L + δ1 + δ2)), the end
 * corrections at that frequency.
 *
 * Lossless; a chamber behind shifts them (its own modes are not in it). Good to about 1 % below ka = 1.5. Source: standard
 * organ-pipe relation with `openEnd`.
 *
 * Example: a 70 mm tube of 0.2 m, one end flanged: 692 and 1419 Hz.
 */
export const pipeResonancesHz = (
  pipe: { readonly radiusM: number; readonly lengthM: number; readonly ends: readonly [OpenEnd, OpenEnd] },
  count: number,
  soundSpeedMPerS: number,
): readonly number[] => {
  const { radiusM, lengthM, ends } = pipe;
  return Array.from({ length: count }, (_, i) => {
    let f = ((i + 1) * soundSpeedMPerS) / (2 * (lengthM + 1.2 * radiusM));
    for (let step = 0; step < STEPS; step++) {
      const ka = (2 * Math.PI * f * radiusM) / soundSpeedMPerS;
      const added = ends.reduce((sum, end) => sum + openEnd(end, ka).endRadii * radiusM, 0);
      f = ((i + 1) * soundSpeedMPerS) / (2 * (lengthM + added));
    }
    return f;
  });
};
