import type { SpeakerModel } from '../../speaker/model.ts';
import { type Candidate, logsByKey, logWorth, solverOf } from './candidate.ts';
import { fitBuild } from './fitBuild.ts';
import { type Hypothesis, rebuilt } from './hypothesis.ts';
import type { ImpedanceData } from './impedanceData.ts';
import { unknownKey } from './unknown.ts';

/** Squared difference of two impedances over the whole curve, in units of the noise, below which they count as one: three deviations. */
const ALIKE = 9;
/** Worth below a group's leader, in logarithms, from which a candidate is not compared with it. */
const FAR = 30;
/** Groups that are compared; what comes after stands alone. */
const LEADERS = 6;

/**
 * Groups candidates, best first, whose impedances differ by less than the noise from that of their group's best.
 *
 * Two are compared as the same build otherwise: every value as the leader has it, save what is wrong, which the other may set anew, and
 * what is wrong in the leader alone, which lies within its tolerance in the other.
 */
export function groupCandidates(
  candidates: readonly Candidate[],
  rough: { readonly data: ImpedanceData; readonly base: Hypothesis; readonly share: number },
  model: SpeakerModel,
): Candidate[][] {
  const groups: Candidate[][] = [];
  let rest = [...candidates].sort((a, b) => logWorth(b) - logWorth(a));
  while (rest.length > 0) {
    const [leader, ...others] = rest as [Candidate, ...Candidate[]];
    if (groups.length >= LEADERS) {
      groups.push([leader]);
      rest = others;
      continue;
    }
    const z = impedanceOf(leader, rough.base, model);
    const alike = others.filter((other) => {
      if (logWorth(other) < logWorth(leader) - FAR) return false;
      return differenceOf(leader, z, other, rough, model) < ALIKE;
    });
    groups.push([leader, ...alike]);
    rest = others.filter((other) => !alike.includes(other));
  }
  return groups;
}

function impedanceOf({ hypothesis, fit }: Candidate, base: Hypothesis, model: SpeakerModel) {
  const built = rebuilt(base, hypothesis.faults, model);
  const { re, im } = solverOf(built).solve(fit.logs).z;
  return {
    logSizes: re.map((x, f) => Math.log(Math.hypot(x, im[f]!))),
    phasesRad: re.map((x, f) => Math.atan2(im[f]!, x)),
  };
}

function differenceOf(
  leader: Candidate,
  z: { readonly logSizes: Float64Array; readonly phasesRad: Float64Array },
  other: Candidate,
  { data, base, share }: { readonly data: ImpedanceData; readonly base: Hypothesis; readonly share: number },
  model: SpeakerModel,
): number {
  const built = rebuilt(base, other.hypothesis.faults, model);
  const leaders = logsByKey(leader);
  const wildThere = new Set(leader.hypothesis.wild.map(({ key }) => key));
  const wildHere = new Set(built.wild.map(({ key }) => key));
  const fixed = new Set<number>();
  const from = Float64Array.from(built.unknowns, (unknown, k) => {
    const key = unknownKey(unknown);
    if (!wildHere.has(key)) fixed.add(k);
    if (wildHere.has(key)) return other.fit.logs[k]!;
    // What is wrong in the leader is healthy here: a tolerance that is strained to imitate it does not make the two alike.
    const limit = Math.sqrt(3) * unknown.sdLog;
    if (wildThere.has(key)) return Math.min(limit, Math.max(-limit, other.fit.logs[k]!));
    return leaders.get(key) ?? other.fit.logs[k]!;
  });
  const noise = data.noise * Math.sqrt(share);
  const likeLeader: ImpedanceData = { ...data, ...z, noise, phasesRad: data.phasesRad && z.phasesRad };
  return fitBuild(solverOf(built), likeLeader, { from, mostSteps: wildHere.size === 0 ? 0 : 4, fixed }).misfit;
}
